"""Where a note names a tendon whose repair follows only from its suture."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Group, Target
from notereader.reader.scene import Scene, group_targets

_BESIDE = 12  # words between a deed and the tendon it is told of in a title


def where_named(desk: Desk, target: Target, at: int) -> list[tuple[int, int]]:
    """Return the words that name a tendon in the titles of the operation and just before its suture at word `at`.

    A stitch without the word 'repaired' says what was done, not to which tendon: these words do.
    """
    titled = [s for s in desk.scenes if s.sentence.section == "procedure"]
    spans = [_with_deed(scene, g) for scene in titled for g in scene.setting.groups if _names(scene, g, target)]
    own = desk.scene_at(at)
    before = [(g.i, g.j) for g in own.setting.groups if g.i <= at and _names(own, g, target)]
    return [(i, j) for i, j in [*before[-1:], *spans[:1]] if i < j]


def _names(scene: Scene, group: Group, target: Target) -> bool:
    """Tell whether a group names a tendon: with its digit, or 'FDP x 3' without one in a title."""
    if group.reference or group.excepted or not scene.told(group.i):
        return False
    if group.collective:
        return target.tendon in group.tendons
    named = group_targets(scene, group)
    if group.generic or not named:
        return bool(group.generic) and (not group.digits or target.digit in group.digits)
    return any(t.tendon == target.tendon and t.digit in (target.digit, None) for t in named)


def _with_deed(scene: Scene, group: Group) -> tuple[int, int]:
    """Return the words of a group together with 'repair' or 'suture' beside it."""
    near = [m for m in scene.of("deed") if m.value == "repaired" and -_BESIDE <= m.i - group.i <= _BESIDE]
    ends = [group.i, group.j, *(k for m in near[:1] for k in (m.i, m.j))]
    return min(ends), max(ends)
