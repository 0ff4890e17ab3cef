"""Whose behaviour is told after a repair, and whether words speak of a repair at all."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.groups import Group, Target
from notereader.reader.mentions.measures import count_of, times_told
from notereader.reader.page import Break, within
from notereader.reader.reasons import Reason
from notereader.reader.rules.owners import meant_by_all, owners
from notereader.reader.rules.results.dealt_results import holders_of_result
from notereader.reader.rules.results.kind_tested_before import kind_tested_before
from notereader.reader.rules.results.of_one_make import of_one_make, others_untested
from notereader.reader.rules.results.throughout import moved_together, sutures_moved, throughout
from notereader.reader.rules.strangers import of_a_stranger
from notereader.reader.rules.sutures.roles import is_place
from notereader.reader.rules.sutures.suture_owners import fingers_only, said_of_all, suture_owners
from notereader.reader.scene import Scene, group_targets
from notereader.reader.standing.negation import ANSWERED, stated_anew
from notereader.vocabulary.wordlists import word_list

_FOREIGN_WORDS = word_list("quality", "foreign_words")
_STAND_FOR_ALL = word_list("quality", "stand_for_all")
_TELL_REPAIR = frozenset(["strands", "stitch", "size", "treatment"])
_BOUNDS = word_list("standing", "bounds") | {".", "then", "with"}
_REST = frozenset(["rest", "remainder", "others", "remaining"])
_FINGER_TENDONS = frozenset(
    [
        *(("finger", "tendon"), ("finger", "tendons"), ("finger", "repair"), ("finger", "repairs")),
        *(("digital", "flexor"), ("digital", "flexors"), ("digital", "repair"), ("digital", "repairs")),
    ]
)
_WRIST_TENDONS = frozenset([("wrist", "repair"), ("wrist", "repairs"), ("wrist", "tendon"), ("wrist", "tendons")])
_EXCURSION = frozenset(["excursion", "glide", "gliding"])
_JOINS = frozenset(["and", "/", "+"])
_NEIGHBOURS = frozenset(["neighbour", "neighbor", "neighbours", "neighbors"])
_PLACING = frozenset(["in", "of", "on", "the", "no", "nor", "or", "for"])
_QUANTIFIERS = frozenset(["either", "neither", "both", "each", "none", "all", "any"])


def lay_behaviour(
    desk: Desk,
    scene: Scene,
    targets: list[Target],
    name: str,
    value: str | float,
    i: int,
    j: int,
    rule: str,
    *reasons: Reason,
) -> None:
    """Lay one value down for every target."""
    for target in targets:
        desk.tendon(scene, target, name, value, [(i, j)], rule, *reasons)


def foreign(scene: Scene, i: int, j: int) -> bool:
    """Tell whether words i to j belong to a nerve, a vessel, skin or another structure."""
    if of_a_stranger(scene, i, j):
        return True
    subject = scene.owner(i, j)
    if subject is None or subject.mention is None:
        return False
    if subject.kind == "role":
        role = subject.mention.value
        if role == "sheath" and not _THROUGH.isdisjoint(scene.words(j, subject.i)[-_LED:]):
            return False  # 'glides freely through the whole sheath', 'restricted by a tight sheath'
        near = scene.part(i) == scene.part(subject.i) or role not in ("skin", "sheath")
        return role not in ("core", "peripheral") and near and not is_place(scene, subject.mention)
    return subject.kind in _FOREIGN_WORDS


_THROUGH = frozenset(["through", "from", "along", "within", "inside", "by", "under", "beneath", "underneath"])
_LED = 6  # words: 'from end to end of the'


def behaving(desk: Desk, scene: Scene, i: int, j: int) -> list[Target]:
    """Return the repaired tendons a remark on behaviour is about."""
    if _of_neighbour(scene, i):
        return []
    dealt = holders_of_result(desk, scene, i)
    if dealt:
        return dealt
    one_make = of_one_make(desk, scene, i, j)
    if not one_make and _of_nobody_named(scene):
        return []
    found = (
        one_make
        or _all_of_a_list(desk, scene)
        or _both_of_two(desk, scene, i)
        or _which(desk, scene, i)
        or _of_the_line(desk, scene, i)
        or _in_both_fingers(desk, scene, i)
        or throughout(desk, scene, i, j)
        or moved_together(desk, scene)
        or sutures_moved(desk, scene)
        or _in_finger(desk, scene, j)
        or _neither(desk, scene, i)
        or _of_the_kind(desk, scene, i)
        or _of_finger(desk, scene, i, _behaving(desk, scene, i, j))
    )
    named = any(g.tendons or g.generic for g in scene.setting.groups)
    if not named and _WHATEVER.isdisjoint(scene.words(*scene.part(i))):
        found = _of_fingers(scene, found)
    words = scene.words(*scene.part(i))
    if any(
        words[k : k + 3] == ["finger", "and", "thumb"] and words[k + 3 : k + 4] in _TENDONS for k in range(len(words))
    ):
        return [t for t in desk.sewn() if t.digit]  # 'no gapping in any of the finger and thumb tendons'
    if _fingers_moved(scene):
        return [t for t in found if t.digit]
    if any(pair in _FINGER_TENDONS for pair in pairwise(words)):
        # 'none of the finger tendon repairs gapped': not those of the wrist
        return [t for t in found if t.digit] or found
    if any(pair in _WRIST_TENDONS for pair in pairwise(words)):
        return [t for t in found if not t.digit]  # 'no wrist repair gapped'
    found = [t for t in found if t.digit or not _not_sewn_yet(desk, scene, t)]
    return found or _the_only_one(desk, scene)


def _all_of_a_list(desk: Desk, scene: Scene) -> list[Target]:
    """'Smooth glide of FDP small + FDS x3, no gap': of the one and of as many of the other kind as were sewn.

    Only where the sentence names no others, and of those counted as many were sewn.
    """
    named = [g for g in scene.setting.groups if g.tendons and not (g.reference or g.excepted)]
    if len(named) < _PAIR or len(named) < len(scene.setting.groups) or not any(g.every or g.four for g in named):
        return []
    joints = [scene.words(a.j, b.i) for a, b in pairwise(named)]
    if not all(_LISTING.issuperset(w for w in joint if not count_of(w)) and joint for joint in joints):
        return []
    found: list[Target] = []
    for group in named:
        own = [t for t in desk.sewn() if t.tendon in group.tendons and (not group.digits or t.digit in group.digits)]
        told = times_told(scene.page.words, group.j)
        if not own or (told and told != len(own)):
            return []
        found += own
    return list(dict.fromkeys(found))


_LISTING = frozenset(["+", "and", "&", ",", "the", "all", "x", "both"])


def _both_of_two(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """'No gap at index or middle, both pass smoothly': the two fingers that the sentence named right before."""
    first, last = scene.part(i)
    if "both" not in scene.words(first, i) or any(first <= g.i < last for g in scene.setting.groups):
        return []
    before = [g for g in scene.setting.groups if g.j <= first and not g.reference]
    two = before[-1] if before and not before[-1].tendons and len(before[-1].digits) == _PAIR else None
    return _deep_of(desk, two) if two is not None else []


def _of_nobody_named(scene: Scene) -> bool:
    """'No gap; the others were not tested': of whom it is said is not told."""
    others = others_untested(scene)
    named = (g for g in scene.setting.groups if (g.tendons or g.digits) and not g.reference)
    return others is not None and all(g.i > others for g in named)


def _of_the_line(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """'FDP four strands; FDS left; no gap': behind a semicolon, without a name, of the finger's deep flexor."""
    stops = [k for k in range(scene.sentence.i, i) if scene.page.words[k] == ";"]
    named = [g for g in scene.setting.groups if g.tendons and not g.reference]
    before = [g for g in named if stops and g.j <= stops[-1]]
    if not before or before[-1].tendons != ("FDS",) or any(g.i > stops[-1] for g in scene.setting.groups):
        return []
    deep = [Target(t.digit, "FDP") for t in group_targets(scene, before[-1])]
    own = [t for t in deep if t.digit is not None and _sewn_for_good(desk, t)]
    return list(dict.fromkeys(own)) if len(own) == len(deep) else []


def _the_only_one(desk: Desk, scene: Scene) -> list[Target]:
    """'The middle FDP was left. ... Passive: no gap.': of what else but the one tendon that was sewn, a deep flexor."""
    if scene.setting.groups or scene.sentence.prefix:
        return []
    sewn = [t for t in desk.sewn() if desk.has_suture(t)]
    one = len(sewn) == 1 and sewn[0].tendon in ("FDP", "FPL") and _sewn_for_good(desk, sewn[0])
    return sewn if one and not _not_sewn_yet(desk, scene, sewn[0]) else []


_TENDONS = (["tendons"], ["flexors"], ["repairs"])


def _not_sewn_yet(desk: Desk, scene: Scene, target: Target) -> bool:
    """'None of the repairs gapped. The FCU was then repaired': what was sewn later was not among those tested."""
    told = desk.told_of("repairs", (target.digit, target.tendon, target.slip))
    named = any(target.tendon in g.tendons for g in scene.setting.groups)
    return not named and not any(f.field in _TELL_REPAIR and f.order < scene.sentence.j for f in told)


def _which(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """'All glided freely except the ring, which caught at A2': of the finger right before 'which'."""
    there = _where(scene, i)
    if there is not None:
        return _deep_of(desk, there)
    k = i - 1
    while k > scene.sentence.i and scene.page.words[k] in _ADVERBS:
        k -= 1
    k -= scene.page.words[k] == "which"
    if scene.page.words[k + 1] != "which":
        return []
    ends = k + (scene.page.words[k] != ",")
    group = next((g for g in scene.setting.groups if g.digits and not g.tendons and g.j == ends), None)
    return _deep_of(desk, group) if group is not None else []


def _where(scene: Scene, i: int) -> Group | None:
    """'None gapped, save in the ring, where a 2 mm gap was seen': of the finger left out, right before 'where'."""
    if "where" not in scene.said:
        return None
    for group in scene.left_out:
        k = group.j + (scene.next_word(group.j) == ",")
        soon = k < i <= k + _SOON and "," not in scene.words(k, i)
        if group.digits and not group.tendons and scene.next_word(k) == "where" and soon:
            return group
    return None


_SOON = 6  # words: 'where a gap of 2 mm'


def _deep_of(desk: Desk, group: Group) -> list[Target]:
    sewn = [t for t in desk.sewn(group.digits) if t.digit in group.digits]
    return [t for t in sewn if t.tendon in ("FDP", "FPL")] or sewn


def _in_both_fingers(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """'Tendon glide smooth in both fingers, no gap': 'tendon' names none, and both fingers worked on are meant."""
    words = [*scene.words(scene.sentence.i, scene.part(i)[1]), ""]
    both = any(words[k : k + 2] == ["in", "both"] and words[k + 2] in _FINGERS for k in range(len(words) - 2))
    if not both or any(g.digits or g.tendons or g.generic == "all" for g in scene.setting.groups):
        return []
    sewn = [t for t in desk.sewn() if t.tendon in ("FDP", "FPL")]
    return sewn if len({t.digit for t in sewn}) == len(sewn) == _PAIR else []


_FINGERS = frozenset(["fingers", "digits", ",", ".", ";", ""])
_ADVERBS = frozenset(["at", "first", "still", "slightly", "just", "then", "had", "was", "did", "always"])


def _of_neighbour(scene: Scene, i: int) -> bool:
    """'The middle finger caught, its neighbours ran freely': of fingers that nothing tells apart."""
    at = next((k for k in range(i - 1, scene.part(i)[0] - 1, -1) if scene.page.words[k] in _NEIGHBOURS), None)
    return at is not None and not any(g.digits and (g.i <= at < g.j or at < g.i < i) for g in scene.setting.groups)


_ANSWERED = frozenset(["none", "nil", "0", "zero", "absent", "no", "yes", "present", "free", "slight"])


def _in_finger(desk: Desk, scene: Scene, j: int) -> list[Target]:
    """'The repair glided freely in the middle finger and caught in the small': the finger right behind says where."""
    groups = [g for g in scene.setting.groups if g.digits and g.i >= j and not (g.reference or g.excepted)]
    group = groups[0] if groups else None
    if group is None or group.tendons or group.generic:
        return []
    passed = {k for m in scene.of("pulley") for k in range(m.i, m.j)}
    passed |= {k for q in scene.quantities for k in range(q.i, q.j)}  # 'a gap of 1 mm in the ring'
    lead = [scene.page.words[k] for k in range(j, group.i) if k not in passed]
    lead = lead[1:] if lead[:1] and lead[0] in _ANSWERED else lead  # 'Gap none in index'
    beside = group.i == j and scene.next_word(group.j) in ("", ".", ",", ";")  # 'No gap middle, no gap ring'
    if not beside and (not lead or not {"in", "of", "on"} & set(lead[-2:]) or not _WHERE.issuperset(lead)):
        return []
    named = [g for g in scene.setting.groups if g.tendons and g.j <= j and not g.reference]
    sewn = [t for t in desk.sewn(group.digits) if t.digit in group.digits]
    kinds = named[-1].tendons if named else _these(desk, scene, j)
    own = [t for t in sewn if not kinds or t.tendon in kinds]
    deep = [t for t in own if t.tendon in ("FDP", "FPL")]
    return own if named else deep or own


def _these(desk: Desk, scene: Scene, j: int) -> tuple[str, ...]:
    """'The profundus tendons were moved. ... Excursion of these tendons was smooth in the index': of that kind."""
    if not any(a in _POINTING and b == "tendons" for a, b in pairwise(scene.words(scene.sentence.i, j))):
        return ()
    before = desk.scene_before(scene)
    while before is not None and before.sentence.block == scene.sentence.block:
        wide = [g for g in before.setting.groups if g.tendons and not (g.digits or g.reference) and g.every]
        if wide:
            return wide[-1].tendons
        before = desk.scene_before(before)
    return ()


_POINTING = frozenset(["these", "those"])


_WHERE = frozenset(["in", "of", "on", "the", "left", "right", "under", "at", "beneath", "pulley"])


def _neither(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """'Neither the ring nor the small profundus gapped': of every tendon named between 'neither' and the verb."""
    words = scene.words(scene.sentence.i, i)
    if "neither" not in words or "nor" not in words:
        return []
    first = scene.sentence.i + words.index("neither")
    named = [g for g in scene.setting.groups if first < g.i and g.j <= i and (g.tendons or g.digits)]
    tendons = next((g.tendons for g in reversed(named) if g.tendons), ())
    found: dict[Target, None] = {}
    for group in named:
        own = group_targets(scene, group) if group.tendons else [Target(d, t) for d in group.digits for t in tendons]
        found.update(dict.fromkeys(own))
    goes_on = bool(named) and {"and", "but", ";"}.isdisjoint(scene.words(named[-1].j, i))
    return [t for t in found if _sewn(desk, t)] if len(named) > 1 and goes_on else []


def _of_the_kind(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """'Traction on each FDP: index and middle no gap, ring gap 1 mm': of the tendons of the kind tested."""
    first, last = scene.part(i)
    groups = [g for g in scene.setting.groups if not (g.reference or g.excepted)]
    wide = [g for g in groups if g.tendons and not g.digits and g.every and g.j <= first]
    own = [g for g in groups if first <= g.i < last and g.j <= i]
    if len(wide) != 1 or not own or any(g.tendons or g.generic for g in own) or not own[-1].digits:
        return []
    tested = any(m.i <= wide[0].i for m in scene.of("test"))  # '...; the index gapped; the ring repair did not open'
    listed = ":" in scene.words(wide[0].j, own[-1].i) or tested
    if any(g.tendons and wide[0].j <= g.i < first for g in groups) or not listed:
        return []
    sewn = desk.sewn(own[-1].digits)
    return [t for t in sewn if t.digit in own[-1].digits and t.tendon in wide[0].tendons]


def _of_finger(desk: Desk, scene: Scene, i: int, targets: list[Target]) -> list[Target]:
    """'FDS slip: figure-of-eight. Pulled on with a hook: no gap.': what no tendon is named for is said of the finger.

    Its deep flexor bends the tip, so where that was sewn too the remark is of it, and not of the slip told of last.
    """
    if any(t.tendon != "FDS" for t in targets) or (
        any(g.tendons or g.generic not in ("", "one") for g in scene.setting.groups) and not _excursion(scene, i)
    ):
        return targets
    deep = [Target(d, "FDP") for d in dict.fromkeys(t.digit for t in targets)]
    return deep if deep and all(_sewn_for_good(desk, t) for t in deep) else targets


def _sewn_for_good(desk: Desk, target: Target) -> bool:
    tenodesed = desk.treatments.get(target) == "tenodesed"  # its stump on bone neither gaps nor glides
    return desk.may_be_repaired(target) and desk.has_suture(target) and not tenodesed


def _excursion(scene: Scene, i: int) -> bool:
    """'neither the FDP nor the FDS gapped, and the excursion was unrestricted': a clause of its own on the finger."""
    first, last = scene.part(i)
    headed = scene.word_before(first) == ":" or scene.page.words[first] == ":"  # 'FDS: free glide'
    named = headed or any(first <= g.i < last for g in scene.setting.groups)
    return not named and not _EXCURSION.isdisjoint(scene.words(first, last))


def _behaving(desk: Desk, scene: Scene, i: int, j: int) -> list[Target]:
    """Return the repaired tendons that the words of a remark, or what was spoken of before, point to."""
    others = the_rest(desk, scene) or _them(desk, scene, i) or _as_many(desk, scene, i) or _the_two(desk, scene, i)
    others = others or _both_kinds(desk, scene, i) or _kind_pulled_on(desk, scene, i)
    others = others or kind_tested_before(desk, scene)
    others = others or _as_counted(desk, scene, [g for g in scene.setting.groups if g.i == i and g.tendons])
    if others:
        return others
    if _every_repair(scene, i):
        return everyone(desk, scene, i)
    if said_of_all(scene, i):
        told = _just_named(desk, scene) if "them" in scene.words(*scene.part(i)) else []
        if len(told) > 1:
            return told
        wide = suture_owners(desk, scene, i, j)[0]
        if len(wide) > 1:
            return wide
    one_or_other = "one or the other" in " ".join(scene.words(scene.sentence.i, scene.sentence.j))
    own = [g for g in scene.setting.groups if g.digits and scene.part(i)[0] <= g.i < scene.part(i)[1]]
    own = [g for g in own if g not in scene.left_out]
    here = [g for g in scene.setting.groups if scene.part(i)[0] <= g.i < scene.part(i)[1]]
    excepted = any(g in scene.left_out for g in here) and not any(g.tendons for g in here)
    if one_or_other or ((excepted or collective(scene, i, j)) and not own):
        return everyone(desk, scene, i)  # 'All but the ring were without a gap; the ring gapped'
    targets = [t for t in owners(desk, scene, i, j)[0] if _sewn(desk, t)]
    if targets:
        return targets
    subject = scene.owner(i, j)
    group = subject.group if subject is not None else None
    if group is not None and (group.generic == "all" or group.every) and not (own and group not in own):
        return fingers_only(scene, group, desk.sewn())
    found, _ = suture_owners(desk, scene, i, j)
    return _of_fingers(scene, [t for t in found if _sewn(desk, t)]) or _smoothed(desk, scene)


def the_rest(desk: Desk, scene: Scene) -> list[Target]:
    """'Pulled on: index gaps 1 mm. Rest no gap.': every sewn tendon but those named just before."""
    k = scene.sentence.i + (scene.page.words[scene.sentence.i] == "the")
    before = desk.scene_before(scene)
    if scene.page.words[k] not in _REST or scene.next_word(k + 1) == "of" or before is None:
        return []
    named = [g for g in before.setting.groups if (g.digits or g.tendons) and not g.reference]
    told = {t for g in named for t in desk.sewn(g.digits or None) if not g.tendons or t.tendon in g.tendons}
    return [t for t in desk.sewn() if t not in told] if told else []


def told_of_several_before(desk: Desk, scene: Scene) -> list[Target]:
    """'No gap at any of the three repairs. There was no tension.': of all that the sentence right before told of.

    Only where it took them together, and neither sentence names one of them by itself.
    """
    before = desk.scene_before(scene)
    if before is None or before.sentence.block != scene.sentence.block or scene.sentence.prefix:
        return []
    named = [g for g in before.setting.groups if not g.reference]
    if scene.setting.groups or any(g.tendons or g.digits for g in named if not g.every):
        return []
    told: dict[Target, None] = {}
    for finding in reversed(desk.findings):
        if finding.group == "repairs" and finding.order < before.sentence.i:
            break
        if finding.group == "repairs" and finding.field in _TOLD_TOGETHER and finding.order < scene.sentence.i:
            told.setdefault(Target(*finding.entry))
    return list(told) if len(told) > 1 and all(desk.may_be_repaired(t) for t in told) else []


_TOLD_TOGETHER = frozenset(["gap", "glide", "test", "tension", "bulk", "knot", "purchase_mm"])


def the_rest_here(desk: Desk, scene: Scene, k: int) -> list[Target]:
    """'The FPL was under tension; the rest met without': every sewn tendon but those named before word k."""
    if scene.page.words[k] not in _REST or scene.next_word(k + 1) == "of" or k == scene.sentence.i:
        return []
    named = [g for g in scene.setting.groups if (g.digits or g.tendons) and g.j <= k and not g.reference]
    told = {t for g in named for t in desk.sewn(g.digits or None) if not g.tendons or t.tendon in g.tendons}
    return [t for t in desk.sewn() if t not in told] if told else []


def _them(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """'The finger tendons showed no gap, and each of them glided': those of which the sentence told just before."""
    first, last = scene.part(i)
    named = any(first <= g.i < last and (g.tendons or g.digits) for g in scene.setting.groups)
    if named or first == scene.sentence.i or "them" not in scene.words(first, last):
        return []
    told = desk.laid("gap", "glide", since=scene.sentence.i, before=first)
    return list(dict.fromkeys(Target(*f.entry) for f in told))


def _both_kinds(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """'took both FDP repairs through passive motion, no gapping in either': of both fingers."""
    first, last = scene.part(i)
    pairs = {"either", "neither", "both"} & set(scene.words(first, last))
    named = any(first <= g.i < last and (g.tendons or g.digits) for g in scene.setting.groups)
    wide = [g for g in scene.setting.groups if g.tendons and g.j <= first and not g.reference]
    if not pairs or named or len(wide) != 1 or wide[0].digits or not wide[0].every:
        return []
    found = [t for t in desk.sewn() if t.tendon in wide[0].tendons and desk.has_suture(t)]
    return found if len(found) <= 2 else []


def _kind_pulled_on(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """'On traction on the FDP tendons each finger flexed fully without gapping': of the tendons pulled on alone."""
    first, last = scene.part(i)
    every_finger = any(first <= g.i < last and g.every and not (g.tendons or g.generic) for g in scene.setting.groups)
    named = [g for g in scene.setting.groups if g.tendons and not g.reference]
    if not every_finger or len(named) != 1 or named[0].digits or not named[0].every or named[0].j > i:
        return []
    return [t for t in desk.sewn() if t.tendon in named[0].tendons]


def _as_many(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """'no gap in any of the six', 'all three ran freely': of the tendons told of, the set that has so many."""
    first, last = scene.part(i)
    if scene.page.words[last - 1] == ":" and last < scene.sentence.j:
        last = scene.part(last)[1]  # 'Gap: nil x 3'
    words = scene.words(first, last)
    spots = [n for n, word in enumerate(words) if count_of(word) >= _FEWEST and _counts_repairs(words, n)]
    spots = spots or [n for n in range(2, len(words)) if words[n - 1] == "x" and words[n - 2] in _COUNTED_RESULTS]
    named = [g for g in scene.setting.groups if g.i >= first and g.j <= last and g.tendons]
    if not spots or named:
        return []
    groups = [g for g in scene.setting.groups if g.j <= first + spots[0] and not g.reference]
    by_name = [t for g in groups if g.tendons for t in group_targets(scene, g) if _sewn(desk, t)]
    digits = tuple(d for g in groups if not g.tendons for d in g.digits)
    of_digits = [t for t in desk.sewn(digits) if t.digit in digits] if digits else []
    every = desk.sewn()
    stitched = [t for t in every if desk.has_suture(t)]
    sets = (by_name, of_digits, _just_named(desk, scene), stitched, every, [t for t in stitched if t.digit])
    return next((list(dict.fromkeys(s)) for s in sets if len(set(s)) == count_of(words[spots[0]])), [])


def _the_two(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """'Index FDP ran freely. Middle FDP caught. Neither of the two gapped.': the two that the paragraph tells of."""
    if ("of", "the", "two") not in zip(*(scene.words(*scene.part(i))[n:] for n in range(3)), strict=False):
        return []
    if any(g.tendons or g.digits for g in scene.setting.groups):
        return []
    told: dict[Target, None] = {}
    before = desk.scene_before(scene)
    while before is not None and before.sentence.block == scene.sentence.block:
        groups = [g for g in before.setting.groups if g.tendons and g.digits and not g.reference]
        told.update(dict.fromkeys(t for g in groups for t in group_targets(before, g) if _sewn(desk, t)))
        if len(told) >= _PAIR:
            break
        before = desk.scene_before(before)
    return list(told) if len(told) == _PAIR else []


_PAIR = 2


def said_of_several(scene: Scene, i: int) -> bool:
    """Tell whether words at i are said of 'any of the four tendon repairs', 'all three', 'neither repair'."""
    words = scene.words(*scene.part(i))
    return any(w in _QUANTIFIERS and (_stands_for_all(words, n) or _counted(words, n)) for n, w in enumerate(words))


def _counted(words: list[str], n: int) -> bool:
    return any(count_of(w) >= _FEWEST and _counts_repairs(words, n + k) for k, w in enumerate(words[n : n + 4]))


def _counts_repairs(words: list[str], n: int) -> bool:
    """Tell whether a number counts repairs: 'any of the six', 'all three', 'the three sutured tendons'."""
    lead = [w for w in words[max(0, n - 3) : n] if w not in _JOINING]  # '..., and all three sutured tendons ran'
    after = words[n + 1] if n + 1 < len(words) else "."
    quantified = not _QUANTIFIERS.isdisjoint(lead) and set(lead[-2:]) <= _QUANTIFIERS | {"of", "the", "these"}
    return quantified and (after in _STAND_FOR_ALL or after in _ENDS_COUNT or after.endswith("ed"))


# 'no gap x 3', 'Glide: free x 2', 'tension nil x 3'
_COUNTED_RESULTS = frozenset(["gap", "gaps", "gapping", "free", "freely", "nil", "none", "0", "glide", "gliding"])
_FEWEST = 3  # two are told by 'both' and 'neither'
_JOINING = frozenset(["and", "but", "while", "whereas", "then"])
_ENDS_COUNT = frozenset(
    [
        *(
            ".",
            ",",
            ";",
            "of",
            "ran",
            "was",
            "were",
            "bulky",
            "at",
            "lay",
            "sat",
            "had",
            "has",
            "showed",
            "did",
            "slid",
        ),
        *("felt", "seemed", "under", "stood", "held", "kept", "remained"),
    ]
)


def _smoothed(desk: Desk, scene: Scene) -> list[Target]:
    """'I trimmed the flap. It ran without triggering.': the one tendon smoothed, where none was sewn."""
    if desk.repairable():
        return []
    found = [t for t, value in desk.treatments.items() if value == "trimmed"]
    here = [t for t in found if t.digit in scene.setting.digits] or found
    return here if len(here) == 1 else []


def _sewn(desk: Desk, target: Target) -> bool:
    unsewn = desk.treatments.get(target) in ("left", "excised", "trimmed")
    return desk.extents.get(target) != "intact" and not unsewn and not desk.is_donor(target)


def everyone(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """Return the sewn tendons told of right before, if several; else of the digits in focus; else all."""
    words = set(scene.words(max(scene.part(i)[0], i - 8), min(i + 9, scene.part(i)[1])))
    found = meant_by_all(desk, scene, i, words, _everyone(desk, scene, i))
    return [t for t in found if t.digit] if _fingers_moved(scene) else found


def _fingers_moved(scene: Scene) -> bool:
    """'Full roll of fingers by hand, all go, none gap': a test of fingers says nothing of the wrist's tendons."""
    moved = bool(scene.of("test")) or "moving" in scene.said
    fingers = not _MOVED.isdisjoint(scene.said) and "wrist" not in scene.said and moved
    return fingers and _WHATEVER.isdisjoint(scene.said)


_MOVED = frozenset(["fingers", "digits"])
_WHATEVER = word_list("quality", "join_nouns") | {"tendon", "tendons", "suture", "sutures", "tenorrhaphies"}


def _every_finger(scene: Scene) -> bool:
    fingers = any(g.every and not (g.tendons or g.digits or g.generic) for g in scene.setting.groups)
    words = scene.words(scene.sentence.i, scene.sentence.j)
    return fingers or any(a == "two" and b in _MOVED for a, b in pairwise(words))


def _of_fingers(scene: Scene, sewn: list[Target]) -> list[Target]:
    """'Both digits flexed without gapping' tells of what bends the tips."""
    deep = [t for t in sewn if t.tendon in ("FDP", "FPL")] if _every_finger(scene) else []
    return deep or sewn


def _every_repair(scene: Scene, i: int) -> bool:
    """'All digits were moved; no repair separated and none bunched', 'none of the repairs gapped', whatever finger."""
    if any(g.tendons or g.digits for g in scene.setting.groups):
        return False
    words = [w for w in scene.words(scene.sentence.i, scene.part(i)[1]) if w not in _BEFORE_REPAIRS]
    return any(pair in _REPAIRS_ALL for pair in pairwise(words))


_KINDS_OF_REPAIR = frozenset(["tendon", "flexor", "digital", "finger", "wrist"])
_BEFORE_REPAIRS = _KINDS_OF_REPAIR | {"the", "of", "these", "my", "our", "finished"}
_REPAIRS_ALL = frozenset(
    [
        *(("no", "repair"), ("none", "repairs"), ("every", "repair"), ("all", "repairs")),
        *(("any", "repair"), ("any", "repairs"), ("one", "repair")),
    ]
)


def _everyone(desk: Desk, scene: Scene, i: int) -> list[Target]:
    if _every_repair(scene, i):
        return desk.sewn()
    if _every_finger(scene) and len(scene.every_digit) > 1:
        return _of_fingers(scene, desk.sewn(scene.every_digit or None))
    told = _just_named(desk, scene)
    if len(told) > 1:
        return told
    named = [g.digits for g in scene.setting.groups if g.digits and g.j <= i and not g.reference]
    digits = named[-1] if named else scene.setting.digits
    here = desk.sewn(digits or None)
    return here if len(here) > 1 and len({t.digit for t in here}) == len(set(digits)) else desk.sewn()


def _just_named(desk: Desk, scene: Scene) -> list[Target]:
    """Return the sewn tendons of the last sentence of the paragraph, at most three back, that named any."""
    before = desk.scene_before(scene)
    for _ in range(3):
        if before is None or before.sentence.block != scene.sentence.block:
            break
        groups = [g for g in before.setting.groups if g.tendons and not g.reference]
        if any(g.generic == "all" for g in before.setting.groups):
            return desk.sewn()
        if groups:
            named = [t for g in groups for t in group_targets(before, g) if _sewn(desk, t)]
            if said_of_all(before, groups[0].i) and not any(g.digits for g in before.setting.groups):
                named = [t for t in desk.sewn() if t.tendon in groups[0].tendons]  # 'Each of the three FDP repairs'
            return _as_counted(desk, before, groups) or list(dict.fromkeys(named))
        before = desk.scene_before(before)
    return []


def _as_counted(desk: Desk, scene: Scene, groups: list[Group]) -> list[Target]:
    """'The three profundus repairs were then moved': the sewn tendons of a kind, where there are so many of them."""
    if len(groups) != 1 or groups[0].digits:
        return []
    kind = [t for t in desk.sewn() if t.tendon in groups[0].tendons]
    return kind if len(kind) > 1 and count_of(scene.word_before(groups[0].i)) == len(kind) else []


def collective(scene: Scene, i: int, j: int) -> bool:
    """Tell whether words i to j are said of 'both', 'either', 'any of them' without a tendon or digit by name."""
    named = [g for g in scene.setting.groups if g.tendons or g.generic]
    if not scene.setting.groups and scene.words(j - 1, j) == ["gaps"] and "no" in scene.words(i - 1, j):
        return True  # 'Passively no gaps.' is said of more than one repair
    first = max([scene.sentence.i, *(g.j for g in named if g.j <= i)])
    if first > scene.sentence.i or any(g.i >= (i if g.tendons else j) and g.i < scene.part(j - 1)[1] for g in named):
        return False
    last = scene.part(j - 1)[1]
    fingers = [g.j for g in scene.setting.groups if g.digits and first <= g.i and g.j <= scene.part(i)[0]]
    first = max([first, *fingers])  # 'both: thumb no gap, runs free; index no gap'
    words = scene.words(first, last)
    if ("no", "repair") in pairwise(w for w in words if w not in _KINDS_OF_REPAIR):
        return True  # 'at no repair was there any tension', 'no tendon repair gapped', 'no digital repair gapped'
    return any(w in _QUANTIFIERS and _stands_for_all(words, n) for n, w in enumerate(words))


def _stands_for_all(words: list[str], n: int) -> bool:
    """Tell whether the quantifier at place n stands alone or before a repair, not before pulleys, sides or the like."""
    after = [w for w in words[n + 1 : n + 4] if w not in ("the", "of", "two", "three", "four", "five", "six", "these")]
    before = words[n - 1] if n else ""
    if (words[n], before) == ("all", "at") or (words[n] == "none" and (before in _ASKS or before.startswith(".."))):
        return False  # 'Gap: none   Glide: free' of a form
    if words[n] == "any" and after[:1] != [] and after[0] in _FAULTS:
        return False  # 'it moved without any triggering'
    if words[n] == "neither" and after[:1] != [] and after[0] in _FAULTS | _ASKED and "nor" in after[1:]:
        return False  # 'the thumb repair was tested, showing neither gap nor catching'
    if words[n] == "none" and n == 0:
        return True  # 'None bulky.'
    if words[n] == "none" and before in _ASKED:
        return False  # 'RING: tension none, gap none'
    if (
        words[n] == "either"
        and before not in ("in", "of", "at", "on", "from", "with", "to")
        and after[:1] != ["repair"]
    ):
        return False  # 'no gap either' says 'too'
    return not after or after[0] in _STAND_FOR_ALL or after[0].endswith(("ed", "ing"))


_FAULTS = frozenset(["triggering", "catching", "gapping", "binding", "sticking", "snagging", "rubbing", "locking"])
_ASKED = frozenset(["gap", "gapping", "gaps", "tension", "bulk", "catching", "triggering"])
_ASKS = frozenset([":", "?", "=", "-", "|"])
_RUNS = frozenset(["runs", "ran", "glides", "glided", "slides", "slid", "moves", "moved", "passes", "passed"])


def denied(scene: Scene, i: int, j: int, reach: int = 5, free: bool = False, after: bool = False) -> bool:
    """Tell whether words i to j are denied by a word before them, or with `after` by one behind them too.

    With `free` an 'and' ends a denial: 'no gap and free gliding', 'no gap / smooth'. So does a finger named anew:
    'thumb no gap either thumb catches a bit'.
    """
    for cue in within(scene.page.cues, max(scene.sentence.i, i - reach - 4), i):
        if cue.value != "negated" or not 0 <= i - cue.j <= reach or scene.page.standing[cue.i] in ANSWERED:
            continue
        between = scene.words(cue.j, i)
        anew = scene.page.words[i] in _RUNS  # 'no gap at the bone runs well'
        spent = any(m.i == cue.i and (m.j == i or anew) for m in scene.of("gap"))
        if any(m.value == "peripheral" and cue.i <= m.j and m.j <= i for m in scene.of("role")):
            continue  # 'no epi' or 'epi nil' above 'gap 1 mm', 'catches at A2'
        if free and between and (spent or scene.page.words[i] == "no"):
            continue  # 'no gapping no triggering good cascade' as it is dictated: each 'no' is of its own noun
        if stated_anew(scene.page, cue.j, i):
            continue  # 'no gap at all it catches a bit on A2', dictated without stops
        if not _BOUNDS.isdisjoint(between) or max(scene.page.breaks[cue.j : i + 1]) >= Break.COLUMN:
            continue
        if any(g.digits and cue.j < g.i and g.j == i and not g.tendons for g in scene.setting.groups) and (
            between[-2] not in _PLACING
        ):
            continue
        joint = next((n for n, word in enumerate(reversed(between)) if word in _JOINS), None)
        tail = between[len(between) - joint :] if joint is not None else None
        if tail is None or not (tail or free):
            return True
    answers = any(m.value == "peripheral" and m.j == i - 1 for m in scene.of("role"))  # 'epi nil' above 'catches at A2'
    return after and not answers and scene.negated(i, j, 0)


def after_repair(desk: Desk, scene: Scene) -> bool:
    """Tell whether a repair was told of before this sentence ends."""
    return any(
        f.field in _TELL_REPAIR and f.order < scene.sentence.j and not (f.header and f.field == "treatment")
        for f in desk.findings
    )


def names_repair(scene: Scene) -> bool:
    """Tell whether the sentence names a tendon or a repair."""
    return any(g.tendons or g.generic for g in scene.setting.groups)


def about_repair(desk: Desk, scene: Scene) -> bool:
    """Tension or bulk told in a sentence of its own belongs to what was worked on last."""
    if names_repair(scene):
        return True
    foreign = [s for s in scene.subjects if s.kind in ("structure", "sided", "anynerve", "anyartery", "bundle")]
    if foreign:
        return False
    return desk.topic in ("tendon", "core", "peripheral", "pulley", "") and bool(desk.sewn() or scene.setting.focus)
