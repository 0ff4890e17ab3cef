"""A tendon that was only smoothed has no repair to gap, but how it ran is told all the same."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.rules.results.behaviour import said_of_several
from notereader.reader.scene import Scene

_WIDE = ("all", "others")
_DEEP = frozenset(["FDP", "FPL"])


def any_smoothed(desk: Desk) -> bool:
    """Tell whether the note tells of a tendon whose torn edge was only trimmed."""
    return "trimmed" in desk.treatments.values()


def of_the_smoothed(desk: Desk, scene: Scene, i: int, found: list[Target]) -> list[Target]:
    """'FDP flap trimmed, no suture. He bent the finger, no click.': of the smoothed tendon, where none is sewn."""
    groups = scene.setting.groups
    if not any_smoothed(desk) or any(g.every or g.generic in _WIDE for g in groups) or said_of_several(scene, i):
        return found
    if scene.word_before(i) == "until":
        return found  # 'pared with scissors until nothing caught': how far it was pared
    first, last = scene.part(i)
    here = [g for g in groups if first <= g.i < last and not (g.reference or g.excepted)]
    named = [g.digits for g in here if g.digits] or [g.digits for g in groups if g.digits and g.j <= first][-1:]
    digits = named[0] if named else scene.setting.digits
    if len(digits) != 1 or any(_sewn(desk, t, i) for t in [*found, *(t for t in desk.repairable(digits) if t.digit)]):
        return found
    if len(scene.every_digit) > 1 and any(t.digit in digits for t in found):
        return found  # of several fingers another may be meant
    kinds = {t for g in here for t in g.tendons} or _DEEP
    trimmed = [t for t, deed in desk.treatments.items() if deed == "trimmed" and _smoothed(desk, t, i)]
    smoothed = [t for t in trimmed if t.digit in digits and t.tendon in kinds]
    return smoothed if len(smoothed) == 1 else found


def _sewn(desk: Desk, target: Target, i: int) -> bool:
    """Tell whether the text has told of a tendon's repair before word i."""
    told = desk.told_of("repairs", (target.digit, target.tendon, target.slip))
    before = [f for f in told if f.order < i and not f.header]
    return any(f.field in ("strands", "stitch", "size") or f.value in _REPAIRED for f in before)


_REPAIRED = ("repaired", "reinserted", "grafted")


def _smoothed(desk: Desk, target: Target, i: int) -> bool:
    """Tell whether the text, and not only the title, has told before word i that a tendon was trimmed."""
    told = desk.told_of("repairs", (target.digit, target.tendon, target.slip))
    return any(f.field == "treatment" and f.value == "trimmed" and f.order < i and not f.header for f in told)
