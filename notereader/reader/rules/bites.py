"""Lengths of the core: purchase in each end and the size of its locks."""

from itertools import pairwise

from notereader.reader.desk import Desk, is_correction
from notereader.reader.groups import Group, Target
from notereader.reader.needs import needs
from notereader.reader.owners import named_so_far
from notereader.reader.page import Break, Mention, Quantity
from notereader.reader.rules.dealt_out import by_turns
from notereader.reader.rules.purchase_wordings import labelled, plainly_taken
from notereader.reader.rules.roles import CORE, PERIPHERAL, TENDON, anchors, role_of
from notereader.reader.rules.suture_owners import lay_suture, respective, suture_owners
from notereader.reader.rules.trimming import led_by_trimming
from notereader.reader.scene import Scene, group_beside, group_targets
from notereader.record.values import Interval
from notereader.vocabulary.sutures import stitches
from notereader.vocabulary.wordlists import word_list

_IS_LOCK_WORDS = word_list("sutures", "is_lock_words")
_NOT_TAKEN = word_list("sutures", "is_purchase_words")
_IS_PURCHASE_WORDS_2 = word_list("sutures", "is_purchase_words_2")
_IS_PURCHASE_WORDS_3 = word_list("sutures", "is_purchase_words_3")
_IS_PURCHASE_WORDS_4 = word_list("sutures", "is_purchase_words_4")
_BY_STUMP_WORDS = word_list("sutures", "by_stump_words")
_BY_STUMP_WORDS_2 = word_list("sutures", "by_stump_words_2")
_TRIMS = word_list("sutures", "trims")
_GONE = frozenset(["off", "away", "gone", "lost"])
_ABOUT = frozenset(["about", "approximately", "around", "approx", "some", "roughly", "of", "was", "ca", "circa"])
_NO_LOCK = frozenset(["conduit", "tube", "graft", "drain", "wire", "implants", "implant"])
_LOCKS = frozenset(["lock", "locks", "lk", "lks", "loop", "loops", "circle", "circles"])
_ACROSS = frozenset(["diameter", "across", "wide", "measure", "measured", "measures", "width", "size", "cross-section"])
_IN_SIGHT = frozenset(["visible", "seen", "exposed", "showing", "protruded", "protruding"])
_BITTEN = frozenset(["dog", "dog's", "cat", "cat's", "horse", "teeth", "tooth", "mark", "marks", "skin"])
_CAUGHT = frozenset(["caught", "gripped", "grasped", "held"])  # 'about 2 mm of tendon was caught in each lock'
_OTHERS = frozenset(["sided", "anynerve", "anyartery", "bundle", "structure", "pulley"])
_STUMPS = word_list("sutures", "stumps")


@needs(units=["mm", ""])
def bites(desk: Desk, scene: Scene) -> None:
    """Find the purchase of the core and the size of its locks."""
    if not _BITTEN.isdisjoint(scene.said) and not any(g.tendons or g.generic for g in scene.setting.groups):
        return  # 'the dog's bite was 10 mm deep', 'the skin sutures took 5 mm bites'
    lengths = [q for q in scene.quantities if q.unit == "mm" and scene.told(q.i) and not _not_got(scene, q)]
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
    taken = [] if taken and _of_either(desk, scene) else taken
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


def _not_got(scene: Scene, q: Quantity) -> bool:
    """'Purchase of 10 mm could not be obtained', 'bites of less than 5 mm': a length that was not reached."""
    before, behind = scene.words(q.i - 3, q.i), scene.words(q.j, min(q.j + 4, scene.sentence.j))
    under = before[-2:] in (["less", "than"], ["fewer", "than"]) and before[:1] not in (["no"], ["not"])
    return under or behind[:2] in (["could", "not"], ["cannot", "be"], ["was", "not"], ["were", "not"])


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
    return scene.next_word(j) in _IN_THE and behind[:1] != [] and behind[0] in _STUMPS


_SIDED = 8  # words
_IN_THE = frozenset(["in", "at", "from", "on", "the", "into", "of"])


def _bare_behind(scene: Scene, lengths: list[Quantity]) -> list[Quantity]:
    """'8 mm distally and 10 proximally', '8 mm on one side and 10 on the other': lengths told without their unit."""
    if not lengths:
        return []
    last = lengths[-1].j
    bare = [q for q in scene.quantities if not q.unit and q.i > last]
    sided = [q for q in bare if q.i - last <= 3 and scene.next_word(q.j) in _STUMPS]
    sided += [q for q in bare if q.i - last <= _SIDED and _in_a_stump(scene, q.j)]
    others = [q for q in bare if q.i - last <= 6 and ("the", "other") in pairwise(scene.words(q.j, q.j + 3))]
    return [q for q in bare if q in sided or q in others]


def _other_length_excepted(scene: Scene, q: Quantity) -> bool:
    """'All 10 mm from the cut bar L 7': whose the other length is cannot be told, so neither is whose the first is."""
    behind = scene.words(q.j, scene.sentence.j)
    k = next((k for k, word in enumerate(behind) if word in _EXCEPT), len(behind))
    figures = any(w.isdecimal() for w in behind[k:])
    return figures and not any(g.digits or g.tendons for g in scene.setting.groups if g.i >= q.j)


_EXCEPT = frozenset(["bar", "except", "excepting", "save"])
_SIDES = _STUMPS | {"near", "far", "up", "down", "other", "beyond"}
_LISTING = _SIDES | {",", "/", "hold", "bite", "bites", "purchase", "on", "one", "side", "the", "and", "end"}
_LOST = frozenset(["missing", "lost", "loss", "kerf", "defect", "destroyed", "shredded"])


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
        return scene.word_before(k) == "purchase" and scene.next_word(q.j) in (
            "",
            ",",
            ";",
            ".",
            "each",
            "both",
            "either",
        )
    return scene.word_before(q.i) in ("bite", "bites", "purchase") and scene.next_word(q.j) in ("", ",", ";", ".")


_MARKS = frozenset(["~", ":", "=", "about", "approx", "ca", "circa"])


def _own_digit(desk: Desk, scene: Scene, q: Quantity) -> list[Target]:
    """'10 mm in the middle and 7 mm in the ring finger', 'index FDP 10 mm': whose a length is, told beside it."""
    beside = group_beside(scene, q)
    if beside is not None and beside.tendons:
        return [t for t in group_targets(scene, beside) if desk.extents.get(t) != "intact"]
    if beside is not None and beside.j <= q.i:
        kinds = {t.tendon for t in scene.setting.focus}
        found = desk.repairable(beside.digits)
        return [t for t in found if t.tendon in kinds] or found
    placed = _placed(scene, q)
    if placed is not None:
        return group_targets(scene, placed)
    for group in scene.setting.groups:
        between = scene.words(q.j, group.i)
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


def _placed(scene: Scene, q: Quantity) -> Group | None:
    """'a purchase of 10 mm being taken on either side in the former and of 8 mm in the latter': whose a length is."""
    group = next((g for g in scene.setting.groups if g.place and g.tendons and g.i >= q.j), None)
    if group is None or scene.word_before(group.i) != "in":
        return None
    return None if any(q.j <= p.i < group.i for p in scene.quantities) else group


def _lay_purchase(desk: Desk, scene: Scene, bites: list[Quantity]) -> None:
    own = [(q, named_so_far(desk, scene, _own_digit(desk, scene, q))) for q in bites]
    if (len(bites) > 1 and all(targets for _, targets in own)) or _placed(scene, bites[0]) is not None:
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
    adds = after[:1] == ["+"] and after[1:2] != [] and after[1][0].isalpha()  # 'purchase 8mm + knots outside'
    spaced = q.j < scene.sentence.j and scene.page.breaks[q.j] != Break.NONE  # 'purchase 10 mm + 6-0 Prolene'
    adds = adds or (spaced and after[:1] == ["+"] and after[1:2] != [] and after[1][0].isdecimal())
    if after[:2] in (["or", "more"], ["and", "more"], ["or", "longer"], ["at", "least"]) or (
        after[:1] in (["plus"], ["+"]) and not adds
    ):
        return Interval(low=q.low, high=None)
    return Interval(low=q.low, high=q.high)


def _is_lock(scene: Scene, q: Quantity) -> bool:
    """'loops of 2 mm diameter', '2 mm bites', '3 mm locks'; a bite measured from the cut is a purchase."""
    if q.high is None or q.high > 5:
        return False
    first, last = _stretch(scene, q)
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


def _stretch(scene: Scene, q: Quantity) -> tuple[int, int]:
    """Return the words a length is read with: its part, and where it begins one the part before too."""
    first, last = scene.part(q.i)
    lead = [w for w in scene.words(first, q.i) if w not in _ABOUT]
    return (scene.part(first - 1)[0] if not lead and first > scene.sentence.i else first), last


def _purchases(desk: Desk, scene: Scene, lengths: list[Quantity]) -> list[Quantity]:
    """Return the lengths that are tendon taken by the core, those that go on a list of them included."""
    found: list[Quantity] = []
    for q in lengths:
        sided = _side_of(scene.words(max(scene.sentence.i, q.i - 5), q.i))
        wide = sided or _placed(scene, q) is not None or (bool(found) and _one_and_other(scene, found[-1], q))
        reach = 14 if wide else 8
        goes_on = bool(found) and q.i - found[-1].j <= reach and _goes_on(scene, found[-1], q)
        if found and _made_that(scene, found[-1], q):
            shorter = (q.high or 0) <= (found[-1].low or 0)
            found = [q] if shorter else [*found, q]  # a longer one leaves the shorter as the low end
        elif goes_on or _is_purchase(desk, scene, q):
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
    both = _at_both_ends(scene, before) and len(between) <= _END_NEAR + 1
    if both and _NOT_TAKEN.isdisjoint({*between, *after} - {"stump"}):
        return 2 <= (q.high or 0) <= 25  # '9 mm in prox / 7 mm in dist'
    if _one_and_other(scene, before, q):
        return _NOT_TAKEN.isdisjoint([*between, *after]) and 2 <= (q.high or 0) <= 25
    if _of_another(scene, before, q) and _NOT_TAKEN.isdisjoint([*between, *after]) and 2 <= (q.high or 0) <= 25:
        return True  # '9 mm in the ring, 7 mm in the small finger', 'index 8 mm, middle 10 mm'
    if set(between) <= _LISTING and {",", "/"} & set(between) and other_side and 2 <= (q.high or 0) <= 25:
        return True  # 'purchase 8 mm / 6 mm', 'proximal 10 mm, distal 7 mm'
    ahead = _side_of([scene.word_before(before.i)]), _side_of([scene.word_before(q.i)])
    if all(ahead) and ahead[0] != ahead[1] and len(between) <= _BESIDE:
        return 2 <= (q.high or 0) <= 25  # 'prox 10 mm   dist 8 mm' in the columns of a form
    first_side = _side_of(scene.words(before.j, before.j + 4)[:4])
    second_side = _side_of(scene.words(max(before.j + 2, q.i - 5), q.i))
    said = {*between, *after} - {"stump"}
    if first_side and second_side and first_side != second_side and _NOT_TAKEN.isdisjoint(said):
        return 2 <= (q.high or 0) <= 25  # '10 mm purchase proximally; the distal stump allowed just 4 mm'
    if "and" not in between or not _NOT_TAKEN.isdisjoint([*between, *after]) or not 2 <= (q.high or 0) <= 25:
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


def _side_of(words: list[str]) -> str:
    """Return 'p' or 'd' for words that name the proximal or the distal end, '' for none."""
    return next((_ENDS[w] for w in words if w in _ENDS), "")


_BESIDE = 2  # words
_ENDS = {
    **dict.fromkeys(("proximal", "proximally", "near", "prox"), "p"),
    **dict.fromkeys(("distal", "distally", "far", "dist"), "d"),
}


def _of_another(scene: Scene, before: Quantity, q: Quantity) -> bool:
    """Tell whether two lengths are listed, each beside the finger or tendon it is of."""
    own = group_beside(scene, before) or _placed(scene, before)
    other = group_beside(scene, q) or _placed(scene, q)
    return own is not None and other is not None and own is not other


def _is_purchase(desk: Desk, scene: Scene, q: Quantity) -> bool:
    """Tell whether a length is tendon taken by the core, not a stump, a wound, a gap or what was trimmed away."""
    if q.high is not None and not 2 <= q.high <= 25:
        return False
    if not _LOST.isdisjoint(scene.words(max(scene.sentence.i, q.i - 4), min(q.j + 6, scene.sentence.j))):
        return False  # 'a kerf of about 3 mm of tendon was missing'
    if plainly_taken(scene, q) or _behind_core_before(desk, scene, q):
        return not led_by_trimming(scene, q)
    after = scene.words(q.j, min(q.j + 4, scene.sentence.j))
    if not _IN_SIGHT.isdisjoint(scene.words(q.j, min(q.j + 6, scene.sentence.j))):
        return False  # 'two mm of tendon were visible in the window'
    if not _GONE.isdisjoint(after) or ("taken" in after and "from" in after) or _taken_off(scene, q):
        return False  # '3 mm taken off each side'
    if scene.words(q.i - 2, q.i) == ["taken", "back"] and "needle" not in scene.said:
        return False  # 'the ends were mashed and were taken back 3 mm'
    if led_by_trimming(scene, q) or _tells_where(scene, q):
        return False
    if _from_the_end(scene, q):
        return True
    if not _TRIMS.isdisjoint(scene.words(min(_stretch(scene, q)[0], max(scene.sentence.i, q.i - 3)), q.i)):
        return False
    opened = [m for m in scene.of("opened") if m.j <= q.i and q.i - m.j <= 4]
    if any(m.value in ("vented", "released", "trimmed", "excised") for m in opened) and desk.topic == "pulley":
        return False  # 'A4 was kept. I vented its proximal 4 mm to reach the distal end before the core was placed'
    if scene.next_word(q.j) == "of" and any(0 < s.i - q.j <= 5 for s in scene.subjects if s.kind in _OTHERS):
        return False  # '12 mm of the radial digital nerve'
    if (_by_stump(scene, q) or _led_up(scene, q)) and _about_core(desk, scene, q):
        return True
    if _under_label(scene) and group_beside(scene, q) is not None:
        return True
    first, last = _stretch(scene, q)
    bite_words = {k for m in scene.of("bite") for k in range(m.i, m.j)}
    own = scene.part(q.i)[0], _own_end(scene, q)
    near_by = range(max(own[0], q.i - _NEAR_BY), min(own[1], q.j + _NEAR_BY))  # dictated without stops, parts are long
    words = {scene.page.words[k] for k in near_by if k not in bite_words}
    if not {"wound", "incision", "zigzag", "zig", "skin"}.isdisjoint(words):
        return False
    if not _NOT_TAKEN.isdisjoint(words) and not _takes(scene, *own):
        return False
    near = [m for m in scene.of("bite") if first <= m.i < last and m.j - 1 - q.j >= -_reach(scene) and m.i - q.j <= 6]
    held = "hold" in (scene.word_before(q.i), scene.next_word(q.j)) and (q.low or 0) >= 5
    if held:
        return _about_core(desk, scene, q)  # 'Hold 12 mm.', '20 mm hold'
    near += [m for m in scene.of("hold") if 0 <= q.i - m.j <= _BEHIND_BITE and _names_bites(scene, m)]
    strong = [m for m in near if " ".join(scene.words(m.i, m.j)) not in _IS_PURCHASE_WORDS_3]
    if near and not strong and (q.low or 0) >= _LEAST_BITE and _behind_core(scene, q):
        return True  # 'double Tsuge, loops locked, 8 mm each end'
    if strong or scene.words(scene.sentence.i, scene.sentence.i + 1) == ["catch"]:
        return _about_core(desk, scene, q)
    previous = [p for p in scene.quantities if p.unit == "mm" and p.j <= q.i and q.i - p.j <= 8 and p is not q]
    return (
        bool(previous)
        and bool({"distal", "distally", "proximally", "other"} & set(scene.words(q.j, min(q.j + 4, scene.sentence.j))))
        and any(" ".join(scene.words(m.i, m.j)) in _IS_PURCHASE_WORDS_4 for m in scene.of("bite"))
    )


def _reach(scene: Scene) -> int:
    """'Purchase was measured on the table as 8 mm': words that may stand between the noun and its length."""
    return 10 if "measured" in scene.said else 8


_BEHIND_BITE = 3  # words


def _names_bites(scene: Scene, m: Mention) -> bool:
    """'Grasping bites of roughly 1 cm': how it holds and how much it takes in one phrase."""
    return not {"bite", "bites"}.isdisjoint(scene.words(m.i, m.j + 1))


def _tells_where(scene: Scene, q: Quantity) -> bool:
    """'Severed some 15 mm distal to the edge of the carpal ligament', '8 mm proximal to A4': how far off a cut lay."""
    after = scene.words(q.j, min(q.j + _FAR_OFF, scene.sentence.j))
    off = (["distal", "to"], ["proximal", "to"], ["short", "of"], ["beyond", "the"], ["distally", "to"])
    if after[:2] not in (*off, ["from", "its"], ["from", "the"]):
        return False
    stop = q.j + next((n for n, w in enumerate(after) if w in (",", ";", ".")), len(after))
    pulley = any(q.j <= m.i < stop for m in scene.of("pulley", "pulley?"))
    return pulley or not _LANDMARKS.isdisjoint(scene.words(q.j, stop))


_FAR_OFF = 10  # words
# 'From the edge', 'from the end' is how the core's bites are told; from these only where the tendon was cut.
_LANDMARKS = frozenset(
    ["crease", "ligament", "retinaculum", "joint", "insertion", "arch", "wrist", "web", "pipj", "dipj"]
)


def _from_the_end(scene: Scene, q: Quantity) -> bool:
    """'Six strands of 4-0, 10 mm from the broken ends', '... Adelaide, taken 10 mm from the cut end each side'."""
    behind = [w for w in scene.words(q.j, min(q.j + 5, scene.sentence.j)) if w not in ("the", "each", "both")]
    from_end = behind[:1] == ["from"] and behind[1:2] != [] and behind[1] in _CUT and behind[2:3] in _END
    return from_end and any(m.j <= q.i and scene.told(m.i) for m in scene.of("stitch", "strandword", "material"))


_CUT = frozenset(["cut", "broken", "severed", "torn", "tendon", "divided", "ruptured"])
_END = (["end"], ["ends"], ["edge"], ["edges"], ["stump"], ["stumps"])


def _taken_off(scene: Scene, q: Quantity) -> bool:
    """'I took off 4 mm proximally', 'I took 2 mm from the proximal end': cut away, but not '9 mm from the cut'."""
    lead = [w for w in scene.words(max(scene.sentence.i, q.i - 4), q.i) if w not in _ABOUT]
    if lead[-2:] in (["took", "off"], ["taking", "off"], ["taken", "off"], ["take", "off"]):
        return True
    behind = [w for w in scene.words(q.j, min(q.j + 3, scene.sentence.j)) if w not in ("was", "were", "being")]
    if behind[:2] in (["taken", "off"], ["taken", "away"]):
        return True  # '2 mm was taken off in the index and 3 mm in the middle'
    placed = any(m.i == q.j for m in scene.of("bite"))
    before = [p for p in scene.quantities if p.unit == "mm" and p.j <= q.i and q.i - p.j <= 8]
    if before and "and" in scene.words(before[-1].j, q.i) and _taken_off(scene, before[-1]):
        return True
    return lead[-1:] in (["took"], ["taking"]) and scene.next_word(q.j) == "from" and not placed


def _behind_core(scene: Scene, q: Quantity) -> bool:
    """Tell whether a core suture stands before a length in its sentence, and no pulley between them."""
    cores = [m.j for m in scene.of("stitch", "strandword", "material") if m.j <= q.i]
    return bool(cores) and not any(max(cores) <= m.i < q.i for m in scene.of("pulley", "pulleys", "opened"))


def _behind_core_before(desk: Desk, scene: Scene, q: Quantity) -> bool:
    """'3-0 Ticron, Savage. 12 mm up, 10 mm down.': a sentence of its own right behind the core, begun by a length."""
    after = scene.words(q.j, q.j + 2)
    sided = after in _EACH_SIDE or after[:1] in (["up"], ["proximally"], ["prox"]) or _at_both_ends(scene, q)
    before = desk.scene_before(scene) if sided and q.i == scene.sentence.i and (q.low or 0) >= _LEAST_BITE else None
    if before is None or before.sentence.block != scene.sentence.block or scene.setting.groups:
        return False
    core = before.of("stitch", "strandword", "material", "hold")
    return bool(core) and desk.topic in (CORE, TENDON) and not before.of("pulley", "pulleys", "restored")


def _at_both_ends(scene: Scene, q: Quantity) -> bool:
    """'9 mm in prox / 7 mm in dist.', '10 mm proximal, 8 mm distal': a length for each end."""
    other = next((p for p in scene.quantities if p.i > q.j and p.unit == "mm"), None)
    if other is None:
        return False
    behind = [scene.words(p.j, min(p.j + _END_NEAR, scene.sentence.j)) for p in (q, other)]
    if any(not _FROM_A_PLACE.isdisjoint(words) for words in behind):
        return False  # '9 mm proximal to A2, 7 mm distal to it'
    ends = [_side_of(words) for words in behind]
    return sorted(ends) == ["d", "p"] and other.i - q.j <= _END_NEAR + 1


_END_NEAR = 3  # words: 'in the proximal'
_FROM_A_PLACE = frozenset(["to", "of", "from"])
_EACH_SIDE = [[a, b] for a in ("each", "either") for b in ("end", "side", "way", "stump")]


def _led_up(scene: Scene, q: Quantity) -> bool:
    """'woven into the tendon for a distance of 15 mm', 'locked up and down the stump over 1 cm': how far it runs."""
    lead = [w for w in scene.words(max(scene.sentence.i, q.i - 5), q.i) if w not in _ABOUT]
    if lead[-1:] == ["distance"]:
        lead = [w for w in lead[:-1] if w != "a"]
    if lead[-1:] not in (["for"], ["over"]) or not 5 <= (q.low or 0) <= 25:
        return False
    before = scene.words(scene.sentence.i, q.i)
    woven = not _WEAVES.isdisjoint(before) and not _IN_TENDON.isdisjoint(before)
    return woven and not scene.of("pulley", "pulleys", "opened", "anynerve", "sided")


_NEAR_BY = 12  # words
_LEAST_BITE = 5  # mm; a shorter length at each end is as likely one trimmed away
_WEAVES = frozenset(
    ["woven", "wove", "weave", "weaved", "run", "ran", "locked", "locking", "passed", "krackow", "bunnell"]
)
_IN_TENDON = frozenset(["tendon", "stump", "end", "fdp", "fpl", "profundus", "krackow", "bunnell"])


def _own_end(scene: Scene, q: Quantity) -> int:
    """Return where the part of a length ends, at the latest where a second verb follows: '... and buried the knot'."""
    last = scene.part(q.i)[1]
    words = scene.page.words
    ands = (k for k in range(q.j, last - 1) if words[k] == "and")
    return next((k for k in ands if words[k + 1].endswith("ed") or words[k + 1] in ("left", "put", "the")), last)


def _under_label(scene: Scene) -> bool:
    """'Purchase: FPL 10 mm, index FDP 8 mm': the sentence answers a label for what is taken."""
    first = next((m for m in scene.of("bite") if m.i == scene.sentence.i), None)
    return first is not None and scene.next_word(first.j) == ":"


def _takes(scene: Scene, first: int, last: int) -> bool:
    """Tell whether a verb or noun of purchase stands in words first to last: 'taken', but not 'taken away'."""
    words = scene.page.words
    return any(
        words[k] in _IS_PURCHASE_WORDS_2 and scene.next_word(k + 1) not in ("away", "off", "out", "back")
        for k in range(first, last)
    )


def _by_stump(scene: Scene, q: Quantity) -> bool:
    """'7 mm proximal and 9 mm distal' beside a word of purchase, or both behind a core."""
    after = scene.words(q.j, min(q.j + 5, scene.sentence.j))
    if not _STUMPS & set(after) or {"wound", "incision", "cut", "laceration", "extended", "crease"} & set(after):
        return False
    listed = scene.words(scene.sentence.i, scene.sentence.j)
    words = set(listed)
    if after[:1] == ["of"] and not words & _BY_STUMP_WORDS_2:
        return False  # '12 mm of distal stump was on hand'
    both = len(_STUMPS & set(listed)) > 1 and sum(p.unit in ("mm", "") for p in scene.quantities) > 1
    behind_core = any(m.j <= q.i for m in scene.of("stitch", "strandword", "material")) and after[0] in _STUMPS
    return bool(words & _BY_STUMP_WORDS) or (both and behind_core and not words & _TRIMS)


def _about_core(desk: Desk, scene: Scene, q: Quantity) -> bool:
    subject = scene.owner(q.i, q.j)
    if subject is not None and subject.mention is not None:
        core_before = any(m.j <= q.i for m in scene.of("stitch", "strandword"))
        if subject.i >= q.j and (core_before or (q.low or 0) >= 5):
            return True  # told behind a core suture; what follows is the next one
        role = subject.mention.value if subject.kind == "role" else subject.kind
        return role in (CORE, "pulley") and role == CORE
    return True
