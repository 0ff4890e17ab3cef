"""Misspelt and misheard names: rescued by rapidfuzz only where an ordinary English word does not explain them.

Only long names are rescued (stitches, materials, tendons, words of the peripheral suture). The rule was chosen on
measured pairs: at least six letters, the same first letter, and either a similarity of 90 or one slip of the pen.
A word written without its vowels is read as the one word of the vocabulary that it can be: 'fngr', 'tndn'.
"""

import re
from functools import lru_cache

from rapidfuzz import fuzz, process
from rapidfuzz.distance import OSA
from spacy.tokens import Doc

from notereader.reader.page import Page
from notereader.vocabulary.places import resource_file
from notereader.vocabulary.terms import Term

_SHORTEST_SCANNED = 5  # letters; 'earn' is a word, and no 'EAM'
_KINDS = frozenset(["stitch", "material", "tendon", "pattern", "anaesthesia", "digit"])
_SHORTEST = 6
_SIMILAR = 90.0
# A scanner reads i as l: 'llttle', 'lndication', 'mlcroscope'. English has no l between two consonants or before one
# at the start of a word, but for a few as in 'world'. It reads m as rn too: 'thurnb', 'cornplete', 'srnall',
# and in as m: 'fmger'. The word must become one of the vocabulary's.
_SHORTEST_SLIP = 4
_L_FOR_I = re.compile(r"(?<![aeiouy])l(?![aeiouyl]|$)")
# A hurried writer leaves the vowels out: 'fngr', 'tndn', 'dvdd'. Three letters are too few: 'mcp', 'rng'.
_VOWELS = str.maketrans("", "", "aeiou")
_SHORTEST_CLIPPED = 4
_CLIPPED_KINDS = frozenset(
    ["digit", "tendon", "generic", "extent", "opened", "deed", "strandword", "structure", "slip", "plural", "side"]
)


class Rescue:
    """Looks up the vocabulary's spelling of a misspelt word."""

    def __init__(self, vocabulary: tuple[Term, ...]) -> None:
        known: set[str] = set()
        names: set[str] = set()
        plain: set[str] = set()
        for term in vocabulary:
            for phrase in (*term.words, *term.exact):
                words = phrase.lower().replace("-", " ").replace("/", " ").split()
                known.update(words)
                if term.kind in _KINDS or (term.kind == "role" and term.value == "peripheral"):
                    names.update(w for w in words if len(w) >= _SHORTEST and w.isalpha())
                if term.kind in _CLIPPED_KINDS:
                    plain.update(words)
        raw = resource_file("spelling.toml")
        names.update(raw["also"]["words"])
        self.words = known
        self.known = known | set(raw["ordinary"]["words"])
        self.names: dict[str, list[str]] = {}  # by their first letter
        for name in sorted(names - set(raw["never"]["words"])):
            self.names.setdefault(name[0], []).append(name)
        self.clipped = _clipped(plain)
        self._look_up = lru_cache(maxsize=50_000)(self._find)

    def spelling(self, word: str) -> str | None:
        """Return the vocabulary's spelling of a cleaned word, or None where it needs or finds none."""
        if len(word) < _SHORTEST_SLIP or word in self.known or not word.isalpha():
            return None
        return self._look_up(word)

    def _find(self, word: str) -> str | None:
        slips = [word[: found.start()] + "i" + word[found.end() :] for found in _L_FOR_I.finditer(word)]
        scanned = word.replace("rn", "m") if len(word) >= _SHORTEST_SCANNED else word
        run_in = [
            word[:k] + "in" + word[k + 1 :] for k, c in enumerate(word) if c == "m" and len(word) >= _SHORTEST_SCANNED
        ]
        for read in (*slips, _L_FOR_I.sub("i", word), scanned, *run_in):
            if read != word and read in self.words:
                return read
        if word == _without_vowels(word):
            return self.clipped.get(word)
        return self._resembling(word) if len(word) >= _SHORTEST else None

    def _resembling(self, word: str) -> str | None:
        names = [name for name in self.names.get(word[0], ()) if abs(len(name) - len(word)) <= 2]
        best = process.extractOne(word, names, scorer=fuzz.ratio, score_cutoff=80)
        if best is None:
            return None
        name, score, _ = best
        if score >= _SIMILAR or OSA.distance(word, name) == 1:
            return str(name)
        return None

    def apply(self, page: Page, doc: Doc) -> None:
        """Note the rescued spellings on the Page; the matcher then reads a Doc with them in place."""
        strange = set(page.words) - self.known
        names = {word: name for word in strange if (name := self.spelling(word))}
        respelt = {k: names[word] for k, word in enumerate(page.words) if word in names} if names else {}
        page.respelt = respelt
        if respelt:
            words = [respelt.get(k, word) for k, word in enumerate(page.words)]
            page.rescued = Doc(doc.vocab, words=words)


def _without_vowels(word: str) -> str:
    return word[0] + word[1:].translate(_VOWELS)


def _clipped(words: set[str]) -> dict[str, str]:
    """Return the words by what is left of them without their vowels, where that can be but one of them."""
    found: dict[str, set[str]] = {}
    for word in words:
        if word.isalpha() and (short := _without_vowels(word)) != word and len(short) >= _SHORTEST_CLIPPED:
            found.setdefault(short, set()).add(word)
    return {short: one for short, (one, *more) in found.items() if not more}
