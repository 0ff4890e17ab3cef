"""Core and peripheral sutures: sizes, materials, strands, stitches, hold, purchase, locks and knots."""

from dataclasses import dataclass, field

from notereader.reader.bearing import Group, Target
from notereader.reader.desk import Desk, carried, near_digits, owners
from notereader.reader.measures import NUMBER_WORDS
from notereader.reader.page import Break, Mention, Page, Quantity, within
from notereader.reader.rules.roles import CORE, PERIPHERAL, TENDON, Anchor, anchors, role_of
from notereader.reader.scene import Scene, group_targets
from notereader.record.values import Interval, Value
from notereader.vocabulary.sutures import sizes
from notereader.vocabulary.wordlists import word_list

_SUTURES_WORDS = word_list("sutures", "sutures_words")
_ELLIPTIC_WORDS = word_list("sutures", "elliptic_words")
_HOLDS_CORE_WORDS = word_list("sutures", "holds_core_words")
_LOCK_WORDS_WORDS = word_list("sutures", "lock_words_words")
_ONLY_A_WORD_WORDS = word_list("sutures", "only_a_word_words")
_IS_LOCK_WORDS = word_list("sutures", "is_lock_words")
_IS_PURCHASE_WORDS = word_list("sutures", "is_purchase_words")
_IS_PURCHASE_WORDS_2 = word_list("sutures", "is_purchase_words_2")
_IS_PURCHASE_WORDS_3 = word_list("sutures", "is_purchase_words_3")
_IS_PURCHASE_WORDS_4 = word_list("sutures", "is_purchase_words_4")
_BY_STUMP_WORDS = word_list("sutures", "by_stump_words")
_BY_STUMP_WORDS_2 = word_list("sutures", "by_stump_words_2")

_CLUSTER_GLUE = word_list("sutures", "cluster_glue")
_TISSUE = word_list("sutures", "tissue")
_ZERO = word_list("sutures", "zero")
_ROUND = frozenset(["around", "round", "over"])


@dataclass(slots=True)
class Thread:
    """A suture named in a sentence: size and material that stand together, words i to j."""

    i: int
    j: int
    size: str = ""
    size_at: tuple[int, int] = (0, 0)
    material: str = ""
    material_at: tuple[int, int] = (0, 0)
    looped: bool | None = None
    role: str = ""
    reasons: list[str] = field(default_factory=list)


def sutures(desk: Desk, scene: Scene) -> None:
    """Find every core and peripheral suture of a sentence and give it to its tendons."""
    section = scene.sentence.section
    if section in _SUTURES_WORDS:
        return
    found = anchors(scene)
    threads = _threads(scene)
    _give_roles(desk, scene, threads, found)
    for thread in threads:
        if scene.told(thread.i):
            _lay_thread(desk, scene, thread, _peers(scene, threads, thread))
    _lay_strands(desk, scene, found)
    _lay_stitches(desk, scene, found, threads)
    _lay_hold(desk, scene, found)
    _lay_peripheral(desk, scene, found)
    _lay_bites(desk, scene)
    _lay_knot(desk, scene)
    _remember_topic(desk, scene, found, threads)


# --- threads


def _threads(scene: Scene) -> list[Thread]:
    """Return the sutures named in a sentence: each size with the material beside it, and materials without a size."""
    threads = [Thread(i, j, size, (i, j)) for size, i, j in _sizes(scene)]
    for mention in scene.of("material"):
        thread = _beside(scene, threads, mention)
        if thread is None:
            threads.append(Thread(mention.i, mention.j, "", (0, 0), mention.value, (mention.i, mention.j)))
        else:
            thread.material, thread.material_at = mention.value, (mention.i, mention.j)
            thread.i, thread.j = min(thread.i, mention.i), max(thread.j, mention.j)
        if mention.rescued:
            (thread or threads[-1]).reasons.append(f"misspelt: read as {mention.value}")
    threads = _without_second_names(scene, threads)
    for mention in scene.of("looped"):
        near = [t for t in threads if -4 <= t.i - mention.j <= 3 or 0 <= mention.i - t.j <= 2 or t.i <= mention.i < t.j]
        for thread in near[:1]:
            unlooped = scene.words(mention.i - 2, mention.i) == ["non", "-"] or scene.word_before(mention.i) == "non"
            thread.looped = not (unlooped or scene.negated(mention.i, mention.j, 2))
            thread.i, thread.j = min(thread.i, mention.i), max(thread.j, mention.j)
    threads.sort(key=lambda t: t.i)
    return threads


def _sizes(scene: Scene) -> list[tuple[str, int, int]]:
    """Return the sizes of a sentence: '4-0', 'four-oh', '4 - 0', '000' beside a material, 'size 0'."""
    words, found, reach = scene.page.words, [], 0
    for k in scene.page.figures_in(scene.sentence.i, scene.sentence.j):
        size, j = _size_at(scene.page, k, scene.sentence.j) if k >= reach else ("", k)
        if size:
            found.append((size, k, j))
            reach = j
    return [f for f in found if not _not_a_suture(words, f[1], f[2])]


def _size_at(page: Page, k: int, end: int) -> tuple[str, int]:
    word = page.words[k]
    if len(word) >= 3 and word.endswith("-0") and word[:-2].isdigit():
        size = "0" if word == "1-0" else word
        return (size, k + 1) if size in sizes() else ("", k)
    if (word in NUMBER_WORDS and 0 < NUMBER_WORDS[word] <= 12) or (word.isdigit() and 0 < int(word) <= 12):
        at = k + 1
        if at < end and page.words[at] in ("-", "/"):
            at += 1
        if at < end and page.words[at] in _ZERO and (at > k + 1 or page.words[at] not in ("0", "o")):
            number = NUMBER_WORDS.get(word) or int(word)
            size = "0" if number == 1 else f"{number}-0"
            return (size, at + 1) if size in sizes() else ("", k)
    if set(word) == {"0"} and 2 <= len(word) <= 6 and _material_next(page, k + 1):
        return f"{len(word)}-0", k + 1
    if word in ("0", "1", "2") and (page.words[k - 1] in ("size", "#") if k else False):
        return word, k + 1
    return "", k


def _material_next(page: Page, k: int) -> bool:
    return any(m.kind == "material" for m in within(page.mentions, k, k + 1))


def _not_a_suture(words: list[str], i: int, j: int) -> bool:
    after = words[j] if j < len(words) else ""
    return after in ("scale", "score", "mmhg", "forceps", "scalpel")


def _beside(scene: Scene, threads: list[Thread], mention: Mention) -> Thread | None:
    """Return the size a material belongs to: right after it ('4-0 undyed nylon') or right before ('Prolene 4-0')."""
    for thread in threads:
        if thread.material:
            continue
        if thread.j <= mention.i and mention.i - thread.j <= 5 and _joined(scene, thread.j, mention.i):
            return thread
    for thread in threads:
        if (
            not thread.material
            and mention.j <= thread.i
            and thread.i - mention.j <= 2
            and _joined(scene, mention.j, thread.i)
        ):
            return thread
    return None


def _joined(scene: Scene, i: int, j: int) -> bool:
    between = scene.words(i, j)
    return all(w in _CLUSTER_GLUE for w in between) and between not in ([","],) and between.count(",") < 2


def _without_second_names(scene: Scene, threads: list[Thread]) -> list[Thread]:
    """'4-0 looped nylon (Supramid)' names one thread twice."""
    kept: list[Thread] = []
    for thread in sorted(threads, key=lambda t: t.i):
        if not thread.size and kept and thread.i - kept[-1].j <= 2 and scene.words(kept[-1].j, thread.i)[-1:] == ["("]:
            kept[-1].j = thread.j
            continue
        kept.append(thread)
    return kept


def _give_roles(desk: Desk, scene: Scene, threads: list[Thread], found: list[Anchor]) -> None:
    for thread in threads:
        thread.role = role_of(scene, thread.i, thread.j, found)
        if thread.role in ("", TENDON, "pattern"):
            thread.role = _by_context(desk, scene, thread, found)


def _by_context(desk: Desk, scene: Scene, thread: Thread, found: list[Anchor]) -> str:
    """Decide a suture whose sentence names no part: by its section, its pattern, and what was worked on before."""
    section = scene.sentence.section
    if section in ("closure", "dressing") or _is_closing_line(scene, thread):
        return "skin"
    if section in (CORE, PERIPHERAL):
        return section
    pattern = any(a.role == "pattern" and scene.part(a.i) == scene.part(thread.i) for a in found)
    around = any(w in _ROUND for w in scene.words(thread.i, min(thread.j + 6, scene.sentence.j)))
    if thread.role == "pattern" and _has_core(desk, scene):
        return PERIPHERAL
    if thread.role == TENDON and _outside_follows(scene, thread, found):
        return PERIPHERAL
    if thread.role == TENDON:
        return (
            PERIPHERAL
            if pattern and (around or _has_core(desk, scene)) and thread.size in ("5-0", "6-0", "7-0")
            else CORE
        )
    if desk.topic in (CORE, PERIPHERAL, TENDON):
        if pattern or around:
            return PERIPHERAL
        closed = any(w in ("closed", "closure", "closing") for w in scene.words(scene.sentence.i, scene.sentence.j))
        return "skin" if closed else desk.topic if desk.topic != TENDON else CORE
    return desk.topic


_CLOSING_WORDS = word_list("sutures", "closing_words")
_DISSOLVING = frozenset(["polyglactin", "other"])


def _is_closing_line(scene: Scene, thread: Thread) -> bool:
    """'Wash. 4/0 Vicryl rapide. Gauze.': a thread among words of closing, or a dissolving one without a tendon."""
    if any(g.tendons or g.generic for g in scene.setting.groups):
        return False
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    if words & _CLOSING_WORDS and not scene.of("strandword", "stitch", "pattern"):
        return True
    return thread.material in _DISSOLVING and not scene.of("strandword", "stitch") and "core" not in words


def _outside_follows(scene: Scene, thread: Thread, found: list[Anchor]) -> bool:
    """'Both received 6-0 polypropylene, cross-stitch, around the suture line.'"""
    later = [t for t in _sizes(scene) if t[1] >= thread.j]
    reach = later[0][1] if later else scene.sentence.j
    return any(a.role == PERIPHERAL and thread.j <= a.i < reach for a in found) and not any(
        a.role == CORE and thread.i - 6 <= a.i < reach for a in found
    )


def _has_core(desk: Desk, scene: Scene) -> bool:
    """Tell whether a core suture was spoken of before in this sentence or for the tendons in focus."""
    if any(m.kind in ("stitch", "strandword") for m in scene.mentions):
        return True
    focus = {(t.digit, t.tendon) for t in scene.setting.focus}
    return any(f.field in ("strands", "stitch", "size") and f.entry[:2] in focus for f in desk.findings)


# --- whose


def suture_owners(desk: Desk, scene: Scene, i: int, j: int) -> tuple[list[Target], list[str]]:
    """Return the tendons a core or peripheral suture in words i to j belongs to."""
    groups = [g for g in scene.setting.groups if not g.reference and not (g.excepted and g.i >= j)]
    excepted = {t for g in scene.setting.groups if _excepts(scene, g, i, j) for t in group_targets(scene, g)}
    found, reasons = _suture_owners(desk, scene, i, j, groups)
    return [t for t in found if t not in excepted], reasons


def _excepts(scene: Scene, group: Group, i: int, j: int) -> bool:
    """An exception bears on the clause right before it: '..., and finished with 5-0, except the FCR'."""
    return group.excepted and group.i >= j and scene.part(i)[1] >= scene.part(group.i)[0] - 1


def _suture_owners(desk: Desk, scene: Scene, i: int, j: int, groups: list[Group]) -> tuple[list[Target], list[str]]:
    named = [g for g in groups if g.tendons or g.generic or g.every]
    own = _own_group(desk, scene, i, j, groups)
    if own:
        return own, []
    if said_of_all(scene, i):
        digits = tuple(d for g in groups if g.digits and not g.tendons and g.j <= i for d in g.digits)
        tendons = {t for g in groups if g.j <= i or g.every for t in g.tendons}
        wide = [t for t in desk.repairable(digits or None) if not tendons or t.tendon in tendons]
        if wide and not (tendons and digits):
            return wide, []
    first, last = scene.part(i)
    inside = [g for g in groups if first <= g.i < last]
    before = [g for g in groups if g.j <= i]
    after = [g for g in groups if g.i >= j]
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
            found = _of_group(desk, scene, group)
            if found or group.digits:
                return found, []  # of a digit with no known repair: better nothing than its neighbour's
    return _carried(desk, scene)


def _own_group(desk: Desk, scene: Scene, i: int, j: int, groups: list[Group]) -> list[Target]:
    """'a double Tsuge in the index and a single one in the middle'; 'the last two', 'the former'."""
    for group in groups:
        between = scene.words(j, group.i)
        if (
            group.digits
            and j <= group.i
            and 1 <= len(between) <= 3
            and between[0] in ("in", "for", "on")
            and all(w in ("in", "for", "on", "the", "both") for w in between)
        ):
            if len([g for g in groups if g.digits and g.j > j]) < 1 or group.generic:
                continue
            return _of_group(desk, scene, group)
    first, last = scene.part(i)
    words = " ".join(scene.words(first, last))
    named = [g for g in groups if g.tendons and g.j <= i]
    if "last two" in words and len(named) >= 2:
        return [t for g in named[-2:] for t in _of_group(desk, scene, g)]
    focus = list(scene.setting.focus)
    if not named and len(focus) == 2 and ("the former" in words or "the latter" in words):
        return [focus[0 if "the former" in words else 1]]
    if "the latter" in words and named:
        return _of_group(desk, scene, named[-1])
    return []


_ALL = word_list("sutures", "all")
_ALL_OF = word_list("sutures", "all_of")


def said_of_all(scene: Scene, k: int) -> bool:
    """Tell whether the part in which word k stands speaks of every repair: 'each repair', 'every core suture'."""
    first, last = scene.part(k)
    words = scene.words(first, last)
    if any(g.tendons and g.j <= k and not g.reference and not g.every for g in scene.setting.groups):
        return False
    for n, word in enumerate(words):
        if word in _ALL and set(words[n + 1 : n + 4]) & _ALL_OF and "end" not in words[n + 1 : n + 3]:
            return True
    return False


def _fuller(group: Group, pool: list[Group], named: list[Group]) -> Group:
    """A digit alone gives way to a tendon named beside it."""
    if group.tendons or group.generic:
        return group
    tendons = [g for g in pool if g in named]
    return tendons[-1] if tendons and not group.every else group


def _of_group(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    subject_i, subject_j = group.i, group.j
    if group.tendons:
        found, _ = owners(desk, scene, subject_i, subject_j)
        return [t for t in found if desk.extents.get(t) != "intact"] or found
    if group.generic == "all":
        named = [g for g in scene.setting.groups if g.tendons and g.j <= group.i and not g.reference]
        if (
            named
            and scene.page.words[group.i] in ("each", "both", "all")
            and not group.digits
            and group.i > scene.sentence.i + 1
        ):
            return _of_group(desk, scene, named[-1])
        return desk.repairable(group.digits or None)
    if group.every:
        return desk.repairable()
    found, _ = carried(desk, scene, near_digits(scene, group) or None)
    return found


def _carried(desk: Desk, scene: Scene) -> tuple[list[Target], list[str]]:
    found, reason = carried(desk, scene)
    return found, [reason] if reason else []


def _lay(desk: Desk, scene: Scene, i: int, j: int, name: str, value: Value, rule: str, *reasons: str) -> None:
    targets, doubts = suture_owners(desk, scene, i, j)
    for target in targets:
        desk.tendon(scene, target, name, value, [(i, j)], rule, *doubts, *reasons)


def respective(scene: Scene, i: int, peers: list[int], targets: list[Target]) -> list[Target]:
    """'3-0 and 4-0 respectively': the n-th of as many values as tendons belongs to the n-th tendon."""
    if "respectively" not in scene.words(scene.sentence.i, scene.sentence.j) or i not in peers:
        return targets
    digits = list(dict.fromkeys(t.digit for t in targets))
    n = peers.index(i)
    if len(peers) == len(targets):
        return [targets[n]]
    if len(peers) == len(digits):
        return [t for t in targets if t.digit == digits[n]]
    return targets


def _peers(scene: Scene, threads: list[Thread], thread: Thread) -> list[int]:
    return [t.i for t in threads if t.role == thread.role and t.size]


def _lay_thread(desk: Desk, scene: Scene, thread: Thread, peers: list[int]) -> None:
    prefix = {CORE: "", PERIPHERAL: "peripheral_"}.get(thread.role)
    if prefix is None or scene.negated(thread.i, thread.i, 3) or _is_old(scene, thread):
        return
    every, doubts = suture_owners(desk, scene, thread.i, thread.j)
    targets = respective(scene, thread.i, peers, every)
    if thread.material and len(targets) < len(every) and len(scene.of("material")) == 1:
        for target in [t for t in every if t not in targets]:  # '3-0 and 4-0 Ethibond respectively'
            at, rule = [thread.material_at], f"material of the {thread.role} suture"
            desk.tendon(scene, target, f"{prefix}material", thread.material, at, rule, *doubts, *thread.reasons)
    for target in targets:
        if thread.role == PERIPHERAL:
            desk.tendon(
                scene, target, "peripheral", "present", [(thread.i, thread.j)], "peripheral suture named", *doubts
            )
        if thread.size:
            desk.tendon(
                scene,
                target,
                f"{prefix}size",
                thread.size,
                [thread.size_at],
                f"size of the {thread.role} suture",
                *doubts,
            )
        if thread.material:
            desk.tendon(
                scene,
                target,
                f"{prefix}material",
                thread.material,
                [thread.material_at],
                f"material of the {thread.role} suture",
                *doubts,
                *thread.reasons,
            )
        if thread.looped is not None and thread.role == CORE:
            desk.tendon(scene, target, "looped", thread.looped, [(thread.i, thread.j)], "looped suture", *doubts)


_OLD = word_list("sutures", "old")


def _is_old(scene: Scene, thread: Thread) -> bool:
    """'both old Prolene strands were pulled out': a thread of the earlier operation."""
    return any(w in _OLD for w in scene.words(max(scene.sentence.i, thread.i - 2), thread.i))


# --- strands


def find_strands(scene: Scene) -> list[tuple[int, int, int]]:
    """Return (count, i, j) of every strand count in a sentence: 'four-strand', '6 strands', 'strands: 4'."""
    found: list[tuple[int, int, int]] = []
    page = scene.page
    for mention in scene.of("strandword"):
        k = mention.i - 1 if mention.i < mention.j else -1
        while k > scene.sentence.i and page.words[k] in ("-", "core", "main", "separate", "full"):
            k -= 1
        count = _count_at(page, k)
        if count is None:
            count, end = _count_after(page, mention.j, scene.sentence.j, mention.i if mention.i == mention.j else -1)
            if count is not None:
                found.append((count, mention.i, end))
            continue
        if page.words[mention.j - 1] == "stranded" and count == 2 and page.words[k] == "double":
            continue
        if _is_tissue(scene, mention.j) or scene.next_word(mention.j) in ("drain", "glove", "wire", "rubber"):
            continue
        if {"trimmed", "torn", "frayed"} & set(scene.words(mention.j, min(mention.j + 5, scene.sentence.j))):
            continue  # strands of a torn tendon or muscle
        if _ends_range(page, k):
            found.append((_count_at(page, k - 2) or count, k - 2, mention.j))  # of a range the weaker
            continue
        i = k
        times = _times_before(page, k, scene.sentence.i)
        if times:
            count, i = count * times[0], times[1]
        found.append((count, i, mention.j))
    return found


def _ends_range(page: Page, k: int) -> bool:
    """Tell whether the count at word k is the upper end of a range: 'four to six', '4-6', 'four or six'."""
    if k < 2 or _count_at(page, k - 2) is None:
        return False
    tight = page.breaks[k - 1] == page.breaks[k] == Break.NONE
    return page.words[k - 1] in ("to", "or") or (page.words[k - 1] in ("-", "/") and tight)


def _count_at(page: Page, k: int) -> int | None:
    if k < 0:
        return None
    word = page.words[k]
    if word in NUMBER_WORDS:
        return NUMBER_WORDS[word] or None
    return int(word) if word.isdigit() and 1 <= int(word) <= 16 else None


def _count_after(page: Page, j: int, end: int, virtual: int = -1) -> tuple[int | None, int]:
    """Read 'strands: 4', 'strands x 4', 'strands in tendon [ ] 2 [x] 4'."""
    k = _box_after(page, j, end)
    while k < end and page.words[k] in (":", "=", "x", "-", "|") and k - j < 2:
        k += 1
    if (k == j and j != virtual) or k >= end:
        return None, j
    return _count_at(page, k), k + 1


_BOX = word_list("sutures", "box")
_OF_REPAIR = word_list("sutures", "of_repair")


def _box_after(page: Page, j: int, end: int) -> int:
    """Return the word of the ticked answer after a label that ends before word j, or j where no boxes follow."""
    k = j
    while k < end and (page.words[k] in _OF_REPAIR or page.words[k].startswith("..")):
        k += 1
    boxed = k < end and (page.words[k] in ("[", "(") or page.standing[k] == "unticked")
    if not boxed and not (k > j and page.words[k - 1].startswith("..")):
        return j
    while k < end and (page.words[k] in _BOX or page.standing[k] == "unticked"):
        k += 1
    return k


def _times_before(page: Page, k: int, first: int) -> tuple[int, int] | None:
    """Read 'two two-strand repairs' as four strands in all."""
    if k - 1 >= first and page.words[k - 1] in ("two", "three", "2", "3") and page.breaks[k] > 0:
        times = _count_at(page, k - 1)
        return (times, k - 1) if times else None
    return None


def _is_tissue(scene: Scene, j: int) -> bool:
    """'a strand of scar' is no suture; 'eight strands of it', 'six strands of 4-0 nylon' are."""
    if scene.next_word(j) != "of":
        return False
    after = scene.words(j + 1, min(j + 3, scene.sentence.j))
    if not after or after[0] == "it" or any(m.kind in ("material",) and j < m.i <= j + 3 for m in scene.mentions):
        return False
    return after[0] in _TISSUE


def _lay_strands(desk: Desk, scene: Scene, found: list[Anchor]) -> None:
    counts = [c for c in find_strands(scene) if scene.told(c[1]) and not _foreign(scene, c[1], c[2])]
    for count, i, j in counts:
        if not scene.negated(i, j, 3) and count <= 16:
            targets, doubts = suture_owners(desk, scene, i, j)
            for target in respective(scene, i, [c[1] for c in counts], targets):
                desk.tendon(scene, target, "strands", count, [(i, j)], "strand count stated", *doubts)
    if counts:
        desk.strands_at = scene.sentence.j
    elif desk.strands_at == scene.sentence.i or counts:
        _elliptic(desk, scene)


def _elliptic(desk: Desk, scene: Scene) -> None:
    """'FDP carries four strands. FDS carries two.': a bare count after a sentence of strand counts."""
    for k in range(scene.sentence.i, scene.sentence.j - 1):
        if scene.page.words[k] in _ELLIPTIC_WORDS:
            count = _count_at(scene.page, k + 1)
            after = scene.next_word(k + 2)
            if count and after in ("", ".", ",", ";") and any(g.tendons for g in scene.setting.groups):
                _lay(desk, scene, k + 1, k + 2, "strands", count, "strand count carried on")


def _foreign(scene: Scene, i: int, j: int) -> bool:
    """Tell whether a strand count or stitch belongs to an extensor tendon, a nerve or a plate."""
    subject = scene.owner(i, j)
    if subject is not None and subject.mention is not None:
        return subject.kind in ("structure", "sided", "anynerve") and subject.mention.kind != "role"
    return any(m.kind == "structure" and m.value == "extensor tendon" for m in scene.mentions) and not any(
        g.tendons for g in scene.setting.groups
    )


# --- stitches

_WEAK_STITCHES = frozenset(["horizontal mattress", "figure-of-eight", "simple"])


def _lay_stitches(desk: Desk, scene: Scene, found: list[Anchor], threads: list[Thread]) -> None:
    for mention in scene.of("stitch"):
        if not scene.told(mention.i) or scene.negated(mention.i, mention.j, 3) or _foreign(scene, mention.i, mention.j):
            continue
        if _is_person(scene, mention):
            continue
        if mention.value in _WEAK_STITCHES and not _weak_is_core(desk, scene, mention, found, threads):
            continue
        reasons = [f"misspelt: read as {mention.value}"] if mention.rescued else []
        _lay(desk, scene, mention.i, mention.j, "stitch", mention.value, "core stitch named", *reasons)
    for mention in scene.of("anchor"):
        if (scene.told(mention.i) and not scene.negated(mention.i, mention.j, 4) and not scene.header) or (
            scene.header and mention.kind == "anchor"
        ):
            _lay_fixation(desk, scene, mention, "anchor")
    for mention in scene.of("button"):
        if scene.told(mention.i) and not scene.negated(mention.i, mention.j, 4):
            _lay_fixation(desk, scene, mention, "pull-out")


_TITLES = frozenset(["dr", "mr", "ms", "mrs", "miss", "prof", "professor", "sister", "nurse", "from"])


def _is_person(scene: Scene, mention: Mention) -> bool:
    """'Assisted by Dr Evans', 'from Adelaide': a name that stitches bear too."""
    before = [w for w in scene.words(max(scene.sentence.i, mention.i - 2), mention.i) if w != "."]
    return bool(before) and before[-1] in _TITLES


def _weak_is_core(desk: Desk, scene: Scene, mention: Mention, found: list[Anchor], threads: list[Thread]) -> bool:
    """A mattress or figure of eight is a tendon's stitch only beside a tendon, not in skin or around the outside."""
    thread = next((t for t in threads if -3 <= t.i - mention.j <= 4 or 0 <= mention.i - t.j <= 6), None)
    role = role_of(scene, mention.i, mention.j, found)
    if role in ("", TENDON, "pattern"):
        role = (
            thread.role
            if thread
            else (CORE if desk.topic in (CORE, TENDON, PERIPHERAL) or role == TENDON else desk.topic)
        )
    return role == CORE


_DONE = word_list("sutures", "done")


def _lay_fixation(desk: Desk, scene: Scene, mention: Mention, stitch: str) -> None:
    """An anchor or a button puts the tendon back to bone."""
    if stitch == "anchor" and not scene.header and not _DONE & set(scene.words(scene.sentence.i, scene.sentence.j)):
        return
    if scene.sentence.section in ("implants", "instructions"):
        return
    subject = scene.owner(mention.i, mention.j)
    if subject is not None and subject.mention is not None and subject.kind == "structure":
        return
    targets, doubts = suture_owners(desk, scene, mention.i, mention.j)
    targets = [t for t in targets if t.tendon in ("FDP", "FPL", "FDS")]
    for target in targets:
        desk.tendon(scene, target, "stitch", stitch, [(mention.i, mention.j)], f"fixed by {stitch}", *doubts)
        if desk.treatments.get(target) != "reinserted":
            desk.tendon(
                scene, target, "treatment", "reinserted", [(mention.i, mention.j)], f"fixed by {stitch}", *doubts
            )


# --- hold


def _lay_hold(desk: Desk, scene: Scene, found: list[Anchor]) -> None:
    stated = {m.value for m in scene.of("hold")}
    for mention in scene.of("hold"):
        if not scene.told(mention.i) or not _holds_core(desk, scene, mention, found):
            continue
        if scene.negated(mention.i, mention.j, 3) and mention.value == "locking":
            continue
        if mention.value == "grasping" and scene.negated(mention.i, mention.j, 2):
            continue
        if (_rather_than(scene, mention.i) and len(stated) > 1) or scene.next_word(mention.j) == "?":
            continue
        if mention.i == scene.sentence.i and scene.next_word(mention.j) == ":" and mention.value == "locking":
            continue  # 'Locked: registrar' closes a record
        _lay(desk, scene, mention.i, mention.j, "hold", mention.value, f"{mention.value} hold stated")


def _rather_than(scene: Scene, i: int) -> bool:
    before = scene.words(max(scene.sentence.i, i - 3), i)
    return any(w in ("than", "not", "of") for w in before) and (
        "rather" in before or "not" in before or "instead" in before
    )


def _holds_core(desk: Desk, scene: Scene, mention: Mention, found: list[Anchor]) -> bool:
    """'locking' said of plates, of a finger that locks, or only of the peripheral suture says nothing of the core."""
    if "core" in scene.words(mention.i, mention.j):
        return True
    if scene.word_before(mention.i) in ("finger", "thumb", "digit"):
        return False
    if (
        scene.next_word(mention.j) in _HOLDS_CORE_WORDS
        and mention.value == "locking"
        and not any(a.role == CORE for a in found)
    ):
        return False
    if any(m.kind == "structure" for m in scene.mentions) and not any(a.role == CORE for a in found):
        return False
    role = role_of(scene, mention.i, mention.j, [a for a in found if not (a.i <= mention.i < a.j)])
    if role in (PERIPHERAL, "pattern") and scene.sentence.section != CORE:
        first, last = scene.part(mention.i)
        in_part = [a for a in found if first <= a.i < last]
        return any(a.role == CORE for a in in_part) and not any(a.role == PERIPHERAL for a in in_part)
    if role in (CORE, TENDON):
        return True
    if role:
        return False
    return desk.topic in (CORE, TENDON) or (desk.topic == PERIPHERAL and bool(_lock_words(scene)))


def _lock_words(scene: Scene) -> bool:
    return any(w in _LOCK_WORDS_WORDS for w in scene.words(scene.sentence.i, scene.sentence.j))


# --- peripheral


def _lay_peripheral(desk: Desk, scene: Scene, found: list[Anchor]) -> None:
    spots = [a for a in found if a.role == PERIPHERAL]
    if not spots and scene.sentence.section == PERIPHERAL and scene.sentence.j - scene.sentence.i > 2:
        heading = next(iter(within(scene.page.headings, scene.sentence.i, scene.sentence.j)), None)
        if heading is not None:
            spots = [Anchor(heading.i, heading.j, PERIPHERAL)]
    _left_out_there(desk, scene, spots)
    if (
        scene.sentence.prefix
        and scene.sentence.section == PERIPHERAL
        and scene.words(scene.sentence.i, scene.sentence.i + 1)[0] in ("none", "no", "nil", "not")
    ):
        _lay(
            desk,
            scene,
            scene.sentence.i,
            scene.sentence.i + 1,
            "peripheral",
            "absent",
            "peripheral suture said to be left out",
        )
        return
    for spot in _one_a_part(scene, spots):
        if not scene.told(spot.i):
            continue
        if scene.sentence.section == PERIPHERAL and _heading_says_none(scene, spot):
            _lay(desk, scene, spot.i, spot.j, "peripheral", "absent", "peripheral suture said to be left out")
            return
        if scene.sentence.section == PERIPHERAL and _heading_says_nothing(scene, spot):
            return
        if _peripheral_negated(scene, spot) and scene.words(scene.sentence.i, scene.sentence.i + 3)[-2:] == [
            "this",
            "is",
        ]:
            continue
        if _peripheral_negated(scene, spot):
            _lay(desk, scene, spot.i, spot.j, "peripheral", "absent", "peripheral suture said to be left out")
            continue
        if _only_a_word(scene, spot) or (scene.page.words[spot.j - 1] == "by" and scene.next_word(spot.j) == ":"):
            continue
        _lay(desk, scene, spot.i, spot.j, "peripheral", "present", "peripheral suture named")
    if not all(_peripheral_negated(scene, spot) for spot in spots) or not spots:
        _lay_pattern(desk, scene, found, bool(spots))


def _one_a_part(scene: Scene, spots: list[Anchor]) -> list[Anchor]:
    """Return the first mention of a peripheral suture in each part of the sentence."""
    kept: dict[tuple[int, int], Anchor] = {}
    for spot in spots:
        kept.setdefault(scene.part(spot.i), spot)
    return list(kept.values())


_NO_ANSWER = word_list("sutures", "no_answer")


def _heading_says_none(scene: Scene, spot: Anchor) -> bool:
    """'Epitendinous: none', 'Peripheral: not done'."""
    told = [k for k in range(spot.j, scene.sentence.j) if scene.told(k)]
    words = [w for w in (scene.page.words[k] for k in told) if w not in _NO_ANSWER and w not in _BOX]
    return words[:1] in (["none"], ["no"], ["not"], ["nil"], ["omitted"], ["absent"], ["never"])


def _heading_says_nothing(scene: Scene, spot: Anchor) -> bool:
    """'Epitendinous: ___ suture ___' was never filled in."""
    if scene.answer(spot.j) == "":
        return True
    return not [w for w in scene.words(spot.j, scene.sentence.j) if w not in _NO_ANSWER] and not scene.sentence.prefix


def _left_out_there(desk: Desk, scene: Scene, spots: list[Anchor]) -> None:
    """'The middle got an epitendinous suture; in the ring it was left out.'"""
    if not spots:
        return
    for cue in within(scene.page.cues, scene.sentence.i, scene.sentence.j):
        phrase = " ".join(scene.page.words[cue.i : cue.j])
        if phrase in ("left out", "omitted", "was omitted", "left off", "not used", "not done"):
            first, _last = scene.part(cue.i)
            digits = [g for g in scene.setting.groups if first <= g.i < cue.i and g.digits]
            if digits and spots[0].i < first and "it" in scene.words(first, cue.i):
                for target in [t for t in desk.repairable(digits[-1].digits) if t.tendon in ("FDP", "FPL")]:
                    desk.tendon(
                        scene, target, "peripheral", "absent", [(cue.i, cue.j)], "peripheral suture said to be left out"
                    )


def _peripheral_negated(scene: Scene, spot: Anchor) -> bool:
    return scene.negated(spot.i, spot.j, 5) or "neither" in scene.words(scene.part(spot.i)[0], spot.i)


def _only_a_word(scene: Scene, spot: Anchor) -> bool:
    """'two extra peripheral bites', 'the epitenon was bruised', 'around it' alone name no peripheral suture."""
    phrase = " ".join(scene.words(spot.i, spot.j))
    near = scene.words(max(scene.sentence.i, spot.i - 4), min(scene.sentence.j, spot.j + 4))
    if "bites" in near and ("extra" in near or "additional" in near or "more" in near):
        return True
    if phrase in _ONLY_A_WORD_WORDS:
        suture = any(m.kind in ("pattern", "material", "stitch") for m in scene.mentions) or bool(_sizes(scene))
        return not (suture or any(w in ("suture", "stitch", "sutured", "stitched", "run", "sewn") for w in near))
    return False


def _lay_pattern(desk: Desk, scene: Scene, found: list[Anchor], peripheral: bool) -> None:
    others = [a for a in found if a.role != "pattern"]
    for mention in scene.of("pattern"):
        if not scene.told(mention.i) or scene.negated(mention.i, mention.j, 3):
            continue
        if not _is_peripheral_pattern(desk, scene, mention, others, peripheral):
            continue
        targets, doubts = suture_owners(desk, scene, mention.i, mention.j)
        for target in targets:
            desk.tendon(
                scene, target, "peripheral", "present", [(mention.i, mention.j)], "peripheral pattern named", *doubts
            )
            desk.tendon(
                scene,
                target,
                "peripheral_pattern",
                mention.value,
                [(mention.i, mention.j)],
                "peripheral pattern named",
                *doubts,
            )
    for mention in scene.of("stitch"):
        told = mention.value == "horizontal mattress" and peripheral and scene.told(mention.i)
        if told and role_of(scene, mention.i, mention.j, others) == PERIPHERAL:
            rule = "peripheral pattern named"
            _lay(desk, scene, mention.i, mention.j, "peripheral_pattern", mention.value, rule)


def _is_peripheral_pattern(desk: Desk, scene: Scene, mention: Mention, others: list[Anchor], peripheral: bool) -> bool:
    if scene.words(mention.i, mention.j) in (["ran"], ["run"]) and not peripheral:
        return False
    role = role_of(scene, mention.i, mention.j, others)
    if role == PERIPHERAL:
        return True
    if role in ("", TENDON):
        if scene.sentence.section == PERIPHERAL:
            return True
        if scene.sentence.section in ("closure", "dressing") or desk.topic not in (CORE, TENDON, PERIPHERAL):
            return False
        strong = mention.value in ("cross-stitch", "running locking", "running", "other", "horizontal mattress")
        return strong and bool(_sizes(scene)) and (_has_core(desk, scene) or role == TENDON)
    if role == CORE and mention.value in ("running", "running locking", "cross-stitch", "other"):
        first, last = scene.part(mention.i)
        return bool([s for s in _sizes(scene) if first <= s[1] < last]) and not any(
            first <= a.i < last and a.role == CORE for a in others
        )
    return False


# --- bites, locks, knots


def _lay_bites(desk: Desk, scene: Scene) -> None:
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
        _lay(desk, scene, q.i, q.j, "lock_mm", _interval(scene, q), "size of each lock")
        if {"lock", "locks"} & set(scene.words(max(scene.sentence.i, q.i - 3), min(scene.sentence.j, q.j + 3))):
            _lay(desk, scene, q.i, q.j, "hold", "locking", "locks are named")
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
    _lay(desk, scene, i, j, "purchase_mm", Interval(low=low, high=high), "length of tendon taken")


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


_STUMPS = word_list("sutures", "stumps")


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


def _lay_knot(desk: Desk, scene: Scene) -> None:
    words = scene.of("knotword")
    for mention in scene.of("knot"):
        own = {"knot", "knots"} & set(scene.words(mention.i, mention.j))
        near = [mention] if own else [w for w in words if abs(w.i - mention.i) <= 9]
        if not near or not scene.told(mention.i) or scene.negated(mention.i, mention.j, 3):
            continue
        if any(m.kind == "role" and m.value == "skin" for m in scene.mentions) and not scene.of("strandword", "stitch"):
            continue
        if any(m.kind in ("button",) for m in scene.mentions) and "button" in scene.words(
            scene.sentence.i, scene.sentence.j
        ):
            continue
        if (
            scene.words(mention.i, mention.j) in (["inside"], ["outside"], ["surface"], ["superficial"])
            and abs(near[0].i - mention.i) > 5
        ):
            continue
        i, j = min(near[0].i, mention.i), max(near[0].j, mention.j)
        _lay(desk, scene, i, j, "knot", mention.value, "place of the knots")
        return


def _remember_topic(desk: Desk, scene: Scene, found: list[Anchor], threads: list[Thread]) -> None:
    """Remember what the surgeon was working on when the sentence ended."""
    if not scene.told(scene.sentence.i):
        return
    for anchor in found:
        if anchor.role == "pattern":
            continue
        if anchor.role == "sheath" and not threads:
            continue
        desk.topic = TENDON if anchor.role in (CORE, PERIPHERAL, TENDON) else anchor.role
    if threads and threads[-1].role in (CORE, PERIPHERAL):
        desk.topic = TENDON
