"""How much of a tendon was cut, told as a share: per cent, half, a third."""

from collections.abc import Container

from notereader.reader.desk import Desk
from notereader.reader.groups import Group, Target
from notereader.reader.page import Break, Mention, Quantity
from notereader.reader.rules.carried import carried
from notereader.reader.rules.cuts.cut_owners import CUT_LABELS, OF_ITS, behind_brackets, of_another_row
from notereader.reader.rules.owners import tendon_owner
from notereader.reader.rules.strangers import has_strange_subject
from notereader.reader.rules.sutures.suture_owners import respective
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_CUTS_TENDON_WORDS = word_list("tendons", "cuts_tendon_words")
_FRACTION_CUTS_CUT = word_list("tendons", "fraction_cuts_cut")
_DRUGS = word_list("tendons", "drugs")
_REMAINING = word_list("tendons", "remaining")


def with_name_of(scene: Scene, mention: Mention, target: Target) -> tuple[int, int]:
    """Return the words from the tendon's name to the property where they stand close, else the property."""
    for group in scene.setting.groups:
        if group.tendons and target.tendon in group.tendons:
            i, j = min(group.i, mention.i), max(group.j, mention.j)
            if j - i <= 14:
                return i, j
    return mention.i, mention.j


def told_in_percent(desk: Desk, scene: Scene, dealt: Container[tuple[int, int]] = ()) -> None:
    """Read percentages said of a tendon: 'FDP 60 % cut', 'divided through 40 % of its width'.

    `dealt`: the words of those that are told already.
    """
    for quantity in scene.quantities:
        if (quantity.i, quantity.j) in dealt:
            continue
        if scene.word_before(quantity.i) == "not":
            continue  # 'was 50 percent, not 30 percent'
        if scene.word_before(quantity.i) in (">", "over", "above") and not _cut_over(scene, quantity):
            continue  # 'under 20 percent' is at most so much
        if _left_whole(scene, quantity) or has_strange_subject(scene, quantity.i):
            continue  # 'Active flexion was 80 percent of the other side'
        if scene.next_word(quantity.j) in _COMPARED:
            continue  # 'a repair 20 percent thicker than the tendon'
        share = quantity.unit == "%" and _cuts_tendon(scene, quantity)
        if scene.told(quantity.i) and (share or _answers_percent(scene, quantity)):
            behind = _share_of_behind(scene, quantity) or behind_brackets(scene, quantity.i - 1)
            if behind:
                part_cut(desk, scene, behind, quantity.high or 0.0, quantity.i, quantity.j)
                continue
            if scene.sentence.prefix and not scene.setting.groups and of_another_row(scene):
                continue
            targets, _ = tendon_owner(desk, scene, quantity.i, quantity.j)
            targets = _hurt_of(scene, quantity) or _incised(scene, quantity) or _last_of_list(scene, quantity, targets)
            subject = scene.owner(quantity.i, quantity.j)
            if not targets and subject is None:
                asked = scene.words(quantity.i - 2, quantity.i) == ["cut", ":"]
                targets = list(scene.setting.focus) if asked or quantity.i - scene.sentence.i <= 4 else []
            elif not targets and not share and subject and subject.group and subject.group.generic == "one":
                targets = carried(desk, scene)[0] or list(scene.setting.focus)  # '% of tendon cut: 60'
            peers = [q.i for q in scene.quantities if q.unit == "%"]
            targets = respective(scene, quantity.i, peers, targets)
            cut = quantity.high or 0.0
            cut = 100 - (quantity.low or cut) if _still_held(scene, quantity) else cut
            part_cut(desk, scene, targets, cut, quantity.i, quantity.j)


def _cut_over(scene: Scene, quantity: Quantity) -> bool:
    """'Torn across over 90 percent', 'divided by over 75%': a share told of the cut, and no limit for sewing."""
    if scene.arrow(quantity.i - 1) or _through_by_over(scene, quantity):
        return True
    k = quantity.i - 1 - (scene.word_before(quantity.i - 1) in _BY)
    return scene.word_before(quantity.i) == "over" and any(
        m.i < k <= m.j for kind in ("hurt", "extent") for m in scene.of(kind) if m.value != "intact"
    )


def _through_by_over(scene: Scene, quantity: Quantity) -> bool:
    """'FPL >90% through', 'the profundus was over 80 % divided': the tendon right before, and the cut right behind."""
    k = quantity.i - 1
    k -= scene.word_before(k) in ("was", "is", ":")
    named = any(g.tendons and g.j == k and not g.reference for g in scene.setting.groups)
    cut = scene.next_word(quantity.j) in ("through", "cut") or any(
        m.i == quantity.j and m.value in ("complete", "hurt") for m in scene.of("hurt", "extent")
    )
    return named and cut


_BY = frozenset(["by", "for", "across", "through"])


def _still_held(scene: Scene, quantity: Quantity) -> bool:
    """'20 percent of the fibers still held on the radial side': the share told is the one that was not cut."""
    behind = [
        w for w in scene.words(quantity.j, min(quantity.j + _HELD_WITHIN, scene.sentence.j)) if w not in _OF_WIDTH
    ]
    if _hung_by(scene, quantity.i):
        return True
    held = behind[1:] if behind[:1] in (["still"], ["was"], ["were"], ["had"]) else behind
    held = held[1:] if held[:1] == ["still"] else held
    return held[:1] != [] and held[0] in _HELD


def _hung_by(scene: Scene, k: int) -> bool:
    """'Hanging by a third', 'held on only by 10 per cent': the share at word k is what was not cut."""
    lead = [
        w for w in scene.words(max(scene.sentence.i, k - 6), k) if w not in _ABOUT - {"by"} and w not in ("a", "on")
    ]
    return lead[-1:] == ["by"] and lead[-2:-1] != [] and lead[-2] in _HANGING


_COMPARED = frozenset(["thicker", "bulkier", "wider", "larger", "broader", "stronger", "weaker", "thinner", "more"])
_HANGING = frozenset(["hanging", "held", "attached", "connected", "hung", "holding", "hangs", "hold", "holds"])
_HELD_WITHIN = 7  # words
_OF_WIDTH = frozenset(["of", "the", "its", "fibers", "fibres", "width", "substance", "tendon", "thickness", "strands"])
_HELD = frozenset(["held", "holding", "standing", "attached", "remained", "holds", "hold"])


def _left_whole(scene: Scene, quantity: Quantity) -> bool:
    """'40 % of the ring FDP was intact': how much of it was not cut."""
    of_it = next((g for g in scene.setting.groups if g.tendons and 0 < g.i - quantity.j <= 2), None)
    if of_it is None or scene.next_word(quantity.j) != "of":
        return False
    return any(m.value == "intact" and 0 < m.i - of_it.j <= 2 for m in scene.of("extent"))


def _share_of_behind(scene: Scene, quantity: Quantity) -> list[Target]:
    """'A nick of about 15 per cent in the FDP; its FDS was intact': the tendon right behind the share."""
    cut = next((m for m in scene.of("extent") if 0 <= m.i - quantity.j <= 1 and m.value == "partial"), None)
    end = cut.j if cut is not None else quantity.j  # 'a 30 % nick in the FDP'
    group = next((g for g in scene.setting.groups if g.tendons and 0 < g.i - end <= 3), None)
    of_slip = group is not None and all(slip for _, _, slip in group.pairs)
    if group is None or scene.next_word(end) not in (("in", "of", "on", "through") if of_slip else ("in", "of")):
        return []
    return group_targets(scene, group) if OF_ITS.issuperset(scene.words(end + 1, group.i)) else []


def share_again(desk: Desk, scene: Scene) -> None:
    """'The radial slip about 80 percent cut, the ulnar one only about 20': the second share without its sign."""
    signed = [q for q in scene.quantities if q.unit == "%"]
    for q in scene.quantities if signed else ():
        bare = not q.unit and q.high is not None and 5 <= q.high < 100 and q.i > signed[0].j
        group = next((g for g in reversed(scene.setting.groups) if g.j <= q.i), None)
        if not bare or group is None or not any(slip for _, _, slip in group.pairs) or not scene.told(q.i):
            continue
        if scene.next_word(q.j) in ("", ".", ",", ";") and _ABOUT.issuperset(scene.words(group.j, q.i)):
            part_cut(desk, scene, group_targets(scene, group), q.high or 0.0, q.i, q.j)


_ABOUT = frozenset(
    ["only", "about", "just", "some", "was", "perhaps", "maybe", "around", "roughly", ":", "at", "by", "one"]
)


def listed_shares(desk: Desk, scene: Scene) -> None:
    """'FDP: IF 100, MF 100, RF 50, LF 0': shares without a sign, told finger by finger behind the tendon."""
    groups = [g for g in scene.setting.groups if not g.reference]
    if len(groups) < 3 or not groups[0].tendons:
        return
    if groups[0].digits and scene.page.breaks[groups[0].i + 1] == Break.COLUMN:
        own = Group(groups[0].i, groups[0].j, groups[0].digits)  # 'FDP  I 100  M 100  R 100'
        groups = [Group(groups[0].i, groups[0].i + 1, (), groups[0].tendons), own, *groups[1:]]
    elif groups[0].digits or ":" not in scene.words(
        groups[0].j, groups[0].j + 1 + (scene.next_word(groups[0].j) in _CUTS_ASKED)
    ):
        return
    told = [(g, scene.next_word(g.j)) for g in groups[1:]]
    shares = [(g, float(word)) for g, word in told if word.isdecimal() and len(word) <= 3 and int(word) <= 100]
    if len(shares) < 2 or len(shares) != len(told) or not scene.told(groups[0].i):
        return
    digits: tuple[str, ...] = ()
    for group, share in shares:
        digits = group.digits or digits
        pairs = (
            group_targets(scene, group) if group.tendons else [Target(d, t) for d in digits for t in groups[0].tendons]
        )
        for target in (t._replace(digit=t.digit or digits[0]) for t in pairs if digits):
            if share:
                part_cut(desk, scene, [target], share, group.i, group.j + 1)
            else:
                desk.tendon(scene, target, "extent", "intact", [(group.i, group.j + 1)], "share of nothing")


_CUTS_ASKED = frozenset(["cut", "cuts", "division", "divided", "laceration", "lacerated", "%", "share", "extent"])


def _hurt_of(scene: Scene, quantity: Quantity) -> list[Target]:
    """'... and 40% laceration of the radial slip': the tendon behind, not the one before."""
    hurt = next((m for m in scene.of("hurt", "extent") if m.i == quantity.j), None)
    if hurt is None or scene.next_word(hurt.j) != "of":
        return []
    behind = next((g for g in scene.setting.groups if 0 < g.i - hurt.j <= 3 and g.tendons), None)
    return group_targets(scene, behind) if behind is not None else []


def _incised(scene: Scene, quantity: Quantity) -> list[Target]:
    """'The profundus had sustained an incision of 45 percent': a wound of the tendon, and no way in to it."""
    lead = [w for w in scene.words(max(scene.sentence.i, quantity.i - _NEAR), quantity.i) if w not in _ABOUT]
    group = next((g for g in reversed(scene.setting.groups) if g.j <= quantity.i), None)
    if lead[-2:] != ["incision", "of"] or group is None or not group.tendons:
        return []
    return [] if _SUFFERED.isdisjoint(scene.words(group.j, quantity.i)) else group_targets(scene, group)


_NEAR = 5  # words
_SUFFERED = frozenset(["sustained", "suffered", "received", "bore", "had", "showed", "carried", "has", "shows"])


def _last_of_list(scene: Scene, quantity: Quantity, targets: list[Target]) -> list[Target]:
    """'Divided: FCR, FDP index and middle, FPL about 50%': of a list that says before what it lists, the last alone."""
    group = next((g for g in reversed(scene.setting.groups) if g.j <= quantity.i and g.tendons), None)
    if group is None or len(targets) < _SEVERAL or not _LEADS_TO_SHARE.issuperset(scene.words(group.j, quantity.i)):
        return targets
    names = [m for m in scene.of("tendon") if group.i <= m.i < group.j]
    told = [*scene.of("extent"), *(m for m in scene.of("hurt") if scene.next_word(m.j) == ":")]  # 'Cut: FCR, FPL 50 %'
    listed = any(m.j <= group.i for m in told) and len({m.value for m in names}) > 1
    if not listed or scene.word_before(names[-1].i) not in (",", "and", "+", "&"):
        return targets
    return [t for t in targets if t.tendon == names[-1].value] or targets


_LEADS_TO_SHARE = _ABOUT | {"~", "(", "ca", "approx", "c."}
_SEVERAL = 2


def _answers_percent(scene: Scene, quantity: Quantity) -> bool:
    """'% of tendon cut: 60', 'cut %' above a column of figures: the sign stands in the label."""
    if quantity.unit or not quantity.high or not 5 <= quantity.high <= 100 or quantity.j - quantity.i != 1:
        return False
    label = scene.sentence.prefix[-1] if scene.sentence.prefix else (scene.sentence.i, quantity.i)
    words = scene.words(*label)
    lone = quantity.i == scene.sentence.i and scene.sentence.j - quantity.j <= 1
    return "%" in words and not CUT_LABELS.isdisjoint(words) and (lone or words[-1] == ":")


def _cuts_tendon(scene: Scene, quantity: Quantity) -> bool:
    """Leave out drug strengths, what was left standing, and shares of a pulley."""
    if quantity.low is None or quantity.low < 5 or quantity.high is None:
        return False
    if scene.next_word(quantity.j) == "of" and any(
        g.tendons and 0 < g.i - quantity.j <= 4 for g in scene.setting.groups
    ):
        return True
    if scene.next_word(quantity.j) in _DRUGS and scene.words(quantity.j, quantity.j + 2)[-1:] != ["its"]:
        named = not _CUTS_TENDON_WORDS.isdisjoint(scene.words(quantity.j, min(quantity.j + 4, scene.sentence.j)))
        return scene.next_word(quantity.j) == "of" and named
    first, last = scene.part(quantity.i)
    end = min(last, quantity.j + 3)
    ends = _ENDS_SHARE | _TELLS_OF_CUT if _share_of_a_cut(scene, quantity) else _ENDS_SHARE
    end = next((k for k in range(quantity.j, end) if scene.page.words[k] in ends), end)
    around = scene.words(max(first, quantity.i - 2), end)  # 'cut 40 % and left alone', 'FDP 70 % + FDS whole'
    if any(w in _REMAINING for w in around):
        return False
    after = [m for m in scene.mentions if m.kind == "pulley" and 0 <= m.i - quantity.j <= 3 and m.i < last]
    return not after


_ENDS_SHARE = frozenset(["and", "but", "+", "&"])
_TELLS_OF_CUT = frozenset(["that", "which", ",", "was", "is"])


def _share_of_a_cut(scene: Scene, quantity: Quantity) -> bool:
    """'A nick of 20 percent that is left', 'a cut of about 30 %, left': how deep the cut is, and not what remained."""
    k = quantity.i
    while k > scene.sentence.i and scene.page.words[k - 1] in _ABOUT_SO_MUCH:
        k -= 1
    return k < quantity.i and any(m.j == k for m in scene.of("extent", "hurt"))


_ABOUT_SO_MUCH = frozenset(["of", "about", "some", "roughly", "only", "perhaps", "approximately", "around"])


def told_as_fraction(desk: Desk, scene: Scene) -> None:
    """Read fractions said of a tendon's width: 'FDP half cut', 'a nick through a fifth of its width'."""
    for mention in scene.of("fraction"):
        upper = (mention.j + 1, mention.j + 1 + (scene.next_word(mention.j + 1) == "a"))  # 'a third' or only 'third'
        ranged = scene.next_word(mention.j) in ("to", "-", "or") and any(m.i in upper for m in scene.of("fraction"))
        if not scene.told(mention.i) or ranged:
            continue  # of 'half to two thirds' the larger share is the weaker tendon
        targets, _group = tendon_owner(desk, scene, mention.i, mention.j)
        behind = next((g for g in scene.setting.groups if 0 < g.i - mention.j <= 3), None)
        lead = scene.words(mention.j - 1, behind.i) if behind is not None else []
        lead = lead if lead[:1] == ["of"] else lead[1:]
        if behind is not None and "of" in lead and set(lead) <= {"of", "the", "its"} and behind.tendons:
            targets = group_targets(scene, behind)  # 'FDS: a third of the ulnar slip cut'
        if not targets and scene.words(scene.sentence.i, scene.sentence.i + 2) == ["it", "was"]:
            targets = carried(desk, scene)[0] if mention.i - scene.sentence.i <= 3 else []
        targets = targets or _of_the_one_before(desk, scene, mention)
        if not targets or not _fraction_cuts(scene, mention):
            continue
        share = float(mention.value)
        part_cut(desk, scene, targets, 100 - share if _hung_by(scene, mention.i) else share, mention.i, mention.j)


def _of_the_one_before(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """'The FDS was bruised. A third of its width had been cut.': of the one tendon that the sentence before names."""
    before = desk.scene_before(scene)
    k = mention.j - (scene.page.words[mention.j - 1] == "of")  # 'half of' is one word of the vocabulary
    width = scene.words(k, k + 3)
    if before is None or scene.setting.groups or width[:2] != ["of", "its"] or width[2:] not in _WIDTHS:
        return []
    if not scene.said.isdisjoint(_REMAINING | _UNCUT):
        return []
    named = [g for g in before.setting.groups if g.tendons and not g.reference]
    other = scene.kinds | before.kinds
    if mention.i - scene.sentence.i > 1 or len(named) != 1 or not other.isdisjoint(_OTHER_THINGS):
        return []
    return list(scene.setting.focus) if len(scene.setting.focus) == 1 else []


_WIDTHS = (["width"], ["substance"], ["thickness"], ["fibres"], ["fibers"], ["diameter"], ["breadth"])
_UNCUT = frozenset(["uncut", "undivided", "spared", "not"])
_OTHER_THINGS = frozenset(["pulley", "structure", "anynerve", "anyartery", "bundle", "bone"])


def _fraction_cuts(scene: Scene, mention: Mention) -> bool:
    part_i, part_j = scene.part(mention.i)
    reach = 12 if _added_behind_comma(scene, mention) else 7
    near = scene.words(max(scene.sentence.i, mention.i - reach), min(scene.sentence.j, mention.j + 10))
    if any(
        m.kind == "pulley" and part_i <= m.i < part_j and not _where_it_catches(scene, mention, m)
        for m in scene.mentions
    ):
        return False
    cut = _FRACTION_CUTS_CUT
    before = scene.word_before(mention.i)
    if (
        before in ("radial", "ulnar")
        and mention.value != "50"
        and scene.word_before(mention.i - 1) in (",", "cut", "(")
    ):
        return any(w in cut for w in near)  # 'FDP cut, radial third'
    if before in ("radial", "ulnar"):  # half of the FDS is a slip of it
        return scene.word_before(mention.i - 1) in ("its", "the") and not any(
            m.value == "FDS" for m in scene.of("tendon")
        )
    if _of_a_slip_asked(scene, mention):
        return True
    column = scene.page.breaks[mention.i] == Break.COLUMN and scene.next_word(mention.j) in ("", ".", ",", ";")
    if column and any(g.tendons and g.j == mention.i for g in scene.setting.groups):
        return True  # 'FDS RF    2/3'
    k = mention.i
    while k > scene.sentence.i and scene.page.words[k - 1] in _ABOUT_SO_MUCH and scene.page.words[k - 1] != "of":
        k -= 1  # 'FCR: about half', 'FDS roughly one third,'
    led = scene.word_before(k) == ":" or scene.word_before(k).startswith("..")
    if led and any(g.tendons and g.j == k - 1 for g in scene.setting.groups):
        return True  # 'FDS of II: one third, at its radial edge', 'FPL ........ half'
    beside = any(g.tendons and g.j == k for g in scene.setting.groups) and not scene.header
    if beside and scene.next_word(mention.j) in ("", ".", ",", ";", ")"):
        return True  # 'MF - FDP complete, FDS 1/2'
    if _hung_by(scene, mention.i):
        return True  # 'hanging by a third'
    return any(w in cut for w in near) and before not in ("distal", "proximal", "remaining", "other")


def _of_a_slip_asked(scene: Scene, mention: Mention) -> bool:
    """'FDS: about 1/3 of ulnar slip', the same in a cell under 'FDS': what the label asks for is how far it was cut."""
    slip = next((m for m in scene.of("slip") if 0 < m.i - mention.j <= 2 and m.value in ("radial", "ulnar")), None)
    lead = [w for w in scene.words(scene.sentence.i, mention.i) if w not in _ABOUT | {"a"}]
    asked = lead == ["fds"] or (not lead and bool(scene.sentence.prefix))
    return slip is not None and asked and scene.next_word(mention.j) == "of"


def _where_it_catches(scene: Scene, mention: Mention, pulley: Mention) -> bool:
    """'Cut one third, with a flap which catches under the edge of A2': a place, told behind a 'which'."""
    return not {"which", "that"}.isdisjoint(scene.words(mention.j, pulley.i))


def _added_behind_comma(scene: Scene, mention: Mention) -> bool:
    """'Cut only in its radial slip, to about one third': a comma and 'to' lead the share."""
    lead = [w for w in scene.words(max(scene.sentence.i, mention.i - 5), mention.i) if w not in _ABOUT | {"a"}]
    return lead[-2:] == [",", "to"]


def part_cut(desk: Desk, scene: Scene, targets: list[Target], percent: float, i: int, j: int) -> None:
    """Note that the share of the words i to j was cut of each target: a partial cut and its percentage."""
    for target in targets:
        mention = Mention("extent", "partial", i, j)
        span = with_name_of(scene, mention, target)
        if percent >= 100:
            desk.tendon(scene, target, "extent", "complete", [span], "percent cut")
        elif percent > 0:
            desk.tendon(scene, target, "extent", "partial", [span], "percent cut")
            desk.tendon(scene, target, "extent_percent", percent, [span], "percent cut")
