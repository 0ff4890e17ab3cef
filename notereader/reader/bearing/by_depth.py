"""'The deeper was repaired, the more superficial excised': the flexors of a finger, told apart by how deep they lie."""

from bisect import insort
from operator import attrgetter

from notereader.reader.page import Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_DEPTHS = {"deeper": "FDP", "deep": "FDP", "superficial": "FDS"}
_BEHIND = word_list("companions", "deep_behind")
_BOTH = frozenset(["FDP", "FDS"])


def name_by_depth(page: Page) -> None:
    """Add to the mentions of the Page the tendons named by their depth alone, right behind both flexors by name."""
    before: set[str] = set()
    for sentence in page.sentences:
        mentions = within(page.mentions, sentence.i, sentence.j)
        named = {m.value for m in mentions if m.kind == "tendon"}
        if before | named >= _BOTH and not _DEPTHS.keys().isdisjoint(page.words[sentence.i : sentence.j]):
            for k in range(sentence.i, sentence.j - 1):
                _name_one(page, sentence, k)
        before = named or before


def _name_one(page: Page, sentence: Sentence, k: int) -> None:
    """'The more superficial was excised', but not 'the superficial wound' nor 'the deeper one third'."""
    words = page.words
    if words[k] != "the":
        return
    at = k + 1 + (words[k + 1] == "more")
    known = at < sentence.j - 1 and words[at] in _DEPTHS and words[at + 1] in _BEHIND
    if known and not any(m.kind == "tendon" for m in within(page.mentions, k, at + 1)):
        insort(page.mentions, Mention("tendon", _DEPTHS[words[at]], k, at + 1), key=attrgetter("i"))
