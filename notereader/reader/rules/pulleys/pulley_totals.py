"""A pulley opened further, and by how much in the end: 'I cut 2 mm more there, which makes 8 mm'."""

from notereader.reader.desk import Desk, Finding
from notereader.reader.page import Quantity
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import phrases_by_first_word

_MORE = frozenset(["more", "further", "another", "extra", "additional"])
_LEADS = phrases_by_first_word("pulleys", "total_leads")
_BEHIND = phrases_by_first_word("pulleys", "total_behind")
_OPENINGS = frozenset(["vented", "released", "injured"])
_OTHERS = frozenset(["end", "ends", "stump", "stumps", "tendon", "wound", "incision", "skin"])
_SOON = 80  # words
RULE = "how much of the pulley was opened in the end"


def opened_in_all(desk: Desk, scene: Scene) -> None:
    """Lay down the whole length that was opened of the pulley told of last, where a sentence sums it up."""
    if _MORE.isdisjoint(scene.said) or scene.header or not _OTHERS.isdisjoint(scene.said):
        return
    cut = [m for m in scene.of("opened") if m.value in _OPENINGS and scene.told(m.i)]
    total = next((q for q in scene.quantities if q.unit == "mm" and scene.told(q.i) and _sums_up(scene, q)), None)
    if not cut or total is None or any(g.tendons for g in scene.setting.groups):
        return
    last = _opened_last(desk, scene)
    if last is not None and total.high is not None:
        desk.take_back("pulleys", last.entry, "extent_mm", scene.sentence.i)
        desk.add(scene, "pulleys", last.entry, "extent_mm", total.high, [last.spans[0], (total.i, total.j)], RULE)


def _sums_up(scene: Scene, q: Quantity) -> bool:
    """'Which makes 8 mm', '6 mm in all', 'now 8 mm altogether'."""
    lead, behind = scene.words(q.i - 2, q.i), scene.words(q.j, min(q.j + 2, scene.sentence.j))
    before = any(lead[-len(p) :] == p for phrases in _LEADS.values() for p in phrases)
    return before or any(behind[: len(p)] == p for p in _BEHIND.get(scene.next_word(q.j), ()))


def _opened_last(desk: Desk, scene: Scene) -> Finding | None:
    """Return the last that was told of any pulley, shortly before, where it is a part opened over some length."""
    for found in reversed(desk.findings):
        if found.order < scene.sentence.i - _SOON:
            return None
        if found.group == "pulleys" and found.field == "finding" and found.order < scene.sentence.j:
            measured = any(f.field == "extent_mm" for f in desk.told_of("pulleys", found.entry))
            return found if found.value == "vented" and measured else None
    return None
