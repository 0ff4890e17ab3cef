"""What is said of 'the two divided profundi' or 'the completely divided tendons' alone."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.scene import Scene

_WHOLLY = frozenset(["completely", "fully", "totally", "wholly", "entirely", "complete"])
_COUNTS = {"two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "2": 2, "3": 3, "4": 4, "5": 5, "6": 6}


def of_the_parted(desk: Desk, scene: Scene, targets: list[Target]) -> list[Target]:
    """Drop the partly cut tendons where a sentence speaks of those cut through, or of as many as were cut through."""
    for mention in scene.of("extent"):
        behind = (g for g in scene.setting.groups if 0 <= g.i - mention.j <= 1 and (g.tendons or g.generic))
        group = next(behind, None)
        before = scene.word_before(mention.i)
        if mention.value != "complete" or group is None or group.digits:
            continue
        meant = [t for t in targets if not group.tendons or t.tendon in group.tendons]
        through = [t for t in meant if desk.extents.get(t) == "complete"]
        wholly = before == "the" and scene.page.words[mention.i] in _WHOLLY
        if through and (wholly or _COUNTS.get(before) == len(through)):
            named = {d for g in scene.setting.groups for d in g.digits}
            targets = [t for t in targets if t not in meant or desk.extents.get(t) != "partial" or t.digit in named]
    return targets
