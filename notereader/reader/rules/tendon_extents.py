"""How much of each tendon was cut, or that it was not."""

from itertools import pairwise

from notereader.reader.desk import HURT_KINDS, Desk, tendon_owner
from notereader.reader.groups import DIGITS, Group, Target
from notereader.reader.measures import count_of
from notereader.reader.needs import needs
from notereader.reader.page import Break, Mention, Quantity
from notereader.reader.rules.cut_cells import FAR, answered_cut, cell_of_cut, cell_of_how_far, labels_extent
from notereader.reader.rules.cut_likeness import (
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
from notereader.reader.rules.cut_owners import all_of_them, cut_targets, cut_through, state_after_state
from notereader.reader.rules.cut_shares import (
    listed_shares,
    part_cut,
    share_again,
    told_as_fraction,
    told_in_percent,
    with_name_of,
)
from notereader.reader.rules.cut_told_again import told_again
from notereader.reader.rules.dealt_out import dealt_out, kinds_told, targets_of_kind
from notereader.reader.rules.given_way import GAVE_WAY, TORN, TORN_NOUNS, avulsion, gave_way, torn_off
from notereader.reader.rules.not_touched import untouched_though_cut
from notereader.reader.rules.parted import attributive, which
from notereader.reader.rules.spared import spared_by_the_wound
from notereader.reader.rules.strangers import has_strange_subject, labelled_stranger
from notereader.reader.scene import Scene, group_targets, series
from notereader.vocabulary.wordlists import word_list

_IS_DEED_WORDS = word_list("tendons", "is_deed_words")
_BARE_IS_CUT_WORDS = word_list("tendons", "bare_is_cut_words") | {""}
_BARE_IS_CUT_WORDS_2 = word_list("tendons", "bare_is_cut_words_2") | {""}
_TELLS_INTACT_WORDS = word_list("tendons", "tells_intact_words")
_TELLS_INTACT_WORDS_2 = word_list("tendons", "tells_intact_words_2")
_TELLS_INTACT_WORDS_3 = word_list("tendons", "tells_intact_words_3") | {""}
_BARE = frozenset(
    [
        "all the way",
        "through",
        "out",
        "off",
        "gone",
        "right across",
        "clean across",
        "right through",
        "clean through",
        "cleanly through",
        "straight through",
        "across",
    ]
)

_BARE_BETWEEN = word_list("tendons", "bare_between")
_NOT_A_CUT = word_list("tendons", "not_a_cut")
_SHARE_LEADS = word_list("tendons", "share_leads")
_IN_FULL = (["in", "full"], ["in", "total"], ["in", "toto"], ["in", "continuity"], ["throughout", "its"])
_ABSENT = frozenset(["absent", "missing", "lacking", "wanting"])
_VARIANT = frozenset(["variant", "variation", "anatomical", "anatomic"])
_WHERE = frozenset(["above", "at", "in", "over", "proximal", "just", "near", "on"])


def _of_trimming(scene: Scene, mention: Mention) -> bool:
    """'FDS not cut back', 'the ends were not cut down': what was not trimmed says of no tendon that it is whole."""
    return scene.page.words[mention.j - 1] in ("cut", "pared") and scene.next_word(mention.j) in _TRIMMED_OFF


_TRIMMED_OFF = frozenset(["back", "down", "away", "off", "short", "out"])


@needs(
    kinds=["extent", "fraction", "neutral", "slip"],
    words={"flexors", "left", "missed"}
    | CUT
    | SAME
    | NONE
    | GAVE_WAY
    | TORN
    | TORN_NOUNS
    | {"neither", "not", "so", "too"}
    | FAR.keys(),
    units=["%", ""],
)
def extents(desk: Desk, scene: Scene) -> None:
    """Find how much of each tendon was cut, or that it was not."""
    if scene.sentence.section in ("instructions", "closure", "admin") or _of_a_pulley(scene):
        return
    dealt = _dealt(desk, scene)
    for mention in scene.of("extent"):
        if (mention.i, mention.j) in dealt or _of_trimming(scene, mention):
            continue
        whole = _bruised_but_whole(scene, mention)
        if scene.told(mention.i) and (whole or mention.value != "contused") and not labels_extent(scene, mention):
            _extent(desk, scene, whole or mention)
            if mention.value == "partial" and (scene.words(mention.i, mention.j) or [""])[0] in _HALF:
                halved = _in_its_slip(scene, mention, cut_targets(desk, scene, mention))
                part_cut(desk, scene, halved, 50.0, mention.i, mention.j)
    told_in_percent(desk, scene, dealt)
    share_again(desk, scene)
    listed_shares(desk, scene)
    told_as_fraction(desk, scene)
    _in_continuity(desk, scene)
    spared_by_the_wound(desk, scene)
    both_slips(desk, scene)
    neither_cut(desk, scene)
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


def _one_pronoun(scene: Scene, mention: Mention) -> bool:
    """'That tendon she never had strong, but it is whole', 'I was wrong: it was sound': of the one tendon named."""
    first = scene.page.words[mention.i]
    lead = scene.words(max(scene.sentence.i, mention.i - 2), mention.i)
    it = lead in (["it", "is"], ["it", "was"]) or (first in ("was", "is") and lead[-1:] == ["it"])
    return (
        it
        and sum(bool(g.tendons) for g in scene.setting.groups) == 1
        and not any(g.generic for g in scene.setting.groups)
    )


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


_HALF = frozenset(["half", "halfway"])
_DEALT = frozenset(["complete", "partial", "intact"])


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


def _of_jewellery(scene: Scene, mention: Mention) -> bool:
    """'His ring was cut off in the emergency room'."""
    before = scene.words(max(scene.sentence.i, mention.i - 4), mention.i)
    return any(a in ("his", "her", "wedding", "a") and b in ("ring", "band", "watch") for a, b in pairwise(before))


def _behind_intact(scene: Scene, mention: Mention) -> bool:
    """Tell whether a word that means the whole of a thing closes a statement that it is whole."""
    end = mention.i - (scene.word_before(mention.i) in (",", "-", "("))
    return any(m.value == "intact" and m.j == end for m in scene.of("extent", "opened"))


_WHOLLY = frozenset(
    [
        *("completely", "all of it", "fully", "entirely", "totally", "throughout", "all the way"),
        *("all the way through", "right through", "all through", "the whole way through", "whole way through"),
    ]
)
_PIECES = frozenset(["fibers", "fibres", "flap", "flaps", "fringe", "fringes", "tag", "tags", "shreds", "fray"])
# 'A nick not worth a stitch', 'nick not repaired': the cut itself is not denied.
_LEFT_SO = [["not", w] for w in ("worth", "repaired", "sutured", "sewn", "stitched", "needing", "requiring")]


def _extent(desk: Desk, scene: Scene, mention: Mention) -> None:
    word = " ".join(scene.words(mention.i, mention.j))
    if word == "nick" and scene.word_before(mention.i) in ("cm", "mm") and scene.next_word(mention.j) in _WHERE:
        return  # 'through a 1 cm nick above the wrist'
    if word in ("nick", "nicks") and "through" in scene.words(max(scene.sentence.i, mention.i - 3), mention.i):
        return  # 'harvested through two nicks'
    if word in ("cut off", "cut away") and not _PIECES.isdisjoint(
        scene.words(max(scene.sentence.i, mention.i - 5), mention.i)
    ):
        return  # 'the loose fibres were cut off'
    if word in ("cut off", "cut away") and (has_strange_subject(scene, mention.i) or _of_jewellery(scene, mention)):
        return  # 'The tape was cut off'
    if labelled_stranger(scene, mention.i):
        return  # 'Vincula: intact'
    if word == "out" and scene.word_before(mention.i) == "left":
        return  # 'epitendinous left out'
    if word == "in two" and scene.word_before(mention.i) in ("repair", "repairs", "suture", "sutures", "surgery"):
        return  # 'exploration of three fingers, tendon repair in two'
    if scene.next_word(mention.j) == "by" and any(m.i <= mention.i < m.j for m in scene.of("gap")):
        return  # 'on traction it parted by a millimetre': a gap
    if word in _WHOLLY and _behind_intact(scene, mention):
        return  # 'had been spared completely', 'FDS intact, all of it', 'FDP ok all the way through its excursion'
    if word == "division" and scene.words(max(scene.sentence.i, mention.i - 2), mention.i) == ["from", "the"]:
        return  # 'sutures enter 1.2 cm from the division'
    if "respectively" in scene.said and _shares_dealt_out(scene, mention):
        return
    if attributive(scene, mention) or _of_the_known(desk, scene, mention):
        return
    so_was(desk, scene, mention)
    targets = cut_targets(desk, scene, mention) or told_again(desk, scene, mention)
    if not targets:
        return
    moved = scene.page.words[mention.i - 1] in ("has", "had", "have", "was")
    if word == "gone" and moved and not _where_gone(scene, mention):
        return  # 'the proximal end had gone to the palm'
    blade = any(m.j <= mention.i for m in scene.of("agent")) and cut_through(scene, mention)  # 'the knife went through'
    told_of_all = bool(all_of_them(scene, mention) or state_after_state(scene, mention))
    ticked = scene.words(mention.i - 2, mention.i) == ["x", "]"]  # 'FDP  [x] through  [ ] part'
    if word in _BARE and not (blade or told_of_all or ticked) and not _bare_is_cut(scene, mention):
        return
    column = mention.j < scene.sentence.j and scene.page.breaks[mention.j] == Break.COLUMN  # 'complete   not repaired'
    if (
        word in ("complete", "completely")
        and not column
        and (
            scene.next_word(mention.j) in _NOT_A_CUT
            or any(m.i == mention.j and m.value == "intact" for m in scene.of("extent"))
            or any(d.j == mention.i and d.value in ("excised", "trimmed", "repaired") for d in scene.of("deed"))
        )
    ):
        return
    if mention.value == "intact":
        if (
            untouched_though_cut(scene, mention)
            or _of_whole_finger(scene)
            or _of_the_rest(scene, mention)
            or not _tells_intact(scene, mention, word)
        ):
            return
        left_out = {t for g in scene.setting.groups if g.excepted and not g.digits for t in g.tendons}
        targets = [t for t in targets if t.tendon not in left_out]  # 'flexor tendons intact except the FDP'
    elif scene.negated(mention.i, mention.j) and scene.words(mention.j, mention.j + 2) not in _LEFT_SO:
        return
    if mention.value == "complete" and (
        _is_deed(scene, mention, word)
        or _is_likeness(scene, mention)
        or _share_behind(scene, mention)
        or _share_before(scene, mention)
    ):
        return
    if mention.value == "complete" and which(scene, mention):
        targets = [t for t in targets if desk.extents.get(t) not in ("partial", "intact")]
    targets = _in_its_slip(scene, mention, targets)
    if word.endswith("in half") and scene.words(mention.j, mention.j + 2) in _OF_WIDTH:
        part_cut(desk, scene, targets, 50.0, mention.i, mention.j + 2)  # 'cut in half of its width'
        return
    if mention.value == "partial":
        targets = [t for t in targets if t.slip or not _slips_follow(scene, mention, t)]
    for target in targets:
        unused = word in ("untouched", "preserved") or word.endswith(" touched")
        if target.tendon == "PL" and unused:
            continue
        desk.tendon(
            scene,
            target,
            "extent",
            mention.value,
            [with_name_of(scene, mention, target)],
            f"extent {mention.value}",
        )
    cut_too(desk, scene, mention)
    as_there(desk, scene, mention, targets)


def _of_the_rest(scene: Scene, mention: Mention) -> bool:
    """'UDN cut. Rest intact.': of whatever was not told of, which is not the tendon cut before."""
    lead = [w for w in scene.words(scene.sentence.i, mention.i) if w not in _STATING]
    return lead in (["rest"], ["remainder"], ["everything", "else"], ["all", "else"])


_STATING = frozenset(["the", "was", "were", "is", "are", ":", "-", "and", "seen", "found", "looked"])


def _where_gone(scene: Scene, mention: Mention) -> bool:
    """'The same two tendons had gone at a more distal level', 'the ulnar slip had gone as well': cut there, or too."""
    lead = scene.words(max(scene.sentence.i, mention.i - 3), mention.i - 1)
    named = lead[-1:] != [] and lead[-1] in _GOES
    behind = scene.words(mention.j, mention.j + 2)
    return named and (behind[:1] in (["at"], ["too"], ["also"], ["completely"]) or behind == ["as", "well"])


_GOES = frozenset(["tendons", "tendon", "flexors", "profundus", "superficialis", "fdp", "fds", "slip", "slips"])


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


def _is_deed(scene: Scene, mention: Mention, word: str) -> bool:
    """'divided' can be the surgeon's doing: 'the FDS slip was divided to make room'."""
    if word not in ("divided", "out", "off", "cut clean", "cut across"):
        return False
    after = scene.words(mention.j, mention.j + 4)
    return len(after) > 1 and after[0] == "to" and after[1] in _IS_DEED_WORDS


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


def _shares_dealt_out(scene: Scene, mention: Mention) -> bool:
    """'FDS of both cut 60% and 100% respectively': the shares of its own part of the sentence tell how far."""
    first, last = scene.part(mention.i)
    several = sum(q.unit == "%" for q in scene.quantities) > 1
    return several and any(q.unit == "%" and first <= q.i < last for q in scene.quantities)


_OF_WIDTH = [["of", word] for word in ("its", "the", "their")]


def _bruised_but_whole(scene: Scene, mention: Mention) -> Mention | None:
    """'FDS contused but in continuity': a tendon that was only bruised is whole."""
    said = scene.words(mention.i, mention.j)
    if mention.value != "contused" or said[-2:] != ["in", "continuity"]:
        return None
    return Mention("extent", "intact", mention.i, mention.j)


def _share_behind(scene: Scene, mention: Mention) -> bool:
    """'Divided in its radial half', 'cut through a third of its width': not all of it."""
    behind = [m for m in scene.of("fraction") if 0 <= m.i - mention.j <= 4]
    between = scene.words(mention.j, behind[0].i) if behind else []
    return bool(behind) and _SHARE_LEADS.issuperset(between)


def _share_before(scene: Scene, mention: Mention) -> bool:
    """'Some 60 percent of the profundus had been severed', 'a third of the FDP was divided'."""
    first, _ = scene.part(mention.i)
    ends = [q.j for q in scene.quantities if q.unit == "%" and (q.high or 100) < 100]
    if scene.word_before(mention.i) == "-" and any(m.j == mention.i - 1 for m in scene.of("fraction")):
        return True  # 'the half-section of the superficialis'
    if mention.i in ends and not scene.page.words[mention.i].startswith("complete"):
        return True  # 'FDS 30% division'
    ends += [m.j for m in scene.of("fraction")]
    leads = [k for k in ends if first <= k < mention.i and scene.page.words[k] == "of"]
    return any(0 < g.i - k <= 4 and g.j <= mention.i for k in leads for g in scene.setting.groups if g.tendons)


def _is_likeness(scene: Scene, mention: Mention) -> bool:
    """'treated as a complete division' says what it was not."""
    before = scene.words(max(scene.sentence.i, mention.i - 3), mention.i)
    return "as" in before[:-1] and set(before[before.index("as") + 1 :]) <= {"a", "an", "the", "if", "though"}


def _bare_is_cut(scene: Scene, mention: Mention) -> bool:
    """Tell whether a bare 'through' says that a tendon was cut: it must stand right after the tendon."""
    before = [s for s in scene.subjects if s.j <= mention.i and s.kind == "tendon"]
    if not before:
        return False
    between = scene.words(before[-1].j, mention.i)
    if len(between) > 3 or any(w not in _BARE_BETWEEN and not w.startswith("..") for w in between):
        return False
    after = scene.next_word(mention.j)
    if scene.words(mention.i, mention.j)[-1:] in (["through"], ["gone"]):
        return after in _BARE_IS_CUT_WORDS_2
    return after in _BARE_IS_CUT_WORDS


_SOMEWHERE = frozenset(["proximally", "distally"])


def _of_a_part(scene: Scene, mention: Mention) -> bool:
    """'Most of the FDS intact', 'FDS function intact', 'FDS thought intact by the casualty officer'."""
    if scene.word_before(mention.i) in _NOT_ITSELF:
        return True
    group = next((g for g in reversed(scene.setting.groups) if g.tendons and g.j <= mention.i), None)
    lead = [] if group is None else [w for w in scene.words(max(scene.sentence.i, group.i - 4), group.i) if w != "the"]
    return lead[-1:] == ["of"] and lead[-2:-1] != [] and lead[-2] in _PARTS


_NOT_ITSELF = frozenset(["function", "thought", "believed", "reported", "supposedly", "allegedly", "sensation"])
_PARTS = frozenset(["most", "part", "half", "much", "rest", "some", "remainder", "bulk"])
_AT_FIRST = (["at", "first"], ["to", "begin"], ["on", "first"])


def _tells_intact(scene: Scene, mention: Mention, word: str) -> bool:
    """Weak words ('fine', 'normal', 'preserved') count only right beside the tendon; 'not intact' never."""
    if scene.negated(mention.i, mention.j) and not word.startswith(("not", "no ", "un", "was not", "were not")):
        return False
    if scene.words(mention.i - 2, mention.i) == ["all", "but"]:
        return False
    if word.startswith("not") and _but_in_part(scene, mention):
        return False
    if _of_something_else(scene, mention):
        return False
    cut = [
        m
        for m in scene.of("hurt", "nervestate")
        if m.j in (mention.i, mention.i - (scene.word_before(mention.i) == ","))
    ]
    if _of_a_part(scene, mention) or scene.words(mention.j, mention.j + 3)[:2] in _AT_FIRST:
        return False
    if word == "whole" and cut:
        return False  # 'cut, whole': cut across the whole of its width
    lead = scene.words(max(scene.sentence.i, scene.part(mention.i)[0] - 5), mention.i)
    if scene.next_word(mention.j) in _VARIANT or not _ABSENT.isdisjoint(lead):
        return False  # 'its FDS was absent congenitally, not cut', 'FDS absent (normal variant)'
    if scene.next_word(mention.j) in _SOMEWHERE and "throughout" not in scene.said:
        return False  # 'FDS intact proximally, distally its slips were cut'
    if scene.word_before(mention.i) in ("branch", "branches"):
        return False  # 'Motor branch intact.'
    if any(m.j == mention.i for m in scene.of("fraction")) or any(
        q.j == mention.i and q.unit == "%" and (q.high or 100) < 100 for q in scene.quantities
    ):
        return False  # 'three quarters whole, the other quarter frayed'
    if word in ("no injury", "no laceration", "no cut", "no damage", "without damage"):
        owned = scene.word_before(mention.i) in _TELLS_INTACT_WORDS_2 or _answers_alone(scene, mention)
        named = any(g.tendons and g.j == mention.i for g in scene.setting.groups)
        owned = owned or (named and scene.next_word(mention.j) in ("", ".", ",", ";", ")"))  # 'ulnar slip no damage'
        if word == "without damage" and scene.word_before(mention.i) in ("found", "was", "were"):
            return True  # 'were visited one after another and found without damage'
        return owned or (word != "without damage" and scene.next_word(mention.j) in ("to", "of", "in"))
    if word in _TELLS_INTACT_WORDS:
        subject = scene.owner(mention.i, mention.j)
        closes = scene.next_word(mention.j) in _TELLS_INTACT_WORDS_3
        closes = closes or scene.words(mention.j, mention.j + 2) in _IN_FULL
        closes = closes or any(g.i == mention.j and g.digits for g in scene.setting.groups)  # dictated without stops
        closes = closes or _next_begins(scene, mention)
        listed = series(scene, subject, mention.i) if subject is not None else []
        named = any(s.group is not None and (s.group.tendons or s.group.digits) for s in listed)
        named = named or (subject is not None and _both_of_a_finger(scene, subject.group))
        if not (closes and named and subject is not None and subject.j <= mention.i):
            return False
        if word == "continuous" and subject.j < mention.i and scene.word_before(mention.i) not in _STAYED:
            return False  # 'FDP: 3-0 cruciate, outer continuous'
        if _past_an_aside(scene, subject.j, mention.i) > _BESIDE_NAME and not _one_pronoun(scene, mention):
            return False
        between = [m.i for m in scene.of("endword", "ends", "restored")]  # 'FDP ends trimmed 2 mm, healthy'
        return not any(subject.j <= k < mention.i for k in between)
    return True


def _past_an_aside(scene: Scene, i: int, j: int) -> int:
    """'The FDS, of which one might have expected as much, was fine': how many words part them but for the aside."""
    between = scene.words(i, j)
    led = between[:2] in ([",", "which"], [",", "of"], [",", "as"], [",", "contrary"])
    commas = [n for n, word in enumerate(between) if n and word == ","]
    told = any(i <= m.i < j for m in scene.of("hurt", "extent", "deed", "fraction", "slip"))
    return len(between) - commas[-1] - 1 if led and commas and not told else len(between)


def _both_of_a_finger(scene: Scene, group: Group | None) -> bool:
    """'Ring: both tendons fine.': of the finger named before them."""
    if group is None or group.generic != "all":
        return False
    before = [g for g in scene.setting.groups if g.j <= group.i and not g.reference]
    return bool(before) and bool(before[-1].digits) and not before[-1].tendons


_BESIDE_NAME = 6  # words
_STAYED = frozenset(["was", "were", "is", "are", "be", "being", "both", "still", "remained", "found", "seen", "fully"])


def _next_begins(scene: Scene, mention: Mention) -> bool:
    """'The ulnar slip was fine the neurovascular bundles ...', 'FPL fine median nerve cut': dictated without stops."""
    led = scene.word_before(mention.i) in ("was", "were") or scene.page.words[mention.i] in ("was", "were")
    others = any(m.i == mention.j for m in scene.of("structure", "sided", "bundle", "anynerve", "anyartery"))
    behind = scene.next_word(mention.j)
    return others or (led and behind in ("the", "closed", "i", "we", "so", "when")) or scene.arrow(mention.j)


def _but_in_part(scene: Scene, mention: Mention) -> bool:
    """'Not divided: a partial cut, two thirds of the width': what is denied is only that it is cut through."""
    partial = any(m.value == "partial" and 0 < m.i - mention.j <= _NEXT for m in scene.of("extent"))
    return partial and scene.next_word(mention.j) in (":", ",", "but", "-")


_NEXT = 4  # words


def _of_whole_finger(scene: Scene) -> bool:
    """'THUMB, SMALL', then '- not injured': of a finger, and of none of its tendons by name."""
    setting = scene.setting
    return setting.relabelled and not any(g.tendons or g.generic or g.digits for g in setting.groups)


def _of_something_else(scene: Scene, mention: Mention) -> bool:
    """'A2 intact over the FDP', 'a slit in A2, its two ends being spared': the pulley is what was spared."""
    before = scene.words(max(scene.sentence.i, mention.i - 2), mention.i)
    if before[-1:] in (["being"], ["were"], ["are"]):
        before = before[:-1]
    if before[-1:] != [] and before[-1] in _ITS_ENDS and scene.of("pulley"):
        return True
    if before[-1:] == ["("] and any(p.j == mention.i - 1 for p in scene.of("pulley")):
        return True  # 'passed beneath the oblique pulley (spared)'
    subject = scene.owner(mention.i, mention.j)
    if subject is not None and subject.j <= mention.i and _share_of(scene, subject.i):
        return True
    behind = subject is not None and subject.group is not None and subject.i >= mention.j
    return behind and scene.next_word(mention.j) in _OVER


def _share_of(scene: Scene, k: int) -> bool:
    """'Two thirds of the FPL was intact', '40 % of its FDP was whole': the rest was not."""
    shares = [m.j for m in scene.of("fraction")] + [q.j for q in scene.quantities if q.unit == "%" and q.high != 100]
    leads = [scene.words(j, k) for j in shares if 0 < k - j <= 2]
    return any("of" in lead and {"of", "the", "its"}.issuperset(lead) for lead in leads)


_ITS_ENDS = frozenset(["ends", "edges", "rims"])
_OVER = frozenset(["over", "above", "around"])


def _answers_alone(scene: Scene, mention: Mention) -> bool:
    """'FDS of the index, no injury.': all that the sentence says of the tendon it names first."""
    groups = [g for g in scene.setting.groups if g.j <= mention.i]
    alone = len(groups) == 1 and bool(groups[0].tendons) and groups[0].j == mention.i - 1
    return alone and scene.word_before(mention.i) == "," and scene.next_word(mention.j) in ("", ".")


@needs(words=["flexors"])
def _other_flexors(desk: Desk, scene: Scene) -> None:
    """'Remaining flexors of the fingers: intact' at the wrist: both flexors of each finger no cut was told of."""
    words = scene.page.words
    for k in range(scene.sentence.i + 1, scene.sentence.j):
        if words[k] != "flexors" or not scene.told(k) or not _of_the_fingers(scene, k):
            continue
        before = set(scene.words(max(scene.sentence.i, k - 4), k))
        before |= {"other"} if "eight" in scene.words(k - 3, scene.sentence.j) else set()  # 'all eight'
        before |= {"other"} if scene.words(k - 2, k - 1) == ["all"] else set()  # 'all finger flexors intact'
        whole = [m for m in scene.of("extent") if m.value == "intact" and m.i > k and not scene.negated(m.i, m.j)]
        at_wrist = bool(desk.values_told("zone") & {"IV", "V"}) or {"FCR", "FCU", "PL"} & desk.values_told("tendon")
        if not whole or not at_wrist or before.isdisjoint(("remaining", "other", "rest")):
            continue
        for target in (Target(d, t) for d in DIGITS[1:] for t in ("FDP", "FDS")):
            if desk.extents.get(target) not in HURT_KINDS and target not in desk.treatments:
                desk.tendon(scene, target, "extent", "intact", [(k - 1, whole[0].j)], "extent intact")


def _of_the_fingers(scene: Scene, k: int) -> bool:
    behind = scene.words(k + 1, k + 4)
    return scene.word_before(k) in ("finger", "digital") or behind in (
        ["of", "the", "fingers"],
        ["to", "the", "fingers"],
    )


def _none_cut(desk: Desk, scene: Scene) -> None:
    """'FDS: 0 percent.'"""
    for q in scene.quantities:
        if q.unit == "%" and q.low == 0 == q.high and scene.told(q.i):
            for target in tendon_owner(desk, scene, q.i, q.j)[0]:
                desk.tendon(scene, target, "extent", "intact", [(q.i, q.j)], "extent intact")
