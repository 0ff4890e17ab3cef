"""'Index finger, both flexors repaired': the two flexors of one finger, where the note has named neither before."""

from notereader.reader.desk import Desk
from notereader.reader.groups import DIGITS, Target
from notereader.reader.page import Mention
from notereader.reader.scene import Scene

_FLEXORS = (["both", "flexors"], ["both", "flexor", "tendons"], ["both", "of", "its", "flexors"])
_BETWEEN = frozenset(["were", "was", "then", "have", "been", "-", ":", "and", "cut", "divided", "completely"])
_FAR = 4  # words


def both_flexors(desk: Desk, scene: Scene) -> None:
    """Lay down that the superficialis and the profundus of the only finger spoken of were sewn."""
    digits = scene.setting.after_digits or scene.setting.digits
    if "both" not in scene.said or len(digits) != 1 or digits[0] not in DIGITS[1:] or scene.header:
        return
    if any(t.digit == digits[0] for t in desk.named) or any(g.tendons for g in scene.setting.groups):
        return
    for k in range(scene.sentence.i, scene.sentence.j):
        end = next((k + len(p) for p in _FLEXORS if scene.words(k, k + len(p)) == p), 0)
        deed = next((m for m in scene.of("deed") if end and _sews_them(scene, m, end)), None)
        if deed is not None:
            for tendon in ("FDP", "FDS"):
                span = [(k, deed.j)]
                desk.tendon(scene, Target(digits[0], tendon), "treatment", "repaired", span, "treatment repaired")
            return


def _sews_them(scene: Scene, deed: Mention, end: int) -> bool:
    """Tell whether a deed stands right behind the two and says that they were sewn."""
    if deed.value != "repaired" or not 0 <= deed.i - end <= _FAR or not scene.told(deed.i):
        return False
    return _BETWEEN.issuperset(scene.words(end, deed.i)) and not scene.negated(deed.i, deed.j)
