"""Lengths of the core: purchase in each end and the size of its locks."""

from notereader.reader.bearing import Target
from notereader.reader.desk import Desk
from notereader.reader.page import Quantity
from notereader.reader.rules.roles import CORE, PERIPHERAL, TENDON, anchors
from notereader.reader.rules.suture_owners import lay_suture, respective, suture_owners
from notereader.reader.scene import Scene
from notereader.record.values import Interval
from notereader.vocabulary.wordlists import word_list

_IS_LOCK_WORDS = word_list("sutures", "is_lock_words")
_IS_PURCHASE_WORDS = word_list("sutures", "is_purchase_words")
_IS_PURCHASE_WORDS_2 = word_list("sutures", "is_purchase_words_2")
_IS_PURCHASE_WORDS_3 = word_list("sutures", "is_purchase_words_3")
_IS_PURCHASE_WORDS_4 = word_list("sutures", "is_purchase_words_4")
_BY_STUMP_WORDS = word_list("sutures", "by_stump_words")
_BY_STUMP_WORDS_2 = word_list("sutures", "by_stump_words_2")
_STUMPS = word_list("sutures", "stumps")


def bites(desk: Desk, scene: Scene) -> None:
    """Find the purchase of the core and the size of its locks."""
    lengths = [q for q in scene.quantities if q.unit == "mm" and scene.told(q.i)]
    bare = [
        q
        for q in scene.quantities
        if not q.unit and lengths and 0 < q.i - lengths[-1].j <= 3 and scene.next_word(q.j) in _STUMPS
    ]
    lengths += bare
    if not lengths:
        return
    locks = [q for q in lengths if _is_lock(scene, q)]
    for q in locks:
        lay_suture(desk, scene, q.i, q.j, "lock_mm", _interval(scene, q), "size of each lock")
        if {"lock", "locks"} & set(scene.words(max(scene.sentence.i, q.i - 3), min(scene.sentence.j, q.j + 3))):
            lay_suture(desk, scene, q.i, q.j, "hold", "locking", "locks are named")
    worked_on = desk.topic in (CORE, TENDON, PERIPHERAL) or any(a.role in (CORE, TENDON) for a in anchors(scene))
    bites = [q for q in lengths if q not in locks and worked_on and _is_purchase(desk, scene, q)]
    if bites:
        _lay_purchase(desk, scene, bites)


def _own_digit(desk: Desk, scene: Scene, q: Quantity) -> list[Target]:
    """'10 mm in the middle and 7 mm in the ring finger': the digit right after a length is whose it is."""
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
            found = [t for t in desk.repairable(group.digits) if not group.tendons or t.tendon in group.tendons]
            kinds = {t.tendon for t in scene.setting.focus}
            return [t for t in found if t.tendon in kinds] or found
    return []


def _lay_purchase(desk: Desk, scene: Scene, bites: list[Quantity]) -> None:
    own = [(q, _own_digit(desk, scene, q)) for q in bites]
    if len(bites) > 1 and all(targets for _, targets in own):
        for q, targets in own:
            for target in targets:
                desk.tendon(scene, target, "purchase_mm", _interval(scene, q), [(q.i, q.j)], "length of tendon taken")
        return
    targets, _ = suture_owners(desk, scene, bites[0].i, bites[0].j)
    digits = list(dict.fromkeys(d for g in scene.setting.groups if g.j <= bites[0].i for d in g.digits))
    if (
        "respectively" in scene.words(scene.sentence.i, scene.sentence.j)
        and len(targets) == 1
        and len(digits) == len(bites)
    ):
        targets = [t for d in digits for t in desk.repairable((d,)) if t.tendon == targets[0].tendon]
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


def _interval(scene: Scene, q: Quantity) -> Interval:
    before = scene.words(max(scene.sentence.i, q.i - 3), q.i)
    if ("least" in before) or ("than" in before and "more" in before) or "minimum" in before:
        return Interval(low=q.low, high=None)
    after = scene.words(q.j, min(q.j + 3, scene.sentence.j))
    if after[:2] in (["or", "more"], ["and", "more"], ["or", "longer"]) or after[:1] in (["plus"], ["+"]):
        return Interval(low=q.low, high=None)
    return Interval(low=q.low, high=q.high)


def _is_lock(scene: Scene, q: Quantity) -> bool:
    """'loops of 2 mm diameter', '2 mm bites', '3 mm locks'; a bite measured from the cut is a purchase."""
    if q.high is None or q.high > 5:
        return False
    first, last = scene.part(q.i)
    for mention in scene.of("lockword"):
        if not first <= mention.i < last:
            continue
        word = scene.page.words[mention.j - 1]
        gap = mention.i - q.j if mention.i >= q.j else q.i - mention.j
        if gap <= 3 and (word != "diameter" or mention.i >= q.j):
            after = scene.words(max(q.j, mention.j), min(scene.sentence.j, max(q.j, mention.j) + 4))
            return not (word in ("bite", "bites") and any(w in _IS_LOCK_WORDS for w in after))
    return False


def _is_purchase(desk: Desk, scene: Scene, q: Quantity) -> bool:
    """Tell whether a length is tendon taken by the core, not a stump, a wound, a gap or what was trimmed away."""
    if q.high is not None and not 2 <= q.high <= 25:
        return False
    first, last = scene.part(q.i)
    words = scene.words(first, last)
    if _by_stump(scene, q) and _about_core(desk, scene, q):
        return True
    if {"wound", "incision", "zigzag", "zig", "skin"} & set(words):
        return False
    if _IS_PURCHASE_WORDS & set(words) and not _IS_PURCHASE_WORDS_2 & set(words):
        return False
    near = [m for m in scene.of("bite") if first <= m.i < last and -8 <= m.i - q.j <= 6]
    strong = [m for m in near if " ".join(scene.words(m.i, m.j)) not in _IS_PURCHASE_WORDS_3]
    if strong:
        return _about_core(desk, scene, q)
    previous = [p for p in scene.quantities if p.unit == "mm" and p.j <= q.i and q.i - p.j <= 8 and p is not q]
    return (
        bool(previous)
        and bool({"distal", "distally", "proximally", "other"} & set(scene.words(q.j, min(q.j + 4, scene.sentence.j))))
        and any(" ".join(scene.words(m.i, m.j)) in _IS_PURCHASE_WORDS_4 for m in scene.of("bite"))
    )


def _by_stump(scene: Scene, q: Quantity) -> bool:
    """'7 mm proximal and 9 mm distal' beside a word of purchase."""
    after = scene.words(q.j, min(q.j + 5, scene.sentence.j))
    if not _STUMPS & set(after) or {"wound", "incision", "cut", "laceration", "extended", "crease"} & set(after):
        return False
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    if after[:1] == ["of"] and not words & _BY_STUMP_WORDS_2:
        return False  # '12 mm of distal stump was on hand'
    return bool(words & _BY_STUMP_WORDS)


def _about_core(desk: Desk, scene: Scene, q: Quantity) -> bool:
    subject = scene.owner(q.i, q.j)
    if subject is not None and subject.mention is not None:
        core_before = any(m.j <= q.i for m in scene.of("stitch", "strandword"))
        if subject.i >= q.j and (core_before or (q.low or 0) >= 5):
            return True  # told behind a core suture; what follows is the next one
        role = subject.mention.value if subject.kind == "role" else subject.kind
        return role in (CORE, "pulley") and role == CORE
    return True
