"""Which suture is core, peripheral or of another structure, where its sentence names no part."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Mention
from notereader.reader.reasons import Reason
from notereader.reader.rules.strangers import has_strange_subject
from notereader.reader.rules.sutures.nail_traction import pulls_on_a_nail
from notereader.reader.rules.sutures.roles import CORE, PERIPHERAL, TENDON, Anchor, placed, role_of
from notereader.reader.rules.sutures.stump_threads import sews_a_stump_over
from notereader.reader.rules.sutures.threads import Thread, find_sizes
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_ROUND = frozenset(["around", "round", "over"])
_OVER_IT = {(a, b) for a in ("over", "around", "round") for b in ("it", "that", "this", "them", "both", "each", "all")}
_OVERSEWN = frozenset(["oversewn", "overrun", "oversewed", "round-and-round"])
_FIXES = frozenset(["sutured", "sewn", "fixed", "secured", "anchored", "stitched", "attached"])
_JOINS = frozenset(["+", "&", "plus", "and", "then"])
_TIES = frozenset(["tied", "sutured", "stitched", "attached", "secured"])
_ROD_ENDS = frozenset(["rod", "its"])
_THICK = frozenset(["0", "1", "2-0", "3-0"])
_MICRO = frozenset(["8-0", "9-0", "10-0", "11-0"])  # for nerves and vessels; no tendon is held by these
_THIN = frozenset(["5-0", "6-0", "7-0"])
_FINE = frozenset(["6-0", "7-0"])
_CORES = frozenset(["2-0", "3-0", "4-0"])
_BESIDE = frozenset(
    [",", "+", "&", "and", "same", "plus", "then", "the", "a", "with", "pattern", "suture", "stitch", "of"]
)
_CLOSING_WORDS = word_list("sutures", "closing_words")
_DISSOLVING = frozenset(["polyglactin", "other"])


def give_roles(desk: Desk, scene: Scene, threads: list[Thread], found: list[Anchor]) -> None:
    """Give each suture its role, by its sentence or by what was worked on before."""
    if not threads:  # as in most sentences
        return
    if pulls_on_a_nail(scene):
        for thread in threads:
            thread.role = "tag"
        return
    found = placed(scene, found, max(t.j for t in threads))
    for thread in threads:
        thread.role = role_of(scene, thread.i, thread.j, found)
        if thread.size in _MICRO and thread.role in (CORE, PERIPHERAL, "", TENDON, "pattern"):
            thread.role = "nerve"
        if _draws_graft(scene, thread):
            thread.role = "tag"
        thread.role = _role_of_label(scene, thread, found) or thread.role
        if thread.role == PERIPHERAL and _for_two_uses(scene, thread, found):
            thread.role = CORE
        if thread.role == CORE and _added_round(scene, thread, found):
            thread.role = PERIPHERAL
        # 'an anchor carrying 3-0 FiberWire'
        carried = thread.role == "bone" and any(0 <= thread.i - m.j <= 8 for m in scene.of("anchor"))
        carried = carried or (thread.role == "bone" and _puts_to_bone(scene))
        if carried or (thread.role in ("bone", "sheath", "other") and _holds_stump(scene, thread)):
            thread.role = CORE
        if thread.role == "pattern" and _others_pattern(scene, thread, threads, found):
            thread.role = CORE
        if thread.role in ("pattern", PERIPHERAL, "bone") and (
            drawn_into_bone(scene, found) or _of_an_anchor(scene, thread)
        ):
            thread.role = CORE
        if thread.role in ("pattern", PERIPHERAL) and _joins_the_tendon(desk, scene, thread, threads, found):
            thread.role = CORE
        if thread.looped and thread.role in ("pattern", PERIPHERAL) and any(a.role == CORE for a in found):
            thread.role = CORE  # 'a looped nylon suture, 4-0, run as a Tsuge': loops make cores
        if thread.role in ("", TENDON, "pattern"):
            thread.role = _by_context(desk, scene, thread, found)
    for thread in [t for t in threads if sews_a_stump_over(scene, t)]:
        thread.role = "other"
    for thread in [t for t in threads if _of_a_weak_stitch(scene, t)]:
        if any(other is not thread and other.role in (PERIPHERAL, "pattern") for other in threads):
            thread.role = CORE
    if len(threads) == 1 and threads[0].size in _THIN and _core_denied(scene):
        threads[0].role = PERIPHERAL
    for before, thread in pairwise(threads):
        if _thin_one_behind(scene, before, thread, found):
            thread.role = PERIPHERAL
            thread.reasons.append(Reason("behind_core"))


def _of_a_weak_stitch(scene: Scene, thread: Thread) -> bool:
    """'A single figure of eight in 5-0, plus a running 6-0': of two threads the one beside a stitch of its own."""
    named = (m for m in scene.of("stitch") if 0 <= thread.i - m.j <= 2 and m.value in _HOLDING)
    return thread.role in (PERIPHERAL, "pattern") and thread.size not in _FINE and any(True for _ in named)


_HOLDING = frozenset(["figure-of-eight", "horizontal mattress", "simple"])


def _for_two_uses(scene: Scene, thread: Thread, found: list[Anchor]) -> bool:
    """'PDS was used only for the FDS and for the circumferential stitch': for a tendon first."""
    named = [
        g for g in scene.setting.groups if g.tendons and g.i >= thread.j and scene.word_before(g.i) in ("for", "the")
    ]
    around = [a for a in found if a.role == PERIPHERAL]
    return any([w for w in scene.words(g.j, a.i) if w != "the"] == ["and", "for"] for g in named for a in around)


def _core_denied(scene: Scene) -> bool:
    """'FDP cut 40 %: 6/0 Prolene tidy, no core': the thin thread went round the cut and held nothing together."""
    words, first = scene.page.words, scene.sentence.i
    cores = [k for k in range(first, scene.sentence.j) if words[k] == "core"]
    before = any(not _DENIED.isdisjoint(words[max(first, k - 2) : k]) for k in cores)
    behind = (next((w for w in scene.words(k + 1, k + 4) if w not in _MARKS), "") for k in cores)
    return before or any(word in _DENIED for word in behind)


_DENIED = frozenset(["no", "without", "not", "none", "nil", "never"])
_MARKS = frozenset([":", "-", "=", "was", "suture"])


def _thin_one_behind(scene: Scene, before: Thread, thread: Thread, found: list[Anchor]) -> bool:
    """'Profundus, four strand, 3-0 Ethibond, 6-0 Prolene': of two threads for one tendon the thin one is no core."""
    if "respectively" in scene.said:
        return False
    thin = thread.size in _FINE or (thread.size in _THIN and before.size in _THICK | {"4-0"})
    if not thin or before.size not in _CORES or before.role != CORE or thread.role != CORE:
        return False
    words = scene.page.words
    join = next((k for k in range(before.j, thread.i) if words[k] in _JOINS or words[k] in (",", "with")), thread.i)
    patterns = {k for m in scene.of("pattern") for k in range(m.i, m.j)}
    between = {words[k] for k in range(join, thread.i) if k not in patterns}
    named = any((g.tendons or g.digits) and before.j <= g.i < thread.j for g in scene.setting.groups)
    own = any(a.role == CORE and join <= a.i <= thread.j + 3 for a in found)
    return not (named or own) and between <= _BESIDE


def _role_of_label(scene: Scene, thread: Thread, found: list[Anchor]) -> str:
    """'Epitendinous, both FDPs: 6-0 Prolene': the label that opens the sentence tells what the thread behind it is."""
    first = next((a for a in found if a.role in (CORE, PERIPHERAL) and a.i - scene.sentence.i <= 4), None)
    if first is None or ":" not in scene.words(first.j, min(first.j + 8, thread.i)) or thread.i < first.j:
        return ""
    if any(a.i >= first.j and a.role not in (TENDON, "pattern", first.role) for a in found):
        return ""
    return first.role if _only_number(scene, first.i) else ""


def _only_number(scene: Scene, k: int) -> bool:
    """Tell whether no more than the number of an item stands before word k: '7. Epitendinous: ...'."""
    return all(w.isdecimal() or w in (".", ")", "-", "*", ":", "(") for w in scene.words(scene.sentence.i, k))


def _joins_the_tendon(desk: Desk, scene: Scene, thread: Thread, threads: list[Thread], found: list[Anchor]) -> bool:
    """'The superficialis was repaired with two simple sutures of 4-0': what alone joins a tendon is its core."""
    turn = _turn_before(scene, thread)
    if any(a.role == PERIPHERAL and a.i >= turn for a in found):
        return False
    deeds = [d for d in scene.of("deed") if d.value == "repaired" and d.j <= thread.i and scene.told(d.i)]
    deeds += [d for d in _closed(scene, turn) if d.j <= thread.i and scene.told(d.i)]
    if deeds and any(deeds[-1].j <= t.i and t.j <= thread.i for t in threads):
        return False  # '... was repaired with 3-0 Ethibond and a running 6-0 Prolene'
    sewn = any("with" in scene.words(d.j, d.j + 2) and thread.i - d.j <= 7 for d in deeds)
    if sewn and _added_behind(scene, deeds[-1].j, thread, found):
        return False
    if not (sewn or _counted_simple(scene, thread)):
        return False
    if not deeds:
        deeds = [Mention("deed", "repaired", scene.sentence.i, scene.sentence.i)]
    if _besides_the_core(scene, deeds[-1].j, thread, found):
        return False
    groups = [g for g in scene.setting.groups if g.tendons and g.j <= thread.i and not g.reference]
    targets = group_targets(scene, groups[-1]) if groups else list(scene.setting.focus)
    return bool(targets) and not any(desk.has_suture(t) for t in targets)


def _added_behind(scene: Scene, k: int, thread: Thread, found: list[Anchor]) -> bool:
    """'A four-strand repair, with running 6-0': behind a comma, what is so fine is added to the core told before."""
    added = scene.words(k, k + 2) == [",", "with"] and thread.size in _FINE
    return added and any(a.role == CORE and a.j <= k for a in found)


def _counted_simple(scene: Scene, thread: Thread) -> bool:
    """'I placed two simple sutures of 5-0 Prolene': so many, counted, are no stitch all the way round."""
    if thread.size in _FINE:
        return False
    own = [m for m in scene.of("stitch") if m.value == "simple" and m.j <= thread.i <= m.j + 2]
    return any(0 < count_of(scene.word_before(m.i)) <= _FEW_SUTURES for m in own)


_FEW_SUTURES = 3


def drawn_into_bone(scene: Scene, found: list[Anchor]) -> bool:
    """'A crisscross of 4-0 wire, its ends drawn through the bone and tied over a button': its core."""
    to_bone = scene.of("button") or any(d.value == "reinserted" and scene.told(d.i) for d in scene.of("deed"))
    named = any(a.role == PERIPHERAL for a in found) or any(m.value != "pull-out" for m in scene.of("stitch"))
    named = named or bool(scene.of("strandword"))
    return bool(to_bone) and not named and len(find_sizes(scene)) == 1 and not _DRAWN.isdisjoint(scene.said)


def _of_an_anchor(scene: Scene, thread: Thread) -> bool:
    """'Mini anchor in P3, its 3-0 tails run up the tendon': the thread of an anchor, led along and not around."""
    behind = scene.words(thread.j, min(thread.j + 5, scene.sentence.j))
    return bool(scene.of("anchor")) and not {"up", "along"}.isdisjoint(behind) and thread.size not in _FINE


_DRAWN = frozenset(["drawn", "led", "pulled", "brought", "passed", "taken", "tied"])


def _turn_before(scene: Scene, thread: Thread) -> int:
    """'No epitendinous, whereas the small FDS was closed with ...': where the clause on this thread begins."""
    words = scene.page.words
    turns = [k for k in range(scene.sentence.i, thread.i) if words[k] in ("whereas", "while", "but", ";")]
    named = bool(turns) and any(g.tendons and turns[-1] < g.i < thread.i for g in scene.setting.groups)
    return turns[-1] if named else scene.sentence.i


def _closed(scene: Scene, turn: int) -> list[Mention]:
    """'The half cut FDS was closed with three simple sutures': a word of repair where a tendon is what was closed."""
    words = scene.page.words
    tendon = any(g.tendons and not g.reference for g in scene.setting.groups)
    if not tendon or any(m.i >= turn for m in scene.of("pulley", "role")):
        return []
    spots = [k for k in range(turn + 1, scene.sentence.j) if words[k] == "closed"]
    return [Mention("deed", "repaired", k, k + 1) for k in spots if words[k - 1] in _WAS]  # no 'surface closed'


_WAS = frozenset(["was", "were", "been", "is", "are"])


def _besides_the_core(scene: Scene, i: int, thread: Thread, found: list[Anchor]) -> bool:
    """'... was repaired with a two-strand Kessler and a running 6-0 Prolene': a thin thread, joined on to a core."""
    cores = [a for a in found if a.role == CORE and i <= a.i and a.j <= thread.i]
    patterns = [a for a in found if a.role == "pattern" and cores and cores[-1].j <= a.i <= thread.j + 1]
    if not patterns or thread.size not in _THIN:
        return False
    between = scene.words(cores[-1].j, min(thread.i, patterns[0].i))
    return not (_JOINS | {","}).isdisjoint(between)


def _others_pattern(scene: Scene, thread: Thread, threads: list[Thread], found: list[Anchor]) -> bool:
    """'Lim-Tsai, 4-0 looped Supramid + 5-0 Prolene running': the pattern is of the thread beside it only."""
    after = next((t for t in threads if t.i >= thread.j), None)
    if after is None or after.size not in _THIN:
        return False
    patterns = [a.i for a in found if a.role == "pattern" and a.i >= thread.j]
    core = any(a.role == CORE and a.j <= thread.i for a in found)
    if core and patterns and scene.next_word(thread.j) in _JOINS and thread.j < patterns[0] < after.i:
        return True  # 'Lim-Tsai, looped 4-0 Supramid + running 6-0 nylon'
    return core and bool(patterns) and patterns[0] >= after.j and scene.word_before(after.i) in _JOINS


def _draws_graft(scene: Scene, thread: Thread) -> bool:
    """'The graft was tied to the rod with a 3-0 silk and the rod drawn out': a thread that only pulls it through."""
    before = scene.words(scene.sentence.i, thread.i)
    tied = next((k for k, word in enumerate(before) if word in _TIES and "to" in before[k : k + 2]), len(before))
    return "rod" in before and "graft" in before[:tied] and not _ROD_ENDS.isdisjoint(before[tied : tied + 6])


def _added_round(scene: Scene, thread: Thread, found: list[Anchor]) -> bool:
    """'4-0 Prolene, Kessler, 2 strands + 6-0 running': a thin running suture joined on to the core by a sign."""
    article = scene.word_before(thread.i) in ("a", "an")
    before = scene.word_before(thread.i - article)
    if thread.size not in _THIN or before not in ("+", "&", "plus", "and", "then"):
        return False
    if before in ("and", "then"):  # 'M-Tang with 4-0 looped nylon and 5-0 Prolene running locking'
        core = any(a.role == CORE and a.j <= thread.i for a in found)
        return core and any(a.role == "pattern" and thread.i < a.i <= thread.j + 2 for a in found)
    last = scene.next_word(thread.j) in ("", ".", ";", ")", "(", ",")
    return last or any(a.role == "pattern" and thread.i <= a.i <= thread.j + 1 for a in found)


def _leads_round(scene: Scene, thread: Thread) -> bool:
    """Tell whether a thin suture is led up to as what goes over the core: 'Over it 6/0', 'oversewn with 6-0'."""
    if thread.size not in _THIN or scene.of("pulley", "role", "sided", "structure"):
        return False
    before = scene.words(scene.sentence.i, thread.i)
    oversewn = (
        not _OVERSEWN.isdisjoint(before) and "stump" not in before
    )  # 'tied down to bone. Stump oversewn with 5-0'
    return oversewn or any(tuple(before[k : k + 2]) in _OVER_IT for k in range(len(before)))


def _puts_to_bone(scene: Scene) -> bool:
    """'A 3-0 Prolene suture was passed through drill holes in the distal phalanx': no plate, no ligament, a tendon."""
    deeds = [d for d in scene.of("deed") if d.value == "reinserted" and scene.told(d.i)]
    holes = any("holes" in scene.words(d.i, d.j) for d in deeds)
    tied = {"drill", "through", "tied"} <= scene.said  # '3-0 through two drill holes, tied on the dorsum'
    first = deeds[0].i if deeds else scene.sentence.i
    return (holes or tied) and not scene.of("structure") and not has_strange_subject(scene, first)


def _holds_stump(scene: Scene, thread: Thread) -> bool:
    """'The stump was tenodesed to the phalanx through drill holes, 2-0': what puts a tendon to bone is its core."""
    words = scene.words(scene.sentence.i, thread.i)
    tendon = any(g.tendons and g.j <= thread.i for g in scene.setting.groups) or "stump" in words
    fixed = any(m.value in ("tenodesed", "reinserted") and m.j <= thread.i for m in scene.of("deed"))
    return tendon and (fixed or ("stump" in words and not _FIXES.isdisjoint(words)))


def _by_context(desk: Desk, scene: Scene, thread: Thread, found: list[Anchor]) -> str:
    """Decide a suture whose sentence names no part: by its section, its pattern, and what was worked on before."""
    section = scene.sentence.section
    if section in ("closure", "dressing") or _is_closing_line(scene, thread) or _dressed_next(desk, scene):
        return "skin"
    pattern = any(a.role == "pattern" and scene.part(a.i) == scene.part(thread.i) for a in found)
    around = any(w in _ROUND for w in scene.words(thread.i, min(thread.j + 6, scene.sentence.j)))
    if section == CORE and not scene.sentence.label and thread.size not in _THICK:
        # 'Core: Strickland, 4-0, four strands. Over it 6-0 Prolene, criss-cross.': the label is of the first sentence.
        outside = thread.role == "pattern" or pattern or around or _leads_round(scene, thread)
        return PERIPHERAL if outside else CORE
    if section == PERIPHERAL and _sews_another(scene, thread):
        return CORE
    if section in (CORE, PERIPHERAL):
        return section
    if _leads_round(scene, thread) and has_core(desk, scene):
        return PERIPHERAL
    if thread.role == "pattern" and has_core(desk, scene):
        return CORE if thread.size in _THICK and scene.of("stitch", "strandword") else PERIPHERAL
    if (thread.role == TENDON or thread.size in _THIN) and _outside_follows(scene, thread, found):
        return PERIPHERAL
    if _of_the_peripheral_before(desk, scene, thread):
        return PERIPHERAL
    if thread.role == TENDON:
        return PERIPHERAL if pattern and (around or has_core(desk, scene)) and thread.size in _THIN else CORE
    if desk.topic in (CORE, PERIPHERAL, TENDON):
        if pattern or around:
            return PERIPHERAL
        closed = any(w in ("closed", "closure", "closing") for w in scene.words(scene.sentence.i, scene.sentence.j))
        return "skin" if closed else desk.topic if desk.topic != TENDON else CORE
    return desk.topic


def _of_the_peripheral_before(desk: Desk, scene: Scene, thread: Thread) -> bool:
    """'The epitendinous snapped. It was replaced by a new one of 5-0': one more of what the sentence before named."""
    before = desk.scene_before(scene)
    if before is None or before.sentence.block != scene.sentence.block or scene.setting.groups:
        return False
    named = before.of("role", "stitch", "strandword", "pattern")
    last = named[-1] if named else None
    if last is None or not (last.kind == "pattern" or (last.kind == "role" and last.value == PERIPHERAL)):
        return False
    if any(m.kind == "role" and m.value not in (CORE, PERIPHERAL) for m in named):
        return False  # 'The skin was closed with a running 5-0. One more of 4-0 ...'
    lead = scene.words(max(scene.sentence.i, thread.i - _ONE_OF), thread.i)
    it = scene.page.words[scene.sentence.i] == "it" and not scene.of("deed")
    return "one" in lead or it


_ONE_OF = 4  # words: 'one of' and a material before its size


def _sews_another(scene: Scene, thread: Thread) -> bool:
    """'Epitendinous: none. The FDS was repaired with 4-0.': behind the label a sentence on how a tendon was joined."""
    mended = any(d.value == "repaired" and d.j <= thread.i and scene.told(d.i) for d in scene.of("deed"))
    named = any(g.tendons and g.j <= thread.i and not g.reference for g in scene.setting.groups)
    return mended and named and not scene.sentence.label and not scene.of("role", "pattern")


def _is_closing_line(scene: Scene, thread: Thread) -> bool:
    """'Wash. 4/0 Vicryl rapide. Gauze.': a thread among words of closing, or a dissolving one without a tendon."""
    if any(g.tendons or g.generic == "one" for g in scene.setting.groups):
        return False
    words = set(scene.words(scene.sentence.i, scene.sentence.j))
    if words & _CLOSING_WORDS and not scene.of("strandword", "stitch", "pattern"):
        return True
    return thread.material in _DISSOLVING and not scene.of("strandword", "stitch") and "core" not in words


def _dressed_next(desk: Desk, scene: Scene) -> bool:
    """'4/0 Monocryl + 4/0 Ethilon. Jelonet, gauze, wool.': bare threads before the dressing closed the skin."""
    after = desk.scene_after(scene)
    bare = scene.kinds <= {"material", "quantifier"} and not any(g.tendons or g.digits for g in scene.setting.groups)
    return bare and after is not None and not _CLOSING_WORDS.isdisjoint(after.said)


def _outside_follows(scene: Scene, thread: Thread, found: list[Anchor]) -> bool:
    """'Both received 6-0 polypropylene, cross-stitch, around the suture line.'"""
    later = [t for t in find_sizes(scene) if t[1] >= thread.j]
    reach = later[0][1] if later else scene.sentence.j
    outside = [a for a in found if a.role == PERIPHERAL and thread.j <= a.i < reach]
    if thread.size in _CORES:  # 'Both repaired with 4-0 Prolene, epi to thumb only': two sutures
        outside = [a for a in outside if scene.part(a.i) == scene.part(thread.i)]
    return any(not scene.negated(a.i, a.j) for a in outside) and not any(
        a.role == CORE and thread.i - 6 <= a.i < reach for a in found
    )


def has_core(desk: Desk, scene: Scene) -> bool:
    """Tell whether a core suture was spoken of before in this sentence or for the tendons in focus."""
    if any(m.kind in ("stitch", "strandword") for m in scene.mentions):
        return True
    focus = {(t.digit, t.tendon) for t in scene.setting.focus}
    return any(f.entry[:2] in focus for f in desk.laid("strands", "stitch", "size"))
