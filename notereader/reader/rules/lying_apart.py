"""Ends that part once the repair is done: 'in extension the ends stood 2 mm apart' is a gap and its width."""

from notereader.reader.desk import Desk
from notereader.reader.needs import needs
from notereader.reader.rules.behaviour import after_repair, behaving, foreign, lay_behaviour
from notereader.reader.scene import Scene

_WIDEST = 6.0  # mm; ends that lie further apart were seen so before they were sewn
_ENDS = frozenset(["ends", "stumps", "edges", "they", "repair", "join", "junction", "faces"])
_BEFORE = frozenset(["before", "first", "initially", "lay", "found", "exploration", "previously", "when", "had"])


@needs(words={"apart"})
def lying_apart(desk: Desk, scene: Scene) -> None:
    """Find the ends of a finished repair that stand, come or are drawn some millimetres apart."""
    if not after_repair(desk, scene):
        return
    for q in scene.quantities:
        if q.unit != "mm" or not q.high or q.high > _WIDEST or scene.next_word(q.j) != "apart":
            continue
        lead = set(scene.words(scene.part(q.i)[0], q.i))
        if _ENDS.isdisjoint(lead) or not _BEFORE.isdisjoint(lead) or not scene.told(q.i):
            continue
        if scene.negated(q.i, q.j, 3) or foreign(scene, q.i, q.j):
            continue
        targets = behaving(desk, scene, q.i, q.j)
        lay_behaviour(desk, scene, targets, "gap", "seen", q.i, q.j + 1, "ends apart")
        lay_behaviour(desk, scene, targets, "gap_mm", float(q.high), q.i, q.j + 1, "width of the gap")
