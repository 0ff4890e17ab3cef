"""A pulley opened further, told without its name: 'Opened another 2 mm, total 10', 'Vented 3 mm more, 8 in all'."""

from notereader.reader.desk import Desk, Finding
from notereader.reader.page import Mention, Quantity
from notereader.reader.scene import Scene

_FURTHER = frozenset(["another", "further", "additional", "extra", "more"])
_SOON = 45  # words
_SUMS = frozenset(["total", "altogether"])
_NEAR = 3  # words from the deed to its measure
_LEADS = frozenset(["so", "i", "we", "then", "therefore", "and", "-", ">", "was", "thus"])


def opens_on(desk: Desk, scene: Scene) -> Mention | None:
    """Return the word of opening that a sentence begins with, of a pulley vented just before and now opened further."""
    deed = next((m for m in scene.of("opened") if m.value in ("vented", "released")), None)
    if deed is None or scene.kinds & {"pulley", "pulleys", "tendon"} or not scene.told(deed.i):
        return None
    if not _LEADS.issuperset(scene.words(scene.sentence.i, deed.i)):
        return None
    behind = scene.words(deed.j, min(deed.j + _NEAR, scene.sentence.j))
    measured = any(q.unit == "mm" and 0 < q.i - deed.j <= _NEAR for q in scene.quantities)
    return deed if measured and not _FURTHER.isdisjoint(behind) and _vented_before(desk, scene) else None


def opened_on(desk: Desk, scene: Scene) -> bool:
    """Find the whole length of a pulley that was vented just before. RETURNS: whether one is opened further here."""
    deed = opens_on(desk, scene)
    before = _vented_before(desk, scene) if deed is not None else None
    if deed is None or before is None:
        return False
    total = _total(scene, deed)
    if total is not None and total.high is not None:
        rule, span = "how much of the pulley was vented", (deed.i, total.j)
        desk.add(scene, "pulleys", before.entry, "finding", "vented", [span], "pulley vented")
        desk.add(scene, "pulleys", before.entry, "extent_mm", total.high, [span], rule)
        told = [f for f in desk.told_of("pulleys", before.entry) if f.field == "part" and f.order == before.order]
        for part in told[:1]:
            desk.add(scene, "pulleys", before.entry, "part", part.value, [span, *part.spans], rule)
    return True


def _total(scene: Scene, deed: Mention) -> Quantity | None:
    """Return the length that is told as the sum: 'total 10', 'total of 8 mm', '6 mm in all', 'altogether 9 mm'."""
    for q in (q for q in scene.quantities if q.i > deed.j and q.unit in ("mm", "")):
        lead, behind = scene.words(q.i - 2, q.i), scene.words(q.j, min(q.j + 2, scene.sentence.j))
        led = not _SUMS.isdisjoint(lead[-1:] if lead[-1:] not in (["of"], [":"]) else lead)
        summed = led or not _SUMS.isdisjoint(behind[:1])
        if summed or behind in (["in", "all"], ["in", "total"]):
            return q
    return None


def _vented_before(desk: Desk, scene: Scene) -> Finding | None:
    """Return the finding of the one pulley that was told vented right before; None where there are two."""
    near = desk.laid("finding", since=scene.sentence.i - _SOON, before=scene.sentence.i)
    vented = [f for f in near if f.value == "vented" and not f.header]
    return vented[-1] if len({f.entry for f in vented}) == 1 else None
