"""Gaps between the ends of a finished repair."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Group, Target
from notereader.reader.needs import needs
from notereader.reader.page import Break, Mention, Quantity
from notereader.reader.rules.pulleys.pulleys_opened_on import opens_on
from notereader.reader.rules.results.behaviour import behaving, lay_behaviour
from notereader.reader.rules.results.but_for import but_for_some
from notereader.reader.rules.results.dealt_results import not_denied
from notereader.reader.rules.results.gap_answers import NOUGHT, answered, answered_behind, denied_at_the_end
from notereader.reader.rules.results.gap_doubts import half_denied, not_told, then_seen
from notereader.reader.rules.results.not_taken_away import not_taken_away
from notereader.reader.rules.results.repair_gaps import a_little, is_repair_gap, near_gap, none_did
from notereader.reader.rules.results.sought import sought_in_vain
from notereader.reader.rules.results.told_apart import Answer, repairs_of, told_apart
from notereader.reader.scene import Scene, group_targets

_OPENINGS = frozenset(
    [
        "opens",
        "opens by",
        "opens up",
        "parts",
        "parts by",
        "opened",
        "opened up",
        "gaping",
        "gape",
        "gapes",
        "parted",
        "came apart",
        "gave",
        "pulled it apart",
        "pulled it apart by",
        "pulled them apart",
        "pulled the repair apart",
        "pulled the ends apart",
        "drew it apart",
        "drawn it apart",
        "drew the repair apart",
    ]
)
_TESTING = frozenset(["test", "testing", "tests", "check", "checking", "assessment", "measurement"])
_NONE = frozenset(["no", "none", "nil", "n", "nothing", "absent"])


_LOOKED_FOR = tuple(["and", verb, "none"] for verb in ("saw", "found", "had"))


@needs(kinds=["gap"])
def gap(desk: Desk, scene: Scene) -> None:
    """Find gaps of the finished repair and their width: 'no gapping', '1 mm gap on extension'."""
    mentions = [m for m in scene.of("gap") if scene.told(m.i) and is_repair_gap(desk, scene, m)]
    further = opens_on(desk, scene) if mentions else None  # 'A2 vented 8 mm. It caught. Opened another 2 mm.'
    for mention in (m for m in mentions if further is None or m.i != further.i):
        answers, label = told_apart(desk, scene, mention)
        for told in answers:
            _lay_answer(desk, scene, told)
        value = None if label or not_told(scene, mention) else _value(desk, scene, mention)
        if value is not None:
            _lay_gap(desk, scene, mention, value)


def _value(desk: Desk, scene: Scene, mention: Mention) -> str | None:
    """Return whether a gap was seen or none, as all the words around it say; None where they tell neither."""
    value = _told_or_denied(desk, scene, mention)
    if value is None:
        return None
    value = _turned(desk, scene, mention, value)
    answer = scene.answer(mention.j)
    if answer == "":
        return None
    if value != "none" and answer not in _NONE:
        return value
    if but_for_some(scene, mention):
        return "seen"
    return None if half_denied(scene, mention) else "none"


def _told_or_denied(desk: Desk, scene: Scene, mention: Mention) -> str | None:
    """'No gap', 'Gap: 0', 'gap on passive stretch: nil'; None of 'gap testing was not performed', 'Gap: -'."""
    value, word = mention.value, " ".join(scene.words(mention.i, mention.j))
    asked = answered_behind(scene, mention)
    if value == "seen" and denied_at_the_end(scene, mention):
        value = "none"
    elif asked is None and scene.next_word(mention.j) in _TESTING:
        return None  # 'Gap testing was not performed'
    if asked is None and scene.words(mention.j, mention.j + 2) == ["was", "tested"]:
        return None
    if word in ("any gap", "any gapping", "nor gap", "not gap"):
        return "none" if scene.negated(mention.i, mention.j) else None
    if value != "seen":
        return value
    answer = answered(scene, mention)
    if (asked or answer) in NOUGHT or _is_denied(desk, scene, mention):
        return "none"
    unsaid = answer == "" or scene.words(mention.j, scene.sentence.j) == ["/"]
    return None if unsaid else "seen"  # 'Gap: -', 'Gap / test: not recorded'


def _is_denied(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'No gap', but not 'the index did not catch and gapped', 'not enough to close the gap'."""
    if not (scene.negated(mention.i, mention.j) or _led_by_no(scene, mention)):
        return False
    return not not_denied(desk, scene, mention) and not not_taken_away(scene, mention.i)


def _turned(desk: Desk, scene: Scene, mention: Mention, value: str) -> str:
    """'Free of a gap', 'not without a gap', 'looked for a gap and saw none', 'the gap was not closed'."""
    word = " ".join(scene.words(mention.i, mention.j))
    if word == "gap" and scene.next_word(mention.j) == "gone":
        value = "none"
    lead = [w for w in scene.words(max(scene.sentence.i, mention.i - 5), mention.i) if w not in ("a", "some", "any")]
    if lead[-2:] in (["free", "of"], ["free", "from"]):
        value = "seen" if lead[-3:-2] == ["not"] else "none"  # 'was not free of a gap'
    if lead[-2:] == ["not", "without"] or (lead[-1:] == ["not"] and word.startswith(_WITHOUT)):
        value = "seen"  # 'is not without a gap', 'was not free of a gap'
    if value == "seen" and _was_not_there(desk, scene, mention):
        value = "none"
    if _not_closed(scene, mention) or scene.words(mention.j + 1, mention.j + 3) in _NOT_WIDER:
        value = "seen"
    if scene.next_word(mention.j) in ("neither", "none") and scene.page.standing[mention.j] != "unticked":
        value = "none"  # 'traction opened neither repair'
    return value


_WITHOUT = ("without", "free of", "free from")


def _was_not_there(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'None of the four tendon repairs showed a gap', 'looked carefully for a gap and saw none', 'gap gone'."""
    if sought_in_vain(desk, scene, mention) or none_did(scene, mention) or _no_more(scene, mention):
        return True
    return scene.words(mention.j, mention.j + 3) in _LOOKED_FOR


def _lay_gap(desk: Desk, scene: Scene, mention: Mention, value: str) -> None:
    targets = behaving(desk, scene, mention.i, mention.j)
    if "gave" in scene.words(mention.i, mention.j):  # 'Nothing gave' of a stump on bone tells of no gap
        targets = [t for t in targets if desk.treatments.get(t) != "tenodesed"]
    after_all = then_seen(scene, mention) if value == "none" else None
    if after_all is not None:
        _lay_answer(desk, scene, Answer(targets, True, after_all.i, after_all.j, after_all))
        return
    if value == "none" and _not_looked_for(scene, mention):
        return
    widths = _widths(scene, mention)
    value = _by_width(mention, value, widths)
    if _opens_no_repair(scene, mention, value, widths):
        return
    lay_behaviour(desk, scene, targets, "gap", value, mention.i, mention.j, f"gap {value}")
    if value == "none":
        _the_excepted_did(desk, scene, mention)
    elif value == "seen" and widths:
        _lay_width(desk, scene, mention, targets, widths[0])
        _and_another(desk, scene, mention)


def _not_looked_for(scene: Scene, mention: Mention) -> bool:
    """'Gapping was not looked for', but not 'FPL no gap; FDP not tested', where another is named."""
    end = min(mention.j + 5, scene.sentence.j)
    end = min([end, *(g.i for g in scene.setting.groups if mention.j <= g.i)])
    behind = scene.words(mention.j, end)
    return not _LOOKED.isdisjoint(behind) and "not" in behind[:3]


_LOOKED = frozenset(["looked", "assessed", "tested", "checked", "examined", "sought"])


def _widths(scene: Scene, mention: Mention) -> list[Quantity]:
    """Return the lengths beside a gap, those of its own clause where there are any: 'A4 vented 3 mm; gap 1 mm'."""
    widths = [
        q for q in scene.quantities if q.unit == "mm" and q.high is not None and near_gap(scene, q.i, q.j, mention)
    ]
    return [q for q in widths if {";", "."}.isdisjoint(scene.words(q.j, mention.i))] or widths


def _by_width(mention: Mention, value: str, widths: list[Quantity]) -> str:
    """Return what a width makes of a gap: 'gap 1 mm' below 'epi nil' is seen, one of 0 mm is none."""
    if value == "none" and any(q.i == mention.j and (q.low or 0) > 0 for q in widths):
        value = "seen"  # 'epi nil' above 'gap 1 mm'
    if value == "seen" and widths and widths[0].high == 0:
        value = "none"
    if value == "none" and any(q.low == 0 and q.high and q.i - mention.j <= 1 for q in widths):
        value = "seen"  # 'Gap 0-1 mm'
    return value


def _opens_no_repair(scene: Scene, mention: Mention, value: str, widths: list[Quantity]) -> bool:
    """Tell whether 'opened', 'parted', 'gave' says too little to be a gap, or is told of a pulley."""
    word = " ".join(scene.words(mention.i, mention.j))
    if word not in _OPENINGS:
        return False
    denied = value == "none" and (
        word.startswith("gap") or scene.next_word(mention.j) in ("neither", "none") or none_did(scene, mention)
    )
    return not (widths or denied or a_little(scene, mention)) or _opens_a_pulley(scene, mention)


def _lay_width(desk: Desk, scene: Scene, mention: Mention, targets: list[Target], q: Quantity) -> None:
    if not _AGAIN.isdisjoint(scene.words(max(scene.part(mention.i)[0], mention.i - 4), mention.i)):
        _no_longer_so_wide(desk, targets, mention.i)
    i, j = min(q.i, mention.i), max(q.j, mention.j)
    lay_behaviour(desk, scene, targets, "gap_mm", float(q.high or 0), i, j, "width of the gap")


# 'The gap was not more than 2 mm': one was seen, and how wide it was at most.
_NOT_WIDER = [[a, b] for a in ("not", "never") for b in ("more", "quite", "over", "above", "exceeding", "wider")]


def _the_excepted_did(desk: Desk, scene: Scene, mention: Mention) -> None:
    """'None gapped except the ring', 'no gap save in the small finger, where 1 mm opened': that one did."""
    group = next((g for g in scene.left_out if g.i >= mention.j or _gapped_first(scene, g)), None)
    lead = scene.words(max(scene.sentence.i, mention.i - 1), mention.j)
    if group is None or not (not _NOBODY.isdisjoint(lead) or ("no" in lead and _told_of_it(scene, mention, group))):
        return
    widths = [q for q in scene.quantities if q.unit == "mm" and q.high and q.i - group.j < _SOON]
    for target in _excepted(desk, scene, group):
        span = (min(mention.i, group.i), group.j)
        entry = (target.digit, target.tendon, target.slip)
        rule = "excepted from those without a gap"
        desk.add(scene, "repairs", entry, "gap", "seen", [span], rule, of_excepted=True)
        if len(widths) == 1 and widths[0].high:
            width = [span, (widths[0].i, widths[0].j)]
            desk.add(scene, "repairs", entry, "gap_mm", widths[0].high, width, rule, of_excepted=True)


_SOON = 4  # words: 'except in the ring, where about 1 mm was seen'


def _excepted(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """Return the repairs that are left out of what is said of all: the tendons named, or a finger's deep flexor."""
    if group.tendons:
        return [t for t in group_targets(scene, group) if t in desk.sewn()]
    sewn = [t for t in desk.sewn(group.digits) if t.digit in group.digits]
    return [t for t in sewn if t.tendon in ("FDP", "FPL")] or sewn


def _told_of_it(scene: Scene, mention: Mention, group: Group) -> bool:
    """'..., save in the small finger where 1 mm opened', 'apart from 1 mm in the ring': how wide it was there."""
    if group.j <= mention.i:
        return True
    turns = not {"where", "which"}.isdisjoint(scene.words(group.j, min(group.j + 2, scene.sentence.j)))
    return turns or any(q.unit == "mm" and mention.j <= q.i < group.i for q in scene.quantities)


def _gapped_first(scene: Scene, group: Group) -> bool:
    """'Save for the ring, where a millimetre showed, there was no gap': how wide it was stands in an aside ahead."""
    end = scene.own_aside(group)
    wide = any(q.unit == "mm" and group.j <= q.i < end for q in scene.quantities)
    return wide or any(m.value == "seen" and group.j <= m.i < end for m in scene.of("gap"))


_NOBODY = frozenset(["none", "neither", "nobody"])


def _led_by_no(scene: Scene, mention: Mention) -> bool:
    """'No gap', but not 'Tension: no     Gap: yes'."""
    return scene.word_before(mention.i) in NOUGHT - {"none"} and scene.page.breaks[mention.i] < Break.COLUMN


_AGAIN = frozenset(["still", "remaining", "residual", "only"])


def _opens_a_pulley(scene: Scene, mention: Mention) -> bool:
    """'I hoped to keep A2, but it had to be opened by 4 mm': the pulley named last, and no tendon since."""
    last = max((m.j for m in scene.of("pulley") if m.j <= mention.i), default=-1)
    since = [g for g in scene.setting.groups if last <= g.i < mention.i and (g.tendons or g.generic)]
    return last >= 0 and not since and not _REPAIRS.intersection(scene.words(last, mention.i))


_REPAIRS = frozenset(["repair", "repairs", "tendon", "tendons", "suture", "junction", "join"])


def _no_longer_so_wide(desk: Desk, targets: list[Target], before: int) -> None:
    """'It gapped 2 mm. Two more bites, and there was still a gap of 1 mm.': the last test says how wide it is."""
    for t in targets:
        desk.take_back("repairs", (t.digit, t.tendon, t.slip), "gap_mm", before)


def _and_another(desk: Desk, scene: Scene, mention: Mention) -> None:
    """'The middle finger gapped by 2 mm and the ring by 1 mm.', '..., the small finger not at all'."""
    for group in (g for g in scene.setting.groups if g.i >= mention.j and (g.digits or g.tendons) and not g.reference):
        led = [w for w in scene.words(mention.j, group.i) if w not in ("the", "left", "right")][-1:]
        if led not in (["and"], [","], [";"], ["while"], ["whereas"], ["but"]):
            continue
        targets = repairs_of(desk, scene, group)
        width = next((q for q in scene.quantities if q.unit == "mm" and q.i - group.j in (0, 1)), None)
        after = scene.words(group.j, group.j + 4)
        if width is not None and after[:1] in (["by"], scene.words(width.i, width.i + 1)):
            _lay_answer(desk, scene, Answer(targets, True, group.i, width.j, width))
        elif after[:3] == ["not", "at", "all"] or (after[:2] == ["did", "not"] and after[2:3] in (["."], [])):
            _lay_answer(desk, scene, Answer(targets, False, group.i, group.j + 2, None))


def _lay_answer(desk: Desk, scene: Scene, answer: Answer) -> None:
    said = "seen" if answer.yes else "none"
    lay_behaviour(desk, scene, answer.targets, "gap", said, answer.i, answer.j, f"gap {said}")
    if answer.yes and answer.width is not None:
        width = answer.width
        lay_behaviour(
            desk, scene, answer.targets, "gap_mm", float(width.high or 0), width.i, width.j, "width of the gap"
        )


def _no_more(scene: Scene, mention: Mention) -> bool:
    """'One stitch was added and the gap was no longer visible', 'gap gone', 'the gap had disappeared'."""
    after = [w for w in scene.words(mention.j, mention.j + 6) if w not in _BEING]
    return after[:2] == ["no", "longer"] or after[:1] in _VANISHED


def _not_closed(scene: Scene, mention: Mention) -> bool:
    """'The gap was not closed by it', 'a gap that could not be closed', 'the gap would not close'."""
    after = scene.words(mention.j, min(mention.j + 8, scene.sentence.j))
    denied = next((n for n, word in enumerate(after) if word in ("not", "never")), None)
    return denied is not None and next((w for w in after[denied + 1 :] if w not in _BEING), "") in ("closed", "close")


_BEING = frozenset(["was", "is", "had", "has", "been", "then", "now", "could", "be", "completely", "again"])
_VANISHED = [["gone"], ["disappeared"], ["vanished"], ["closed"]]
