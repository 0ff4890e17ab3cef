"""What was done to each tendon."""

from itertools import pairwise

from notereader.reader.boxes import BOX_ENDS
from notereader.reader.desk import Desk, carried, is_correction, near_digits, others, tendon_owner
from notereader.reader.groups import WRIST, Group, Target
from notereader.reader.held_counts import count_told
from notereader.reader.manner import joined_into
from notereader.reader.needs import needs
from notereader.reader.page import Mention, Quantity
from notereader.reader.rules.cut_shares import with_name_of
from notereader.reader.rules.dealt_out import dealt_out, targets_of_kind
from notereader.reader.rules.denied_deeds import (
    answered_no,
    denied_below,
    neither_mended,
    not_worth_it,
    weighed_and_left,
)
from notereader.reader.rules.grafts import grafted_with, into_another, put_in_as_graft
from notereader.reader.rules.left_by_exception import left_by_exception
from notereader.reader.rules.left_words import leaves_a_gap, left_is_deed, of_a_stump, of_ends_or_knots, of_gap_before
from notereader.reader.rules.not_touched import untouched_though_cut
from notereader.reader.rules.other_days import of_another_day
from notereader.reader.rules.parted import of_the_parted
from notereader.reader.rules.pulley_names import made_from
from notereader.reader.rules.sewn_now import sewn_now
from notereader.reader.rules.spared import of_a_wound
from notereader.reader.rules.spoken_of_repairs import PUT_OFF, found_broken, never_made
from notereader.reader.rules.strangers import has_strange_subject
from notereader.reader.rules.trimming import NO_END_PIECE, hurt_over
from notereader.reader.scene import Scene, Subject, group_targets, named_together
from notereader.reader.settling import TOO_FAR_GONE
from notereader.reader.standing import too_much_for
from notereader.vocabulary.wordlists import word_list

_DEED_WORDS = word_list("tendons", "deed_words")
_TREATED_WORDS = word_list("tendons", "treated_words")
_FLAP = word_list("tendons", "flap")
_WAS = frozenset(["was", "is", "were", "are", "still", "remained", "had", "found", "seen", "to", "be", "all"])
_HOLDING = frozenset(
    ["intact", "holding", "sound", "whole", "solid", "held", "good", "parted", "ruptured", "failed", "dehisced"]
)
_DIP = frozenset(["dip", "dipj"])


@needs(
    kinds=["deed"],
    words=[
        "bone",
        "n",
        "no",
        "neither",
        "worth",
        "wove",
        "woven",
        "bridged",
        "untouched",
        "touched",
        "undisturbed",
        "into",
        "onto",
        "to",
        "through",
    ],
)
def treatments(desk: Desk, scene: Scene) -> None:
    """Find what was done to each tendon."""
    if scene.sentence.section in ("instructions", "closure", "admin"):
        return
    dealt = _dealt(desk, scene)
    for mention in scene.of("deed"):
        if not scene.told(mention.i) or mention.value in ("ligated", "conduit", "fixed") or mention.i in dealt:
            continue
        value = _deed(desk, scene, mention)
        if value is not None:
            _treatment(desk, scene, mention, value)
    for mention in (m for m in (*neither_mended(scene), *not_worth_it(scene)) if scene.told(m.i)):
        _treatment(desk, scene, mention, "left")
    for mention in scene.of("extent"):
        if scene.told(mention.i) and untouched_though_cut(scene, mention):
            _treatment(desk, scene, mention, "left")
    _cell_of_sewn(desk, scene)
    _which_slip(desk, scene)
    _slip_left_over(desk, scene)
    _likewise(desk, scene)
    _to_bone(desk, scene)
    _of_the_joint(desk, scene)
    _into_a_neighbour(desk, scene)
    _left_too(desk, scene)
    left_by_exception(desk, scene)
    grafted_with(desk, scene)
    put_in_as_graft(desk, scene)


def _dealt(desk: Desk, scene: Scene) -> set[int]:
    """'Repaired in the index, excised in the ring': lay down what is dealt out, and return the first words of each."""
    told = [m for m in scene.of("deed") if scene.told(m.i) and m.value in _DEALT]
    fates = ((m, _fate(desk, scene, m)) for m in told if len(told) > 1)
    values = {(m.i, m.j): fate for m, fate in fates if fate is not None}
    dealt = dealt_out(desk, scene, list(values))
    for (i, j), digits in dealt.items():
        value = values[i, j]
        for target in targets_of_kind(scene, digits):
            span = [with_name_of(scene, Mention("deed", value, i, j), target)]
            desk.tendon(scene, target, "treatment", value, span, f"treatment {value}")
    return {i for i, _ in dealt}


def _fate(desk: Desk, scene: Scene, mention: Mention) -> str | None:
    """'Excised in the ring but sutured in the index': dealt out over fingers, no piece taken away before a repair."""
    return _deed(desk, scene, mention) or (mention.value if mention.value in ("excised", "left") else None)


_DEALT = frozenset(["repaired", "excised", "left", "reinserted", "grafted", "tenodesed", "trimmed"])
_SEWN_TITLES = (["sewn"], ["repaired"], ["sutured"], ["stitched"], ["sewn", "?"], ["repaired", "?"], ["sutured", "?"])


def _cell_of_sewn(desk: Desk, scene: Scene) -> None:
    """'FDS   100%   n - left out' in a grid whose last title is 'sewn': a cell that says no leaves its tendon."""
    first, prefix = scene.sentence.i, scene.sentence.prefix
    if not prefix or scene.page.words[first] not in ("n", "no") or not scene.told(first):
        return
    label = next((g for g in scene.setting.groups if g.i == g.j == first and g.tendons), None)
    if label is None or not any(scene.words(*title) in _SEWN_TITLES for title in prefix):
        return
    for target in group_targets(scene, label):
        desk.tendon(scene, target, "treatment", "left", [(first, first + 1)], "treatment left")


def _which_slip(desk: Desk, scene: Scene) -> None:
    """'The resected slip was the radial one': which slip it was that the note told of before."""
    words = scene.page.words
    for deed in (d for d in scene.of("deed") if d.value in ("excised", "repaired", "left") and scene.told(d.i)):
        if scene.next_word(deed.j) != "slip" or scene.words(deed.j + 1, deed.j + 3) not in (
            ["was", "the"],
            ["is", "the"],
        ):
            continue
        side = words[deed.j + 3] if deed.j + 3 < scene.sentence.j else ""
        for digit in scene.setting.digits if side in ("radial", "ulnar") else ():
            target = Target(digit, "FDS", side)
            desk.tendon(scene, target, "treatment", deed.value, [(deed.i, deed.j + 4)], f"treatment {deed.value}")


def _of_the_joint(desk: Desk, scene: Scene) -> None:
    """'DIPJ flexor tenodesis, R middle finger': a title whose joint tells the tendon, the deep flexor."""
    if _DIP.isdisjoint(scene.said):
        return
    tendons = any(g.tendons for g in scene.setting.groups)
    for deed in (d for d in scene.of("deed") if d.value == "tenodesed" and scene.told(d.i)):
        if _DIP.isdisjoint(scene.words(max(scene.sentence.i, deed.i - 3), deed.j + 4)):
            continue
        fingers = _finger_behind(scene, deed) if tendons else [d for g in scene.setting.groups for d in g.digits]
        for digit in dict.fromkeys(d for d in fingers if d != "thumb"):
            target = Target(digit, "FDP")
            desk.tendon(scene, target, "treatment", "tenodesed", [(deed.i, deed.j)], "treatment tenodesed")


def _finger_behind(scene: Scene, deed: Mention) -> list[str]:
    """'FDP repair ring + DIP tenodesis little': the finger named right behind the joint's tenodesis."""
    if _DIP.isdisjoint(scene.words(max(scene.sentence.i, deed.i - 2), deed.j)):
        return []
    return [d for g in scene.setting.groups if g.i == deed.j and not g.tendons for d in g.digits]


def _into_a_neighbour(desk: Desk, scene: Scene) -> None:
    """'The index profundus was woven into the intact middle profundus': tenodesed, and nothing done to the other."""
    for group in (g for g in scene.setting.groups if g.tendons and g.reference):
        verb = joined_into(scene.page, group, scene.sentence)
        if verb < 0 or not scene.told(verb) or scene.negated(verb, verb + 1):
            continue
        deed = Mention("deed", "tenodesed", verb, group.i)
        for target in _stump_fixed(desk, scene, deed):
            desk.tendon(scene, target, "treatment", "tenodesed", [(verb, group.j)], "treatment tenodesed")


def _to_bone(desk: Desk, scene: Scene) -> None:
    """'FPL to bone, as below': told without a verb."""
    for group in (g for g in scene.setting.groups if g.tendons and not (g.reference or g.excepted)):
        after = scene.words(group.j, min(group.j + 3, scene.sentence.j))
        ends = after[2:] in ([], [","], ["."], [";"], ["with"], ["by"], ["via"], ["("], ["using"])
        if after[:2] == ["to", "bone"] and ends and scene.told(group.i) and not scene.negated(group.i, group.j):
            for target in group_targets(scene, group):
                desk.tendon(scene, target, "treatment", "reinserted", [(group.i, group.j + 2)], "treatment reinserted")


_WATCHED = frozenset(["during", "while", "as", "through", "throughout", "under", "on", "in", "with", "when"])


def _likewise(desk: Desk, scene: Scene) -> None:
    """'The profundus was repaired with 3-0 and the superficialis likewise.'"""
    for group in (g for g in scene.setting.groups if g.tendons and not g.reference):
        after = scene.words(group.j, min(group.j + 2, scene.sentence.j))
        if after[:1] not in (["likewise"], ["too"], ["also"], ["similarly"]) and after != ["as", "well"]:
            continue
        deeds = [d for d in scene.of("deed") if d.value == "repaired" and d.j <= group.i and scene.told(d.i)]
        later = [m for m in scene.of("deed", "extent", "hurt") if 0 <= m.i - group.j <= 3]
        if deeds and not later and not scene.negated(deeds[-1].i, deeds[-1].j):
            for target in group_targets(scene, group):
                desk.tendon(scene, target, "treatment", "repaired", [(group.i, group.j + 1)], "treatment repaired")


def _left_too(desk: Desk, scene: Scene) -> None:
    """'The PL was left unrepaired, and so was the cut of the FCU', 'PL not sutured, nor was the FCU': left as well."""
    words = scene.page.words
    for k in range(scene.sentence.i + 2, scene.sentence.j - 1):
        if words[k] not in _TOO or words[k + 1] not in ("was", "were") or not scene.told(k):
            continue
        group = next((g for g in scene.setting.groups if 0 < g.i - k <= _FAR_TOO and g.tendons), None)
        deeds = [d for d in scene.of("deed") if d.j <= k and scene.told(d.i) and d.value in ("repaired", "left")]
        last = _deed(desk, scene, deeds[-1]) if deeds else None
        others = [m for m in scene.of("deed", "extent") if group is not None and m.i >= group.j]
        if group is None or last != "left" or others:
            continue
        for target in group_targets(scene, group):
            if desk.extents.get(target) != "intact":
                desk.tendon(scene, target, "treatment", "left", [(k, group.j)], "treatment left")


_TOO = frozenset(["so", "as", "nor", "neither"])
_FAR_TOO = 8  # words
_SUTURE_OF = (["suture", "of"], ["sutures", "of"])


_INSTEAD = (["rather", "than"], ["instead", "of"])


def _deed(desk: Desk, scene: Scene, mention: Mention) -> str | None:
    """Return the treatment a deed word says here, or None where it says none."""
    word = " ".join(scene.words(mention.i, mention.j))
    value = mention.value
    if scene.word_before(mention.i) == "nor" and value in ("repaired", "trimmed"):
        return "left" if value == "repaired" else None  # 'nothing is done there, nor trimming nor suture'
    if value == "tenodesed" and (_no_tenodesis(scene, mention) or _finger_behind(scene, mention)):
        return None
    if value == "tenodesed" and _undone_again(scene, mention):
        return None
    if value == "grafted" and (into_another(scene) or any(_to_a_side(scene, m) for m in scene.of("deed"))):
        return None  # 'attached to the side of the ring FDP by a Pulvertaft weave'
    if value == "grafted" and any(joined_into(scene.page, g, scene.sentence) >= 0 for g in scene.setting.groups):
        return None  # 'woven into the intact middle profundus with a Pulvertaft weave'
    if value == "repaired" and answered_no(scene, mention):
        return "left"
    if word == "repair" and scene.next_word(mention.j) == ":" and scene.next_word(mention.j + 2) == ":":
        return None  # 'repair: ____ strands: ____ suture: ____': a form left blank
    if value == "repaired" and _sewn_down(desk, scene, mention):
        return "tenodesed"
    if value == "repaired" and (weighed_and_left(scene, mention) or denied_below(desk, scene, mention)):
        return None
    if value == "repaired" and scene.words(max(scene.sentence.i, mention.i - 2), mention.i) in _INSTEAD:
        return None  # 'excised rather than sewn'
    if value in ("repaired", "left") and _sewn_otherwise(scene, mention):
        return None
    lead = scene.words(max(scene.sentence.i, mention.i - 5), mention.i)
    if word in ("suture", "sutures") and lead[-1:] == ["any"] and "not" in lead:
        return "left"  # 'We do not place any suture in it'
    if word in _SEWN_ONES and scene.next_word(mention.j) in ("tendon", "tendons") and _named_all(scene, mention):
        return None  # 'all the sutured tendons slid'
    if value == "left" and of_a_wound(scene, mention):
        return None  # 'the bite had left the superficialis alone'
    if value == "left" and (_of_a_muscle(scene, mention) or of_a_stump(desk, scene, mention)):
        return None
    if word.endswith("observed") and not _WATCHED.isdisjoint(scene.words(mention.j, mention.j + 2)):
        return None  # 'the repairs were then observed during passive extension'
    if value == "left" and (of_ends_or_knots(scene, mention) or of_gap_before(desk, scene)):
        return None
    if value == "left" and _left_without(scene, mention):
        return None
    if value == "left" and scene.next_word(mention.j) == "out" and scene.of("pattern", "role"):
        return None  # 'the running suture was left out'
    if word == "was left" and not _LITTLE.isdisjoint(scene.words(max(scene.sentence.i, mention.i - 5), mention.i)):
        return None  # 'the little bit that was left on the bone'
    if value in ("left", "repaired") and _told_instead(scene, mention):
        return None
    if value == "left":
        if (word == "left" and not left_is_deed(scene, mention)) or ("left" in word and leaves_a_gap(scene, mention)):
            return None
        if "left" not in word and scene.of("gap") and scene.owner(mention.i, mention.j) is not None:
            return None  # 'no diastasis of either repair was observed'
        return "left"
    if word in ("reinsertion", "reattachment") and scene.of("gap", "glide", "test") and not scene.header:
        return None  # 'no gap was seen at the reinsertion or at the tendon repair of the middle finger'
    if word in ("repair", "repairs") and _still_holds(scene, mention):
        return None  # 'the superficialis repair was intact'
    if value == "repaired" and "nothing" in scene.words(max(scene.sentence.i, mention.i - 2), mention.i):
        return None  # 'nothing was sewn there'
    if word == "fixed" and scene.words(mention.j, mention.j + 2) in (["in", "scar"], ["by", "scar"], ["to", "the"]):
        return None  # 'the distal stump was fixed in scar'
    if value == "repaired" and _no_repair(scene, mention):
        return None
    if value == "excised" and _of_a_stitch(scene, mention):
        return None
    if value in ("trimmed", "excised") and _before_repair(scene, mention):
        return None
    if value == "excised" and _takes_flap_off(scene, mention):
        return "trimmed"
    if value == "trimmed" and _sewn_next(desk, scene, mention):
        return None
    if not _REQUIRED.isdisjoint(scene.words(max(scene.sentence.i, mention.i - 3), mention.i)):
        unsewn = value == "repaired" and scene.negated(mention.i, mention.j)
        return "left" if unsewn else None  # 'the nick did not require suture'
    if scene.negated(mention.i, mention.j, 3) and scene.next_word(mention.j) in ("to", "onto"):
        return None  # 'the little bit on the bone I could not sew to'
    if scene.words(mention.j, mention.j + 2) == ["not", "with"] and "but" in scene.said:
        return value  # 'repaired not with six strands but with four'
    if value == "excised" and _gives_reason(scene, mention):
        return value
    if scene.words(mention.i - 3, mention.i) in _NEEDED_TO_BE and _none_needed(scene, mention.i - 3):
        return None  # 'no slip had to be excised', 'no part of the FDS needed to be resected'
    if value == "repaired" and _not_given(scene, mention):
        return "left"
    if scene.negated(mention.i, mention.j, 3):
        if value == "repaired" and word.partition(" ")[0] in _MEETS:
            return None  # 'the FDP could not be brought together', 'was not put back'
        verb = word.partition(" ")[0].endswith(("ed", "sewn"))
        verb = verb or (word == "repair" and scene.word_before(mention.i) in ("to", "not"))
        verb = verb or too_much_for(scene.page, mention.i, scene.sentence) is not None
        return "left" if value == "repaired" and verb else None if verb or value != "repaired" else value
    if value == "reinserted" and word in _REATTACHED and _with_stitches(scene, mention):
        return "repaired"
    if word in _DEED_WORDS and not scene.header:
        if word in ("suture", "sutures", "graft") and _answers(scene, mention):
            return value
        return None if word in ("suture", "sutures", "advancement", "graft") else value
    return value


_NEEDED_TO_BE = (["had", "to", "be"], ["needed", "to", "be"], ["have", "to", "be"], ["need", "to", "be"])


def _none_needed(scene: Scene, k: int) -> bool:
    """'No slip had to be excised', 'no part of the FDS needed to be': not 'there was no room and the FDS had to be'."""
    lead = scene.words(max(scene.sentence.i, k - _LONG_NAME), k)
    return any(a in ("no", "neither") and b in _PIECES_OF_TENDON for a, b in pairwise(lead))


_LONG_NAME = 7  # words
_PIECES_OF_TENDON = frozenset(["slip", "slips", "tendon", "tendons", "part", "portion", "segment", "further", "flexor"])
_MEETS = frozenset(["brought", "put", "came", "come"])


def _not_given(scene: Scene, mention: Mention) -> bool:
    """'It was not given a suture', 'FDP cut 30 %, not given any repair', 'did not receive a repair'."""
    lead = [w for w in scene.words(max(scene.sentence.i, mention.i - 4), mention.i) if w not in ("a", "any", "been")]
    return lead[-2:-1] == ["not"] and lead[-1] in _GIVEN


_GIVEN = frozenset(["given", "get", "receive", "undergo", "have"])


def _sewn_down(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'DIP tenodesis. ... The FDP was sewn to the edge of A4 and the periosteum': what the note calls a tenodesis."""
    behind = scene.words(mention.j, min(mention.j + _SEWN_TO, scene.sentence.j))
    down = behind[:1] in (["to"], ["onto"], ["down"]) and not _BONY.isdisjoint(behind)
    return down and "tenodesed" in desk.values_told("deed")


_SEWN_TO = 10  # words
_BONY = frozenset(["periosteum", "phalanx", "bone", "a4", "a2", "a5", "pulley", "neck"])


def _left_without(scene: Scene, mention: Mention) -> bool:
    """'... an epitendinous suture; the superficialis was left without', 'without one': the suture, not the tendon."""
    if scene.words(mention.j - 1, mention.j + 1) != ["left", "without"]:
        return False
    return scene.next_word(mention.j + 1) in ("one", "", ".", ",", ";") and bool(scene.of("pattern", "role"))


def _gives_reason(scene: Scene, mention: Mention) -> bool:
    """'FDS excised - not enough room', 'resected (not repairable)': why it was done, where 'not needed' denies it."""
    behind = scene.words(mention.j, mention.j + 3)
    return behind[:1] in (["-"], ["("]) and behind[1:2] == ["not"] and behind[2:] != [] and behind[2] in _SHORT_OF


_SHORT_OF = word_list("tendons", "short_of")


def _of_a_stitch(scene: Scene, mention: Mention) -> bool:
    """'A modified Kessler and a cruciate, but the first tore out, so we took it out': the stitch, not the tendon."""
    if not {"it", "them"} & set(scene.words(mention.i, mention.j)):
        return False
    before = [m for m in scene.of("stitch", "strandword") if m.j <= mention.i]
    named = [g for g in scene.setting.groups if g.tendons and g.j <= mention.i and g.i > before[-1].i] if before else []
    return bool(before) and not named and not scene.of("slip")


def _undone_again(scene: Scene, mention: Mention) -> bool:
    """'I had at first tied the FDP to its neighbour as a tenodesis; ... that suture was removed': not so in the end."""
    before, behind = scene.words(scene.sentence.i, mention.i), scene.words(mention.j, scene.sentence.j)
    return "first" in before and not _SEWN_WITH.isdisjoint(behind) and not _TAKEN_AWAY.isdisjoint(behind)


_SEWN_WITH = frozenset(["suture", "sutures", "stitch", "stitches", "thread"])
_TAKEN_AWAY = frozenset(["removed", "undone", "unpicked", "cut"])


def _of_a_muscle(scene: Scene, mention: Mention) -> bool:
    """'The lumbrical came off with the distal FDP stump; not sutured': the muscle, which opens the sentence."""
    first = scene.sentence.i
    return any(m.value == "muscle" and first <= m.i <= first + 1 and m.j <= mention.i for m in scene.of("role"))


_REATTACHED = frozenset(["reattached", "re-attached"])
_OF_BONE = frozenset(
    ["bone", "phalanx", "insertion", "button", "anchor", "p2", "p3", "drill", "pull-out", "transosseous"]
)


def _with_stitches(scene: Scene, mention: Mention) -> bool:
    """'The ulnar slip of FDS was reattached with a mattress suture of 4-0': to its other end, and to no bone."""
    group = next((g for g in reversed(scene.setting.groups) if g.tendons and g.j <= mention.i), None)
    sewn = any(m.i >= mention.j for m in scene.of("stitch", "material"))
    return group is not None and group.tendons == ("FDS",) and sewn and _OF_BONE.isdisjoint(scene.said)


_LITTLE = frozenset(["little", "bit", "what", "enough", "much"])
_REQUIRED = frozenset(["require", "required", "requires", "requiring", "need", "needed", "needing"])


def _still_holds(scene: Scene, mention: Mention) -> bool:
    """Tell whether an earlier repair is only said to be whole, 'FDS repair intact', or to have failed."""
    after = [w for w in scene.words(mention.j, min(mention.j + 4, scene.sentence.j)) if w not in _WAS]
    return bool(after) and after[0] in _HOLDING and any(0 <= mention.i - g.j <= 1 for g in scene.setting.groups)


_SEWN_ONES = frozenset(["sutured", "repaired", "sewn", "mended"])


def _named_all(scene: Scene, mention: Mention) -> bool:
    before = scene.word_before(mention.i)
    behind = scene.next_word(mention.j + 1) not in ("with", "using", "by")
    results = before in ("", ",", ";", ".", ":") and behind and _tells_results(scene)
    return results or before in ("a", "any", "the", "all", "both", "these", "each", "every", "of")


def _tells_results(scene: Scene) -> bool:
    """'Passive movement checked, repaired tendons gliding well': what became of tendons told of as sewn before."""
    return not scene.kinds.isdisjoint(("gap", "glide", "bulk", "tension"))


def _before_repair(scene: Scene, mention: Mention) -> bool:
    """'repaired after minor resection', 'debrided very lightly and then repaired': what went before the repair."""
    before = scene.words(max(scene.sentence.i, mention.i - 3), mention.i)
    ahead = next((d for d in scene.of("deed") if d.value == "repaired" and 0 < d.i - mention.j <= 8), None)
    between = scene.words(mention.j, ahead.i) if ahead is not None else []
    if ahead is not None and "," in between and _THEN.issuperset(between) and not _sews_another(scene, ahead):
        return True  # 'FDP - tags trimmed, repaired with 4/0 Prolene', 'frayed fibres pared away, then sutured'
    if not {"then", "and"}.isdisjoint(between) and {"not", "nothing", "no", ";", ".", ","}.isdisjoint(between):
        return not any(g.tendons for g in scene.setting.groups if ahead is not None and mention.j <= g.i < ahead.i)
    led = not {"after", "following"}.isdisjoint(before)
    return led and any(d.value == "repaired" and d.j <= mention.i for d in scene.of("deed"))


def _takes_flap_off(scene: Scene, mention: Mention) -> bool:
    """'After resection of the flap it slid freely', 'the flap was excised': a piece of a tendon cut in part."""
    behind = scene.words(mention.j - (scene.page.words[mention.j - 1] == "of"), mention.j + 5)
    lead = [w for w in scene.words(max(scene.sentence.i, mention.i - 3), mention.i) if w not in _WAS]
    of_it = behind[:1] == ["of"] and next((w for w in behind[1:] if w not in _ARTICLES_OF_FLAP), "") in _TENDON_FLAPS
    return of_it or (lead[-1:] != [] and lead[-1] in _TENDON_FLAPS)


_TENDON_FLAPS = frozenset(["flap", "tag", "flaps", "tags", "tongue"])
_ARTICLES_OF_FLAP = frozenset(["the", "this", "that", "a", "small", "loose", "hanging", "tendon", "fibre"])
_THEN = frozenset([",", "then", "and", "off", "away", "back"])


def _sews_another(scene: Scene, deed: Mention) -> bool:
    """'Flap trimmed, sutured the ulnar nerve', '..., repair of the FDP': what is named behind a deed."""
    kinds = ("tendon", "digit", "pulley", "structure", "sided", "anynerve", "anyartery")
    near = (m.i - deed.j for m in scene.of(*kinds))
    return any(0 <= n <= _AT_ITS_DEED for n in near)


def _sewn_next(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'Ring FDP: edges tidied. Modified Kessler, two strands.': its core is told right behind, without a name."""
    after = desk.scene_after(scene)
    if mention.j < scene.sentence.j - 1 or after is None or after.sentence.block != scene.sentence.block:
        return False
    return not after.subjects and bool(after.of("stitch")) and bool(after.of("strandword", "material"))


def _answers(scene: Scene, mention: Mention) -> bool:
    """'Treatment (FPL, left thumb): suture', 'gesture: graft': a noun that answers a label."""
    closes = scene.next_word(mention.j) in ("", ".", ",", ";")
    return closes and scene.word_before(mention.i) == ":"


def _no_repair(scene: Scene, mention: Mention) -> bool:
    """'no tendon repair', 'no FDP repair was done', 'the earlier FDP repair': what was not done, or not today."""
    named = {k for m in scene.of("tendon", "digit") for k in range(m.i, m.j)}
    k = mention.i - 1
    while k >= scene.sentence.i and (k in named or scene.page.words[k] in _KIND_OF_REPAIR):
        k -= 1
    before = scene.words(max(scene.sentence.i, k), k + 1)
    broken = scene.words(max(scene.sentence.i, k - 2), k + 1)
    if ("rupture", "of") in pairwise(broken):
        return True  # 'rupture of the FDP repair'
    noun = scene.page.words[mention.j - 1] in ("repair", "repairs")
    if noun and found_broken(scene.words(mention.j, min(mention.j + 7, scene.sentence.j))):
        return True  # 'FDP repair found pulled apart'
    opens = mention.i <= scene.sentence.i + 1
    reach = scene.sentence.j if opens else min(mention.j + 9, scene.part(mention.i)[1])
    if noun and not PUT_OFF.isdisjoint(scene.words(mention.j, reach)):
        return True  # 'FDP repair of the ring finger was postponed', 'Repair of the FDS, both slips cut, was declined'
    if never_made(scene, mention.j):
        return True  # 'end to end suture of the FDP was out of the question'
    return before in (["no"], ["without"]) or (noun and of_another_day(scene, k + 1, mention.j))


_KIND_OF_REPAIR = frozenset(["tendon", "flexor", "direct", "primary"])


def _sewn_otherwise(scene: Scene, mention: Mention) -> bool:
    """'The FDP was not repaired with the same core as the ring', 'with six strands': it was, in another way."""
    behind = scene.words(mention.j, mention.j + 5)
    likened = any(a in _MEANS and "same" in behind[n + 1 : n + 3] for n, a in enumerate(behind[:2]))
    means = scene.of("stitch", "strandword", "looped")
    likened = likened or (behind[:1] != [] and behind[0] in _MEANS and any(0 < m.i - mention.j <= 4 for m in means))
    return likened and (mention.value == "left" or scene.negated(mention.i, mention.j, 3))


_MEANS = frozenset(["with", "in", "by", "using"])


def _treatment(desk: Desk, scene: Scene, mention: Mention, value: str) -> None:
    targets = of_the_parted(desk, scene, _treated_together(desk, scene, mention, value))
    if value == "repaired" and len(targets) > 2:
        targets = _not_left(desk, scene, mention, targets)
    named = {t for g in scene.setting.groups if g.tendons for t in group_targets(scene, g)}
    if value == "trimmed" and not _trims_tendon(scene, mention):
        return
    if value == "excised" and (_trims_ends(scene, mention) or _takes_suture_out(scene, mention)):
        return
    if value == "repaired" and _sews_new_pulley(scene, mention):
        return
    if value in ("repaired", "reinserted") and any(
        m.value == "tenodesed" and scene.told(m.i) and m.i > mention.i and not _no_tenodesis(scene, m)
        for m in scene.of("deed")
    ):
        return  # 'sutured to the middle phalanx as a tenodesis'
    for target in targets:
        if target.tendon == "PL" and value == "grafted":
            continue  # a donor
        if value == "trimmed" and desk.extents.get(target) == "complete" and not scene.header:
            continue
        if (
            value == "repaired"
            and desk.treatments.get(target) in ("reinserted", "grafted", "tenodesed")
            and not scene.header
        ):
            continue
        known = desk.treatments.get(target)
        if value == "left" and known in ("trimmed", "excised") and not (scene.header or is_correction(scene)):
            continue  # 'its frayed edge was smoothed and the slip was not sutured'
        if value == "left" and _ticked(scene, mention):
            desk.withdraw(target, ("treatment",), scene.sentence.i)  # 'REPAIR FDS' heads the form's boxes
        if value == "left" and known == "repaired" and not _known_sewn(desk, scene, mention, target):
            desk.withdraw(target, _TELL_SEWN, scene.sentence.i)
        laid = len(desk.findings)
        too_far = value == "left" and too_much_for(scene.page, mention.i, scene.sentence) is not None
        rule = TOO_FAR_GONE if too_far else f"treatment {value}"
        desk.tendon(scene, target, "treatment", value, [with_name_of(scene, mention, target)], rule)
        for finding in desk.findings[laid:]:  # none where the sentence leaves the tendon out
            finding.carried = target not in named
        if too_far or (target not in named and value in ("left", "trimmed", "excised") and not scene.sentence.prefix):
            desk.treatments.pop(target, None)
            if known is not None:
                desk.treatments[target] = known


def _sews_new_pulley(scene: Scene, mention: Mention) -> bool:
    """'A2 rebuilt from the excised FDS, sewn to its rim', '..., put round the bone and sutured to itself'."""
    before = [g for g in scene.setting.groups if g.j <= mention.i and (g.tendons or g.generic)]
    behind = any(0 <= g.i - mention.j <= _AT_ITS_DEED and g.tendons for g in scene.setting.groups)
    return bool(before) and not behind and made_from(scene, before[-1])


_AT_ITS_DEED = 3  # words: 'repair of the FDP'


def _ticked(scene: Scene, mention: Mention) -> bool:
    """'[x] not repaired': the option of a ticked box."""
    return not BOX_ENDS.isdisjoint(scene.words(max(scene.sentence.i, mention.i - 2), mention.i))


def _treated_together(desk: Desk, scene: Scene, mention: Mention, value: str) -> list[Target]:
    """Return the tendons a deed was done to, and with 'FDP of both and FDS of the middle' those of both groups."""
    targets = _treated(desk, scene, mention, value)
    group = next((g for g in scene.setting.groups if g.tendons and targets == group_targets(scene, g)), None)
    wide = named_together(scene, group) if group is not None and group.j <= mention.i else None
    return [*group_targets(scene, wide), *targets] if wide is not None else targets


def _not_left(desk: Desk, scene: Scene, mention: Mention, targets: list[Target]) -> list[Target]:
    """'I repaired both profundi' behind a third one that was nicked and left: of as many as are counted."""
    sewn = [t for t in targets if desk.treatments.get(t) not in ("left", "trimmed", "excised")]
    return sewn if len(sewn) == count_told(desk, scene, mention.i) else targets


def _no_tenodesis(scene: Scene, mention: Mention) -> bool:
    """'tenodesis effect normal', 'wrist tenodesis test', 'to teach tenodesis exercises', 'passive tenodesis'."""
    word = scene.next_word(mention.j + (scene.next_word(mention.j) in ("then", "now", "also", "again")))
    moved = scene.page.words[mention.j - 1] == "tenodesis" and scene.word_before(mention.i) in _MOVED_BY
    behind = scene.words(mention.j, min(mention.j + 5, scene.sentence.j))
    moved = moved or (behind[:1] in (["by"], ["with"], ["of"], ["at"]) and "wrist" in behind)  # 'by moving the wrist'
    return moved or word in _OF_A_TEST or not _CHECKED_BY_IT.isdisjoint(scene.said)


_MOVED_BY = frozenset(["passive", "wrist", "passively", "gentle", "dynamic"])


_CHECKED_BY_IT = frozenset(["rotation", "malrotation", "cascade", "scissoring"])  # of the fingers, not of a tendon


_OF_A_TEST = frozenset(
    [
        *("effect", "test", "exercise", "exercises", "check", "manoeuvre", "movement", "arc", "action", "cascade"),
        *("showed", "shows", "demonstrated", "confirmed", "opened", "opens"),  # 'Tenodesis then showed free gliding'
    ]
)


def _trims_ends(scene: Scene, mention: Mention) -> bool:
    """'from each stump 2.5 mm are resected': the ends were trimmed, the tendon was not taken out."""
    first = max(scene.sentence.i, mention.i - 8, _own_clause(scene, mention))
    behind = scene.words(mention.j, min(scene.sentence.j, mention.j + 6))
    if "leaving" in behind[:3]:
        return False  # 'FDP excised, leaving 1 cm of stump on the phalanx': all but the stump
    near = {*scene.words(first, mention.j), *(behind[: behind.index(",")] if "," in behind else behind)}
    if "discarded" in scene.words(mention.i, mention.j) or _stumps_taken_out(scene, mention):
        return False
    told = [q for q in scene.quantities if q.unit == "mm" and not hurt_over(scene, q)]
    lengths = [q.j - 1 for q in told if (q.high or q.low or 0) < NO_END_PIECE]
    of_each = any(0 < mention.i - k <= 9 and "of" in scene.words(k, mention.i) for k in lengths)
    return (
        bool(near & {"stump", "stumps", "ends", "end", "edges"})
        or of_each
        or any(_last_piece(scene, q, mention) for q in told)
        or any(abs(k - mention.i) <= 4 or _of_a_length(scene, k, mention.i) for k in lengths)
    )


def _of_a_length(scene: Scene, k: int, i: int) -> bool:
    """'After 2 mm in all had been removed they held a suture': nothing stands between the length and the deed."""
    return k < i and _IN_ALL.issuperset(scene.words(k + 1, i))


_IN_ALL = frozenset(
    ["in", "all", "total", "altogether", "of", "it", "had", "have", "has", "been", "was", "were", "to", "be"]
)


def _own_clause(scene: Scene, mention: Mention) -> int:
    """'Ends debrided, FDS excised': return where the clause of the tendon right before the deed begins, else 0."""
    beside = next((g for g in scene.setting.groups if g.tendons and 0 <= mention.i - g.j <= 1), None)
    opens = beside is not None and scene.word_before(beside.i) in (",", ";", ".", "-", ">")
    return beside.i if beside is not None and opens else 0


def _stumps_taken_out(scene: Scene, mention: Mention) -> bool:
    """'The superficialis stumps were stuck in scar and were removed': all that was left of a tendon not sewn."""
    lead = next((g for g in reversed(scene.setting.groups) if g.tendons and g.j <= mention.i), None)
    noun = scene.next_word(lead.j) if lead is not None else ""
    whole = lead is not None and (noun in _REMAINS or (lead.tendons == ("FDS",) and noun == "stumps"))
    lengths = any(q.unit == "mm" for q in scene.quantities)
    sewn = any(d.value == "repaired" for d in scene.of("deed"))
    return whole and not (lengths or sewn or scene.of("ends"))


_REMAINS = frozenset(["remnant", "remnants", "remains", "remainder"])


def _last_piece(scene: Scene, q: Quantity, mention: Mention) -> bool:
    """'The last 2 mm was frayed and I removed it': a piece of the end."""
    small = (q.high or 0) < NO_END_PIECE and scene.word_before(q.i) in ("last", "final", "terminal", "distal", "very")
    return small and 0 < mention.i - q.j <= _NEAR_PIECE and scene.next_word(mention.j) in ("it", "this", "that", "them")


_NEAR_PIECE = 7  # words


def _takes_suture_out(scene: Scene, mention: Mention) -> bool:
    """'The second Kessler was started and taken out again': a suture was removed, not its tendon."""
    first, _ = scene.part(mention.i)
    if any(g.tendons and 0 <= g.i - mention.j <= 1 for g in scene.setting.groups):
        return False  # 'sewn with 4-0 Prolene, and excised the ulnar slip'
    if scene.word_before(mention.i - (scene.word_before(mention.i) in ("was", "were"))) in _SEWN_WITH:
        return True  # 'and that suture was removed'
    if scene.word_before(mention.i) == "it" and first > scene.sentence.i:
        first = scene.part(first - 1)[0]  # 'started with 3-0 Prolene, it cut out, replaced by 4-0 Ethibond'
    threads = [m for m in scene.of("stitch", "material", "strandword", "knotword") if first <= m.i and m.j <= mention.i]
    tendons = [g for g in scene.setting.groups if first <= g.i and g.j <= mention.i and g.tendons]
    return bool(threads) and not (tendons and tendons[-1].i > threads[-1].i)


def _trims_tendon(scene: Scene, mention: Mention) -> bool:
    """Ends trimmed back before a repair are no 'trimmed' tendon."""
    part = set(scene.words(max(scene.sentence.i, mention.i - 3), min(scene.sentence.j, mention.j + 3)))
    sentence = set(scene.words(scene.sentence.i, scene.sentence.j))
    if sentence & {"ends", "stumps", "stump"} and not sentence & _FLAP:
        return False
    first, last = scene.part(mention.i)
    lengths = [q.i for q in scene.quantities if q.unit == "mm" and first <= q.i < last]
    if any(q.unit == "mm" and q.i >= mention.i and q.i - mention.j <= 3 for q in scene.quantities):
        return False
    if any(0 < mention.i - k <= 8 for k in lengths) and not sentence & _FLAP:
        return False  # 'four millimetres of FDP trimmed altogether'
    return not part & {"strand", "strands", "skin", "knot", "needle", "knots"} and scene.next_word(mention.j) not in (
        "suture",
        "sutures",
    )


def _treated(desk: Desk, scene: Scene, mention: Mention, value: str) -> list[Target]:
    after = scene.next_word(mention.j)
    first, _ = scene.part(mention.i)
    before = [g for g in scene.setting.groups if g.tendons and g.j <= first and not g.reference]
    its_slip = any(first < m.i < mention.i for m in scene.of("slip"))  # 'while its radial slip was trimmed'
    if value == "trimmed" and before and scene.page.words[first] == "its" and not its_slip:
        return group_targets(scene, before[-1])  # 'FDS partially cut: its frayed edge was trimmed'
    if value == "trimmed" and _ahead_of_its_stitches(scene, mention):
        return group_targets(scene, scene.setting.groups[0])
    if after in ("it", "them"):
        return _last_named(desk, scene, mention)
    if value == "left" and scene.words(mention.j, mention.j + 2) in (["to", "it"], ["about", "it"], ["for", "it"]):
        return _last_named(desk, scene, mention)
    if value == "tenodesed" and (after in ("to", "onto", "into") or scene.words(mention.j - 1, mention.j) == ["to"]):
        return _last_named(desk, scene, mention)
    if value == "tenodesed" and (_by_way_of(scene, mention) or _to_a_side(scene, mention)):
        return _stump_fixed(desk, scene, mention)
    targets, group = tendon_owner(desk, scene, mention.i, mention.j)
    if not targets and value in ("left", "trimmed") and (label := _label_of_cell(scene)) is not None:
        return group_targets(scene, label)
    subject = scene.owner(mention.i, mention.j)
    if subject is not None and not targets and (own := _of_its_subject(scene, mention, subject)):
        return own
    unsewn = subject is None or _no_suture(scene, subject, value)
    if value == "trimmed" and unsewn and not scene.header and not _FLAPS.isdisjoint(scene.said):
        nicked = _the_one_nicked(desk, scene.setting.digits)
        if nicked:
            return nicked  # 'The flap was pared flush': of the one tendon that was cut in part
    leads = mention.i - scene.sentence.i <= 1 and not any(s.j <= mention.i for s in scene.subjects)
    behind = subject is not None and subject.i >= mention.j and not leads
    if targets and behind and scene.next_word(mention.j) in _TREATED_WORDS:
        before = [s.group for s in scene.subjects if s.j <= mention.i and s.group is not None and s.group.tendons]
        return group_targets(scene, before[-1]) if before and value == "grafted" else []
    if (
        value == "left"
        and scene.words(mention.i, mention.j)[:1] == ["nothing"]
        and scene.next_word(mention.j) in ("to", "about", "with")
    ):
        return []
    if value == "repaired" and _of_several(scene, mention, targets, group):
        return []
    if targets:
        if (
            value in ("trimmed", "left", "excised")
            or scene.header
            or _close(scene, mention, subject.i if subject else 0, subject.j if subject else 0)
        ):
            return _by_slip(scene, mention, targets, group)
        return []
    if subject is None or (value == "repaired" and _its_suture(subject, mention)) or _no_suture(scene, subject, value):
        return _treated_from_focus(desk, scene, mention, value)
    if group is None:
        return []
    if value == "trimmed" and group.digits and subject.kind == "digit" and not scene.header:
        return _the_one_nicked(desk, group.digits)  # 'in the small finger I was content to trim the loose fibers'
    if (
        group.generic == "all"
        and value == "repaired"
        and scene.words(mention.i, mention.j)[-1:] in (["repairs"], ["repair"])
        and not scene.header
    ):
        return []
    if group.generic == "all" and scene.words(group.i, group.i + 1) in (["each"], ["both"]) and value != "repaired":
        named = [g for g in scene.setting.groups if g.tendons and g.j <= group.i and not g.reference]
        pair = scene.setting.focus if len(scene.setting.focus) == _PAIR and group.i == scene.sentence.i else ()
        whole = _both_of_the_finger(desk, scene, group) if value == "excised" else []
        return (
            group_targets(scene, named[-1]) if named else list(pair) or whole
        )  # 'FDP and FDS were one mass. Both were excised'
    tendon = {"tendon", "flexor"} & set(scene.words(scene.sentence.i, scene.sentence.j))
    if scene.header and value == "grafted" and group.digits and tendon and not scene.of("structure", "anynerve"):
        return [Target(d, "FPL" if d == "thumb" else "FDP") for d in group.digits]
    if group.generic == "others" and value == "repaired":
        cut = [t for t in desk.cut() if t not in desk.treatments and t.slip is None]
        return others(desk, scene, group, cut)
    if group.generic == "all" and scene.words(mention.i, mention.j) in _SUTURE_OF:
        return []  # 'each with a modified Kessler suture of 3-0 Prolene'
    if group.generic == "all" and value == "repaired":
        cut = [t for t in desk.cut(group.digits or None) if t not in desk.treatments and t.slip is None]
        return cut or _named_before(desk, scene, group)
    if group.generic == "one" and value in ("repaired", "reinserted", "grafted", "tenodesed"):
        return carried(desk, scene, near_digits(scene, group) or None)[0] or [
            t for t in scene.setting.focus if desk.extents.get(t) != "intact"
        ]
    if group.generic == "one" and value in ("left", "trimmed", "excised"):
        cut = [t for t in scene.setting.focus if desk.extents.get(t) != "intact"]
        nicked = _the_one_nicked(desk, scene.setting.digits) if value == "trimmed" else []
        return cut or nicked  # 'FDP 40% cut. FDS fine. Flap trimmed away, no suture put in the tendon.'
    return []


_PAIR = 2
_FLAPS = frozenset(
    ["flap", "flaps", "edge", "edges", "tongue", "lap", "fibres", "fibers", "beak", "shoulder", "tag", "lip"]
)


def _the_one_nicked(desk: Desk, digits: tuple[str, ...]) -> list[Target]:
    """Return the one tendon of the digits given that was cut in part, or none where there are more of them."""
    nicked = [t for t in desk.cut(digits or None) if desk.extents.get(t) == "partial"]
    return nicked if len(nicked) == 1 else []


def _of_its_subject(scene: Scene, mention: Mention, subject: Subject) -> list[Target]:
    """'The profundus was scarred to the middle phalanx and was excised': the tendon that the sentence opens with."""
    led = scene.words(mention.i - 2, mention.i) in (["and", "was"], ["and", "were"])
    groups = [g for g in scene.setting.groups if g.j <= mention.i]
    opens = len(groups) == 1 and bool(groups[0].tendons) and groups[0].i - scene.sentence.i <= 1
    return group_targets(scene, groups[0]) if led and opens and subject.kind in ("bone", "role") else []


def _both_of_the_finger(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'Both tendons were excised', of a finger whose two flexors were told cut or stuck."""
    one = scene.setting.digits if len(scene.setting.digits) == 1 else ()
    both = [Target(d, t) for d in one if d != "thumb" for t in ("FDP", "FDS")]
    opens = group.i == scene.sentence.i and not {"tendons", "flexors"}.isdisjoint(scene.words(group.i, group.j))
    return both if opens and not any(desk.extents.get(t) == "intact" for t in both) else []


def _label_of_cell(scene: Scene) -> Group | None:
    """'not repaired, left' under 'Core' in the row of a tendon: the row's tendon, where the cell names no other."""
    heads = [g for g in scene.setting.groups if g.i == g.j == scene.sentence.i and g.tendons]
    labels = [g for g in heads if all(digit or tendon in WRIST for digit, tendon, _ in g.pairs)]
    others = any(g.i < g.j for g in scene.setting.groups) or scene.of("sided", "structure", "pulley", "anynerve")
    return labels[0] if scene.sentence.prefix and len(labels) == 1 and not others else None


def _of_several(scene: Scene, mention: Mention, targets: list[Target], group: Group | None) -> bool:
    """'The superficialis repairs were left without one' behind words on one finger: not of that one alone."""
    plural = scene.words(mention.i, mention.j)[-1:] == ["repairs"] and not scene.header
    return plural and len(targets) == 1 and group is not None and bool(group.tendons) and not group.digits


def _ahead_of_its_stitches(scene: Scene, mention: Mention) -> bool:
    """'Index FDP: edge smoothed with two epitendinous 6-0': of the tendon that heads the line, not of the suture."""
    subject = scene.owner(mention.i, mention.j)
    groups = [g for g in scene.setting.groups if g.tendons]
    heads = len(groups) == 1 and groups[0].i == scene.sentence.i and scene.next_word(groups[0].j) == ":"
    return heads and subject is not None and subject.kind == "role" and subject.i >= mention.j


def _by_way_of(scene: Scene, mention: Mention) -> bool:
    """'The far stump was fixed to the radius as a tenodesis': what the deed before it comes to."""
    lead = scene.words(max(scene.sentence.i, mention.i - 2), mention.i + 1)
    return not _LEADS_TO_TENODESIS.isdisjoint(lead)


def _to_a_side(scene: Scene, mention: Mention) -> bool:
    return mention.value == "tenodesed" and scene.words(mention.j - 2, mention.j) == ["side", "of"]


_LEADS_TO_TENODESIS = frozenset(["as", "by", "of"])


def _stump_fixed(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """Return the tendon named before a tenodesis in its sentence, else the one whose stump was spoken of."""
    named = [g for g in scene.setting.groups if g.tendons and g.j <= mention.i and not g.reference]
    if named:
        return group_targets(scene, named[-1])
    focus = [t for t in scene.setting.focus if desk.extents.get(t) != "intact"]
    return focus if len(focus) == 1 else []


def _named_before(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'FDP ring cut, FDP middle cut, both repaired': the tendons of the sentence, if several, that are not sound."""
    named = [g for g in scene.setting.groups if g.tendons and g.j <= group.i and not (g.reference or g.excepted)]
    found = dict.fromkeys(t for g in named for t in group_targets(scene, g) if desk.extents.get(t) != "intact")
    return list(found) if len(found) > 1 else []


def _last_named(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """'..., so I resected it', 'FDS 5: too thin and tenodesed to FDS 4': what was named last before the deed."""
    before = [s for s in scene.subjects if s.j <= mention.i]
    if not before:
        earlier = desk.scene_before(scene)
        if {"stump", "end", "tendon"} & set(scene.words(scene.sentence.i, mention.i)):  # 'The stump was tenodesed'
            focus = [t for t in scene.setting.focus if desk.extents.get(t) != "intact"]
            return focus or [Target(d, "FPL" if d == "thumb" else "FDP") for d in scene.setting.digits]
        if earlier is None or not earlier.subjects or earlier.subjects[-1].group is None:
            return []
        return [t for t in scene.setting.focus if desk.extents.get(t) != "intact"]
    group = before[-1].group
    if group is None or not (group.tendons or group.digits):
        return []
    return group_targets(scene, group) if group.tendons else list(scene.setting.focus)


def _its_suture(subject: Subject, mention: Mention) -> bool:
    """'It was repaired with a core suture': the suture behind the deed is of the tendon spoken of."""
    role = subject.mention.value if subject.kind == "role" and subject.mention is not None else ""
    return role in ("core", "peripheral") and subject.i >= mention.j


def _no_suture(scene: Scene, subject: Subject, value: str) -> bool:
    """'Smoothed the edges, no core', 'Core: none, flap trimmed': what was trimmed is no suture that was not set."""
    if value != "trimmed" or subject.kind != "role":
        return False
    denied = not _NOT_SET.isdisjoint(scene.words(subject.j, subject.j + _LABEL_AND_ANSWER))
    return scene.word_before(subject.i) in ("no", "without") or (subject.i == scene.sentence.i and denied)


_NOT_SET = frozenset(["none", "nil", "no", "not", "nothing", "n"])
_LABEL_AND_ANSWER = 3  # words


def _told_instead(scene: Scene, mention: Mention) -> bool:
    """'The FDS was excised, not repaired': what was done is told in the same breath, and is not 'left'."""
    k = mention.i - (scene.page.words[mention.i] != "not")
    denied = scene.page.words[k] == "not" and scene.word_before(k) in (",", "and", "but", "-", "(")
    return denied and any(m.j == k - 1 and m.value == "excised" for m in scene.of("deed"))


def _by_slip(scene: Scene, mention: Mention, targets: list[Target], group: Group | None) -> list[Target]:
    """'one slip of FDS was excised': no slip is named, so the whole tendon is not said to be."""
    later = [g for g in scene.setting.groups if g.i >= mention.j and g.tendons][:1]
    for near in (g for g in later if any(slip for _, _, slip in g.pairs)):
        if scene.next_word(near.j) == "only" and any(t.tendon == "FDS" for t in targets):
            return group_targets(scene, near)  # 'repaired, ulnar slip only'
    slips = [m for m in scene.of("slip") if m.value in ("one", "other") and abs(m.i - mention.i) <= 8]
    if slips and all(t.slip is None and t.tendon == "FDS" for t in targets):
        return []
    return targets


def _close(scene: Scene, mention: Mention, i: int, j: int) -> bool:
    """Tell whether no other structure stands between a deed and its tendon."""
    low, high = min(j, mention.j), max(i, mention.i)
    return not any(
        s
        for s in scene.subjects
        if low <= s.i < high and s.kind in ("structure", "sided", "role", "pulley", "anynerve")
    )


def _treated_from_focus(desk: Desk, scene: Scene, mention: Mention, value: str) -> list[Target]:
    """'It was sewn with ...', 'Edge smoothed off, no stitch': the tendon in focus, where it is known to be cut."""
    strange = value != "trimmed" and has_strange_subject(scene, mention.i)  # 'The flap was trimmed smooth.'
    if _of_other_thing(desk, scene) or strange:
        return []
    focus = [t for t in scene.setting.focus if desk.extents.get(t) != "intact"]
    near, first = mention.i - scene.sentence.i <= 8, scene.sentence.i
    opens = mention.i <= scene.sentence.i + 1 or (scene.words(first, first + 1) == ["it"] and near)
    if value == "excised" and opens and all(t.tendon == "FDS" for t in focus):
        return [] if _another_it(desk, scene, mention) else focus
    if value == "trimmed" and near and not focus:
        nicked = [t for t in desk.cut(scene.setting.digits or None) if desk.extents.get(t) == "partial"]
        return nicked if len(nicked) == 1 else []  # 'FDP nicked. FDS fine. I trimmed the flap.'
    if value in ("trimmed", "left") and (near or _ticked(scene, mention) or _closes_its_cut(desk, scene, mention)):
        if value == "left" and not _ticked(scene, mention) and any(_known_sewn(desk, scene, mention, t) for t in focus):
            return []
        return focus
    if value in ("reinserted",) and scene.header:
        return focus
    if value == "grafted" and scene.header and "tendon" in scene.said and not _OF_NERVES & scene.kinds:
        return desk.deep_named if len(desk.deep_named) == 1 else []  # '(x) Tendon graft'
    to_bone = value == "reinserted" and not _OF_BONE.isdisjoint(scene.said)  # 'Reattached to bone with 2-0'
    tied = scene.words(mention.i, mention.i + 1) == ["tied"]
    threaded = to_bone and (tied or bool(scene.of("material", "stitch")))  # '3-0 Prolene, tied over a button'
    if (value == "repaired" or to_bone) and (near or threaded) and not scene.header:
        return sewn_now(desk, scene, mention)
    return []


def _known_sewn(desk: Desk, scene: Scene, mention: Mention, target: Target) -> bool:
    """Tell whether a tendon is known to be repaired; of one cut in part the title alone does not say so.

    'Operation: repair of FDP. FDP was cut for a third of its width. It was left as it was.'
    """
    repaired = desk.treatments.get(target) == "repaired"
    denied = scene.page.words[mention.i] in _DENIES  # 'No repair was made and no trimming either'
    at_its_end = denied or scene.next_word(mention.j) in _CLAUSE_ENDS
    if not repaired or desk.extents.get(target) != "partial" or not at_its_end:
        return repaired  # also of 'It was left slightly bulky'
    told = desk.told_of("repairs", target)
    found = next((f.order for f in told if f.field == "extent"), 0)
    return any(f.field in _TELL_SEWN and f.order > found for f in told)


_CLAUSE_ENDS = frozenset(["", ".", ",", ";"])
_DENIES = frozenset(["no", "not", "never", "nothing"])
_TELL_SEWN = ("treatment", "strands", "stitch", "size", "peripheral")


def _closes_its_cut(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'FDP' above '- 20% cut on the radial edge, smooth, left alone': the sentence tells of one cut in part."""
    focus = scene.setting.focus
    partly = len(focus) == 1 and desk.extents.get(focus[0]) == "partial"
    told = any(m.i < mention.i for m in scene.of("hurt", "extent"))
    return partly and told and not scene.subjects and scene.next_word(mention.j) in ("", ".", ",", ";")


def _another_it(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'There was glass in the wound. I took it out.', 'A 5-0 had torn out. I took it out.': no tendon was told of."""
    before = desk.scene_before(scene)
    if {"it", "them"}.isdisjoint(scene.words(mention.i, mention.j)) or before is None:
        return False
    return not any(g.tendons for g in before.setting.groups) or bool(before.of("material", "stitch"))


_OF_NERVES = frozenset(["structure", "sided", "anynerve", "anyartery"])


def _of_other_thing(desk: Desk, scene: Scene) -> bool:
    """'Digital nerve bruised, unbroken. Left.': the sentence before was about no tendon and no finger."""
    before = desk.scene_before(scene)
    if before is None or before.sentence.block != scene.sentence.block or scene.sentence.j - scene.sentence.i > 4:
        return False
    return bool(before.subjects) and all(s.kind not in ("tendon", "digit", "role") for s in before.subjects)


def _slip_left_over(desk: Desk, scene: Scene) -> None:
    """'The ulnar slip was excised and the other repaired': the other slip of the same tendon."""
    others = [m for m in scene.of("slip") if m.value == "other" and scene.told(m.i)]
    named = [t for g in scene.setting.groups for t in group_targets(scene, g) if t.slip]
    for mention in others:
        if len(named) != 1:
            continue
        deed = next((d for d in scene.of("deed") if d.i >= mention.j and d.i - mention.j <= 4), None)
        if deed is None:
            continue
        value = _deed(desk, scene, deed)
        slip = "ulnar" if named[0].slip == "radial" else "radial"
        if value in ("repaired", "excised", "left", "trimmed"):
            target = Target(named[0].digit, named[0].tendon, slip)
            desk.tendon(scene, target, "treatment", value, [(mention.i, deed.j)], "the other slip")
