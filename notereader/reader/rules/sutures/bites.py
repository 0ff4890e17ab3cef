"""Lengths of the core: purchase in each end and the size of its locks."""

from itertools import pairwise

from notereader.reader.desk import Desk, is_correction
from notereader.reader.groups import Group, Target
from notereader.reader.needs import needs
from notereader.reader.page import Break, Quantity
from notereader.reader.rules.dealt_out import by_turns
from notereader.reader.rules.owners import named_so_far
from notereader.reader.rules.sutures.lengths_not_got import not_got
from notereader.reader.rules.sutures.purchase_wordings import labelled, plainly_taken
from notereader.reader.rules.sutures.purchases import (
    END_NEAR,
    NOT_TAKEN,
    STUMPS,
    at_both_ends,
    is_purchase,
    placed,
    side_of,
    stretch,
)
from notereader.reader.rules.sutures.roles import CORE, PERIPHERAL, TENDON, anchors, role_of
from notereader.reader.rules.sutures.suture_owners import lay_suture, respective, suture_owners
from notereader.reader.scene import Scene, group_beside, group_targets, words_up_to
from notereader.record.values import Interval
from notereader.vocabulary.sutures import stitches
from notereader.vocabulary.wordlists import word_list

_IS_LOCK_WORDS = word_list("sutures", "is_lock_words")
_NO_LOCK = frozenset(["conduit", "tube", "graft", "drain", "wire", "implants", "implant"])
_LOCKS = frozenset(["lock", "locks", "lk", "lks", "loop", "loops", "circle", "circles"])
_ACROSS = frozenset(["diameter", "across", "wide", "measure", "measured", "measures", "width", "size", "cross-section"])
_BITTEN = frozenset(["dog", "dog's", "cat", "cat's", "horse", "teeth", "tooth", "mark", "marks", "skin"])
_CAUGHT = frozenset(["caught", "gripped", "grasped", "held"])  # 'about 2 mm of tendon was caught in each lock'


@needs(units=["mm", ""])
def bites(desk: Desk, scene: Scene) -> None:
    """Find the purchase of the core and the size of its locks."""
    if not _BITTEN.isdisjoint(scene.said) and not any(g.tendons or g.generic for g in scene.setting.groups):
        return  # 'the dog's bite was 10 mm deep', 'the skin sutures took 5 mm bites'
    lengths = [q for q in scene.quantities if q.unit == "mm" and scene.told(q.i) and not not_got(scene, q)]
    lengths = [*_led_by_bare(scene, lengths), *lengths]
    lengths += _bare_behind(scene, lengths) or [q for q in scene.quantities if _bare_bite(scene, q)]
    if not lengths:
        return
    locks = [q for q in lengths if _is_lock(scene, q)]
    for q in locks:
        _lay_lock(desk, scene, q)
        if {"lock", "locks"} & set(scene.words(max(scene.sentence.i, q.i - 3), min(scene.sentence.j, q.j + 3))):
            lay_suture(desk, scene, q.i, q.j, "hold", "locking", "locks are named")
    worked_on = desk.topic in (CORE, TENDON, PERIPHERAL) or any(a.role in (CORE, TENDON) for a in anchors(scene))
    worked_on = worked_on or any(plainly_taken(scene, q) for q in lengths)
    worked_on = worked_on or (is_correction(scene) and bool(scene.of("bite")))  # whatever was told of last
    taken = _purchases(desk, scene, [q for q in lengths if q not in locks]) if worked_on else []
    taken = [] if taken and _of_either(desk, scene) else _with_those_of_others(scene, taken, lengths)
    if taken and _lay_dealt(desk, scene, [q for q in lengths if q not in locks]):
        return
    excepted = _of_the_excepted(scene, taken[-1]) if taken else None
    if taken and excepted is not None:
        _lay_two_lengths(desk, scene, taken[-1], *excepted)
    elif taken and not _other_length_excepted(scene, taken[-1]):
        _lay_purchase(desk, scene, taken)


def _lay_dealt(desk: Desk, scene: Scene, lengths: list[Quantity]) -> bool:
    """'With bites of 10 mm in the index and ring but only 7 mm in the small': each length of its own fingers' cores.

    RETURNS: whether the sentence deals its lengths out over fingers.
    """
    dealt = by_turns(scene, [(q.i, q.j) for q in lengths])
    for q in lengths if dealt else []:
        for target in desk.repairable(dealt[q.i, q.j]):
            if target.tendon in ("FDP", "FPL") and desk.has_suture(target):
                desk.tendon(scene, target, "purchase_mm", _interval(scene, q), [(q.i, q.j)], "length of tendon taken")
    return bool(dealt)


def _of_either(desk: Desk, scene: Scene) -> bool:
    """'Suture: 3-0 (FDP) / 4-0 (FDS)', and below it 'Purchase (mm): 10': of which of the two is not told."""
    before = desk.scene_before(scene)
    if scene.setting.groups or scene.sentence.prefix or before is None:
        return False
    named = [g for g in before.setting.groups if g.tendons and not g.digits and not g.reference]
    return len(named) > 1 and {"FDP", "FDS"} <= {t for g in named for t in g.tendons} and "/" in before.said


def _of_the_excepted(scene: Scene, q: Quantity) -> tuple[Group, Quantity] | None:
    """'All 10 mm from the cut edge bar the small finger 7': the finger left out and its own length."""
    for group in (g for g in scene.setting.groups if g.digits and not g.tendons and g.i >= q.j):
        k = group.i - (scene.word_before(group.i) in ("the", "in"))
        own = next((o for o in scene.quantities if 0 <= o.i - group.j <= 1 and 2 <= (o.high or 0) <= 25), None)
        if scene.page.words[k - 1] in _EXCEPT and own is not None and own.unit in ("", "mm"):
            return group, own
    return None


def _lay_two_lengths(desk: Desk, scene: Scene, q: Quantity, group: Group, own: Quantity) -> None:
    """Lay a length down for all tendons spoken of but those of a finger, and its own for that finger."""
    rule = "length of tendon taken"
    for target in [t for t in desk.sewn() if desk.has_suture(t) and t.digit not in group.digits]:
        desk.tendon(scene, target, "purchase_mm", _interval(scene, q), [(q.i, q.j)], rule)
    kinds = {t.tendon for t in scene.setting.focus} | {"FDP", "FPL"}
    for target in [t for t in desk.repairable(group.digits) if t.tendon in kinds and desk.has_suture(t)]:
        desk.tendon(scene, target, "purchase_mm", _interval(scene, own), [(own.i, own.j)], rule)


def _lay_lock(desk: Desk, scene: Scene, q: Quantity) -> None:
    """'The locks of the middle finger repair measured 2 mm': of its tendon whose core is told to lock."""
    targets, doubts = suture_owners(desk, scene, q.i, q.j)
    if not any(g.tendons for g in scene.setting.groups):
        if role_of(scene, q.i, q.j, anchors(scene)) in _NO_TENDONS:
            return  # 'A4 was mended by a running 5-0 with bites of 2 mm'
        deep = [Target(t.digit, "FDP") for t in targets if t.tendon == "FDS" and not _locks(desk, t)]
        if deep and len(deep) == len(targets) and all(_locks(desk, t) for t in deep):
            targets = list(dict.fromkeys(deep))
    for target in targets:
        desk.tendon(scene, target, "lock_mm", _interval(scene, q), [(q.i, q.j)], "size of each lock", *doubts)


_NO_TENDONS = frozenset(["pulley", "other", "nerve", "vessel"])


def _locks(desk: Desk, target: Target) -> bool:
    told = desk.told_of("repairs", target)
    named = [stitches().get(str(f.value)) for f in told if f.field == "stitch"]
    locking = any(s is not None and s.hold == "locking" for s in named)
    return locking or any(f.field == "hold" and f.value == "locking" for f in told)


def _in_a_stump(scene: Scene, j: int) -> bool:
    """'8 mm of purchase in the proximal and 7 in the distal stump': a length told without its unit, with its end."""
    behind = [w for w in scene.words(j, min(j + 4, scene.sentence.j)) if w not in _IN_THE]
    return scene.next_word(j) in _IN_THE and behind[:1] != [] and behind[0] in STUMPS


_SIDED = 8  # words
_IN_THE = frozenset(["in", "at", "from", "on", "the", "into", "of"])


def _bare_behind(scene: Scene, lengths: list[Quantity]) -> list[Quantity]:
    """'8 mm distally and 10 proximally', '8 mm on one side and 10 on the other': lengths told without their unit."""
    if not lengths:
        return []
    last = lengths[-1].j
    bare = [q for q in scene.quantities if not q.unit and q.i > last]
    sided = [q for q in bare if q.i - last <= 3 and scene.next_word(q.j) in STUMPS]
    sided += [q for q in bare if q.i - last <= _SIDED and _in_a_stump(scene, q.j)]
    sided += [q for q in bare if q.i - last <= _SIDED and _at_the_other_end(scene, last, q)]
    others = [q for q in bare if q.i - last <= 6 and ("the", "other") in pairwise(scene.words(q.j, q.j + 3))]
    dealt = [q for q in bare if 2 <= (q.low or 0) <= 25 and q.i - last <= _SIDED and _in_a_finger(scene, q)]
    sided += [q for q in bare if q.i - last <= _SIDED and _on_a_side(scene, last) and _on_a_side(scene, q.j)]
    return [q for q in bare if q in sided or q in others or q in dealt]


def _at_the_other_end(scene: Scene, last: int, q: Quantity) -> bool:
    """'10 mm of tendon prox. and 8 dist.', '12 mm on the near side and 9 on the far': each length with its end."""
    here = side_of(scene.words(last, q.i))
    there = side_of([w for w in scene.words(q.j, min(q.j + 3, scene.sentence.j)) if w not in _IN_THE][:1])
    return 2 <= (q.low or 0) <= 25 and here != "" and there not in ("", here)


def _on_a_side(scene: Scene, k: int) -> bool:
    """'11 mm on the hand side and 9 on the tip side', '10 mm at the palm end and 8 at the other'."""
    behind = scene.words(k, k + _ON_A_SIDE)
    led = behind[:2] in (["on", "the"], ["at", "the"])
    return led and (behind[2:3] == ["other"] or behind[3:4] in (["side"], ["end"], ["stump"]))


_ON_A_SIDE = 4  # words: 'on the tip side'


def _in_a_finger(scene: Scene, q: Quantity) -> bool:
    """'12 mm of tendon in the ring finger and only 8 in the small one': a length without its unit, with its finger.

    The finger of the length before it stands between the two.
    """
    if scene.next_word(q.j) not in ("in", "for") or scene.word_before(q.i) not in _BEFORE_BARE:
        return False
    behind = [g for g in scene.setting.groups if g.digits and not g.tendons and 1 <= g.i - q.j <= 2]
    return bool(behind) and any(g.digits and q.i - g.j <= _BEFORE_FIGURE for g in scene.setting.groups if g.j <= q.i)


_BEFORE_BARE = frozenset(["and", "but", "only", "just", "merely", "of", ",", "to", "about"])
_BEFORE_FIGURE = 3  # words: 'in the ring finger, but only 8'


def _other_length_excepted(scene: Scene, q: Quantity) -> bool:
    """'All 10 mm from the cut bar L 7': whose the other length is cannot be told, so neither is whose the first is."""
    behind = scene.words(q.j, scene.sentence.j)
    k = next((k for k, word in enumerate(behind) if word in _EXCEPT), len(behind))
    figures = any(w.isdecimal() for w in behind[k:])
    return figures and not any(g.digits or g.tendons for g in scene.setting.groups if g.i >= q.j)


_EXCEPT = frozenset(["bar", "except", "excepting", "save"])
_SIDES = STUMPS | {"near", "far", "up", "down", "other", "beyond"}
_LISTING = _SIDES | {",", "/", "hold", "bite", "bites", "purchase", "on", "one", "side", "the", "and", "end"}


def _led_by_bare(scene: Scene, lengths: list[Quantity]) -> list[Quantity]:
    """'a purchase of 10 and 9 mm, respectively': the first length, whose unit is told with the second."""
    if not lengths or "respectively" not in scene.said or scene.word_before(lengths[0].i) != "and":
        return []
    return [q for q in scene.quantities if not q.unit and q.j == lengths[0].i - 1 and 2 <= (q.low or 0) <= 25]


def _bare_bite(scene: Scene, q: Quantity) -> bool:
    """'bite 8-10': a range without a unit right behind the word for what is taken."""
    if q.unit or q.low is None or q.high is None or not 5 <= q.low <= q.high <= 15 or not scene.told(q.i):
        return False
    if labelled(scene, q):
        return True
    if q.low == q.high:
        k = q.i - (scene.word_before(q.i) in _MARKS)  # 'Purchase ~10', 'Purchase: 10 each side'
        return scene.word_before(k) == "purchase" and scene.next_word(q.j) in _BEHIND_LENGTH
    return scene.word_before(q.i) in ("bite", "bites", "purchase") and scene.next_word(q.j) in ("", ",", ";", ".")


_BEHIND_LENGTH = frozenset(["", ",", ";", ".", "each", "both", "either"])


_MARKS = frozenset(["~", ":", "=", "about", "approx", "ca", "circa"])


def _with_those_of_others(scene: Scene, taken: list[Quantity], lengths: list[Quantity]) -> list[Quantity]:
    """'10 mm from the cut end in the middle and 8 mm in the ring': the second length is one more of the kind."""
    if len(taken) != 1:
        return taken
    fingers = [g.i for g in scene.setting.groups if g.digits and not g.tendons]
    for q in lengths:
        between = scene.words(taken[0].j, q.i)
        led = between[-1:] == ["and"] and any(taken[0].j < k < q.i for k in fingers)
        if (
            led
            and scene.words(q.j, q.j + 1) in (["in"], ["for"])
            and any(0 < k - q.j <= _SHORTLY_BEHIND for k in fingers)
        ):
            return [*taken, q]
    return taken


_SHORTLY_BEHIND = 2  # words: 'in the'


def _past_the_edge(between: list[str]) -> list[str]:
    """'10 mm from the cut end in the middle': leave out what a length is taken from."""
    at = next((k for k, w in enumerate(between) if w in _EDGES), None)
    from_there = at is not None and between[:1] in (["from"], ["back"]) and _CUT_EDGE.issuperset(between[:at])
    return between[at + 1 :] if at is not None and from_there else between


_EDGES = frozenset(["surface", "end", "ends", "edge", "face", "stump", "stumps"])
_CUT_EDGE = frozenset(["from", "back", "the", "its", "each", "cut", "tendon", "either", "divided"])


def _own_digit(desk: Desk, scene: Scene, q: Quantity) -> list[Target]:
    """'10 mm in the middle and 7 mm in the ring finger', 'index FDP 10 mm': whose a length is, told beside it."""
    beside = group_beside(scene, q)
    if beside is not None and beside.tendons:
        return [t for t in group_targets(scene, beside) if desk.extents.get(t) != "intact"]
    if beside is not None and beside.j <= q.i:
        kinds = {t.tendon for t in scene.setting.focus}
        found = desk.repairable(beside.digits)
        return [t for t in found if t.tendon in kinds] or found
    own = placed(scene, q)
    if own is not None:
        return group_targets(scene, own)
    for group in scene.setting.groups:
        between = _past_the_edge(words_up_to(scene, q, group))
        if (
            group.digits
            and q.j <= group.i
            and len(between) <= 3
            and between
            and between[0] in ("in", "for", "on")
            and between[-1] in ("the", "in", "for", "on")
        ):
            named = {t for g in scene.setting.groups if g.j <= q.i for t in g.tendons}
            kinds = set(group.tendons) or named or {t.tendon for t in scene.setting.focus}
            found = [t for t in desk.repairable(group.digits) if not group.tendons or t.tendon in group.tendons]
            return [t for t in found if t.tendon in kinds] or found
    return []


def _lay_purchase(desk: Desk, scene: Scene, bites: list[Quantity]) -> None:
    own = [(q, named_so_far(desk, scene, _own_digit(desk, scene, q))) for q in bites]
    if (len(bites) > 1 and all(targets for _, targets in own)) or placed(scene, bites[0]) is not None:
        for q, targets in own:
            for target in targets:
                desk.tendon(scene, target, "purchase_mm", _interval(scene, q), [(q.i, q.j)], "length of tendon taken")
        return
    targets, _ = suture_owners(desk, scene, bites[0].i, bites[0].j)
    named = [d for g in scene.setting.groups if g.j <= bites[0].i for d in g.digits]
    digits = list(reversed(dict.fromkeys(reversed(named))))  # in the order they were told last
    if (
        "respectively" in scene.words(scene.sentence.i, scene.sentence.j)
        and len(targets) == 1
        and len(digits) == len(bites)
    ):
        kinds = {targets[0].tendon} | (_DEEP if targets[0].tendon in _DEEP else set())
        targets = [t for d in digits for t in desk.repairable((d,)) if t.tendon in kinds]
    if "respectively" in scene.words(scene.sentence.i, scene.sentence.j) and len(bites) == len(
        {t.digit for t in targets}
    ):
        for q in bites:
            for target in respective(scene, q.i, [b.i for b in bites], targets):
                desk.tendon(scene, target, "purchase_mm", _interval(scene, q), [(q.i, q.j)], "length of tendon taken")
        return
    first = _interval(scene, bites[0])
    low, high = first.low, first.high
    for q in bites[1:]:
        if q.low is not None and low is not None and (q.i - bites[0].j) <= 12:
            low, high = min(low, q.low), max(high or q.low, q.high or q.low)
    i, j = (
        bites[0].i,
        bites[min(len(bites), 2) - 1].j if len(bites) > 1 and bites[1].i - bites[0].j <= 12 else bites[0].j,
    )
    lay_suture(desk, scene, i, j, "purchase_mm", Interval(low=low, high=high), "length of tendon taken")


_DEEP = {"FDP", "FPL"}  # of the index and thumb together


def _interval(scene: Scene, q: Quantity) -> Interval:
    before = scene.words(max(scene.sentence.i, q.i - 3), q.i)
    more = "than" in before and not {"more", "less", "fewer"}.isdisjoint(before)
    if more and {"no", "not", "less", "fewer"} & set(before) and "more" in before:
        return Interval(low=None, high=q.high)  # 'not more than 7 mm'
    if before[-2:] in (["at", "most"], ["up", "to"]):
        return Interval(low=None, high=q.high)
    if "least" in before or more or "minimum" in before:
        return Interval(low=q.low, high=None)
    after = scene.words(q.j, min(q.j + 3, scene.sentence.j))
    adds = after[:1] == ["+"] and after[1:2] not in _MORE_OF and after[1:2] != [] and after[1][0].isalpha()
    # 'purchase 8mm + knots outside', but 'each grips 1 cm+ of tendon'
    spaced = q.j < scene.sentence.j and scene.page.breaks[q.j] != Break.NONE  # 'purchase 10 mm + 6-0 Prolene'
    adds = adds or (spaced and after[:1] == ["+"] and after[1:2] != [] and after[1][0].isdecimal())
    if after[:2] in (["or", "more"], ["and", "more"], ["or", "longer"], ["at", "least"]) or (
        after[:1] in (["plus"], ["+"]) and not adds
    ):
        return Interval(low=q.low, high=None)
    return Interval(low=q.low, high=q.high)


_MORE_OF = (["of"], ["each"], ["either"], ["both"])


def _is_lock(scene: Scene, q: Quantity) -> bool:
    """'loops of 2 mm diameter', '2 mm bites', '3 mm locks'; a bite measured from the cut is a purchase."""
    if q.high is None or q.high > 5:
        return False
    first, last = stretch(scene, q)
    if not _NO_LOCK.isdisjoint(scene.words(first, last)):
        return False  # 'nerve conduit, 2 mm diameter'
    for mention in scene.of("lockword"):
        if not first <= mention.i < last:
            continue
        word = scene.page.words[mention.j - 1]
        gap = mention.i - q.j if mention.i >= q.j else q.i - mention.j
        measured = not (_ACROSS | _CAUGHT).isdisjoint(scene.words(min(mention.i, q.i), max(mention.j, q.j) + 1))
        reach = 10 if measured and word in _LOCKS else 3
        reach = max(reach, 3 if first == scene.part(q.i)[0] else 5)  # 'locks at each corner, 2 mm'
        if gap <= reach and (word != "diameter" or mention.i >= q.j or mention.i == scene.sentence.i + 1):
            after = scene.words(max(q.j, mention.j), min(scene.sentence.j, max(q.j, mention.j) + 4))
            after = after[: after.index(",")] if "," in after else after  # '2.5 mm bites, 9 mm each side'
            of_locks = not _LOCKS.isdisjoint(after)  # '2 mm bites for each lock'
            return of_locks or not (word in ("bite", "bites") and any(w in _IS_LOCK_WORDS for w in after))
    return False


def _purchases(desk: Desk, scene: Scene, lengths: list[Quantity]) -> list[Quantity]:
    """Return the lengths that are tendon taken by the core, those that go on a list of them included."""
    found: list[Quantity] = []
    for q in lengths:
        sided = side_of(scene.words(max(scene.sentence.i, q.i - 5), q.i))
        wide = sided or placed(scene, q) is not None or (bool(found) and _one_and_other(scene, found[-1], q))
        reach = 14 if wide else 8
        goes_on = bool(found) and q.i - found[-1].j <= reach and _goes_on(scene, found[-1], q)
        if found and _made_that(scene, found[-1], q):
            shorter = (q.high or 0) <= (found[-1].low or 0)
            found = [q] if shorter else [*found, q]  # a longer one leaves the shorter as the low end
        elif goes_on or is_purchase(desk, scene, q):
            found.append(q)
    return found


def _made_that(scene: Scene, before: Quantity, q: Quantity) -> bool:
    """'Eight millimetres of tendon, knots inside, no, make that seven': the one that holds."""
    lead = scene.words(max(before.j, q.i - _CUE_BEFORE), q.i)
    said = lead[-2:] in (["make", "that"], ["i", "mean"], ["meant", "that"])
    sorry = "sorry" in scene.words(before.j, q.i)  # '10 mm each side, no sorry not ten, 8 mm each side'
    return (said or sorry) and 2 <= (q.high or 0) <= 25


_CUE_BEFORE = 3  # words


_BECAUSE = frozenset(["as", "because", "since"])  # '8 mm, as the wound ended there'


def _goes_on(scene: Scene, before: Quantity, q: Quantity) -> bool:
    """'10 mm in the middle and 7 mm in the ring finger', '1 cm and the distal 8 mm', '10 mm and 8 mm respectively'."""
    between = scene.words(before.j, q.i)
    after = scene.words(q.j, min(q.j + 4, scene.sentence.j))
    after = after[: next((n for n, w in enumerate(after) if w in _BECAUSE), len(after))]
    other_side = not _SIDES.isdisjoint([*between, *after]) or after[:3] == ["on", "the", "other"] or between == ["/"]
    both = at_both_ends(scene, before) and len(between) <= END_NEAR + 1
    if both and NOT_TAKEN.isdisjoint({*between, *after} - {"stump"}):
        return 2 <= (q.high or 0) <= 25  # '9 mm in prox / 7 mm in dist'
    if _on_a_side(scene, before.j) and _on_a_side(scene, q.j):
        return 2 <= (q.high or 0) <= 25
    if _one_and_other(scene, before, q):
        return NOT_TAKEN.isdisjoint([*between, *after]) and 2 <= (q.high or 0) <= 25
    if _of_another(scene, before, q) and NOT_TAKEN.isdisjoint([*between, *after]) and 2 <= (q.high or 0) <= 25:
        return True  # '9 mm in the ring, 7 mm in the small finger', 'index 8 mm, middle 10 mm'
    if set(between) <= _LISTING and {",", "/"} & set(between) and other_side and 2 <= (q.high or 0) <= 25:
        return True  # 'purchase 8 mm / 6 mm', 'proximal 10 mm, distal 7 mm'
    ahead = side_of([scene.word_before(before.i)]), side_of([scene.word_before(q.i)])
    if all(ahead) and ahead[0] != ahead[1] and len(between) <= _BESIDE:
        return 2 <= (q.high or 0) <= 25  # 'prox 10 mm   dist 8 mm' in the columns of a form
    first_side = side_of(scene.words(before.j, before.j + 4)[:4])
    second_side = side_of(scene.words(max(before.j + 2, q.i - 5), q.i))
    said = {*between, *after} - {"stump"}
    if first_side and second_side and first_side != second_side and NOT_TAKEN.isdisjoint(said):
        return 2 <= (q.high or 0) <= 25  # '10 mm purchase proximally; the distal stump allowed just 4 mm'
    if "and" not in between or not NOT_TAKEN.isdisjoint([*between, *after]) or not 2 <= (q.high or 0) <= 25:
        return False
    sides = _SIDES | {"in", "respectively"}
    return not sides.isdisjoint(between) or not sides.isdisjoint(after)


def _one_and_other(scene: Scene, before: Quantity, q: Quantity) -> bool:
    """'A centimetre on the one side and a bit less, call it 8 mm, on the other': the two ends of one tendon."""
    one = [w for w in scene.words(before.j, before.j + 5) if w != "the"]
    other = [w for w in scene.words(q.j, min(q.j + 4, scene.sentence.j)) if w not in ("the", ",")]
    return one[1:3] in _ONE_END and one[0] in _SET_ON and other[:1] != [] and other[0] in _SET_ON and "other" in other


_ONE_END = (["one", "side"], ["one", "end"], ["one", "stump"])
_SET_ON = frozenset(["on", "in", "from", "at"])


_BESIDE = 2  # words


def _of_another(scene: Scene, before: Quantity, q: Quantity) -> bool:
    """Tell whether two lengths are listed, each beside the finger or tendon it is of."""
    own = group_beside(scene, before) or placed(scene, before)
    other = group_beside(scene, q) or placed(scene, q)
    return own is not None and other is not None and own is not other
