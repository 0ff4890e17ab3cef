"""How much of each tendon was cut, or that it was not."""

from notereader.reader.desk import HURT_KINDS, Desk
from notereader.reader.groups import DIGITS, Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.needs import needs
from notereader.reader.page import Mention, Quantity
from notereader.reader.rules.cuts.cut_cells import FAR, answered_cut, cell_of_cut, cell_of_how_far, labels_extent
from notereader.reader.rules.cuts.cut_likeness import (
    CUT,
    IN_ITS,
    NONE,
    PLACED,
    SAME,
    as_there,
    both_slips,
    cut_too,
    neither_cut,
    none_of_slip,
    not_this_one,
    same_again,
    so_was,
    so_was_the_next,
)
from notereader.reader.rules.cuts.cut_owners import cut_targets
from notereader.reader.rules.cuts.cut_shares import (
    listed_shares,
    part_cut,
    share_again,
    told_as_fraction,
    told_in_percent,
    with_name_of,
)
from notereader.reader.rules.cuts.cut_told_again import told_again
from notereader.reader.rules.cuts.cut_words import of_no_tendon, of_trimming, tells_how_far
from notereader.reader.rules.cuts.given_way import GAVE_WAY, TORN, TORN_NOUNS, avulsion, gave_way, torn_off
from notereader.reader.rules.cuts.nearly_through import but_for_fibres
from notereader.reader.rules.cuts.neither_of_those import neither_of_those
from notereader.reader.rules.cuts.parted import which
from notereader.reader.rules.cuts.spared import spared_by_the_wound
from notereader.reader.rules.cuts.still_so import still_so
from notereader.reader.rules.dealt_out import dealt_out, kinds_told, targets_of_kind
from notereader.reader.rules.owners import tendon_owner
from notereader.reader.scene import Scene, group_targets

_HALF = frozenset(["half", "halfway"])
_DEALT = frozenset(["complete", "partial", "intact"])
_OF_WIDTH = [["of", word] for word in ("its", "the", "their")]


@needs(
    kinds=["extent", "fraction", "neutral", "slip"],
    words={"flexors", "left", "missed"}
    | CUT
    | SAME
    | NONE
    | GAVE_WAY
    | TORN
    | TORN_NOUNS
    | {"neither", "not", "so", "too", "still"}
    | FAR.keys(),
    units=["%", ""],
)
def extents(desk: Desk, scene: Scene) -> None:
    """Find how much of each tendon was cut, or that it was not."""
    if scene.sentence.section in ("instructions", "closure", "admin") or _of_a_pulley(scene):
        return
    dealt = _dealt(desk, scene)
    _by_their_words(desk, scene, dealt)
    told_in_percent(desk, scene, dealt)
    share_again(desk, scene)
    listed_shares(desk, scene)
    told_as_fraction(desk, scene)
    _in_continuity(desk, scene)
    spared_by_the_wound(desk, scene)
    both_slips(desk, scene)
    neither_cut(desk, scene)
    neither_of_those(desk, scene)
    still_so(desk, scene)
    same_again(desk, scene)
    so_was_the_next(desk, scene)
    none_of_slip(desk, scene)
    not_this_one(desk, scene)
    _none_cut(desk, scene)
    _all_cut(desk, scene)
    _other_flexors(desk, scene)
    avulsion(desk, scene)
    gave_way(desk, scene)
    torn_off(desk, scene)
    cell_of_cut(desk, scene)
    cell_of_how_far(desk, scene)
    answered_cut(desk, scene)


def _by_their_words(desk: Desk, scene: Scene, dealt: set[tuple[int, int]]) -> None:
    """Read every word for an extent, but for those that are dealt out over fingers already."""
    for mention in scene.of("extent"):
        if (mention.i, mention.j) in dealt or of_trimming(scene, mention) or not scene.told(mention.i):
            continue
        whole = _bruised_but_whole(scene, mention)
        if (mention.value == "contused" and whole is None) or labels_extent(scene, mention):
            continue
        _extent(desk, scene, whole or but_for_fibres(scene, mention) or mention)
        if mention.value == "partial" and (scene.words(mention.i, mention.j) or [""])[0] in _HALF:
            halved = _in_its_slip(scene, mention, cut_targets(desk, scene, mention))
            part_cut(desk, scene, halved, 50.0, mention.i, mention.j)


def _extent(desk: Desk, scene: Scene, mention: Mention) -> None:
    """Lay down how far the tendons were cut that words for it belong to, and those told by their likeness."""
    if of_no_tendon(scene, mention) or _of_the_known(desk, scene, mention):
        return
    so_was(desk, scene, mention)
    targets = cut_targets(desk, scene, mention) or told_again(desk, scene, mention)
    if not targets or not tells_how_far(scene, mention):
        return
    targets = _in_its_slip(scene, mention, _not_otherwise(desk, scene, mention, targets))
    halved = " ".join(scene.words(mention.i, mention.j)).endswith("in half")
    if halved and scene.words(mention.j, mention.j + 2) in _OF_WIDTH:
        part_cut(desk, scene, targets, 50.0, mention.i, mention.j + 2)  # 'cut in half of its width'
        return
    if mention.value == "partial":
        targets = [t for t in targets if t.slip or not _slips_follow(scene, mention, t)]
    _lay_extent(desk, scene, mention, targets)
    cut_too(desk, scene, mention)
    as_there(desk, scene, mention, targets)


def _not_otherwise(desk: Desk, scene: Scene, mention: Mention, targets: list[Target]) -> list[Target]:
    """'Flexor tendons intact except the FDP', 'the one that was cut through': without those it does not hold of."""
    if mention.value == "intact":
        left_out = {t for g in scene.setting.groups if g.excepted and not g.digits for t in g.tendons}
        return [t for t in targets if t.tendon not in left_out]
    if mention.value == "complete" and which(scene, mention):
        return [t for t in targets if desk.extents.get(t) not in ("partial", "intact")]
    return targets


def _lay_extent(desk: Desk, scene: Scene, mention: Mention, targets: list[Target]) -> None:
    """Lay down an extent; a palmaris that was left 'untouched' was only not taken as a graft."""
    word = " ".join(scene.words(mention.i, mention.j))
    unused = word in ("untouched", "preserved") or word.endswith(" touched")
    for target in targets:
        if not (unused and target.tendon == "PL"):
            span = [with_name_of(scene, mention, target)]
            desk.tendon(scene, target, "extent", mention.value, span, f"extent {mention.value}")


def _of_the_known(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'The divided profundus was repaired', of several fingers: the one told to be divided, not that all are."""
    group = next((g for g in scene.setting.groups if g.tendons and 0 <= g.i - mention.j <= 1), None)
    before = scene.word_before(mention.i)
    if group is None or group.digits:
        return False
    known = [t for t in desk.named if t.tendon in group.tendons and desk.extents.get(t) == mention.value]
    if before in ("both", "two", "three", "four"):
        return len(known) == (2 if before == "both" else count_of(before))  # 'both divided profundi were repaired'
    if before != "the":
        return False
    otherwise = (t for t in group_targets(scene, group) if desk.extents.get(t) not in (None, mention.value))
    return bool(known) and (len(scene.setting.digits) > 1 or any(otherwise))


def _in_its_slip(scene: Scene, mention: Mention, targets: list[Target]) -> list[Target]:
    """'The superficialis was divided only in its ulnar slip': of that slip alone."""
    slip = next((m for m in scene.of("slip") if m.value in ("radial", "ulnar") and 0 < m.i - mention.j <= 4), None)
    lead = scene.words(mention.j, slip.i) if slip is not None else []
    lead = lead[1:] if lead[:1] == [","] else lead  # 'cut about halfway, on the ulnar slip only'
    if slip is None or mention.value == "intact" or not IN_ITS.issuperset(lead) or PLACED.isdisjoint(lead):
        return targets
    return [t._replace(slip=slip.value) if t.tendon == "FDS" else t for t in targets]


def _slips_follow(scene: Scene, mention: Mention, target: Target) -> bool:
    """'FDS both slips nicked, radial 10%, ulnar 30%': each slip's own share follows."""
    later = [t for g in scene.setting.groups if g.i >= mention.j for t in group_targets(scene, g) if t.slip]
    return {t.slip for t in later if t[:2] == target[:2]} == {"radial", "ulnar"}


def _bruised_but_whole(scene: Scene, mention: Mention) -> Mention | None:
    """'FDS contused but in continuity': a tendon that was only bruised is whole."""
    said = scene.words(mention.i, mention.j)
    if mention.value != "contused" or said[-2:] != ["in", "continuity"]:
        return None
    return Mention("extent", "intact", mention.i, mention.j)


def _dealt(desk: Desk, scene: Scene) -> set[tuple[int, int]]:
    """'Whole in the index and small, cut through in the ring': lay down what is dealt out, and return its words."""
    told = [m for m in scene.of("extent") if m.value in _DEALT and scene.told(m.i)]
    words = {k for m in told for k in range(m.i, m.j)}
    shares = [q for q in scene.quantities if q.unit == "%" and scene.told(q.i) and q.i not in words]
    bare = [m for m in scene.of("hurt") if scene.told(m.i) and not _measured(scene, m, told, shares)]
    spans = sorted(
        [*((m.i, m.j) for m in told), *((m.i, m.j) for m in bare), *(_share_words(scene, q) for q in shares)]
    )
    dealt = dealt_out(desk, scene, spans)
    for (i, j), digits in dealt.items():
        targets = targets_of_kind(scene, digits)
        value = next((m.value for m in told if m.i == i), "")
        for target in targets if value else ():
            span = [with_name_of(scene, Mention("extent", value, i, j), target)]
            desk.tendon(scene, target, "extent", value, span, f"extent {value}")
        if value == "partial" and scene.page.words[i] in _HALF:
            part_cut(desk, scene, targets, 50.0, i, j)
        for share in (q for q in shares if _share_words(scene, q) == (i, j)):
            part_cut(desk, scene, targets, share.high or 0.0, i, j)
    if not dealt and len(spans) == len(told) == 1:
        _in_each_zone(desk, scene, told[0])
    return set(dealt) | {(q.i, q.j) for q in shares if _share_words(scene, q) in dealt}


def _in_each_zone(desk: Desk, scene: Scene, told: Mention) -> None:
    """'The FDP of the ring was cut through in zone II, that of the small in zone III': told once, of each FDP."""
    zones = [(m.i, m.j) for m in scene.of("zone") if scene.told(m.i)]
    dealt = dealt_out(desk, scene, zones, ("extent", "hurt")) if len(zones) > 1 else {}
    places = [g for g in scene.setting.groups if g.digits]
    if not dealt or len(kinds_told(scene)) != 1 or told.value == "intact" or told.i > min(places[-1].i, zones[-1][0]):
        return
    for target in targets_of_kind(scene, tuple(d for digits in dealt.values() for d in digits)):
        span = [with_name_of(scene, told, target)]
        desk.tendon(scene, target, "extent", told.value, span, f"extent {told.value}")


def _measured(scene: Scene, hurt: Mention, told: list[Mention], shares: list[Quantity]) -> bool:
    """Tell whether words for a hurt only say what the extent or share beside them measures: 'cut', '60 % cut'."""
    if any(m.i <= hurt.i < m.j or hurt.i <= m.i < hurt.j for m in told):
        return True
    return any(0 <= hurt.i - q.j <= 1 or _to_share(scene, hurt, q) for q in shares)


def _to_share(scene: Scene, hurt: Mention, share: Quantity) -> bool:
    """'Cut to about 60 %': tell whether a word for a hurt leads to a share."""
    return hurt.j <= share.i and _ABOUT.issuperset(scene.words(hurt.j, share.i))


_ABOUT = frozenset(["to", "about", "some", "roughly", "around", "by", "at", "only", "just", "through", "over", "for"])


def _share_words(scene: Scene, share: Quantity) -> tuple[int, int]:
    """Return the words of a share with the word for the cut on either side: 'cut to 60 %', '60 % divided'."""
    i, j = share.i, share.j
    for m in scene.of("hurt"):
        i = min(i, m.i) if _to_share(scene, m, share) else i
        j = max(j, m.j) if 0 <= m.i - share.j <= 1 else j
    return i, j


def _all_cut(desk: Desk, scene: Scene) -> None:
    """'FDP all cut, ends tidy', 'radial slip all cut': all of one tendon, told right behind its name."""
    for group in (g for g in scene.setting.groups if g.tendons and not (g.reference or g.every)):
        behind = scene.words(group.j, group.j + 2)
        ends = scene.next_word(group.j + 2) in ("", ",", ";", ".", "and", ")")
        if behind == ["all", "cut"] and ends and scene.told(group.j) and len(group.pairs) == 1:
            for target in group_targets(scene, group):
                desk.tendon(scene, target, "extent", "complete", [(group.i, group.j + 2)], "extent complete")


def _of_a_pulley(scene: Scene) -> bool:
    """'A2: distal half divided to make room for the repair': the line of a pulley, with no tendon named on it."""
    first = scene.sentence.i
    label = any(m.i == first and scene.next_word(m.j) == ":" for m in scene.of("pulley"))
    return label and not any(g.tendons for g in scene.setting.groups)


def _in_continuity(desk: Desk, scene: Scene) -> None:
    """'the radial slip was in continuity' of a tendon nothing else was said of."""
    for mention in scene.of("neutral"):
        if scene.words(mention.i, mention.i + 2) != ["in", "continuity"] or not scene.told(mention.i):
            continue
        so_was(desk, scene, Mention("extent", "intact", mention.i, mention.j))
        first, last = scene.part(mention.i)
        hurt = any(first <= m.i < last and m.value in HURT_KINDS for m in scene.of("extent"))
        hurt = hurt or any(q.unit == "%" and first <= q.i < last for q in scene.quantities)
        hurt = hurt or _in_part(scene, mention)
        whole = Mention("extent", "intact", mention.i, mention.i + 2)
        owned = scene.owner(mention.i, mention.j) is not None
        targets = (owned and cut_targets(desk, scene, whole)) or tendon_owner(desk, scene, mention.i, mention.j)[0]
        if not hurt and not _worn(scene, mention) and not scene.negated(mention.i, mention.j):
            for target in targets:
                desk.tendon(scene, target, "extent", "intact", [with_name_of(scene, mention, target)], "extent intact")


def _in_part(scene: Scene, mention: Mention) -> bool:
    """'Two thirds in continuity', 'partly in continuity', 'in continuity in part only': the rest is cut."""
    lead = scene.words(max(scene.sentence.i, mention.i - _BESIDE_SHARE), mention.i)
    shared = any(0 <= mention.i - m.j < _BESIDE_SHARE for m in scene.of("fraction"))
    behind = scene.words(mention.j, mention.j + 2) == ["in", "part"] or scene.next_word(mention.j) in _PARTLY
    return shared or behind or not _PARTLY.isdisjoint(lead)


_BESIDE_SHARE = 3  # words
_PARTLY = frozenset(["mostly", "partly", "partially", "largely", "nearly", "almost", "half", "barely"])


def _worn(scene: Scene, mention: Mention) -> bool:
    """'Frayed on the same spur but in continuity': not cut through, which is not to say whole."""
    subject = scene.owner(mention.i, mention.j)
    first = subject.j if subject is not None and subject.j <= mention.i else scene.sentence.i
    bruised = {m.i for m in scene.of("extent") if m.value == "contused"}  # 'bruised and in continuity': whole
    ends = (m for m in scene.of("ends") if first <= m.i < mention.i and m.i not in bruised)
    return any(m.value != "clean" and scene.told(m.i) for m in ends)


@needs(words=["flexors", "flexor"])
def _other_flexors(desk: Desk, scene: Scene) -> None:
    """'Remaining flexors of the fingers: intact' at the wrist: both flexors of each finger no cut was told of."""
    words = scene.page.words
    for k in range(scene.sentence.i + 1, scene.sentence.j):
        named = words[k] == "flexors" or (words[k] == "flexor" and scene.next_word(k + 1) == "tendons")
        if not named or not scene.told(k) or not _of_the_fingers(scene, k):
            continue
        before = set(scene.words(max(scene.sentence.i, k - 4), k))
        before |= {"other"} if "eight" in scene.words(k - 3, scene.sentence.j) else set()  # 'all eight'
        before |= {"other"} if scene.words(k - 2, k - 1) == ["all"] else set()  # 'all finger flexors intact'
        whole = [m for m in scene.of("extent") if m.value == "intact" and m.i > k and not scene.negated(m.i, m.j)]
        at_wrist = bool(desk.values_told("zone") & {"IV", "V"}) or {"FCR", "FCU", "PL"} & desk.values_told("tendon")
        if not whole or not at_wrist or before.isdisjoint(("remaining", "other", "rest")):
            continue
        for target in (Target(d, t) for d in DIGITS[1:] for t in ("FDP", "FDS")):
            hurt = desk.extents.get(target) in HURT_KINDS or target in desk.hurt
            if not hurt and target not in desk.treatments:
                desk.tendon(scene, target, "extent", "intact", [(k - 1, whole[0].j)], "extent intact")


def _of_the_fingers(scene: Scene, k: int) -> bool:
    """'The remaining finger flexors', 'the other flexors' beside those of the wrist; not 'the other flexor sheath'."""
    behind = scene.words(k + 1, k + 4)
    return scene.word_before(k) in ("finger", "digital", "remaining", "other") or behind in (
        ["of", "the", "fingers"],
        ["to", "the", "fingers"],
    )


def _none_cut(desk: Desk, scene: Scene) -> None:
    """'FDS: 0 percent.'"""
    for q in scene.quantities:
        if q.unit == "%" and q.low == 0 == q.high and scene.told(q.i):
            for target in tendon_owner(desk, scene, q.i, q.j)[0]:
                desk.tendon(scene, target, "extent", "intact", [(q.i, q.j)], "extent intact")
