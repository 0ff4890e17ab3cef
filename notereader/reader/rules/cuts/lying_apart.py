"""Ends told to be apart: once the repair is done 'the ends stood 2 mm apart' is a gap and its width.

Before it 'the two ends of the profundus lay 18 mm apart' tells that it was through.
"""

from notereader.reader.desk import Desk
from notereader.reader.needs import needs
from notereader.reader.rules.results.behaviour import after_repair, behaving, foreign, lay_behaviour
from notereader.reader.scene import Scene, group_targets

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


@needs(words={"apart"})
def found_apart(desk: Desk, scene: Scene) -> None:
    """Find the tendons whose two ends were found some way apart: they were cut or torn through."""
    if scene.header or not _REPAIR.isdisjoint(scene.said):
        return
    for q in scene.quantities:
        wide = q.unit == "mm" and q.low and q.low > _WIDEST and scene.next_word(q.j) == "apart"
        first = scene.part(q.i)[0]
        if not wide or not scene.told(q.i) or scene.negated(q.i, q.j, 3):
            continue
        named = [g for g in scene.setting.groups if first <= g.i < q.i and g.tendons and not g.reference]
        ends = [k for k in range(first, q.i) if scene.page.words[k] in _TWO_ENDS]
        if len(named) == 1 and ends and abs(ends[-1] - named[0].i) <= _NAMED_NEAR:
            for target in group_targets(scene, named[0]):
                desk.tendon(scene, target, "extent", "complete", [(ends[-1], q.j + 1)], "ends found apart")


_TWO_ENDS = frozenset(["ends", "stumps"])
_REPAIR = frozenset(["sutures", "stitches", "repair", "nerve", "should", "would"])
_NAMED_NEAR = 5  # words
