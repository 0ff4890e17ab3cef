"""Core and peripheral sutures of a sentence: every rule of them, in order, and sizes and materials."""

from itertools import pairwise

from notereader.reader.desk import Desk, is_correction
from notereader.reader.drafting.choosing import FINE
from notereader.reader.groups import Target
from notereader.reader.page import Break, Mention, within
from notereader.reader.reasons import Reason
from notereader.reader.rules.carried import carried
from notereader.reader.rules.deeds.grafts import of_the_far_end
from notereader.reader.rules.sutures.bites import bites
from notereader.reader.rules.sutures.exceptions import taken_from_all
from notereader.reader.rules.sutures.guesses import is_guess
from notereader.reader.rules.sutures.hold import hold
from notereader.reader.rules.sutures.knots import knot
from notereader.reader.rules.sutures.only_this_one import taken_from_others
from notereader.reader.rules.sutures.peripheral import one_lost, peripheral
from notereader.reader.rules.sutures.replaced_cores import drop_replaced, note_replaced
from notereader.reader.rules.sutures.roles import CORE, PERIPHERAL, TENDON, Anchor, anchors
from notereader.reader.rules.sutures.short_counts import short_counts
from notereader.reader.rules.sutures.stitches import stitches
from notereader.reader.rules.sutures.strands import strands
from notereader.reader.rules.sutures.suture_owners import respective, respective_part, suture_owners
from notereader.reader.rules.sutures.thread_roles import give_roles
from notereader.reader.rules.sutures.threads import Thread, find_threads, is_old, looped_threads
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.sutures import sizes
from notereader.vocabulary.wordlists import word_list

_REDONE: dict[str, list[str]] = {}  # phrases by their longest word: most sentences hold none of these words
for _phrase in sorted(word_list("sutures", "redone")):
    _REDONE.setdefault(max(_phrase.split(), key=len), []).append(_phrase)
_EXTRA = frozenset(["another", "extra", "further", "additional", "more"])
_SUTURES_WORDS = word_list("sutures", "sutures_words")


def sutures(desk: Desk, scene: Scene) -> None:
    """Find every core and peripheral suture of a sentence and give it to its tendons."""
    section = scene.sentence.section
    if section in _SUTURES_WORDS or scene.page.words[scene.sentence.j - 1] == ">":
        return  # 'Core technique: Kessler / cruciate ->' was never answered
    _turn_to_the_repair(desk, scene)
    _note_redone(desk, scene)
    note_replaced(desk, scene)
    taken_from_all(desk, scene)
    taken_from_others(desk, scene)
    found = anchors(scene)
    threads = find_threads(scene)
    give_roles(desk, scene, threads, found)
    for thread in threads:
        if scene.told(thread.i):
            _lay_thread(desk, scene, thread, _peers(scene, threads, thread))
    _lay_loops(desk, scene, threads, found)
    counted = strands(desk, scene)
    stitches(desk, scene, found, threads)
    short_counts(desk, scene, counted)
    hold(desk, scene, found)
    peripheral(desk, scene, found, threads)
    one_lost(desk, scene)
    bites(desk, scene)
    knot(desk, scene)
    if desk.taken_out:
        drop_replaced(desk)
    _remember_topic(desk, scene, found, threads)


def _turn_to_the_repair(desk: Desk, scene: Scene) -> None:
    """'Skin 4-0 nylon. ... Addendum: the suture was 4-0 Supramid': of the tendon, whatever was sewn last above it.

    An addendum that names the skin, a nerve or a pulley says so itself.
    """
    if desk.topic not in _SEWN_AFTER or not scene.page.in_addendum(scene.sentence) or not desk.sewn():
        return
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if any(a == "the" and b in _THREAD_NOUNS for a, b in pairwise(words)):
        before = desk.scene_before(scene)
        if before is not None and anchors(before) and before.sentence.section == scene.sentence.section:
            return  # 'Addendum: the skin was closed again. The suture was 4-0 nylon.'
        desk.topic = TENDON


_SEWN_AFTER = frozenset(["skin"])
_THREAD_NOUNS = frozenset(["suture", "sutures", "thread", "stitch"])


def _note_redone(desk: Desk, scene: Scene) -> None:
    """'Core taken out completely', 'second attempt: ...': what is told of the core from here on replaces the rest."""
    likely = [phrase for word in _REDONE.keys() & scene.said for phrase in _REDONE[word]]
    if not likely or not scene.told(scene.sentence.i) or scene.header:
        return
    text = f" {' '.join(scene.words(scene.sentence.i, scene.sentence.j))} "
    if not any(f" {phrase} " in text for phrase in likely):
        return
    if any(w in text for w in (" old ", " nerve ", " skin ", " pulley ", " graft ", " stay ")):
        return
    named = [t for g in scene.setting.groups if g.tendons and not g.reference for t in group_targets(scene, g)]
    desk.redone.update(named or carried(desk, scene)[0])


def _peers(scene: Scene, threads: list[Thread], thread: Thread) -> list[int]:
    return [t.i for t in threads if t.role == thread.role and t.size]


def _lay_thread(desk: Desk, scene: Scene, thread: Thread, peers: list[int]) -> None:
    prefix = {CORE: "", PERIPHERAL: "peripheral_"}.get(thread.role)
    if thread.role == CORE and (of_the_far_end(desk, scene) or _too_fine(scene, thread)):
        return
    if prefix is None or is_old(scene, thread) or (scene.negated(thread.i, thread.i, 3) and not thread.retold):
        return
    every, doubts = suture_owners(desk, scene, thread.i, thread.j)
    doubts = [*doubts, *([Reason("note_unsure")] if is_guess(scene, thread.i) else [])]
    targets = respective(scene, thread.i, peers, every)
    targets = [
        t for t in targets if not (_second_thread(desk, scene, thread, t) or _only_supports(desk, scene, thread, t))
    ]
    materials = within(scene.page.mentions, *respective_part(scene, thread.i))
    if thread.material and len(targets) < len(every) and sum(m.kind == "material" for m in materials) == 1:
        for target in [t for t in every if t not in targets]:  # '3-0 and 4-0 Ethibond respectively'
            at, rule = [thread.material_at], f"material of the {thread.role} suture"
            desk.tendon(scene, target, f"{prefix}material", thread.material, at, rule, *doubts, *thread.reasons)
    for target in targets:
        if thread.role == PERIPHERAL:
            at, rule = [(thread.i, thread.j)], "peripheral suture named"
            desk.tendon(scene, target, "peripheral", "present", at, rule, *doubts, *thread.reasons)
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


def _too_fine(scene: Scene, thread: Thread) -> bool:
    """'The running 6-0 was removed': a thread that fine is the core's only where the words beside it name the core.

    Common practice, no source: cores are of 2-0 to 5-0, a child's now and then of 6-0.
    """
    if thread.size not in FINE:
        return False
    first, last = scene.part(thread.i)
    named = any(first <= m.i < last for m in scene.of("stitch", "strandword"))
    return not named and not any(m.value == CORE and first <= m.i < last for m in scene.of("role"))


def _second_thread(desk: Desk, scene: Scene, thread: Thread, target: Target) -> bool:
    """'5-0 Ethilon.' in a sentence that names neither a tendon nor a core, where the core's size was told before.

    It is the skin's, or a stitch put in besides; the core has one size, unless the sentence takes the other back.
    """
    named = any((g.tendons or g.generic or g.digits) and g.i < g.j for g in scene.setting.groups)
    core = scene.of("stitch", "strandword") or any(m.value == CORE for m in scene.of("role"))
    told = [f for f in desk.told_of("repairs", target) if f.field == "size" and not f.header]
    more = {"stitches", "bites", "throws", "loops"} & set(scene.words(thread.j, thread.j + 2))
    if thread.role == CORE and scene.word_before(thread.i) in _EXTRA and more and not named:
        return True  # 'two more 6-0 stitches there'
    if thread.role == CORE and thread.size and scene.word_before(thread.i) in _EXTRA and told:
        return any(f.value != thread.size for f in told)  # 'gap 2 mm, extra 4-0 figure-of-eight'
    if thread.role != CORE or not thread.size or named or core or scene.sentence.prefix or is_correction(scene):
        return False
    if target in desk.redone or scene.sentence.section == CORE:
        return False
    return any(f.value != thread.size and f.order < scene.sentence.i for f in told)


def _only_supports(desk: Desk, scene: Scene, thread: Thread, target: Target) -> bool:
    """'Two 5-0 stitches from tendon to volar plate' behind a pull-out of 3-0: a thinner thread only supports it."""
    told = [f for f in desk.told_of("repairs", target) if f.order < thread.i and not f.header]
    fixed = any(f.field == "stitch" and f.value in ("pull-out", "anchor") for f in told)
    if thread.role != CORE or not fixed or target in desk.redone or scene.of("anchor", "strandword"):
        return False
    if is_correction(scene) or any(m.value == CORE and m.j <= thread.i for m in scene.of("role")):
        return False  # 'the core stitch was 3-0 Prolene, not 2-0'
    first, last = scene.part(thread.i)
    if any(first <= m.i < last for m in scene.of("button")) or not thread.size:
        return False
    gauges = list(sizes())
    return any(f.field == "size" and gauges.index(thread.size) < gauges.index(str(f.value)) for f in told)


def _lay_loops(desk: Desk, scene: Scene, threads: list[Thread], found: list[Anchor]) -> None:
    """'M-Tang with a looped suture', 'the core was of the loop variety': a loop told without size or material."""
    for mention in looped_threads(scene):
        beside = any(t.i - 4 <= mention.i < t.j + 3 for t in threads)
        answer = _looped_or_not(scene, mention)
        core = any(a.role == CORE for a in found) or "suture" in scene.words(mention.i, mention.j) or bool(answer)
        if (beside and not answer) or not core or not scene.told(mention.i):
            continue
        if not answer and scene.answer(mention.j) == "":
            continue
        looped = answer == "yes" or (mention.value == "yes" and not scene.negated(mention.i, mention.j, 2))
        looped = looped and answer != "no"
        for target in suture_owners(desk, scene, mention.i, mention.j)[0]:
            desk.tendon(scene, target, "looped", looped, [(mention.i, mention.j)], "looped suture")


def _looped_or_not(scene: Scene, mention: Mention) -> str:
    """'Looped: no', 'Looped   [ ] yes [x] no': the answer to a label, or ''."""
    opens = mention.i == scene.sentence.i or scene.page.breaks[mention.i] >= Break.COLUMN
    if not opens or mention.j - mention.i > 1:
        return ""
    behind = [k for k in range(mention.j, min(mention.j + _LONGEST_ANSWER, scene.sentence.j)) if scene.told(k)]
    words = [w for w in (scene.page.words[k] for k in behind) if w[0].isalpha() and w != "x"]
    return _LOOPED.get(words[0], "") if words else ""


_LONGEST_ANSWER = 9  # words, boxes and their marks counted
_LOOPED = {"yes": "yes", "y": "yes", "no": "no", "n": "no"}


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
    tenodesed = any(d.value == "tenodesed" and scene.told(d.i) for d in scene.of("deed"))
    if tenodesed or (threads and threads[-1].role in (CORE, PERIPHERAL)):
        desk.topic = TENDON
