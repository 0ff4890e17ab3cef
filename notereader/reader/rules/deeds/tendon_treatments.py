"""What was done to each tendon."""

from dataclasses import replace

from notereader.reader.desk import Desk, is_correction
from notereader.reader.drafting.held_counts import count_told
from notereader.reader.drafting.settling import TOO_FAR_GONE
from notereader.reader.groups import Target
from notereader.reader.needs import needs
from notereader.reader.page import Mention
from notereader.reader.rules.cuts.cut_shares import with_name_of
from notereader.reader.rules.cuts.not_touched import untouched_though_cut
from notereader.reader.rules.cuts.parted import of_the_parted
from notereader.reader.rules.cuts.pieces import pieces_taken_off
from notereader.reader.rules.dealt_out import dealt_out, targets_of_kind
from notereader.reader.rules.deeds.both_flexors import both_flexors
from notereader.reader.rules.deeds.cut_away import AT_ITS_DEED, takes_suture_out, trims_ends, trims_tendon
from notereader.reader.rules.deeds.deed_owners import treated
from notereader.reader.rules.deeds.deeds_in_focus import TELL_SEWN, known_sewn, ticked
from notereader.reader.rules.deeds.deeds_told import deed_told
from notereader.reader.rules.deeds.denied_deeds import neither_mended, not_worth_it
from notereader.reader.rules.deeds.grafts import grafted_with, put_in_as_graft
from notereader.reader.rules.deeds.left_by_exception import left_by_exception
from notereader.reader.rules.deeds.tenodeses import no_tenodesis, tenodesis_of_the_joint, woven_into_a_neighbour
from notereader.reader.rules.pulleys.pulley_names import made_from
from notereader.reader.scene import Scene, group_targets
from notereader.reader.standing.negation import too_much_for


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
        "off",
        "away",
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
        value = deed_told(desk, scene, mention)
        if value is not None:
            _lay_deed(desk, scene, replace(mention, value=value))
    for mention in (*neither_mended(scene), *not_worth_it(scene), *pieces_taken_off(scene)):
        if scene.told(mention.i):
            _lay_deed(desk, scene, mention)
    for mention in scene.of("extent"):
        if scene.told(mention.i) and untouched_though_cut(scene, mention):
            _lay_deed(desk, scene, replace(mention, kind="deed", value="left"))
    _cell_of_sewn(desk, scene)
    _which_slip(desk, scene)
    _slip_left_over(desk, scene)
    _likewise(desk, scene)
    _to_bone(desk, scene)
    tenodesis_of_the_joint(desk, scene)
    woven_into_a_neighbour(desk, scene)
    _left_too(desk, scene)
    left_by_exception(desk, scene)
    both_flexors(desk, scene)
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


_DEALT = frozenset(["repaired", "excised", "left", "reinserted", "grafted", "tenodesed", "trimmed"])


def _fate(desk: Desk, scene: Scene, mention: Mention) -> str | None:
    """'Excised in the ring but sutured in the index': dealt out over fingers, no piece taken away before a repair."""
    return deed_told(desk, scene, mention) or (mention.value if mention.value in ("excised", "left") else None)


def _lay_deed(desk: Desk, scene: Scene, deed: Mention) -> None:
    """Lay down a deed for each tendon it was done to, unless what is known of the tendon outweighs it."""
    if _of_another_thing(scene, deed):
        return
    targets = of_the_parted(desk, scene, treated(desk, scene, deed))
    if deed.value == "repaired" and len(targets) > 2:
        targets = _not_left(desk, scene, deed, targets)
    named = {t for g in scene.setting.groups if g.tendons for t in group_targets(scene, g)}
    for target in targets:
        if not _outweighed(desk, scene, deed, target):
            _lay_treatment(desk, scene, deed, target, target in named)


def _of_another_thing(scene: Scene, deed: Mention) -> bool:
    """Tell whether a deed was done to the ends of a tendon, a suture or a pulley, or is only the way of another."""
    if deed.value == "trimmed":
        return not trims_tendon(scene, deed)
    if deed.value == "excised":
        return trims_ends(scene, deed) or takes_suture_out(scene, deed)
    if deed.value == "repaired" and _sews_new_pulley(scene, deed):
        return True
    return deed.value in ("repaired", "reinserted") and _as_a_tenodesis(scene, deed)


def _as_a_tenodesis(scene: Scene, deed: Mention) -> bool:
    """'Sutured to the middle phalanx as a tenodesis'."""
    later = (m for m in scene.of("deed") if m.value == "tenodesed" and m.i > deed.i and scene.told(m.i))
    return any(not no_tenodesis(scene, m) for m in later)


def _outweighed(desk: Desk, scene: Scene, deed: Mention, target: Target) -> bool:
    """Tell whether a tendon is known to have been cut through or treated in a way that a deed does not change."""
    if target.tendon == "PL" and deed.value == "grafted":
        return True  # a donor
    if scene.header:
        return False
    if deed.value == "trimmed":
        return desk.extents.get(target) == "complete"
    known = desk.treatments.get(target)
    if deed.value == "repaired":
        return known in ("reinserted", "grafted", "tenodesed")
    # 'its frayed edge was smoothed and the slip was not sutured'
    return deed.value == "left" and known in ("trimmed", "excised") and not is_correction(scene)


def _lay_treatment(desk: Desk, scene: Scene, deed: Mention, target: Target, named: bool) -> None:
    """Lay down a deed for one tendon. A deed carried to it from elsewhere does not change what is known of it."""
    value, known = deed.value, desk.treatments.get(target)
    if value == "left" and ticked(scene, deed):
        desk.withdraw(target, ("treatment",), scene.sentence.i)  # 'REPAIR FDS' heads the form's boxes
    if value == "left" and known == "repaired" and not known_sewn(desk, scene, deed, target):
        desk.withdraw(target, TELL_SEWN, scene.sentence.i)
    laid = len(desk.findings)
    too_far = value == "left" and too_much_for(scene.page, deed.i, scene.sentence) is not None
    rule = TOO_FAR_GONE if too_far else f"treatment {value}"
    desk.tendon(scene, target, "treatment", value, [with_name_of(scene, deed, target)], rule)
    for finding in desk.findings[laid:]:  # none where the sentence leaves the tendon out
        finding.carried = not named
    loose = not named and value in ("left", "trimmed", "excised") and not scene.sentence.prefix
    if too_far or loose:
        desk.treatments.pop(target, None)
        if known is not None:
            desk.treatments[target] = known


def _sews_new_pulley(scene: Scene, mention: Mention) -> bool:
    """'A2 rebuilt from the excised FDS, sewn to its rim', '..., put round the bone and sutured to itself'."""
    before = [g for g in scene.setting.groups if g.j <= mention.i and (g.tendons or g.generic)]
    behind = any(0 <= g.i - mention.j <= AT_ITS_DEED and g.tendons for g in scene.setting.groups)
    return bool(before) and not behind and made_from(scene, before[-1])


def _not_left(desk: Desk, scene: Scene, mention: Mention, targets: list[Target]) -> list[Target]:
    """'I repaired both profundi' behind a third one that was nicked and left: of as many as are counted."""
    sewn = [t for t in targets if desk.treatments.get(t) not in ("left", "trimmed", "excised")]
    return sewn if len(sewn) == count_told(desk, scene, mention.i) else targets


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


_SEWN_TITLES = (["sewn"], ["repaired"], ["sutured"], ["stitched"], ["sewn", "?"], ["repaired", "?"], ["sutured", "?"])


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
        value = deed_told(desk, scene, deed)
        slip = "ulnar" if named[0].slip == "radial" else "radial"
        if value in ("repaired", "excised", "left", "trimmed"):
            target = Target(named[0].digit, named[0].tendon, slip)
            desk.tendon(scene, target, "treatment", value, [(mention.i, deed.j)], "the other slip")


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


def _to_bone(desk: Desk, scene: Scene) -> None:
    """'FPL to bone, as below': told without a verb."""
    for group in (g for g in scene.setting.groups if g.tendons and not (g.reference or g.excepted)):
        after = scene.words(group.j, min(group.j + 3, scene.sentence.j))
        ends = after[2:] in ([], [","], ["."], [";"], ["with"], ["by"], ["via"], ["("], ["using"])
        if after[:2] == ["to", "bone"] and ends and scene.told(group.i) and not scene.negated(group.i, group.j):
            for target in group_targets(scene, group):
                desk.tendon(scene, target, "treatment", "reinserted", [(group.i, group.j + 2)], "treatment reinserted")


def _left_too(desk: Desk, scene: Scene) -> None:
    """'The PL was left unrepaired, and so was the cut of the FCU', 'PL not sutured, nor was the FCU': left as well."""
    words = scene.page.words
    for k in range(scene.sentence.i + 2, scene.sentence.j - 1):
        if words[k] not in _TOO or words[k + 1] not in ("was", "were") or not scene.told(k):
            continue
        group = next((g for g in scene.setting.groups if 0 < g.i - k <= _FAR_TOO and g.tendons), None)
        deeds = [d for d in scene.of("deed") if d.j <= k and scene.told(d.i) and d.value in ("repaired", "left")]
        last = deed_told(desk, scene, deeds[-1]) if deeds else None
        others = [m for m in scene.of("deed", "extent") if group is not None and m.i >= group.j]
        if group is None or last != "left" or others:
            continue
        for target in group_targets(scene, group):
            if desk.extents.get(target) != "intact":
                desk.tendon(scene, target, "treatment", "left", [(k, group.j)], "treatment left")


_TOO = frozenset(["so", "as", "nor", "neither"])
_FAR_TOO = 8  # words
