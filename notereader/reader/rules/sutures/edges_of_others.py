"""Edge sutures of another thing: 'the circumferential suture on the sheet belongs to the artery'."""

from notereader.reader.page import within
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_BELONGS = phrases_by_first_word("edges_of_others", "belongs")
_THINGS = word_list("edges_of_others", "things")
_ARTICLES = frozenset(["the", "a", "this", "that"])
_KINDS = frozenset(["structure", "sided", "bundle", "anynerve", "anyartery", "pulley"])
_ENDS = frozenset([",", ";", "."])
_NEAR = 3  # words: 'the radial digital artery'


def belongs_elsewhere(scene: Scene, j: int) -> bool:
    """Tell whether the edge suture named before word j is told to be that of a vessel, a nerve or a pulley."""
    words = scene.page.words
    for k in range(j, scene.sentence.j - 1):
        if words[k] in _ENDS:
            return False
        end = next((k + len(p) for p in _BELONGS.get(words[k], ()) if words[k : k + len(p)] == p), 0)
        if not end:
            continue
        first = end + (words[end : end + 1] != [] and words[end] in _ARTICLES)
        if any(m.kind in _KINDS for m in within(scene.page.mentions, first, first + 1)):
            tendons = any(g.tendons and end <= g.i for g in scene.setting.groups if not g.reference)
            return not tendons or _denied(scene, first)
        return not _THINGS.isdisjoint(words[first : min(first + _NEAR, scene.sentence.j)])
    return False


def _denied(scene: Scene, k: int) -> bool:
    """'... is in the A2, not in the tendon'."""
    return "not" in scene.words(k, scene.sentence.j)
