"""The tendons a sentence goes on about that names none: those in focus, those repaired, the only one it can mean."""

from notereader.reader.desk import SEWN, Desk
from notereader.reader.groups import Target
from notereader.reader.reasons import Reason
from notereader.reader.scene import Scene

_THEY = frozenset(["they", "them"])  # 'The FDS tendons were thinner. In the ring finger they received a Kessler'


def _deep_just_named(focus: list[Target], possible: list[Target]) -> bool:
    """Tell whether the deep flexor was named last, and only the superficial one of its finger is known to be sewn."""
    deep = {t.digit for t in focus if t.tendon == "FDP" and t.slip is None}
    return (
        len(deep) == 1 == len(focus) and bool(possible) and all(t.tendon == "FDS" and t.digit in deep for t in possible)
    )


def carried(desk: Desk, scene: Scene, digits: tuple[str, ...] | None = None) -> tuple[list[Target], list[Reason]]:
    """Return the repaired tendons a sentence without a named tendon is about, with a reason where that is a guess."""
    wanted = digits or None
    told_of_all = _told_of_all(desk, scene, wanted)
    if told_of_all:
        return told_of_all, []
    focus = [t for t in scene.setting.focus if desk.may_be_repaired(t) and (wanted is None or t.digit in wanted)]
    focus = live(desk, focus)
    possible = desk.repairable(wanted)
    possible += _unclear(desk, wanted or scene.setting.digits, possible)
    near = [t for t in focus if t in possible]
    if wanted and len(wanted) > 1 and len({t.digit for t in near}) < len(wanted):
        kinds = {t.tendon for t in focus} or {"FDP"}
        near = [t for t in possible if t.tendon in kinds] or possible
    deep = [t for t in possible if t.tendon in _DEEP and t.digit in (wanted or scene.setting.digits)]
    own = scene.setting.labelled and len(near) == 1 and len(scene.sentence.prefix) == 1
    if scene.sentence.prefix and deep and not own:
        return deep, []  # a cell under 'core' or 'gap' tells of what was sewn first
    relabelled = scene.setting.relabelled and wanted is None
    if deep and (relabelled or _none_sewn(desk, scene, focus, deep) or _second_core(desk, scene, focus, deep)):
        near = deep
    if near:
        return near, []
    spoken = _spoken_of_last(desk, scene, focus, possible, deep) if wanted is None else None
    return (spoken, []) if spoken is not None else _last_resort(desk, scene, focus, possible, wanted)


_DEEP = ("FDP", "FPL")
TAKEN_FOR_DEEP = Reason("taken_for_deep")


def _told_of_all(desk: Desk, scene: Scene, wanted: tuple[str, ...] | None) -> list[Target]:
    """'Both were repaired. A core of 3-0': of all repaired, or of all of the kind that was named as such."""
    if scene.setting.all_before and wanted is None and (repaired := desk.repairable()):
        return repaired
    if scene.setting.wide and (wanted is None or not _THEY.isdisjoint(scene.said)):
        return [t for t in desk.repairable(wanted) if t.tendon in scene.setting.wide]
    return []


def _none_sewn(desk: Desk, scene: Scene, focus: list[Target], deep: list[Target]) -> bool:
    """'FDP cut. FDS cut. A four-strand core': of the superficialis in focus no suture is told, nor one before it."""
    if not focus or scene.setting.labelled:
        return False
    if any(t.tendon != "FDS" or not _untold(desk, t, scene, deep) or desk.has_suture(t) for t in focus):
        return False
    return not all(_sewn_before(desk, t, focus[0]) for t in deep)


def _spoken_of_last(
    desk: Desk, scene: Scene, focus: list[Target], possible: list[Target], deep: list[Target]
) -> list[Target] | None:
    """Return whom a sentence goes on about that names no finger either; None where what was said before leaves it open.

    Better nothing than another finger's tendon.
    """
    if not scene.setting.focus and len(scene.setting.digits) > 1 and len(deep) > 1:
        return deep  # under 'BOTH FINGERS'
    if _spent(desk, scene):
        return []
    if focus and _elsewhere(scene, focus, possible):
        return focus  # 'Middle (me): ... It has a Kessler' where only the index is known to be cut
    if _deep_just_named(focus, possible):
        return focus  # 'FDS: radial slip sutured. ... FDP ends smooth. Lim-Tsai, six strands'
    return None


def _last_resort(
    desk: Desk, scene: Scene, focus: list[Target], possible: list[Target], wanted: tuple[str, ...] | None
) -> tuple[list[Target], list[Reason]]:
    """Return the only tendon that can be meant, or with a reason the only deep flexor; nothing where there are more."""
    if len(possible) == 1:
        return possible, []
    if focus and not possible:
        if desk.settled and _only_named(desk, scene, focus):
            return [], []
        return (_deep_beside(desk, focus) if _only_seen(desk, focus) else focus), []
    here = [t for t in possible if t.digit in scene.setting.digits]
    if len(here) == 1:
        return here, []
    deep = [t for t in (here or possible) if t.tendon in _DEEP]
    if len(deep) != 1:
        deep = [] if possible or focus or len(desk.deep_named) != 1 else _unclear(desk, wanted, possible)
    return deep, [TAKEN_FOR_DEEP] if deep else []


def _second_core(desk: Desk, scene: Scene, focus: list[Target], deep: list[Target]) -> bool:
    """'FDP repaired. FDS repaired with 5-0. Four-strand cruciate 3-0 was used.': the core of the one without one."""
    if not focus or any(t.tendon != "FDS" for t in focus):
        return False
    last = max(last_core(desk, scene, t) for t in deep)
    if last >= 0:
        return last > _named_at(desk, scene, "FDS") >= 0  # what follows that core is of the same tendon
    own = any(last_core(desk, scene, t) >= 0 for t in focus)
    return own and bool(scene.of("strandword", "stitch")) and _OF_THE_SAME.isdisjoint(scene.said)


_OF_THE_SAME = frozenset(["slip", "slips", "tail", "tails", "half", "sorry", "correction"])


def last_core(desk: Desk, scene: Scene, target: Target) -> int:
    """Return the word at which the last core suture of a tendon was told before a sentence, or -1."""
    told = (f for f in desk.told_of("repairs", target) if f.order < scene.sentence.i and not f.header)
    return max((f.order for f in told if f.field in ("size", "stitch", "strands", "peripheral")), default=-1)


def _named_at(desk: Desk, scene: Scene, tendon: str) -> int:
    """Return the word at which a kind of tendon was last named before a sentence, or -1."""
    before = (s for s in reversed(desk.having("tendon")) if s.sentence.i < scene.sentence.i)
    named = (g.i for s in before for g in reversed(s.setting.groups) if tendon in g.tendons and not g.reference)
    return next(named, -1)


def _only_seen(desk: Desk, focus: list[Target]) -> bool:
    """'FDS was in good shape. ... The stump was pulled out over a button': a superficialis of which no cut is told."""
    told = any(t in desk.extents or t in desk.treatments or desk.has_suture(t) for t in focus)
    deep = any(t.tendon == "FDP" and t.digit in {f.digit for f in focus} for t in (*desk.named, *desk.deep_named))
    return all(t.tendon == "FDS" for t in focus) and deep and not told


def _only_named(desk: Desk, scene: Scene, focus: list[Target]) -> bool:
    """'A nodule on the superficialis. ... 4-0 nylon to both.': a thread behind a tendon of which no harm is told."""
    told = any(t in desk.extents or t in desk.treatments or desk.has_suture(t) for t in focus)
    sewing = scene.kinds & {"stitch", "strandword", "role", "deed", "mending", "ends", "endword"}
    return bool(scene.of("material")) and not told and not sewing


def _deep_beside(desk: Desk, focus: list[Target]) -> list[Target]:
    digits = {t.digit for t in focus}
    return [t for t in desk.deep_named if t.tendon == "FDP" and t.digit in digits and desk.may_be_repaired(t)]


_TAKES_UP = _THEY | {"it"}


def _untold(desk: Desk, target: Target, scene: Scene, deep: list[Target]) -> bool:
    """Tell whether what became of a tendon was not told before a sentence: not at all, or behind it or in a title.

    A word behind the sentence counts too where the tendon was named again after a core of the deep flexor.
    """
    told = [f for f in desk.told_of("repairs", target) if f.field == "treatment"]
    taken_up = not _TAKES_UP.isdisjoint(scene.said) and bool(
        scene.of("stitch")
    )  # 'The FDS was flat. I gave it a Kessler'
    if target not in desk.treatments and not taken_up:
        return True
    if target in desk.treatments and (not told or any(f.order < scene.sentence.i and not f.header for f in told)):
        return False
    at = max(_named_at(desk, scene, target.tendon), 0)
    cores = (f for t in deep for f in desk.told_of("repairs", t) if f.field in ("strands", "stitch", "size"))
    return not any(f.order < at and not f.header for f in cores)


def _sewn_before(desk: Desk, deep: Target, other: Target) -> bool:
    """'FDP cut. Core 3-0, 4 strands. FDS cut. Core 4-0, 2 strands.': the first core was told before the second cut."""
    cores = [f.order for f in desk.told_of("repairs", deep) if f.field in ("strands", "stitch", "size")]
    cuts = [f.order for f in desk.told_of("repairs", other) if f.field == "extent" and not f.header]
    return bool(cores) and bool(cuts) and min(cores) < max(cuts)


def _elsewhere(scene: Scene, focus: list[Target], possible: list[Target]) -> bool:
    """Tell whether the finger spoken of has a deep flexor in focus, and what is known to be cut is another finger's."""
    digits = set(scene.setting.digits)
    deep = all(t.tendon in ("FDP", "FPL") and t.digit in digits for t in focus)
    return deep and len(digits) == 1 and bool(possible) and not any(t.digit in digits for t in possible)


def _spent(desk: Desk, scene: Scene) -> bool:
    """'Index - proximal FDP excised. Distal stump fixed to P2': the finger spoken of has no tendon left to sew."""
    digits = scene.setting.digits
    if len(digits) != 1 or len(scene.every_digit) < 2 or desk.repairable(digits):
        return False
    known = [t for t in desk.named if t.digit in digits and t.tendon in ("FDP", "FPL")]
    focused = any(t.digit in digits for t in scene.setting.focus)
    return focused and any(desk.treatments.get(t) in ("excised", "left", "tenodesed") for t in known)


def _unclear(desk: Desk, digits: tuple[str, ...] | None, possible: list[Target]) -> list[Target]:
    """Return the deep flexors that the note names without a word known for how they were hurt or mended.

    Of the digits given, where nothing else of that digit may have been sewn: 'ring finger, FDP revision'.
    """
    taken = {t.digit for t in possible if t.tendon != "FDS" or desk.treatments.get(t) in SEWN}
    found = [t for t in desk.deep_named if digits is None or t.digit in digits]
    if digits == ("thumb",) and not desk.cut(digits) and Target("thumb", "FPL") not in found:
        found.append(Target("thumb", "FPL"))  # a thumb has no other flexor tendon
    return [t for t in found if t.digit not in taken and t not in possible and desk.may_be_repaired(t)]


def live(desk: Desk, targets: list[Target]) -> list[Target]:
    """Where a tendon's slips went different ways, what is said of the repaired tendon belongs to its repaired slips."""
    found: list[Target] = []
    for target in targets:
        slips = [t for t in desk.treatments if (t.digit, t.tendon) == (target.digit, target.tendon) and t.slip]
        if target.slip is None and slips:
            found += [t for t in slips if desk.treatments[t] == "repaired"] or [target]
        else:
            found.append(target)
    return list(dict.fromkeys(found))
