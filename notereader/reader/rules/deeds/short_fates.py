"""What was done to a tendon, told without a verb of its own: 'FDS: nothing', 'ulnar slip out', 'cut slip excised'."""

from notereader.reader.desk import HURT_KINDS, Desk
from notereader.reader.groups import Group, Target
from notereader.reader.needs import needs
from notereader.reader.page import Break, Mention
from notereader.reader.scene import Scene, group_targets

_NOTHING = frozenset(["nothing", "nil", "none"])
_CUT_SLIP = frozenset(["cut", "divided", "severed", "torn", "transected", "injured", "damaged", "lacerated"])
_ENDS = frozenset(["", ".", ",", ";", ":", ")"])
_FOR_ROOM = frozenset(["for", "to", "no", "as", "since"])
_MARKS = frozenset([":", "-", "=", ">"])
_SLIPS = frozenset(["slip", "slips"])
_THREADS = ("stitch", "material", "strandword", "size", "role", "gap", "glide", "test", "bulk", "tension")
_TREATED = ("repaired", "reinserted", "grafted", "trimmed", "excised", "tenodesed")


@needs(words=_NOTHING | {"out"} | _SLIPS)
def short_fates(desk: Desk, scene: Scene) -> None:
    """Find what was done to tendons that the note tells without a verb."""
    if scene.sentence.section in ("instructions", "closure", "admin") or scene.header:
        return
    _nothing_done(desk, scene)
    _slip_out(desk, scene)
    _cut_slip(desk, scene)
    _came_out(desk, scene)
    _left_out(desk, scene)
    _took_out(desk, scene)


def _took_out(desk: Desk, scene: Scene) -> None:
    """'I took out the profundus and took the superficialis out as well': the tendon itself, not out of the wound."""
    words = scene.page.words
    for group in (g for g in scene.setting.groups if g.tendons and not g.reference and scene.told(g.i)):
        k = group.i
        while k > scene.sentence.i and words[k - 1] in _OWN:
            k -= 1
        before = words[k - 2 : k] if k - 2 >= scene.sentence.i else []
        leads = len(before) == 2 and before[0] in _TOOK and before[1] == "out"
        around = before[1:] != [] and before[1] in _TOOK and words[group.j : group.j + 1] == ["out"]
        behind = scene.words(group.j + around, group.j + around + 2)
        if not (leads or around) or scene.negated(k - 2, k) or behind[:1] in (["from"], ["through"], ["into"]):
            continue
        if around and behind[:1] and behind[0] not in _ENDS | _FOR_ROOM | {"and", "too", "also", "whole", "completely"}:
            continue
        for target in group_targets(scene, group):
            _lay(desk, scene, target, "excised", k - 2 + around, group.j + around)


_TOOK = frozenset(["took", "taking", "take", "taken"])
_OWN = frozenset(["the", "its", "his", "her", "this", "that", "whole", "entire", "all", "of"])


def _left_out(desk: Desk, scene: Scene) -> None:
    """'FDS LF  100%  thin as floss  n - left out': a cut tendon that a line leaves out, and no suture of it."""
    groups = [g for g in scene.setting.groups if not g.reference]
    if len(groups) != 1 or not groups[0].tendons or scene.of(*_THREADS, "pattern", "pulley", "sided", "structure"):
        return
    words = scene.page.words
    for k in range(groups[0].j, scene.sentence.j - 1):
        lead = scene.word_before(k) in _BEFORE_LEFT or scene.page.breaks[k] >= Break.COLUMN
        if words[k : k + 2] != ["left", "out"] or not lead or scene.next_word(k + 2) not in _ENDS | _FOR_ROOM:
            continue
        for target in group_targets(scene, groups[0]) if scene.told(k) else []:
            if desk.extents.get(target) in HURT_KINDS and desk.treatments.get(target) not in _TREATED:
                _lay(desk, scene, target, "left", groups[0].i, k + 2)


_BEFORE_LEFT = frozenset(["was", "were", "-", ",", ":", "deliberately", "then", "and"])


def _nothing_done(desk: Desk, scene: Scene) -> None:
    """'Ring FDS: nothing' on a line or in a sentence of its own, of a tendon told to be cut before."""
    groups = [g for g in scene.setting.groups if not g.reference]
    if len(groups) != 1 or not groups[0].tendons or scene.of(*_THREADS):
        return
    words = [w for w in scene.words(groups[0].j, scene.sentence.j) if w not in _MARKS]
    told = words[:1] and words[0] in _NOTHING and (words[1:] in ([], ["."]) or words[1:2] == [","])
    lead = [w for w in scene.words(scene.sentence.i, groups[0].i) if w[0].isalpha()]
    if not told or lead or not scene.told(groups[0].i):
        return
    if words[0] != "nothing" and not _among_deeds(desk, scene):
        return  # 'Gap: FDP none'
    for target in group_targets(scene, groups[0]):
        if _cut_before(desk, scene, target) and desk.treatments.get(target) not in _TREATED:
            _lay(desk, scene, target, "left", groups[0].i, groups[0].j + 2, carried=True)


def _among_deeds(desk: Desk, scene: Scene) -> bool:
    """Tell whether the line before or behind tells how another tendon was sewn or dealt with."""
    beside = [s for s in (desk.scene_before(scene), desk.scene_after(scene)) if s is not None]
    near = [s for s in beside if s.sentence.block == scene.sentence.block and any(g.tendons for g in s.setting.groups)]
    return any(s.of("stitch", "strandword") or any(d.value in _TREATED for d in s.of("deed")) for s in near)


def _slip_out(desk: Desk, scene: Scene) -> None:
    """'Radial slip out, no room', 'FDS both slips out' of a tendon told to be cut before."""
    words = scene.page.words
    for k in range(scene.sentence.i + 1, scene.sentence.j):
        if words[k] != "out" or words[k - 1] not in _SLIPS or not scene.told(k):
            continue
        after = scene.next_word(k + 1)
        group = next((g for g in scene.setting.groups if k - 1 <= g.j <= k and g.tendons == ("FDS",)), None)
        slip = next((m for m in scene.of("slip") if m.j == k), None)
        if after not in _ENDS | _FOR_ROOM or (group is None and slip is None):
            continue
        owner = group or next((g for g in scene.setting.groups if g.j <= k and g.tendons == ("FDS",)), None)
        for target in group_targets(scene, owner) if owner is not None else []:
            if _cut_before(desk, scene, target):
                _lay(desk, scene, target, "excised", (slip.i if slip else k - 1), k + 1)


def _came_out(desk: Desk, scene: Scene) -> None:
    """'The superficialis was beyond use and came out', 'I took the whole thing out': an FDS told to be cut before."""
    words = scene.page.words
    for k in range(scene.sentence.i + 1, scene.sentence.j):
        if (
            words[k] != "out"
            or scene.next_word(k + 1) not in _ENDS | _FOR_ROOM | _SLIPS | {"both"}
            or not scene.told(k)
        ):
            continue
        verb = next((n for n in range(k - 1, max(scene.sentence.i, k - 6) - 1, -1) if words[n] in _VERBS), None)
        if verb is None or not _ALL_OF_IT.issuperset(words[verb + 1 : k]) or (words[verb] in _TAKING and k == verb + 1):
            continue
        first = scene.part(verb)[0]
        if scene.negated(verb, k) or any(m.i < verb and m.i >= first for m in scene.of(*_THREADS, "pulley", "sided")):
            continue  # 'the suture came out'
        for target in _superficial(scene, verb):
            if _cut_before(desk, scene, target) or desk.extents.get(target) in HURT_KINDS:
                _lay(desk, scene, target, "excised", verb, k + 1)


def _superficial(scene: Scene, at: int) -> list[Target]:
    """Return the superficialis or slip spoken of before a word: named in the sentence, or all that is in focus."""
    subjects = [s for s in scene.subjects if s.j <= at]
    if subjects:
        group = subjects[-1].group
        if group is None or group.tendons != ("FDS",) or not _NOT_ITSELF.isdisjoint(scene.words(group.j, at)):
            return []
        return group_targets(scene, group)
    focus = list(scene.setting.focus)
    return focus if focus and all(t.tendon == "FDS" for t in focus) else []


_NOT_ITSELF = frozenset(
    [
        "suture",
        "sutures",
        "stitch",
        "stitches",
        "core",
        "knot",
        "knots",
        "end",
        "ends",
        "stump",
        "stumps",
        "repair",
        "tube",
    ]
)
_TAKING = frozenset(["took", "take", "taking", "cut"])
_VERBS = _TAKING | {"came", "come", "comes"}
_ALL_OF_IT = frozenset(
    ["it", "the", "whole", "thing", "lot", "that", "slip", "slips", "both", "them", "all", "of", "tendon"]
)


def _cut_slip(desk: Desk, scene: Scene) -> None:
    """'The cut slip was excised', 'the divided slip of the ring superficialis was sewn back': the one told cut."""
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j - 1):
        if words[k] not in _CUT_SLIP or words[k + 1] != "slip" or words[k - 1] in ("radial", "ulnar"):
            continue
        deed = _deed_of(scene, k)
        if deed is None or not scene.told(deed.i):
            continue
        group = next((g for g in scene.setting.groups if 0 <= g.i - k <= 5 and g.tendons == ("FDS",)), None)
        digits = _digits_of(scene, group, k)
        slips = [t for t, value in desk.extents.items() if t.slip and t.digit in digits and value in HURT_KINDS]
        whole = [t for t in desk.extents if t.tendon == "FDS" and not t.slip and t.digit in digits]
        if len(slips) == 1 and all(desk.extents[t] == "intact" for t in whole):
            value = "repaired" if deed.value == "reinserted" else deed.value
            _lay(desk, scene, slips[0], value, min(k, deed.i), max(k + 2, deed.j))


def _deed_of(scene: Scene, k: int) -> Mention | None:
    """Return the one deed of the part of a sentence that speaks of a slip at word k."""
    first, last = scene.part(k)
    told = [
        d for d in scene.of("deed") if first <= d.i < last and d.value in ("repaired", "reinserted", "excised", "left")
    ]
    if len(told) != 1 or scene.negated(told[0].i, told[0].j):
        return None
    return told[0]


def _digits_of(scene: Scene, group: Group | None, k: int) -> tuple[str, ...]:
    if group is not None and group.digits:
        return group.digits
    named = [g.digits for g in scene.setting.groups if g.digits and g.i <= k + 6]
    return named[-1] if named else scene.setting.digits


def _cut_before(desk: Desk, scene: Scene, target: Target) -> bool:
    """Tell whether a tendon, or all of its FDS, was told to be cut before a sentence, not only in the titles."""
    entries = {target, target._replace(slip=None)}
    told = [
        f for t in entries for f in desk.told_of("repairs", t) if f.field == "extent" and f.order < scene.sentence.i
    ]
    return any(f.value in HURT_KINDS for f in told)


def _lay(desk: Desk, scene: Scene, target: Target, value: str, i: int, j: int, carried: bool = False) -> None:
    known = len(desk.findings)
    desk.tendon(scene, target, "treatment", value, [(i, j)], f"treatment {value}")
    for finding in desk.findings[known:]:
        finding.carried = carried
