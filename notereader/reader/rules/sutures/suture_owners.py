"""Whose suture it is: the tendons that a core or peripheral suture belongs to."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.drafting.held_counts import count_told
from notereader.reader.groups import WRIST, Group, Target, has
from notereader.reader.mentions.measures import count_of, times_told
from notereader.reader.page import within
from notereader.reader.reasons import Reason
from notereader.reader.rules.carried import TAKEN_FOR_DEEP, carried
from notereader.reader.rules.cuts.parted import of_the_parted
from notereader.reader.rules.owners import (
    both_of_them,
    meant_by_all,
    named_so_far,
    near_digits,
    others,
    owners,
    pair_in_focus,
    spoken_of,
)
from notereader.reader.rules.strangers import labelled_stranger
from notereader.reader.rules.sutures.corrected_counts import holders_of_corrected
from notereader.reader.rules.sutures.dealt_ahead import named_behind
from notereader.reader.rules.sutures.dealt_sutures import fingers_of_all, left_out_before, listed_before
from notereader.reader.rules.sutures.fitted_into import fitted_into
from notereader.reader.rules.sutures.named_make import of_the_make
from notereader.reader.rules.sutures.repairs_of_a_make import of_a_make
from notereader.reader.scene import Scene, group_targets, named_together
from notereader.record.values import Value
from notereader.vocabulary.wordlists import word_list

_PUT_AROUND = word_list("sutures", "put_around")
_ENDS_AND_SIDES = frozenset(
    ["end", "side", "way", "stump", "sides", "direction", "limb", "limbs", "strand", "lock", "loop", "pass", "corner"]
)
_CLOSES = frozenset([",", ";", ".", ")", "|"])
_CLAUSE_ENDS = frozenset([",", ";", ":", "(", ")", "but", "while", "whereas"])
_DETERMINERS = frozenset(["the", "left", "right", "each", "both", "his", "her", "this", "that"])
_FLEXORS = frozenset(["fdp", "fds", "profundus", "superficialis", "flexor"])
_USED_FOR = frozenset(["being", "was", "used", "for", "in"])
_USED = frozenset(["was", "were", "used", "placed", "chosen", "taken", "put"])
_USED_NOUNS = _USED | {
    "epitendinous",
    "peripheral",
    "circumferential",
    "suture",
    "stitch",
    "one",
    "repair",
    "core",
    "of",
}
LEFT_OUT = word_list("standing", "after")
_ALL = word_list("sutures", "all")
_ALL_OF = word_list("sutures", "all_of")


def _named_amid(scene: Scene, i: int, j: int) -> Group | None:
    """'The strand count of the FDP is 4': the tendon named within what is told."""
    amid = (g for g in scene.setting.groups if g.tendons and i < g.i and g.j < j)
    return next((g for g in amid if not _LEADS_AMID.isdisjoint(scene.words(max(i, g.i - 2), g.i))), None)


_LEADS_AMID = frozenset(["of", "in", "for", "on"])


def suture_owners(desk: Desk, scene: Scene, i: int, j: int) -> tuple[list[Target], list[Reason]]:
    """Return the tendons a core or peripheral suture in words i to j belongs to."""
    corrected = holders_of_corrected(desk, scene)
    if corrected:
        return corrected, []
    if labelled_stranger(scene, i):
        return [], []  # 'Ulnar digital nerve: running 8-0 nylon'
    behind = named_behind(scene, i, j) or _named_amid(scene, i, j)
    if behind is not None:
        return _of_the_kind_told(desk, scene, behind) or targets_of(desk, scene, behind), []
    apart = left_out_before(scene, i)
    if apart is not None:
        return _of_the_kind_told(desk, scene, apart) or targets_of(desk, scene, apart), []
    everyone = fingers_of_all(scene, i) or listed_before(desk.scene_before(scene), scene)
    if everyone:
        return [t for g in everyone for t in _of_the_kind_told(desk, scene, g) or targets_of(desk, scene, g)], []
    groups = [g for g in scene.setting.groups if not g.reference and (not g.excepted or _which(scene, g, i))]
    groups = [g for g in groups if not (g.place and _taken_up_together(scene, g, i))]
    groups = [g for g in groups if g.j <= i or not left_out_of(scene, g, j)]
    groups = [g for g in groups if not (g.tendons and (_apart_from(scene, g, i) or _sewn_onto(scene, g)))]
    groups = [g for g in groups if not _has_its_own(scene, g, i, j)]
    dealt = _dealt_out(scene, groups, i)
    groups = [g for g in groups if g not in dealt]
    as_many = _times(desk, scene, j) if not groups else []
    if as_many:
        return as_many, []
    if scene.next_word(j) == "throughout" and not groups:
        return desk.repairable(), []  # 'Core suture: 3-0 Ticron throughout'
    for_which = _for_which(scene, i)
    if for_which is not None:
        return targets_of(desk, scene, for_which), []
    alone = for_it_only(scene, i, j, groups)
    if alone is not None:
        return _of_the_kind_told(desk, scene, alone) or targets_of(desk, scene, alone), []
    into = fitted_into(scene, i, j, groups)
    if into is not None:
        return _of_the_kind_told(desk, scene, into) or targets_of(desk, scene, into), []
    taken_up = of_the_make(desk, scene) or of_a_make(desk, scene, i)
    if taken_up:
        return taken_up, []
    sewn = _repair_of(scene, j, groups)
    if sewn is not None:
        return targets_of(desk, scene, sewn), []
    left_out = [g for g in scene.setting.groups if _excepts(scene, g, i, j) or (j <= g.i and left_out_of(scene, g, j))]
    excepted = {t for g in left_out for t in group_targets(scene, g)}
    digits = {d for g in left_out if not g.tendons for d in g.digits}
    found, reasons = _suture_owners(desk, scene, i, j, groups)
    found = of_the_parted(desk, scene, found)
    found = [t for t in found if t not in excepted and t.digit not in digits]
    found = _deep_in_those_fingers(groups, found, i)
    found += [t for t in _joined_behind(desk, scene, j, groups) if found and t not in found]
    return named_so_far(desk, scene, found), reasons


def _behind_the_whole_ones(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'FDS x 4 cut. FDP ring and small intact. FDS: two strands': at the wrist a label is of all that were cut.

    Not of the fingers last named, where the last that was told of each is that a tendon of it was whole.
    """
    if not desk.at_wrist or group.digits or group.i != scene.sentence.i or scene.next_word(group.j) != ":":
        return []
    told = {f.entry[0]: f for f in desk.laid("extent", before=group.i) if f.group == "repairs"}  # the last of each
    last = [told.get(digit) for digit in scene.setting.digits]
    if not last or any(f is None or f.value != "intact" or f.entry[2] for f in last):
        return []
    return [t for t in desk.repairable() if t.tendon in group.tendons]


def _times(desk: Desk, scene: Scene, j: int) -> list[Target]:
    """'Peripheral: 6-0 PDS running x 3' where three tendons were sewn; 'interrupted x 3' counts stitches."""
    words = scene.page.words
    for k in range(j, scene.sentence.j - 1):
        counted = words[k] == "x" and count_of(words[k + 1]) >= _SEVERAL and scene.next_word(k + 2) in _ENDS
        if counted and words[k - 1] not in _STITCHES_COUNTED:
            sewn = desk.sewn()
            return sewn if len(sewn) == count_of(words[k + 1]) else []
    return []


_SEVERAL = 3  # 'x 2' may be twice round
_ENDS = frozenset(["", ".", ";"])
_STITCHES_COUNTED = frozenset(
    ["interrupted", "simple", "mattress", "mattresses", "stitches", "bites", "passes", "knots"]
)


def _deep_in_those_fingers(groups: list[Group], found: list[Target], i: int) -> list[Target]:
    """'The FDP was repaired with a cruciate in both fingers, purchase of 10 mm': of the deep flexors alone."""
    before = [g for g in groups if g.j <= i]
    kinds = {t for g in before for t in g.tendons}
    deep = [t for t in found if t.tendon in ("FDP", "FPL")]
    return deep if deep and kinds == {"FDP"} and not before[-1].tendons else found


def _for_which(scene: Scene, i: int) -> Group | None:
    """'..., but not around the superficialis, for which two mattress sutures of 4-0 sufficed': whose 'for which' is."""
    first = max(scene.sentence.i, i - _SHORT_CLAUSE)
    k = next((k for k in range(i - 1, first, -1) if scene.words(k, k + 2) == ["for", "which"]), None)
    if k is None:
        return None
    end = k - (scene.word_before(k) == ",")
    return next((g for g in scene.setting.groups if g.j == end and g.tendons and not g.reference), None)


_SHORT_CLAUSE = 9  # words


def _repair_of(scene: Scene, j: int, groups: list[Group]) -> Group | None:
    """'... and 30 % of the FDS, four strand repair of the FDP': the tendon whose repair words up to j begin to name."""
    group = next((g for g in groups if g.i >= j and g.tendons), None)
    if group is None or not group.pairs or any(slip for _, _, slip in group.pairs):
        return None
    between = [w for w in scene.words(j, group.i) if w not in _DETERMINERS and w not in ("-", "strand", "core")]
    return group if between in _ITS_REPAIR else None


_ITS_REPAIR = (["repair", "of"], ["repair", "to"], ["suture", "of"], ["suture", "to"], ["repair", "in"])


def _sewn_onto(scene: Scene, group: Group) -> bool:
    """'The stump was tenodesed to the superficialis', 'sewn down to the FDS insertion': where another was fastened."""
    k = group.i - (scene.word_before(group.i) in ("the", "its"))
    if scene.word_before(k) not in ("to", "onto") or k - 1 <= scene.sentence.i:
        return False
    fastened = any(d.value == "tenodesed" and d.j in (k - 1, k) for d in scene.of("deed"))
    return fastened or (scene.next_word(group.j) == "insertion" and not _FASTENED.isdisjoint(scene.said))


_FASTENED = frozenset(["sewn", "sewed", "sutured", "fixed", "tacked", "tenodesed", "stitched"])


def _has_its_own(scene: Scene, group: Group, i: int, j: int) -> bool:
    """'FDP got a cruciate of 4-0 FiberWire and for the FDS a simple stitch of 5-0': a suture is told behind the FDS."""
    if group.i < j or not group.tendons or not any(g.tendons and g.j <= i for g in scene.setting.groups):
        return False
    k = group.i - (scene.word_before(group.i) in ("the", "its"))
    if scene.words(k - 2, k) not in _AND_FOR:
        return False
    return any(m.i >= group.j and scene.told(m.i) for m in scene.of("stitch", "material"))


_AND_FOR = (["and", "for"], ["and", "in"], ["while", "for"], ["but", "for"])


def _apart_from(scene: Scene, group: Group, i: int) -> bool:
    """'PDS was used only for the FDS and for the circumferential stitch': the stitch is another use, not the FDS's."""
    between = [w for w in scene.words(group.j, i) if w != "the"] if group.j <= i else []
    return between in (["and", "for"], ["and", "also", "for"], ["as", "well", "as", "for"])


def _dealt_out(scene: Scene, groups: list[Group], i: int) -> list[Group]:
    """'using 3-0 in the middle and 4-0 in the little finger, with 1 cm of tendon on either side': of all the tendons.

    Returns what does not say whose a clause behind them is: the fingers among which threads were dealt out, and its
    own 'each of them'.
    """
    first, last = scene.part(i)
    dealt = [g for g in groups if g.digits and not g.tendons and g.j <= first and _behind_thread(scene, g)]
    subject = any(g.tendons and dealt and g.j <= dealt[0].i for g in groups)
    inside = [g for g in groups if first <= g.i < last]
    own = any(g.digits or g.tendons for g in inside) or not _RELATIVE.isdisjoint(scene.words(first, first + 2))
    return [*dealt, *inside] if len(dealt) > 1 and subject and not own else []


def for_it_only(scene: Scene, i: int, j: int, groups: list[Group]) -> Group | None:
    """'FCR and FCU: ..., to which 5-0 was added in running fashion for the FCR only': the one tendon of a thread."""
    group = next((g for g in groups if g.i >= j and (g.tendons or g.digits)), None)
    if group is None or scene.next_word(group.j) not in ("only", "alone"):
        return None
    k = group.i
    while k > j and scene.page.words[k - 1] in _DETERMINERS:
        k -= 1
    own = any(i <= m.i < j for m in scene.of("material", "stitch"))  # else 'a running 6-0 Prolene' is one thread
    threads = [m for m in scene.of("material", "stitch") if j <= m.i < k]
    apart = {",", ";", ":"} & set(scene.words(j, k)) or len(threads) > (not own)
    return group if scene.page.words[k - 1] in _FOR and k > j and not apart else None


_FOR = frozenset(["for", "to", "on", "in", "around", "round"])


def _behind_thread(scene: Scene, group: Group) -> bool:
    """Tell whether a finger stands right behind a thread: '3-0 Ethibond in the middle finger'."""
    k = group.i
    while k > scene.sentence.i and scene.page.words[k - 1] in ("in", "for", "the"):
        k -= 1
    return k < group.i and any(m.j == k for m in scene.of("material"))


_RELATIVE = frozenset(["which", "where", "whose"])


def left_out_of(scene: Scene, group: Group, j: int | None = None) -> bool:
    """'added to both profundus repairs and omitted in both superficialis repairs': these tendons were given none.

    Not where the suture up to word `j` is itself what was omitted: 'the peripheral suture was omitted in both'.
    """
    k = group.i
    while k > scene.sentence.i and scene.page.words[k - 1] in _DETERMINERS:
        k -= 1
    if scene.word_before(k) in _PLACING and scene.word_before(k - 1) in ("none", "nothing", "nil"):
        return j is None or (
            j < k - 1 and ";" not in scene.words(j, k)
        )  # '6-0 for the profundus, none for the superficialis'
    placed = scene.page.words[k - 1] in ("in", "for", "from", "on") and k - 1 > scene.sentence.i
    cues = within(scene.page.cues, scene.sentence.i, k)
    cues = [c for c in cues if c.j == k - 1 and (j is None or c.i - j > 1)]
    return placed and any(" ".join(scene.words(c.i, c.j)) in LEFT_OUT for c in cues)


_PLACING = frozenset(["in", "for", "on", "to", "round", "around"])


def _taken_up_together(scene: Scene, group: Group, i: int) -> bool:
    """'Both were trimmed, the former by 3 mm and the latter by 2, and were united with four strands': of both."""
    words = scene.words(group.j, i)
    return "were" in words and not any(g.tendons and group.j <= g.i < i and not g.place for g in scene.setting.groups)


def _excepts(scene: Scene, group: Group, i: int, j: int) -> bool:
    """An exception bears on the clause right before it: '..., and finished with 5-0, except the FCR'."""
    if group.excepted and scene.only_outer_left_out(group, i):
        return False
    if group.excepted and group.j <= i and not _which(scene, group, i):
        return scene.part(i)[0] <= group.i  # 'Every one except that of the ring finger was given a running 6-0'
    return group.excepted and group.i >= j and scene.part(i)[1] >= scene.part(group.i)[0] - 1


def _which(scene: Scene, group: Group, i: int) -> bool:
    """'..., except the FCR, which got no circumferential suture': what follows is said of the exception itself."""
    return group.j <= i and "which" in scene.words(group.j, min(group.j + 2, i))


def _suture_owners(desk: Desk, scene: Scene, i: int, j: int, groups: list[Group]) -> tuple[list[Target], list[Reason]]:
    named = [g for g in groups if g.tendons or g.generic or g.every]
    own = _put_around(desk, scene, i, j, groups) or _own_group(desk, scene, i, j, groups)
    own = own or _so_many_named(desk, scene, i, groups) or _with_those_added(desk, scene, i, groups)
    if own:
        return own, []
    counted = next((g for g in groups if g.generic == "all" and g.j <= i and not g.digits), None)
    so_many = _so_many_cut(desk, scene, counted) if counted is not None and scene.part(i)[0] <= counted.i else []
    if so_many:
        return so_many, []
    if said_of_all(scene, i) or _headed_by_all(scene, i):
        digits = tuple(d for g in groups if g.digits and not g.tendons and g.j <= i for d in g.digits)
        named_before = [g for g in groups if (g.j <= i or g.i == i) and g.tendons]
        here = scene.part(i)  # 'added to both profundus repairs, and omitted in all four superficialis repairs'
        nearest = [g for g in groups if here[0] <= g.i < here[1] and g.tendons and g.every]
        tendons = {t for g in nearest or named_before or groups if g in named_before or g.every for t in g.tendons}
        wide = [t for t in desk.sewn(digits or None) if not tendons or t.tendon in tendons]
        if wide and not (tendons and digits):
            words = set() if tendons else set(scene.words(*scene.part(i)))
            return meant_by_all(desk, scene, i, words, wide), []
    listed = _heads_a_list(desk, scene, j, groups)
    if listed:
        return listed, []
    first, last = scene.part(i)
    inside = [g for g in groups if first <= g.i < last]
    before = [g for g in groups if g.j <= i]
    after = [g for g in groups if g.i >= j]
    if before and ";" in scene.words(before[-1].j, i) and not [g for g in inside if g.j <= i]:
        before = (
            [] if [g for g in inside if g.i >= j and g.tendons] else before
        )  # '...; four strands is for the FDP only'
    itself = [g for g in groups if g.i == i and g.j == j]
    for pool in (
        itself,
        [g for g in inside if g.j <= i][-1:],
        before[-1:],
        [g for g in inside if g.i >= j][:1],
        after[:1],
    ):
        if pool:
            group = _fuller(pool[0], before if pool[0] in before else after, named)
            found = [*_joined_before(desk, scene, group, before), *targets_of(desk, scene, group)]
            if group is not pool[0]:
                found = _of_the_digit(found, pool[0], group)
            found = _not_of_a_whole_one(desk, scene, found, before) or found
            if found or group.digits or group.collective or is_the_rest(scene, group):
                return found, []  # of a digit with no known repair: better nothing than its neighbour's
    return _carried(desk, scene)


def _heads_a_list(desk: Desk, scene: Scene, j: int, groups: list[Group]) -> list[Target]:
    """'Cores of 3-0 Ethibond were used: two strands in the index, four in the ring': the thread of all listed."""
    colon = next((k for k in range(j, scene.sentence.j) if scene.page.words[k] == ":"), -1)
    counts = [m for m in scene.of("strandword") if m.i > colon]
    fingers = [g for g in groups if g.digits and not g.tendons and g.i > colon]
    if colon < 0 or len(counts) < 2 or len(fingers) != len(counts) or len(groups) != len(fingers):
        return []
    digits = [d for g in fingers for d in g.digits]
    return [t for d in digits for t in desk.repairable((d,)) if t.tendon in ("FDP", "FPL") and t.digit == d]


def _joined_before(desk: Desk, scene: Scene, group: Group, before: list[Group]) -> list[Target]:
    last = named_together(scene, group)
    if last in before and group in before:
        return targets_of(desk, scene, last)
    return [t for g in _label_with(scene, group, before) for t in targets_of(desk, scene, g)]


def _joined_behind(desk: Desk, scene: Scene, j: int, groups: list[Group]) -> list[Target]:
    """'... was added to both profundi and the middle superficialis': the one joined to a kind, where that ends it."""
    for wide, own in pairwise(g for g in groups if g.i >= j):
        joined = [w for w in scene.words(wide.j, own.i) if w not in _DETERMINERS and w not in _PUT_AROUND] == ["and"]
        kind = wide.every and wide.tendons and not wide.digits
        if joined and kind and own.tendons and own.digits and scene.next_word(own.j) in _CLOSES | {""}:
            return targets_of(desk, scene, own)
    return []


def _label_with(scene: Scene, group: Group, before: list[Group]) -> list[Group]:
    """'FDP index, FPL: four-strand cruciate', 'FDP x2 and FPL: ...': the tendons one label lists before a group."""
    if group not in before or not group.tendons or scene.next_word(_counted_end(scene, group)) not in (":", "-"):
        return []
    listed: list[Group] = []
    last = group
    for earlier in reversed(before[: before.index(group)]):
        between = [w for w in scene.words(_counted_end(scene, earlier), last.i) if w not in _CUT_ONES]
        if not earlier.tendons or between not in ([","], ["and"], [",", "and"], ["+"], ["&"]):
            break
        listed, last = [earlier, *listed], earlier
    return listed if last.i == scene.sentence.i else []


_CUT_ONES = frozenset(["both", "all", "the", "two", "three", "divided", "cut", "severed", "injured"])  # 'and both cut'


def _counted_end(scene: Scene, group: Group) -> int:
    """Return the word behind a group and the count behind its name: 'FDP x2', 'FDP (x 2)'."""
    words = scene.page.words
    if not group.every or not times_told(words, group.j):
        return group.j
    return group.j + (4 if words[group.j] == "(" else 2)


def _so_many_named(desk: Desk, scene: Scene, i: int, groups: list[Group]) -> list[Target]:
    """'The profundus and the two superficiales were sewn ..., and each of the three received a running 6-0'."""
    first, last = scene.part(i)
    named = [g for g in groups if g.tendons and not g.place and g.j <= first]
    if first == scene.sentence.i or not named or any(first <= g.i < last and g.tendons for g in groups):
        return []
    count = count_told(desk, scene, i)
    if count == _PAIR and named[-1].tendons == ("FDS",) and "slips" in scene.words(named[-1].i, first):
        return targets_of(desk, scene, named[-1])  # 'FDS repaired too, radial and ulnar slips alike, using 4-0 in both'
    found = list(dict.fromkeys(t for g in named for t in targets_of(desk, scene, g))) if count > 1 else []
    found = of_the_parted(desk, scene, found)
    return found if len(found) == count else []


def _with_those_added(desk: Desk, scene: Scene, i: int, groups: list[Group]) -> list[Target]:
    """'All divided profundi and superficiales, plus the half cut index FDS, with 3-0 Ticron': of all of them."""
    named = [g for g in groups if g.tendons and not g.place and g.j <= i]
    between = scene.words(named[-2].j, named[-1].i) if len(named) > 1 else []
    if "plus" not in between or len(between) > _LONGEST_JOIN or scene.part(i)[0] < named[-1].j:
        return []
    return list(dict.fromkeys(t for g in named for t in targets_of(desk, scene, g)))


_LONGEST_JOIN = 6  # words of ', plus the half cut'


def _not_of_a_whole_one(desk: Desk, scene: Scene, found: list[Target], before: list[Group]) -> list[Target]:
    """'FDP completely divided; FDS intact; 4-strand cruciate': the tendon before it in the sentence that was cut."""
    if not found or any(desk.extents.get(t) != "intact" or t in desk.treatments for t in found):
        return []
    digits = {t.digit for t in found}
    named = [t for g in before if g.tendons for t in group_targets(scene, g)]
    return [t for t in named if t.digit in digits and t not in found and desk.is_cut(t)]


def _of_the_digit(found: list[Target], digit: Group, tendon: Group) -> list[Target]:
    """'both FDPs ..., in the long as ...'; 'the ring FDP with six strands, the little with four': the other's FDP."""
    own = [t for t in found if t.digit in digit.digits]
    if own or tendon.i > digit.i:
        return own or found
    return [Target(d, t) for d in digit.digits for t in tendon.tendons if has(d, t)]


def _put_around(desk: Desk, scene: Scene, i: int, j: int, groups: list[Group]) -> list[Target]:
    """'a running 6-0 was then laid around the profundus': the tendon behind it that it is put around or on."""
    ends = (k for k in range(j, scene.sentence.j) if scene.page.words[k] in _CLAUSE_ENDS)
    last = next(ends, scene.sentence.j)
    beside = next((g for g in groups if g.i == j and g.tendons), None)
    closed = beside is not None and (beside.j >= scene.sentence.j or scene.page.words[beside.j] in _CLOSES)
    opens = ("(", "[")
    bracketed = next((g for g in groups if g.i == j + 1 and g.tendons and scene.page.words[j] in opens), None)
    if bracketed is not None and _in_brackets(scene, bracketed):
        return targets_of(desk, scene, bracketed)  # 'Sutures used: 4-0 Ethibond (FDP), 5-0 PDS (FDS)'
    if beside is not None and closed and not any(g.j == i and g.tendons for g in groups):
        return targets_of(desk, scene, beside)  # '3-0 Ethibond FDS; 4-0 nylon FDP'
    group = next((g for g in groups if j <= g.i < last and (g.tendons or g.digits or g.generic == "all")), None)
    if group is None:
        return []
    if group.generic == "all" and not (group.tendons or group.digits):
        # '..., and added a running 6-0 Prolene to each'
        lead = scene.words(j, group.i)
        each = scene.page.words[group.i] in ("each", "both") and lead[-1:] in (["to"], ["round"])
        used = scene.words(group.i, group.j) == ["both"] and scene.next_word(group.j) in _CLOSES | {""}
        used = used and lead[-1:] in (["for"], ["in"]) and _USED_FOR.issuperset(lead)  # '4-0 being used for both'
        return targets_of(desk, scene, group) if each or used else []
    lead = [w for w in scene.words(j, group.i) if w not in _DETERMINERS]
    around = lead[-1:] in (["around"], ["round"])
    if not lead or lead[-1] not in _PUT_AROUND or not (around or (group.tendons and len(lead) <= 2)):
        return []
    own = any(i <= m.i < j for m in scene.of("material"))
    others = [m for m in scene.of("material", "stitch", "strandword") if j <= m.i < group.i]
    if len(others) > (not own):
        return []
    return targets_of(desk, scene, group)


def _in_brackets(scene: Scene, group: Group) -> bool:
    """Tell whether brackets hold a tendon and no more than a word of its part: '(FDP)', '(FDP rim)'."""
    behind = scene.words(group.j, min(group.j + 2, scene.sentence.j))
    return behind[:1] in ([")"], ["]"], [","]) or behind == ["rim", ")"]


def _own_group(desk: Desk, scene: Scene, i: int, j: int, groups: list[Group]) -> list[Target]:
    """'a double Tsuge in the index and a single one in the middle'; 'the last two', 'the former'."""
    stitch = next((m for m in scene.of("stitch") if 0 <= m.i - j <= 1), None)
    behind = j if stitch is None else stitch.j  # 'a four-strand Strickland in the thumb'
    for group in groups:
        between = scene.words(behind, group.i)
        if group.digits and not group.tendons:
            between = _placed_where(scene, behind, group.i)
        if (
            group.digits
            and j <= group.i
            and 1 <= len(between) <= 3
            and between[0] in ("in", "for", "on")
            and all(w in ("in", "for", "on", "the", "both") for w in between)
        ):
            if len([g for g in groups if g.digits and g.j > j]) < 1 or group.generic:
                continue
            return _of_the_kind_told(desk, scene, group) or targets_of(desk, scene, group)
    first, last = scene.part(i)
    words = " ".join(scene.words(first, last))
    named = [g for g in groups if g.tendons and g.j <= i]
    if "last two" in words and len(named) >= 2:
        return [t for g in named[-2:] for t in targets_of(desk, scene, g)]
    focus = list(scene.setting.focus)
    if not named and len(focus) == 2 and ("the former" in words or "the latter" in words):
        return [focus[0 if "the former" in words else 1]]
    if "the latter" in words and named:
        return targets_of(desk, scene, named[-1])
    return []


def _placed_where(scene: Scene, i: int, j: int) -> list[str]:
    """Return words i to j without those that name the suture: '3-0 was used in', 'running suture of 6-0 in the'."""
    of_threads = {k for m in scene.of("material", "looped") for k in range(m.i, m.j)}
    while i < j and (scene.page.words[i] in _USED_NOUNS or i in of_threads or scene.page.words[i].endswith("-0")):
        i += 1
    return scene.words(i, j)


def _headed_by_all(scene: Scene, i: int) -> bool:
    """'Both cores are cruciate, grasping not locked, knots buried': the parts of a list are said of what opens it."""
    first = scene.part(scene.sentence.i)
    own = first[1] <= i and not any(g.tendons or g.digits or g.generic for g in scene.setting.groups)
    return own and ";" not in scene.words(first[0], i) and said_of_all(scene, first[0])


def _of_the_kind_told(desk: Desk, scene: Scene, fingers: Group) -> list[Target]:
    """'The three profundi were sewn with 3-0 in the middle and ring and 4-0 in the little finger': their profundi."""
    before = [g for g in scene.setting.groups if g.tendons and g.j <= fingers.i and not (g.reference or g.excepted)]
    if fingers.tendons or not before or not (before[-1].every or set(fingers.digits) < set(before[-1].digits)):
        return []
    kinds = before[-1].tendons
    found = [Target(d, t) for d in fingers.digits for t in kinds if has(d, t)]
    return [t for t in found if desk.may_be_repaired(t)] if len(kinds) == 1 else []


def said_of_all(scene: Scene, k: int) -> bool:
    """Tell whether the part in which word k stands speaks of every repair: 'each repair', 'every core suture'."""
    first, last = scene.part(k)
    words = scene.words(first, last)
    if any(g.tendons and g.j <= k and not g.reference and not g.every for g in scene.setting.groups):
        return False
    for n, word in enumerate(words):
        after = words[n + 1 : n + 4]
        if after[:2] == ["of", "the"] and _FLEXORS & set(words[n + 3 : n + 6]):
            after = [w for w in words[n + 4 : n + 7] if w not in _FLEXORS]  # 'each of the three FDP repairs'
        if word == "any" and words[n - 1 : n] in (["without"], ["not"]):
            continue  # '...; the superficiales were sewn with 3-0, without any epitendinous suture'
        if word in _ALL and not _ALL_OF.isdisjoint(after) and _ENDS_AND_SIDES.isdisjoint(after[:2]):
            return True
    return False


def _fuller(group: Group, pool: list[Group], named: list[Group]) -> Group:
    """A digit alone gives way to a tendon named beside it."""
    if group.tendons or group.generic:
        return group
    tendons = [g for g in pool if g in named]
    return tendons[-1] if tendons and not group.every else group


def targets_of(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """Return the tendons a group named in the sentence stands for, where a suture is said of it."""
    subject_i, subject_j = group.i, group.j
    if group.four and not group.digits and any(t in ("FDP", "FDS") for t in group.tendons):
        sewn = [t for t in desk.sewn() if t.tendon in group.tendons]  # 'All FDPs 6/0 Prolene running'
        cut = [t for t in desk.repairable() if t.tendon in group.tendons]  # 'All FDPs got .... All FDSs got ...'
        if sewn or cut:
            return sewn or cut
    if group.tendons:
        found, _ = owners(desk, scene, subject_i, subject_j)
        every = _behind_the_whole_ones(desk, scene, group)
        if every:
            return every
        alive = [t for t in found if desk.extents.get(t) != "intact"]
        # 'FDP index cut, FDP ring intact. FDP: four strands of 3-0': of the one that was cut
        cut = desk.repairable() if not (alive or group.digits) else []
        return alive or [t for t in cut if t.tendon in group.tendons] or found
    slips = _both_slips(scene, group)
    if slips is not None:
        return targets_of(desk, scene, slips)
    if group.generic == "all" and pair_in_focus(desk, scene, group):
        return list(scene.setting.focus)
    if group.generic == "all" and not is_the_rest(scene, group):
        before = [g for g in scene.setting.groups if g.j <= group.i and not g.reference]
        first = next((n for n, g in enumerate(before) if g.tendons), len(before))
        named = [g for g in before[first:] if g.tendons or (g.digits and _with_stitch(scene, g))]
        if (
            named
            and scene.page.words[group.i] in ("each", "both", "all", "every")
            and not group.digits
            and group.i > scene.sentence.i + 1
        ):
            return _taken_together(desk, scene, named, group)
        wide = scene.setting.wide if scene.words(group.i, group.j) == ["every", "one"] else ()
        sewn = [t for t in desk.sewn(group.digits or None) if not wide or t.tendon in wide]
        lead = scene.words(max(scene.sentence.i, group.i - 4), group.i)
        counted = _so_many_cut(desk, scene, group)
        if counted and len(sewn) != len(counted):
            return counted
        words = {*scene.words(group.i, group.j), *(w for w in lead if w in ("each", "both"))}
        sewn = meant_by_all(desk, scene, group.i, words, sewn)  # 'around each of these two tendons'
        if "both" in words and len(sewn) < _PAIR and not group.digits:
            sewn = _pair_spoken_of(desk, scene) or sewn
        return fingers_only(scene, group, sewn)
    if is_the_rest(scene, group):
        left = others(desk, scene, group, desk.repairable())
        if group.generic != "others" and len(left) > 1:
            return []  # 'The other took six strands': of which of several is not told
        if scene.of("material", "stitch", "strandword"):
            return left
        return [t for t in others(desk, scene, group, desk.sewn()) if desk.has_suture(t)] or left
    if group.every:
        return desk.sewn()
    found = both_of_them(desk, scene, group) or carried(desk, scene, near_digits(scene, group) or None)[0]
    return _deep_one_open(desk, scene, found) or found


def _both_slips(scene: Scene, group: Group) -> Group | None:
    """'FDP repaired with 3-0; FDS slips repaired, 4-0 for both': the slips, and not both tendons."""
    if group.generic != "all" or scene.words(group.i, group.j) not in (["both"], ["each"]):
        return None
    last = next((g for g in reversed(scene.setting.groups) if g.tendons and g.j <= group.i and not g.reference), None)
    slips = last is not None and "slips" in scene.words(last.i, group.i)
    return last if slips and last is not None and last.tendons == ("FDS",) else None


def is_the_rest(scene: Scene, group: Group) -> bool:
    """Tell whether a group is 'the others', or 'the other' of two."""
    return group.generic == "others" or scene.words(group.i, group.j) == ["the", "other"]


def _pair_spoken_of(desk: Desk, scene: Scene) -> list[Target]:
    """'Middle: FDP cut. Ring: FDP cut, and its nerve. Both got four strands': the two told cut, not saying how far."""
    told = [t for t in dict.fromkeys(spoken_of(desk, scene)) if t.digit and t.slip is None]
    whole = [t for t in told if desk.extents.get(t) != "intact"]
    return whole if len(whole) == _PAIR and len({t.tendon for t in whole} | {"FDP"}) == 1 else []


def _so_many_cut(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'All three tendons with 3-0 Prolene': the tendons told to be cut, where they are as many as that."""
    told = [count_of(w) for w in scene.words(max(scene.sentence.i, group.i - 2), group.j)]
    cut = [t for t in desk.cut() if t.digit or t.tendon in WRIST]
    if max(told, default=0) == len(cut) > _PAIR:
        return cut
    through = [t for t in cut if desk.extents.get(t) != "partial"]  # 'all three: Kirchmayr', where a fourth was scored
    labels = group.i <= scene.sentence.i + 1 and scene.next_word(group.j) == ":"
    return through if labels and max(told, default=0) == len(through) > _PAIR else []


_PAIR = 2


def fingers_only(scene: Scene, group: Group, targets: list[Target]) -> list[Target]:
    """'the four finger tendons', 'all digital flexors': not those of the wrist."""
    named = [g for g in scene.setting.groups if g.generic == "all" and g.i <= group.i]
    if not any(scene.word_before(g.i) in ("finger", "digital") for g in named):
        return targets
    return [t for t in targets if t.digit] or targets


def _taken_together(desk: Desk, scene: Scene, named: list[Group], group: Group) -> list[Target]:
    """'FDP ring cut, FDP middle cut, both repaired': so many of the tendons named before as the word takes up."""
    found = _meant_by(desk, scene, named[-1])
    of_all = scene.page.words[group.i] in ("all", "every") or scene.next_word(group.j) in _CASES
    for before in reversed(named[:-1]):
        if len(found) > 1 and not of_all:
            break
        found = list(dict.fromkeys([*_meant_by(desk, scene, before), *found]))
    return found


_CASES = frozenset(["case", "instance"])  # 'the profundi and then the superficiales, in each case with 3-0'


def _with_stitch(scene: Scene, group: Group) -> bool:
    """'the middle profundus with a Strickland and the ring with a cruciate': a finger that has a suture of its own."""
    return scene.next_word(group.j) == "with" and any(0 < m.i - group.j <= 5 for m in scene.of("stitch", "strandword"))


def _meant_by(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """Return the tendons of a group; a finger alone has the tendon named before it: 'the middle FDP and the ring'."""
    if group.tendons:
        return targets_of(desk, scene, group)
    before = [g.tendons for g in scene.setting.groups if g.tendons and g.j <= group.i]
    return [Target(d, t) for d in group.digits for t in before[-1] if has(d, t)]


def _in_all_of_them(desk: Desk, scene: Scene) -> list[Target]:
    """'Bites of 10 mm were taken in both', '... in all three': of as many deep flexors as were sewn so far."""
    words = [w for w in scene.words(scene.sentence.i, scene.sentence.j) if w not in (".", ";")]
    count = 2 if words[-2:] in (["in", "both"], ["on", "both"]) else 0
    if words[-3:-1] in (["in", "all"], ["on", "all"]):
        count = count_of(words[-1])
    sewn = [t for t in desk.sewn() if desk.has_suture(t)] if count else []
    deep = [t for t in sewn if t.tendon in ("FDP", "FPL")] or sewn
    return deep if len(deep) == count else []


def _carried(desk: Desk, scene: Scene) -> tuple[list[Target], list[Reason]]:
    wide = [] if scene.setting.groups else _in_all_of_them(desk, scene)
    if wide:
        return wide, []
    found, reasons = carried(desk, scene)
    deep = _deep_one_open(desk, scene, found)
    return (deep, [TAKEN_FOR_DEEP]) if deep else (found, reasons)


def _deep_one_open(desk: Desk, scene: Scene, found: list[Target]) -> list[Target]:
    """'FDP sewn with four strands. FDS sewn with 4-0. A 6-0 running stitch completed the repair.': it is the FDP's.

    What goes round a superficialis is told with its name, or on its line; a running suture told by itself, where the
    deep flexor of the finger was sewn and has none yet, is taken for that one's.
    """
    role = any(m.value == "peripheral" for m in scene.of("role")) or "pattern" in scene.kinds
    if not role or scene.kinds & {"stitch", "strandword", "slip"} or scene.sentence.prefix:
        return []
    if not found or any(t.tendon != "FDS" for t in found) or _on_its_line(desk, scene):
        return []
    deep = [Target(d, "FDP") for d in dict.fromkeys(t.digit for t in found)]
    return (
        deep
        if all(desk.may_be_repaired(t) and desk.has_suture(t) and not _has_round(desk, scene, t) for t in deep)
        else []
    )


def _has_round(desk: Desk, scene: Scene, target: Target) -> bool:
    """Tell whether a peripheral suture of a tendon, or that it has none, was told before a sentence."""
    told = desk.told_of("repairs", target)
    return any(f.field == "peripheral" and f.order < scene.sentence.i for f in told)


def _on_its_line(desk: Desk, scene: Scene) -> bool:
    """'FDS: repaired, both slips. Becker, 3-0. Circumferential 5-0.': a sentence of a line that a tendon opens."""
    before = desk.scene_before(scene)
    if scene.setting.labelled and before is not None and not before.kinds & {"stitch", "strandword", "material"}:
        return True
    while before is not None and before.sentence.block == scene.sentence.block:
        first = next((g for g in before.setting.groups if g.tendons), None)
        if first is not None and first.tendons == ("FDS",) and scene.page.words[first.j : first.j + 1] == [":"]:
            return True
        before = desk.scene_before(before)
    return False


def lay_suture(desk: Desk, scene: Scene, i: int, j: int, name: str, value: Value, rule: str, *reasons: Reason) -> None:
    """Lay one value down for every tendon the suture in words i to j belongs to."""
    targets, doubts = suture_owners(desk, scene, i, j)
    for target in targets:
        desk.tendon(scene, target, name, value, [(i, j)], rule, *doubts, *reasons)


def respective_part(scene: Scene, i: int) -> tuple[int, int]:
    """Return the words that one 'respectively' deals out: from the one before word i to the one behind it."""
    marks = [k for k in range(scene.sentence.i, scene.sentence.j) if scene.page.words[k] == "respectively"]
    first = max((k for k in marks if k < i), default=scene.sentence.i)
    return first, min((k for k in marks if k > i), default=scene.sentence.j)


def all_in_turn(desk: Desk, scene: Scene, peers: list[int]) -> list[Target]:
    """'Strands: 4 and 2 respectively.': as many values as tendons were sewn, in the order in which these were named.

    Nobody where the sentence names a tendon or a finger itself, or where their number is another.
    """
    if "respectively" not in scene.said or any(g.tendons or g.digits for g in scene.setting.groups):
        return []
    may = set(desk.repairable()) | {t for t in desk.named if desk.treatments.get(t) == "repaired"}
    sewn = [t for t in desk.named if t in may]
    return sewn if len(sewn) == len(peers) > 1 else []


def respective(scene: Scene, i: int, peers: list[int], targets: list[Target]) -> list[Target]:
    """'3-0 and 4-0 respectively': the n-th of as many values as tendons belongs to the n-th tendon."""
    if "respectively" not in scene.said or i not in peers:
        return targets
    first, last = respective_part(scene, i)
    peers = [k for k in peers if first <= k < last]
    digits = list(dict.fromkeys(t.digit for t in targets))
    n = peers.index(i)
    if len(peers) == len(targets):
        return [targets[n]]
    if len(peers) == len(digits):
        return [t for t in targets if t.digit == digits[n]]
    return targets
