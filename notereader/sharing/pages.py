"""The words of a text in their order, with what stands between them."""

import re
from bisect import bisect_left
from dataclasses import dataclass

from notereader.sharing.finds import Find

WORD = re.compile(r"[^\W\d_]+(?:['’\-][^\W\d_]+)*")
# Words of the longest name that is taken for one.
MOST_WORDS = 5
# Between the words of one name.
_GAP = re.compile(r"[ ]?|\.[ ]?|,[ ]?|[ ]{1,2}")


@dataclass(frozen=True, slots=True)
class Word:
    """One word of a text; `graded` where a figure follows at once, as in the grade 'F2'."""

    text: str
    start: int
    end: int
    graded: bool = False

    @property
    def low(self) -> str:
        """The word in small letters."""
        return self.text.lower()

    @property
    def capital(self) -> bool:
        """True where it begins with a capital."""
        return self.text[:1].isupper()

    @property
    def initial(self) -> bool:
        """True for a single letter, not where a figure follows: 'F2' is a grade."""
        return len(self.text) == 1 and self.capital and not self.graded


class Page:
    """The words of a text in their order, and what stands around them."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.words = [Word(m[0], *m.span(), text[m.end() : m.end() + 1].isdigit()) for m in WORD.finditer(text)]
        self.small = {word.text for word in self.words if word.text.islower() and not self._in_address(word)}
        # In a note without capitals a name has none either.
        self.without_capitals = len(self.small) > 0 and not any(w.capital and len(w.text) > 3 for w in self.words)
        self._starts = [word.start for word in self.words]

    def _in_address(self, word: Word) -> bool:
        """True within an e-mail or web address, where names are written small."""
        after = self.text[word.end : word.end + 2]
        return self.text[word.start - 1 : word.start] in ("@", ".", "/", "_") or (
            after[:1] in ("@", ".", "/", "_") and after[1:].isalnum()
        )

    def first_from(self, position: int) -> int:
        """Return the number of the first word that begins at or behind a position."""
        return bisect_left(self._starts, position)

    def joined(self, k: int) -> bool:
        """True where word k + 1 follows word k with nothing but a blank, a stop or a comma between."""
        if k + 1 >= len(self.words):
            return False
        return _GAP.fullmatch(self.text, self.words[k].end, self.words[k + 1].start) is not None

    def find(self, i: int, j: int, why: str) -> Find:
        """Return the words i to j (exclusive) as a name."""
        start, end = self.words[i].start, self.words[j - 1].end
        end += self.words[j - 1].initial and self.text[end : end + 1] == "."
        return Find(start, end, "name", self.text[start:end], why)


def broken(page: Page, j: int) -> bool:
    """True where a comma or the stop of a sentence parts word j from the one before; that of an initial does not."""
    before = page.words[j - 1]
    between = page.text[before.end : page.words[j].start]
    return "," in between or ("." in between and len(before.text) > 2 and before.low not in ("med", "dent"))
