"""The working sheet of one note while it is read: its words, lines, sentences and what was found in them.

A Page travels through the pipeline in `doc.user_data["page"]`. Word numbers index `words`; `starts` and `ends` hold the
positions of each word in the note as stored, in code points, so that evidence always holds.
"""

from bisect import bisect_left, bisect_right
from dataclasses import dataclass, field
from operator import attrgetter, itemgetter
from typing import TYPE_CHECKING, Final

from spacy.tokens import Doc

if TYPE_CHECKING:
    from notereader.reader.groups import Setting
    from notereader.reader.layout.form_marks import TickedField
    from notereader.reader.layout.grid_lines import Row


class Break:
    """What stands before a word: plain figures, for to name a member of an IntEnum costs five times as much.

    The steps compare thousands of them a note: with an IntEnum a reading took 5 % longer (Python 3.11).
    """

    NONE: Final = 0
    SPACE: Final = 1
    COLUMN: Final = 2  # two or more spaces, or a tab
    LINE: Final = 3
    BLANK: Final = 4


@dataclass(slots=True)
class Mention:
    """One thing named: `kind` and `value` as in the vocabulary, words i to j (exclusive)."""

    kind: str
    value: str
    i: int
    j: int
    rescued: str = ""  # the vocabulary's spelling, where the note's was misspelt


@dataclass(slots=True)
class Quantity:
    """A figure or a range with its unit ('' where none stands beside it), words i to j (exclusive)."""

    low: float | None
    high: float | None
    unit: str
    i: int
    j: int


@dataclass(slots=True)
class FoundDate:
    """A date in the note: ISO value, words i to j, and whether the order of day and month or the year was inferred."""

    value: str
    i: int
    j: int
    inferred: bool = False
    yearless: bool = False  # the note tells no year; it is taken from a full date


@dataclass(slots=True)
class Section:
    """A stretch of the note under one heading; words i to j, the heading itself being words h to i."""

    kind: str
    h: int
    i: int
    j: int = 0


@dataclass(slots=True)
class Sentence:
    """A sentence or list item; `section` is the kind of its heading, `block` numbers its paragraph."""

    i: int
    j: int
    section: str
    block: int
    label: bool = False  # starts a line
    prefix: list[tuple[int, int]] = field(default_factory=list)  # labels of a grid's cell, read as if before it
    said: frozenset[str] = (
        frozenset()
    )  # its words, known once no step cuts sentences any more: most hold none looked for


@dataclass(slots=True)
class Page:
    """All that is known of a note while it is read."""

    text: str
    words: list[str] = field(default_factory=list)
    starts: list[int] = field(default_factory=list)
    ends: list[int] = field(default_factory=list)
    breaks: list[int] = field(default_factory=list)  # before each word, one of Break
    mentions: list[Mention] = field(default_factory=list)
    headings: list[Mention] = field(default_factory=list)
    heads_by_dashes: bool | None = None  # how the note marks its headings, once looked for
    heads_by_capitals: bool | None = None
    late: list[tuple[int, int]] = field(default_factory=list)  # stretches under headings of their own in an addendum
    cues: list[Mention] = field(default_factory=list)
    elements: list[Mention] = field(default_factory=list)
    respelt: dict[int, str] = field(default_factory=dict)  # word number -> the vocabulary's spelling
    rescued: Doc | None = None  # the note with those spellings in place, for the matcher
    figures: list[int] = field(default_factory=list)  # words that are or begin with a figure, in figures or letters
    quantities: list[Quantity] = field(default_factory=list)
    dates: list[FoundDate] = field(default_factory=list)
    sections: list[Section] = field(default_factory=list)
    sentences: list[Sentence] = field(default_factory=list)
    settings: list["Setting"] = field(default_factory=list)
    rows: list["Row"] = field(default_factory=list)
    digit_words: set[int] = field(default_factory=set)
    maybe_digit_words: set[int] = field(default_factory=set)
    tendon_words: set[int] = field(default_factory=set)
    run_on: set[int] = field(default_factory=set)  # first words of lines of running text whose wide gaps were closed
    # A finger put right: the one meant, the one named by mistake, and the first word of the sentence that says so.
    renamed: tuple[str, str, int] | None = None
    slips_changed: int | None = None  # the first word of a sentence that says the other slip was meant
    ticked: list["TickedField"] = field(default_factory=list)  # fields of forms whose options each have a mark
    standing: list[str] = field(default_factory=list)  # per word: '' a finding of this operation, else why it is none

    def figures_in(self, i: int, j: int) -> list[int]:
        """Return the figures among words i to j."""
        return self.figures[bisect_left(self.figures, i) : bisect_left(self.figures, j)]

    def mark(self, i: int, j: int, kind: str) -> None:
        """Note why words i to j are no finding of this operation; an unticked box stays one whatever reaches it."""
        self.standing[i:j] = [old if old == "unticked" else kind for old in self.standing[i:j]]

    def words_in(self, start: int, end: int) -> tuple[int, int]:
        """Return the words that begin in characters start to end."""
        return bisect_left(self.starts, start), bisect_left(self.starts, end)

    def in_addendum(self, sentence: Sentence) -> bool:
        """Tell whether a sentence stands in an addendum: right under its heading, or under one within it."""
        n = bisect_right(self.late, sentence.i, key=itemgetter(0))  # they follow one another
        return sentence.section == "addendum" or (n > 0 and sentence.i < self.late[n - 1][1])

    def raw(self, i: int, j: int) -> str:
        """Return the note's own characters from word i to word j (exclusive)."""
        return self.text[self.starts[i] : self.ends[j - 1]] if j > i else ""


_first_word = attrgetter("i")


def within(mentions: list[Mention], i: int, j: int) -> list[Mention]:
    """Return, of mentions in the order of the note, those that begin in words i to j."""
    low = bisect_left(mentions, i, key=_first_word)
    return mentions[low : bisect_left(mentions, j, low, key=_first_word)]


def page_of(doc: Doc) -> Page:
    """Return the Page that a Doc carries."""
    page: Page = doc.user_data["page"]
    return page
