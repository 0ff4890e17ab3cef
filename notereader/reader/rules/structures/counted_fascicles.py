"""Fascicles counted: 'median nerve: 2 of 6 fascicle groups', 'two of five fascicles divided' tell of a partial cut."""

from notereader.reader.mentions.measures import count_of
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_FASCICLES = word_list("injuries", "fascicles")
_NOT_CUT = word_list("injuries", "fascicles_not_cut")
_OF = frozenset(["of", "of the", "out of", "/", "out of the", "of its"])
_WIDEST = 3  # words between the two counts
_BEHIND = 3  # words


def counted_fascicles(scene: Scene) -> list[tuple[int, int]]:
    """Return the words that tell that some of a nerve's fascicles were cut, and not all of them."""
    nouns = [k for k in range(scene.sentence.i + 1, scene.sentence.j) if scene.page.words[k] in _FASCICLES]
    found = [(first, k + 1) for k in nouns if (first := _some_of(scene, k)) is not None and scene.told(first)]
    return [(i, j) for i, j in found if _NOT_CUT.isdisjoint(scene.words(j, min(j + _BEHIND, scene.sentence.j)))]


def _some_of(scene: Scene, noun: int) -> int | None:
    """Return the first word of 'two of five' before the noun at word `noun`; None where nothing such stands."""
    words, last = scene.page.words, noun - 1
    last -= words[last] in ("fascicle", "fascicular", "nerve")
    for first in range(last - 2, max(scene.sentence.i, last - 2 - _WIDEST) - 1, -1):
        some, among = count_of(words[first]), count_of(words[last])
        if 0 < some < among and " ".join(words[first + 1 : last]) in _OF:
            return first
    return None
