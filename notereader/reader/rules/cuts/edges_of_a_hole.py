"""Edges of a hole in what covers a tendon: 'the rent in the sheath was 8 mm long, its edges clean'."""

from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_HOLES = word_list("quality", "holes")
_COVERS = word_list("quality", "covers")
_EDGES = frozenset(["edges", "edge", "edged", "margins", "margin"])
_ENDS = frozenset(["ends", "end", "stumps", "stump"])
_OPENING = 6  # words: 'the traumatic rent in the sheath'
_PULLEYS = ("pulley", "pulleys")


def edges_of_a_hole(scene: Scene) -> bool:
    """Tell whether a sentence opens on a hole in a sheath, a pulley or the skin, and speaks of edges but no tendon."""
    if _HOLES.isdisjoint(scene.said) or _EDGES.isdisjoint(scene.said) or not _ENDS.isdisjoint(scene.said):
        return False
    if scene.of("tendon") or any(g.tendons for g in scene.setting.groups):
        return False
    opening = scene.words(scene.sentence.i, min(scene.sentence.i + _OPENING, scene.sentence.j))
    pulley = any(m.i - scene.sentence.i < _OPENING for m in scene.of(*_PULLEYS))
    return not _HOLES.isdisjoint(opening) and (pulley or not _COVERS.isdisjoint(opening))
