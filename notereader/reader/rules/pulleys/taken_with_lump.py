"""A pulley of which a rim came away with a lump: 'I shelled out the ganglion with a cuff of the pulley'."""

from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_LUMPS = word_list("pulleys", "lumps")
_PIECES = word_list("pulleys", "lump_pieces")
_NEAR = 3  # words: 'cuff of the A1'


def taken_with_lump(scene: Scene) -> Mention | None:
    """Return the words for the piece of a pulley that was taken with a lump; the lump itself was what was removed."""
    if _LUMPS.isdisjoint(scene.said):
        return None
    for k in range(scene.sentence.i + 1, scene.sentence.j - 2):
        piece = scene.page.words[k] in _PIECES and scene.words(k - 2, k) in (["with", "a"], ["and", "a"])
        if piece and scene.next_word(k + 1) == "of" and scene.told(k) and _of_pulley(scene, k + 2):
            return Mention("opened", "trimmed", k, k + 1)
    return None


def _of_pulley(scene: Scene, k: int) -> bool:
    reach = range(k, k + _NEAR)
    return "pulley" in scene.words(k, k + _NEAR) or any(m.i in reach for m in scene.of("pulley"))
