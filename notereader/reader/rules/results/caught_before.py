"""'I shaved a fold of the FDS and the catching was gone': of the tendon that was told to catch."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.scene import Scene

_POINTING = frozenset(["the", "that", "this", "its"])
_SOON = 60  # words


def of_those_that_caught(desk: Desk, scene: Scene, i: int, targets: list[Target]) -> list[Target]:
    """Return whom a remark at word i is of, where 'the catch' before it takes up what was told of somebody else."""
    taken_up = [m for m in scene.of("glide") if m.value == "catching" and m.i <= i and _pointed_at(scene, m.i)]
    if not taken_up or any(g.tendons and taken_up[0].i <= g.i <= i for g in scene.setting.groups):
        return targets
    caught = [t for t in desk.named if _caught(desk, t, taken_up[0].i)]
    return targets if not caught or not set(caught).isdisjoint(targets) else caught


def _pointed_at(scene: Scene, k: int) -> bool:
    return k > scene.sentence.i and scene.page.words[k - 1] in _POINTING


def _caught(desk: Desk, target: Target, k: int) -> bool:
    """Tell whether the last that was told of a tendon's run, shortly before word k, is that it caught."""
    told = desk.told_of("repairs", (target.digit, target.tendon, target.slip))
    runs = [f for f in told if f.field == "glide" and k - _SOON <= f.order < k and not f.header]
    return bool(runs) and runs[-1].value == "catching"
