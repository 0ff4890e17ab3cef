"""'Every finger flexor and the FPL were intact', 'each of the finger flexors was whole': all eight, at a wrist."""

from notereader.reader.desk import HURT_KINDS, Desk
from notereader.reader.groups import DIGITS, Target
from notereader.reader.needs import needs
from notereader.reader.page import Mention
from notereader.reader.scene import Scene

_NOUNS = frozenset(["flexor", "flexors"])
_OF_ALL = (["every"], ["each"], ["each", "of", "the"], ["every", "one", "of", "the"], ["all"], ["all", "the"])
_BETWEEN = frozenset(
    ["and", "the", "fpl", "was", "were", "found", "seen", "inspected", "to", "be", "also", "identified", "all", "too"]
)
_LONGEST_LEAD, _FAR = 4, 7  # words


@needs(kinds=["extent"], words=_NOUNS)
def every_flexor(desk: Desk, scene: Scene) -> None:
    """Lay down that all finger flexors are whole which nothing before tells to be cut."""
    if not desk.at_wrist or any(g.excepted or g.digits for g in scene.setting.groups):
        return
    for k in range(scene.sentence.i + 1, scene.sentence.j):
        if scene.words(k - 1, k) == ["finger"] and scene.words(k, k + 1)[0] in _NOUNS and _of_all(scene, k - 1):
            whole = next((m for m in scene.of("extent") if _says_so(scene, k + 1, m)), None)
            fingers = [Target(d, t) for d in DIGITS[1:] for t in ("FDP", "FDS")] if whole is not None else []
            for target in fingers:
                if desk.extents.get(target) not in HURT_KINDS and whole is not None:
                    desk.tendon(scene, target, "extent", "intact", [(k - 1, whole.j)], "extent intact")


def _of_all(scene: Scene, k: int) -> bool:
    """Tell whether words that mean all of them lead to word k; 'not every finger flexor' does not."""
    for n in range(1, _LONGEST_LEAD + 1):
        if k - n >= scene.sentence.i and scene.words(k - n, k) in _OF_ALL:
            return scene.word_before(k - n) not in ("not", "nearly", "almost")
    return False


def _says_so(scene: Scene, k: int, m: Mention) -> bool:
    """Tell whether a word for whole stands behind word k with nothing of another thing between."""
    if m.value != "intact" or not 0 <= m.i - k <= _FAR or not scene.told(m.i) or scene.negated(m.i, m.j):
        return False
    return _BETWEEN.issuperset(scene.words(k, m.i))
