"""'I led the tendon beneath an intact A4 and reattached it': what is done behind the 'and' is done to the tendon."""

from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_UNDER = word_list("passed_under", "under")
_WHOLE = word_list("passed_under", "whole")
_SEWING = frozenset(["repaired", "reconstructed", "widened"])
_ARTICLES = frozenset(["the", "an", "a"])


def of_what_passed_under(scene: Scene, i: int, j: int, word: Mention) -> bool:
    """Tell whether a word of sewing is said of what was led under the whole pulley of words i to j, by an 'and'."""
    lead = [w for w in scene.words(max(scene.sentence.i, i - _NEAR), i) if w not in _ARTICLES]
    led = lead[-1:] != [] and lead[-1] in _WHOLE and not _UNDER.isdisjoint(lead[-2:-1])
    joined = scene.next_word(j) == "and" or scene.words(j, j + 2) in ([",", "and"], [",", "then"])
    return word.value in _SEWING and word.i >= j and led and joined


_NEAR = 4  # words
