"""What the hand is free for after the splint: 'plaster four weeks, then free play', 'cast off, then free'."""

from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_FREE_FOR = word_list("quality", "free_for")
_WORN = word_list("quality", "worn")
_PERIODS = frozenset(["week", "day", "month"])


def freed_later(scene: Scene, i: int, j: int) -> bool:
    """Tell whether 'free' within words i to j is said of the hand out of its splint, and not of how the repair ran."""
    if "free" not in scene.words(i, j):
        return False
    behind = [w for w in scene.words(j, min(j + 3, scene.sentence.j)) if w not in ("of", "the")]
    if behind[:1] and behind[0] in _FREE_FOR:
        return True
    worn = _WORN.isdisjoint(scene.said)
    return not worn and any(q.unit in _PERIODS for q in scene.quantities) and "then" in scene.words(i - 1, j)
