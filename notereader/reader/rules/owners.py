"""The tendons that words belong to: those named beside them, or meant by 'both', 'all' or 'the others'."""

import itertools

from notereader.reader.desk import HURT_KINDS, Desk, is_correction
from notereader.reader.groups import DIGITS, WRIST, Group, Target, resolve_pairs
from notereader.reader.mentions.measures import count_of
from notereader.reader.reasons import Reason
from notereader.reader.rules.carried import carried, last_core, live
from notereader.reader.scene import Scene, group_targets


def tendon_owner(desk: Desk, scene: Scene, i: int, j: int) -> tuple[list[Target], Group | None]:
    """Return the named tendons that words i to j belong to, and their group; ([], None) where no tendon owns them."""
    subject = scene.owner(i, j)
    if subject is None or subject.group is None:
        return [], None
    group = subject.group
    taken_up = _taken_up(desk, scene, group) if group.generic else []
    if taken_up:
        return taken_up, group
    shared = _shared_tendon(scene, group) if subject.i >= j else None
    digits = _fingers_meant(scene, group) if shared is not None else ()
    if shared is not None and digits:
        return resolve_pairs(shared, digits), shared
    if subject.kind != "tendon" or group.generic:
        return [], group
    if group.collective:
        return [t for t in desk.repairable() if t.tendon in group.tendons], group
    behind = _digits_behind(scene, group, j)
    if behind:
        return resolve_pairs(group, behind), group
    targets = [_known_one(desk, scene, group, t) for t in group_targets(scene, group)]
    return targets if group.digits else _without_finger(desk, scene, group, targets, i), group


def _without_finger(desk: Desk, scene: Scene, group: Group, targets: list[Target], i: int) -> list[Target]:
    """Return the tendons meant where a group names no finger and words from i on are said of it.

    `targets` are those of the fingers spoken of.
    """
    sewn = _those_sewn(desk, scene, group, targets)
    if sewn is not None:
        return sewn
    if _of_repairs(scene, group):
        targets = [t for t in targets if desk.treatments.get(t) not in _UNSEWN] or targets
    targets = _with_all_of_the_wrist(desk, group, targets)
    if group.four:
        return _of_four_fingers(desk, scene, group, targets, i)
    if group.every:
        targets = _of_every_finger(desk, scene, group, targets)
    counted = [t for t in _counted(scene, group) if desk.extents.get(t) != "intact"]
    if not any(t.digit for t in targets) or (group.every and len(targets) < len(counted)):
        return counted or targets
    return targets


_UNSEWN = ("left", "trimmed", "excised")


def _those_sewn(desk: Desk, scene: Scene, group: Group, targets: list[Target]) -> list[Target] | None:
    """Return the sewn tendons of a kind where repairs are spoken of, or None where those of the finger are meant."""
    if group.four == 1 and (_of_repairs(scene, group) or scene.of("stitch", "strandword")):
        return [t for t in desk.repairable() if t.tendon in group.tendons]  # 'All FDP repairs were tested'
    unsewn = bool(targets) and all(desk.treatments.get(t) in _UNSEWN for t in targets)
    if unsewn and _of_repairs(scene, group) and not is_correction(scene):
        # 'the superficialis repair' behind words on a finger whose own was only trimmed; where no other was sewn, it
        # is the one that was cut out later: 'FDS repaired with a Kessler. The FDS was then excised.'
        return _with_suture(desk, group) or targets
    if len(targets) == 1 and "repairs" in scene.words(group.j - 1, group.j + 1):
        own = _with_suture(desk, group)
        return own if len(own) > 1 else None  # 'no gap in the FDS repairs' behind words on one finger
    return None


def _with_suture(desk: Desk, group: Group) -> list[Target]:
    """Return the tendons of a group's kinds of which a core suture is told."""
    return [t for t in desk.repairable() if t.tendon in group.tendons and desk.has_suture(t)]


def _of_four_fingers(desk: Desk, scene: Scene, group: Group, targets: list[Target], i: int) -> list[Target]:
    """'All FDPs', 'FDP x 4', of which words from i on tell: of the fingers worked on, or of all four."""
    own = [t for t in targets if t.tendon not in ("FDP", "FDS")]
    told = [d for d in scene.setting.digits if d != "thumb"] if group.four == 1 else []
    if group.four == 1 and not desk.at_wrist and not _headed_apart(desk, scene):
        told = [d for d in scene.every_digit if d != "thumb"]  # 'All FDPs' where three fingers were worked on
    if desk.at_wrist and any(m.value == "intact" and m.i == i for m in scene.of("extent")):
        told = []  # 'FPL and all the FDPs intact': those of all four fingers
    fours = told if len(told) > 1 else DIGITS[1:]
    fingers = [*own, *(Target(d, t) for t in group.tendons if t in ("FDP", "FDS") for d in fours)]
    return [t for t in fingers if group.four == 2 or desk.extents.get(t) not in HURT_KINDS]


def _of_every_finger(desk: Desk, scene: Scene, group: Group, targets: list[Target]) -> list[Target]:
    """'Both FDPs', 'the profundi': of every finger of which one was named or told hurt so far."""
    named = dict.fromkeys([*desk.named, *spoken_of(desk, scene)])
    wide = [t for t in named if t.tendon in group.tendons and t.slip is None and t.digit]
    if len({t.digit for t in wide}) <= (0 if desk.at_wrist and "extent" not in scene.kinds else 1):
        return targets
    wrist = [t for t in targets if t.digit is None and t.tendon not in ("FDP", "FDS")]
    cut = [t for t in wide if desk.extents.get(t) != "intact"]
    told_cut = scene.words(group.i - 1, group.i) in _NAMED_AS_CUT  # 'both divided profundi': none that is whole
    return [*wrist, *(cut or ([] if told_cut else wide))]


_NAMED_AS_CUT = (["divided"], ["cut"], ["severed"], ["lacerated"], ["injured"], ["transected"], ["damaged"])


def _headed_apart(desk: Desk, scene: Scene) -> bool:
    """Tell whether a sentence stands under a heading for its fingers alone: 'INDEX AND MIDDLE: ...'."""
    before: Scene | None = scene
    while before is not None and before.sentence.block == scene.sentence.block:
        if before.sentence.section == "digit":
            return True
        before = desk.scene_before(before)
    return False


def _with_all_of_the_wrist(desk: Desk, group: Group, targets: list[Target]) -> list[Target]:
    """'FCU, FDS ring and small cut; FDP small half. FCU and FDS repaired': beside a wrist flexor every FDS cut."""
    if group.digits or not any(t.digit is None and t.tendon in WRIST for t in targets):
        return targets
    found: list[Target] = []
    for target in targets:
        cut = [t for t in desk.repairable() if t.tendon == target.tendon and t.digit and t.slip is None]
        found += cut if target.tendon in ("FDP", "FDS") and target.slip is None and cut else [target]
    return list(dict.fromkeys(found))


_COUNTS = {"both": 2, "two": 2, "three": 3, "four": 4, "2": 2, "3": 3, "4": 4}


def _counted(scene: Scene, group: Group) -> list[Target]:
    """'All three FDP were cut', 'each profundus was sewn' before any is named by finger: of the note's fingers."""
    if group.digits or len(group.tendons) != 1:
        return []  # 'both FDP and FDS' are two of one finger
    return [Target(d, t) for d in _fingers_meant(scene, group) for t in group.tendons if t in ("FDP", "FDS")]


def _shared_tendon(scene: Scene, finger: Group) -> Group | None:
    """'The superficialis was cut in the middle finger, half cut in the ring', 'FDS intact in all three': the one."""
    before = [g for g in scene.setting.groups if g.tendons and not g.reference and g.j <= finger.i]
    led = [w for w in scene.words(max(scene.sentence.i, finger.i - 2), finger.i) if w not in ("the", "both")][-1:]
    if len(before) != 1 or before[0].digits or finger.tendons or led not in (["in"], ["of"]):
        return None
    return before[0] if set(before[0].tendons) <= {"FDP", "FDS"} else None


def _fingers_meant(scene: Scene, group: Group) -> tuple[str, ...]:
    """Return the digits of 'in the ring finger', 'in both fingers', 'in all three', 'of each'."""
    if group.digits:
        return group.digits
    if not group.every and group.generic != "all":
        return ()
    words = scene.words(max(scene.sentence.i, group.i - 2), group.j)
    counted = next((_COUNTS[w] for w in words if w in _COUNTS), 0)
    fingers = tuple(d for d in scene.every_digit if d != "thumb")
    return (
        fingers if len(fingers) == counted or (not counted and len(fingers) > 1 and not _EACH.isdisjoint(words)) else ()
    )


_EACH = frozenset(["each", "every"])


def _of_repairs(scene: Scene, group: Group) -> bool:
    words = scene.words(group.j - 1, min(group.j + 1, scene.sentence.j))
    return not {"repair", "repairs", "repaired", "sutured", "joins", "tested"}.isdisjoint(words)


_CUTS = frozenset(
    ["cut", "divided", "lacerated", "severed", "torn", "transected", "division", "laceration", "transection", "injury"]
)


def _digits_behind(scene: Scene, group: Group, j: int) -> tuple[str, ...]:
    """'the superficialis was intact in the ring and half cut in the small': each state names its finger behind it."""
    if group.digits or group.four:
        return ()
    if scene.next_word(j) in _CUTS:
        j += 1  # '60% cut in the middle finger, 30% cut in the ring'
    if scene.next_word(j) in _ONLY:
        j += 1  # 'was repaired only in the ring'
    named = [g for g in scene.setting.groups if g.digits and not g.tendons and g.i >= group.j and not g.reference]
    led = [g for g in named if tuple(w for w in scene.words(g.i - 2, g.i) if w != "the")[-1:] in (("in",), ("on",))]
    beside = next((g for g in led if 0 < g.i - j <= 2), None)
    if group.every:
        return beside.digits if beside is not None and len(led) > 1 else ()
    after, every = scene.words(j, j + 3), scene.every_digit
    if after[:2] == ["in", "both"] and after[2:] in ([], ["."], [","], [";"], ["fingers"], ["digits"]):
        return every if len(every) == 2 else scene.setting.digits if len(scene.setting.digits) == 2 else ()
    if after in (["in", "all", "three"], ["in", "all", "3"]):
        return every if len(every) == 3 else ()
    return beside.digits if beside is not None and len(led) > 1 else ()


_ONLY = frozenset(["only", "solely", "just"])


def spoken_of(desk: Desk, scene: Scene) -> list[Target]:
    """Return the tendons that the sentences before one tell hurt, 'cut' without saying how far."""
    before = (s for s in desk.having("hurt") if s.sentence.i < scene.sentence.i and not s.header)
    groups = ((s, g) for s in before for g in s.setting.groups if g.tendons and not (g.reference or g.excepted))
    return [t for s, g in groups if s.told(g.i) for t in group_targets(s, g)]


def _taken_up(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'..., and the ends of all of them were crushed': every tendon named before it in the sentence.

    'For the FDP ..., knots inside the repair': 'the repair' is that of the tendon named before it.
    """
    before = [g for g in scene.setting.groups if g.j <= group.i and (g.tendons or g.generic) and not g.reference]
    if group.generic == "one" and before and before[-1].tendons and not group.digits:
        named = [group_targets(scene, g) for g in reversed(before) if g.tendons]
        return next((ts for ts in named if any(desk.may_be_repaired(t) for t in ts)), named[0])
    if not {"them", "these", "those"} & set(scene.words(group.i, group.j)):
        return []
    groups = [g for g in scene.setting.groups if g.tendons and g.j <= group.i and not g.reference]
    if not groups and len(scene.setting.focus) > 1:
        return list(scene.setting.focus)
    if not groups and both_of_them(desk, scene, group):
        return both_of_them(desk, scene, group)
    return [t for g in groups for t in group_targets(scene, g)]


def both_of_them(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'Same core for both of them', where two were cut and the one named last is one of them: the two.

    Of more that were cut, the two deep flexors where the one named last is one of these.
    """
    words = scene.words(group.i, group.j)
    meant = "both" in words and not _THESE.isdisjoint(words) and len(scene.setting.focus) < 2
    pair = desk.repairable() if meant else []
    deep = [t for t in pair if t.tendon in ("FDP", "FPL")]
    if len(pair) > 2 and len(deep) == 2 and all(t in deep for t in scene.setting.focus):
        return deep
    return pair if len(pair) == 2 else []


_THESE = frozenset(["them", "these", "those"])


def _known_one(desk: Desk, scene: Scene, group: Group, target: Target) -> Target:
    """A tendon named without a digit, where the digit in focus has none that was cut: the one that was."""
    named = any(g.digits and g.j <= group.i and not g.reference for g in scene.setting.groups)
    if group.digits or named or target.tendon not in ("FDP", "FDS") or scene.word_before(group.i) == "its":
        return target
    sound = desk.extents.get(target) == "intact" and target not in desk.treatments
    sound = sound or (target.slip is not None and desk.extents.get(target._replace(slip=None)) == "intact")
    parted = any(m.value == "complete" and m.j == group.i for m in scene.of("extent"))
    sound = sound or (parted and desk.extents.get(target) == "partial")  # 'the transected superficialis'
    if not sound and (target in desk.named or not desk.settled or _under_own_head(desk, scene, group, target)):
        return target
    known = [t for t in desk.named if t.tendon == target.tendon and t.slip == target.slip and desk.is_cut(t)]
    whole = [t for t in known if desk.extents.get(t) == "complete"]  # 'Core FDP: ...' where another was nicked
    return known[0] if len(known) == 1 else whole[0] if len(whole) == 1 else target


def _under_own_head(desk: Desk, scene: Scene, group: Group, target: Target) -> bool:
    """'RING', then 'P2 chipped', then 'FDP cut, pulled to bone': a line with the finger's name alone heads these."""
    before = None if _of_repairs(scene, group) else desk.scene_before(scene)
    for _ in range(_BELOW_HEAD):
        if before is None or before.sentence.block != scene.sentence.block:
            return False
        digits = {d for g in before.setting.groups for d in g.digits}
        if digits:
            alone = before.sentence.j - before.sentence.i <= _HEAD and not before.of("tendon")
            return alone and digits == {target.digit} and before.told(before.sentence.i)
        before = desk.scene_before(before)
    return False


_BELOW_HEAD = 3  # lines
_HEAD = 3  # words: 'Ring finger:'


def named_so_far(desk: Desk, scene: Scene, targets: list[Target], collective: bool = False) -> list[Target]:
    """Leave out a superficialis of which a note tells only further down: what is said of a finger is not of it.

    `collective`: words such as 'both tendons' or 'all ends' may take it up before it is named.
    """
    if collective and any(g.generic for g in scene.setting.groups):
        return targets
    kept = [t for t in targets if t.tendon != "FDS" or _told_by(desk, scene, t)]
    return kept if any(t.tendon != "FDS" for t in kept) else targets


def _told_by(desk: Desk, scene: Scene, target: Target) -> bool:
    entries = [target._replace(slip=slip) for slip in (None, "radial", "ulnar")]
    named = any("FDS" in g.tendons for g in scene.setting.groups)
    named = named or any(desk.hurt.get(t, scene.sentence.j) < scene.sentence.i for t in entries)
    return named or any(f.order < scene.sentence.i for t in entries for f in desk.told_of("repairs", t))


def owners(desk: Desk, scene: Scene, i: int, j: int) -> tuple[list[Target], list[Reason]]:
    """Return the tendons that words i to j speak of, named or carried, with reasons to look twice.

    Nothing where the words belong to another structure.
    """
    targets, group = tendon_owner(desk, scene, i, j)
    if targets:
        return live(desk, targets), []
    subject = scene.owner(i, j)
    if subject is not None and subject.group is None:
        return [], []
    if group is not None and group.collective:
        return [], []
    if group is not None and group.generic == "others":
        return others(desk, scene, group, desk.repairable()), []
    if group is not None and group.generic == "all" and pair_in_focus(desk, scene, group):
        return list(scene.setting.focus), []
    if group is not None and group.generic == "all":
        digits = group.digits or _fingers(scene, group)
        words = set(scene.words(group.i, group.j))
        sewn = desk.sewn(digits or None)
        if group.digits:
            sewn = [t for t in sewn if t.digit] or sewn  # 'the ring and small finger tendons': not those of the wrist
        return meant_by_all(desk, scene, group.i, words, sewn), []
    if group is not None and group.every and not group.tendons and len(group.digits) < 2:
        return desk.sewn(), []
    return carried(desk, scene, near_digits(scene, group) if group is not None else None)


def pair_in_focus(desk: Desk, scene: Scene, group: Group) -> bool:
    """'FDS ring and small: 3-0. Neither was given an epitendinous suture.': the two tendons spoken of right before."""
    two = scene.words(group.i, group.j) in (["neither"], ["both"]) and not group.digits and group.i == scene.sentence.i
    focus = scene.setting.focus
    return two and len(focus) == 2 and all(desk.may_be_repaired(t) and desk.has_suture(t) for t in focus)


_PAIRS = frozenset(["both", "either", "neither"])


def meant_by_all(desk: Desk, scene: Scene, i: int, words: set[str], sewn: list[Target]) -> list[Target]:
    """Return, of the sewn tendons, those that 'both', 'either' or 'each of them' at word i takes up.

    'Each profundus received a core. A running 6-0 was placed round both.' speaks of the two deep flexors, and not of
    the superficialis that was sewn too.
    """
    sewn = sewn if "any" in words else _sewn_so_far(desk, scene, sewn)  # what is denied of any holds of all
    named = _named_last(desk, scene, i, sewn)
    if not words.isdisjoint(_PAIRS):
        if len(sewn) <= 2:
            return sewn
        through = _both_cut_through(desk, scene, i, sewn)
        if through:
            return through
        kind = [t for t in sewn if t.tendon in scene.setting.wide]
        if len(kind) == 2:  # 'The two profundi had a running 6-0, the superficialis none. Both repairs ran freely.'
            return kind
        deep = [t for t in sewn if t.tendon in ("FDP", "FPL")]
        here = [t for t in sewn if (t.digit,) == scene.setting.digits]
        # 'a running 6-0 in both', 'I moved both fingers: both slid freely': in both fingers
        named_both = any(
            g.every and not (g.tendons or g.generic or g.digits) and g.j <= i for g in scene.setting.groups
        )
        # 'IF gap 0, MF gap 0, both slide free'
        told = [g for g in scene.setting.groups if g.digits and not (g.tendons or g.reference) and g.j <= i]
        two = len({g.digits for g in told}) == 2
        fingers = len(deep) == 2 and (scene.word_before(i) == "in" or named_both or two)
        deep = here if len(here) == 2 and not fingers else deep
        return named if len(named) == 2 else deep if len(deep) == 2 else sewn
    deep = [t for t in sewn if t.tendon in ("FDP", "FPL")]
    counted = max((count_of(w) for w in words - set(_counts_of_strands(scene, i))), default=0)
    if counted == len(deep) != len(sewn) and counted > 1:
        return deep  # 'A running 6-0 round all three' of three deep flexors and a superficialis
    if desk.at_wrist and _of_each_tendon(scene):
        return [t for t in sewn if t in named or last_core(desk, scene, t) < 0]  # 'FCU cut. FDS cut. Each tendon ...'
    return named if "each" in words and len(named) > 1 else sewn


def _counts_of_strands(scene: Scene, i: int) -> list[str]:
    """'All were repaired with a 2-strand Kirchmayr': counts of strands, not of tendons, in the part around word i."""
    first, last = scene.part(i)
    words = [w for w in scene.words(first, last) if w != "-"]
    return [a for a, b in itertools.pairwise(words) if b in _STRANDS]


_STRANDS = frozenset(["strand", "strands", "stranded", "str", "core"])


def _both_cut_through(desk: Desk, scene: Scene, i: int, sewn: list[Target]) -> list[Target]:
    """'Both divided tendons got a cruciate', where a third was cut in part and sewn too: the two cut through."""
    words = scene.words(scene.sentence.i, i + 3)
    said = any(
        a in _PAIRS and b in _CUTS and c in _TENDONS for a, b, c in zip(words, words[1:], words[2:], strict=False)
    )
    through = [t for t in sewn if desk.extents.get(t) == "complete"] if said else []
    return through if len(through) == 2 else []


_TENDONS = frozenset(["tendon", "tendons", "flexors"])


def _of_each_tendon(scene: Scene) -> bool:
    """Tell whether a sentence gives a core to 'each tendon', of whatever kind."""
    core = scene.of("strandword", "stitch", "material")
    return bool(core) and ("each", "tendon") in itertools.pairwise(scene.words(scene.sentence.i, scene.sentence.j))


def _sewn_so_far(desk: Desk, scene: Scene, sewn: list[Target]) -> list[Target]:
    """'In each the purchase was 9 mm. ... The radial slip was then sewn': not of what is only sewn further down."""
    done = [t for t in sewn if desk.has_suture(t)]
    return [t for t in sewn if t in done or not _sewn_later(desk, scene, t)] if len(done) > 1 else sewn


def _sewn_later(desk: Desk, scene: Scene, target: Target) -> bool:
    """Tell whether a note tells of the repair of a tendon, and only behind a sentence."""
    told = [f.order for f in desk.told_of("repairs", target) if f.field == "treatment" and not f.header]
    return bool(told) and min(told) >= scene.sentence.j


def _named_last(desk: Desk, scene: Scene, i: int, sewn: list[Target]) -> list[Target]:
    """Return, of the sewn tendons, those named last before word i: in the sentence, or at most two before it."""
    told = [g for g in scene.setting.groups if g.tendons and not g.reference and g.j <= i]
    fingers = [g for g in scene.setting.groups if g.digits and not g.reference and g.j <= i]
    before = desk.scene_before(scene)
    for _ in range(2):
        if told or before is None or before.sentence.block != scene.sentence.block:
            break
        told = [g for g in before.setting.groups if g.tendons and not g.reference]
        fingers = [g for g in before.setting.groups if g.digits and not g.reference]
        before = desk.scene_before(before)
    kinds = {t for g in told for t in g.tendons}
    digits = {d for g in fingers for d in g.digits}
    return [t for t in sewn if t.tendon in kinds and (not digits or t.digit in digits)]


def others(desk: Desk, scene: Scene, group: Group, possible: list[Target]) -> list[Target]:
    """Return, of the tendons possible, those that 'the others' or 'the remaining two' leaves to be spoken of."""
    before = [g for g in scene.setting.groups if g.j <= group.i and not g.reference]
    named = {t for g in before if g.tendons for t in group_targets(scene, g)}
    digits = {d for g in before if not g.tendons for d in g.digits}
    spoken = named | {t for t in possible if t.digit in digits} or set(scene.setting.focus)
    left = [t for t in possible if t not in spoken]
    if not left and (named or digits):  # 'FDP of the ring and small hurt. The ring took six strands, the other four.'
        focus = [t for t in scene.setting.focus if t not in named and t.digit not in digits]
        left = [t for t in focus if desk.may_be_repaired(t)]
    unsewn = [t for t in left if not desk.has_suture(t)]
    return (unsewn if scene.of("material", "stitch", "strandword") else []) or left


def near_digits(scene: Scene, group: Group) -> tuple[str, ...]:
    """Return the digits of a group, or for 'that tendon' those named before it in the sentence."""
    if group.digits or group.generic != "one":
        return group.digits
    before = [g for g in scene.setting.groups if g.digits and g.j <= group.i and not g.reference]
    return before[-1].digits if before else ()


def _fingers(scene: Scene, group: Group) -> tuple[str, ...]:
    """Return the digits that stand in the part of 'both tendons': 'in the index both tendons'.

    'IF gap 0, MF gap 0, both slide free' takes up both fingers.
    """
    named = [g for g in scene.setting.groups if g.digits and not g.tendons and g is not group and g.j <= group.i]
    fingers = tuple(dict.fromkeys(d for g in named for d in g.digits))
    return fingers if len(fingers) == len(named) == 2 else next((g.digits for g in named), ())
