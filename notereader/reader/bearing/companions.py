"""'The profundus was sewn with ..., its companion with a Kessler': the other of the two flexors of a finger."""

from bisect import insort
from operator import attrgetter

from notereader.reader.page import Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_COMPANIONS = word_list("companions", "companions")
_BEHIND = word_list("companions", "behind")
_OTHER = {"FDP": "FDS", "FDS": "FDP"}
_PAIRED_THINGS = frozenset(["sided", "structure", "anynerve", "anyartery", "bundle", "slip", "pulley", "border"])


def name_companions(page: Page) -> None:
    """Add to the mentions of the Page the tendons that are only named as the companion of the one just told of."""
    for sentence in page.sentences:
        for k in range(sentence.i + 1, sentence.j - 1):
            if page.words[k] in _COMPANIONS and page.words[k - 1] == "its" and page.words[k + 1] in _BEHIND:
                _name_one(page, sentence, k)


def _name_one(page: Page, sentence: Sentence, k: int) -> None:
    before = within(page.mentions, sentence.i, k)
    last = next((m for m in reversed(before) if m.kind in _PAIRED_THINGS or m.kind == "tendon"), None)
    if last is not None and last.kind == "tendon" and last.value in _OTHER:
        insort(page.mentions, Mention("tendon", _OTHER[last.value], k - 1, k + 1), key=attrgetter("i"))
