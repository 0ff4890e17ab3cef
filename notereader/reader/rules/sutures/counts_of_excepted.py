"""A count told of the finger left out: 'four strands in each except the ring, where only two would fit'."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.scene import Scene


def excepted_with(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """Return the cut tendons of the excepted finger whose own aside holds word i; none where no aside does."""
    groups = (g for g in scene.left_out if g.digits and not g.tendons and g.j <= i < scene.own_aside(g))
    group = next(groups, None)
    if group is None:
        return []
    kinds = {t.tendon for t in scene.setting.focus} | {t for g in scene.setting.groups for t in g.tendons}
    return [t for t in desk.cut(group.digits) if t.digit in group.digits and t.tendon in kinds]
