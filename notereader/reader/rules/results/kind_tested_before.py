"""'Each FDP was pulled in turn. No gaps.': of the kind of tendon that was tested, and no other."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Group, Target
from notereader.reader.scene import Scene

_PLURAL = frozenset(["gaps", "gapped", "all"])
_FAR = 3  # sentences from the result back to the test
_PULLED = frozenset(
    ["pulled", "traction", "tested", "tugged", "moved", "passive", "passively", "actively", "bent", "flexed"]
)


def kind_tested_before(desk: Desk, scene: Scene) -> list[Target]:
    """Return the sewn tendons of the one kind that was tested, for gaps told without a name.

    'Index catches. Middle free. No gaps.': more than one is spoken of, so the test may stand further back.
    """
    if scene.setting.groups or scene.sentence.prefix or "gap" not in scene.kinds:
        return []
    before = desk.scene_before(scene)
    for _ in range(1 if _PLURAL.isdisjoint(scene.said) else _FAR):
        if before is None or before.sentence.block != scene.sentence.block:
            return []
        named = [g for g in before.setting.groups if g.tendons and not g.reference]
        if named:
            kind = _kind_tested(before, named)
            return [t for t in desk.sewn() if kind and t.tendon in kind]
        before = desk.scene_before(before)
    return []


def _kind_tested(scene: Scene, named: list[Group]) -> tuple[str, ...]:
    """'Each FDP was pulled in turn', 'traction at the wrist, each profundus in turn'."""
    one = len(named) == 1 and not named[0].digits and named[0].every
    tested = "test" in scene.kinds or not _PULLED.isdisjoint(scene.said)
    return named[0].tendons if one and tested else ()
