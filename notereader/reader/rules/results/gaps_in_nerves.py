"""'The nerve was cut back to good fascicles. That left a 9 mm gap': the gap that trimming left in a nerve."""

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Mention
from notereader.reader.scene import Scene

_NERVES = ("structure", "sided", "bundle", "anynerve", "anyartery")
_LEFT = frozenset(["left", "leaves", "leaving", "remained", "remains", "resulted", "created", "produced"])
_TRIMMED = frozenset(["back", "trimmed", "resected", "debrided", "freshened", "excised", "removed"])
_TAKEN_UP = frozenset(["that", "this", "which", "there", "leaving", "it"])


def left_in_nerve(desk: Desk, scene: Scene, gap: Mention) -> bool:
    """Tell whether a sentence takes up a nerve or an artery, and no tendon, with the gap that was left in it."""
    lead = scene.words(scene.sentence.i, gap.j)
    before = desk.scene_before(scene)
    if gap.value != "seen" or before is None or scene.page.breaks[scene.sentence.i] >= Break.BLANK:
        return False
    if _LEFT.isdisjoint(scene.said) or lead[:1] == [] or lead[0] not in _TAKEN_UP:
        return False
    if _TRIMMED.isdisjoint(before.said):
        return False  # 'The nerve was whole. There remained a gap of 1 mm'
    tendons = any(g.tendons or g.generic for s in (before, scene) for g in s.setting.groups)
    return not tendons and bool(before.of(*_NERVES))
