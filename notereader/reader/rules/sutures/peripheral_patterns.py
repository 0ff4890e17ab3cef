"""The pattern of the peripheral suture: 'running', 'a cross-stitch', 'locked as it goes'."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.page import Mention
from notereader.reader.rules.sutures.roles import CORE, PERIPHERAL, TENDON, Anchor, role_of
from notereader.reader.rules.sutures.suture_owners import lay_suture, suture_owners
from notereader.reader.rules.sutures.thread_roles import drawn_into_bone, has_core
from notereader.reader.rules.sutures.threads import Thread, find_sizes
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_LOCKS = frozenset(["locked", "locking", "interlocked", "interlocking", "lock"])
_SUTURE_OF = frozenset(["suture", "sutures", "stitch", "stitches", "of", "with", "in"])


def lay_pattern(desk: Desk, scene: Scene, found: list[Anchor], named: bool, threads: list[Thread]) -> None:
    """Lay down how the peripheral suture runs; `named`: the sentence names one."""
    others = [a for a in found if a.role != "pattern"]
    for mention in scene.of("pattern"):
        if not scene.told(mention.i) or scene.negated(mention.i, mention.j, 3) or _only_verb(scene, mention):
            continue
        same = _same_thread(scene, mention, threads)
        outer = same is not None or _of_outer_thread(scene, mention, threads)
        if not outer and not _is_peripheral_pattern(desk, scene, mention, others, named):
            continue
        if named or not any(_joined_with(scene, mention, t) for t in threads):
            _lay_pattern_told(desk, scene, mention, same)
    for thread in threads:
        if thread.role == PERIPHERAL and scene.told(thread.i) and _one_by_one(scene, thread):
            lay_suture(desk, scene, thread.i, thread.j, "peripheral_pattern", "interrupted", _RULE)
    for mention in scene.of("stitch"):
        told = mention.value == "horizontal mattress" and named and scene.told(mention.i)
        if told and role_of(scene, mention.i, mention.j, others) == PERIPHERAL:
            lay_suture(desk, scene, mention.i, mention.j, "peripheral_pattern", mention.value, _RULE)


_RULE = "peripheral pattern named"


def _lay_pattern_told(desk: Desk, scene: Scene, mention: Mention, same: tuple[Thread, int] | None) -> None:
    """Lay down a pattern, with 'of the same' the thread it takes up, and the locking where it was locked."""
    value, end = _locked_as_it_goes(scene, mention)
    targets, doubts = suture_owners(desk, scene, mention.i, mention.j)
    locked_only = _locked_only_in(scene, end) if value != mention.value else ()
    for target in targets:
        desk.tendon(scene, target, "peripheral", "present", [(mention.i, mention.j)], _RULE, *doubts)
        own = value if not locked_only or target.digit in locked_only else mention.value
        at = [(mention.i, end if own == value else mention.j)]
        desk.tendon(scene, target, "peripheral_pattern", own, at, _RULE, *doubts)
    if same is not None:
        for target in targets:
            _lay_thread(desk, scene, target, same[0], (mention.i, same[1]))


def _same_thread(scene: Scene, mention: Mention, threads: list[Thread]) -> tuple[Thread, int] | None:
    """'The index got a running 5-0 Prolene, the middle interrupted stitches of the same': the thread told before.

    With it comes the end of the words that take it up.
    """
    behind = scene.words(mention.j, min(mention.j + _SHORTLY, scene.sentence.j))
    outer = [t for t in threads if t.role == PERIPHERAL and t.j <= mention.i]
    k = next((n for n, three in enumerate(zip(behind, behind[1:], behind[2:], strict=False)) if three == _SAME), -1)
    if k < 0 or not outer or {",", ";", "."}.intersection(behind[:k]):
        return None
    end = mention.j + k + len(_SAME)
    own = any(mention.i <= t.i < end for t in threads)  # 'a cross-stitch of 5-0 Prolene of the same make'
    return None if own else (outer[-1], end)


def _lay_thread(desk: Desk, scene: Scene, target: Target, thread: Thread, span: tuple[int, int]) -> None:
    for name, value in (("peripheral_size", thread.size), ("peripheral_material", thread.material)):
        if value:
            desk.tendon(scene, target, name, value, [span], "said by reference to another repair")


_SAME = ("of", "the", "same")
_SHORTLY = 6  # words of 'stitches, made of the same'


def _of_outer_thread(scene: Scene, mention: Mention, threads: list[Thread]) -> bool:
    """'a running 6/0 epitendinous suture', 'ran a 6-0 around it': the pattern stands beside the outer thread."""
    outer = [t for t in threads if t.role == PERIPHERAL and (t.size or t.material)]
    verb = scene.page.words[mention.i] in ("run", "ran")
    if threads and len(outer) == len(threads) and not verb and not scene.of("stitch", "strandword"):
        return True
    ends = ((mention.j, t.i) if t.i >= mention.i else (t.j, mention.i) for t in outer)
    named = {k for m in scene.of("pattern") for k in range(m.i, m.j)}  # 'an overcast (continuous) of PDS 6-0'
    aside = {k for k in named if scene.word_before(k) == "("}
    aside |= {k + n for k in aside for n in (-1, 1)}
    between = ([scene.page.words[k] for k in range(i, j) if k not in aside] for i, j in ends)
    return any(len(words) <= 4 and _NEXT_TO.issuperset(words) and words.count(",") < 2 for words in between)


# Words between a pattern and its thread: 'a 6-0 was run around in a continuous fashion'.
_NEXT_TO = word_list("sutures", "next_to")


def _joined_with(scene: Scene, mention: Mention, thread: Thread) -> bool:
    """'The FDS was repaired with a running suture of 5-0': the one thread that joins it is no peripheral suture too."""
    between = scene.words(mention.j, thread.i)
    return thread.role == CORE and thread.i >= mention.j and len(between) <= 2 and _SUTURE_OF.issuperset(between)


def _locked_as_it_goes(scene: Scene, mention: Mention) -> tuple[str, int]:
    """'a running suture, of the locking sort', 'running nylon, each throw locked': the pattern and its last word."""
    if mention.value != "running":
        return mention.value, mention.j
    for k in range(mention.j, min(mention.j + 9, scene.sentence.j)):
        word = scene.page.words[k]
        if word in (";", ".", "core", "not", "no", "non", "without", "unlocked") or not scene.told(k):
            break
        if any(g.digits and g.i == k for g in scene.setting.groups):
            break  # 'running in the ring finger and interlocking in the long'
        if word in _LOCKS:
            stitch = any(m.kind in ("stitch", "strandword") and 0 <= m.i - k <= 2 for m in scene.mentions)
            core = stitch or scene.next_word(k + 1) in ("core", "loops", "grasp", "plate", "screws", "corners")
            between = any(m.kind in ("stitch", "strandword") and mention.j <= m.i < k for m in scene.mentions)
            return ("running", mention.j) if core or between else ("running locking", k + 1)
    return "running", mention.j


def _one_by_one(scene: Scene, thread: Thread) -> bool:
    """'a few single 6-0 nylon stitches around the edge': stitches set one by one, told apart from their noun."""
    led = scene.words(max(scene.sentence.i, thread.i - 2), thread.i)
    return not _SINGLE.isdisjoint(led) and scene.next_word(thread.j) in ("stitches", "sutures")


_SINGLE = frozenset(["single", "separate", "individual", "simple", "interrupted"])


def _locked_only_in(scene: Scene, end: int) -> tuple[str, ...]:
    """'6-0 running epi, locked in the index only': the fingers for which alone the stitch was locked."""
    group = next((g for g in scene.setting.groups if g.digits and 1 <= g.i - end <= 2), None)
    placed = group is not None and scene.word_before(group.i - (scene.word_before(group.i) == "the")) in ("in", "for")
    return group.digits if group is not None and placed and scene.next_word(group.j) in ("only", "alone") else ()


def _only_verb(scene: Scene, mention: Mention) -> bool:
    """'A cross-stitch was then run round the edge', 'the FPL has run away': no pattern of its own."""
    if scene.page.words[mention.i] not in ("run", "ran") or mention.value != "running":
        return False
    if scene.next_word(mention.j) in ("as", "up", "along"):
        return True  # 'a looped suture, run as a Tsuge', 'its tails run up the tendon'
    first, last = scene.part(mention.i)
    other = any(first <= m.i < last and m.value not in ("running", "other") for m in scene.of("pattern"))
    return other or not (find_sizes(scene) or scene.of("material") or _STITCH.intersection(scene.said))


_STITCH = frozenset(["stitch", "suture", "stitched", "epitenon", "epitendinous", "peripheral"])


def _is_peripheral_pattern(desk: Desk, scene: Scene, mention: Mention, others: list[Anchor], named: bool) -> bool:
    if scene.words(mention.i, mention.j) in (["ran"], ["run"]) and not named:
        return False
    role = role_of(scene, mention.i, mention.j, others)
    if role == PERIPHERAL:
        return True
    if drawn_into_bone(scene, others):
        return False
    if role in ("", TENDON):
        if scene.sentence.section == PERIPHERAL:
            return True
        if scene.sentence.section in ("closure", "dressing") or desk.topic not in (CORE, TENDON, PERIPHERAL):
            return False
        strong = mention.value in ("cross-stitch", "running locking", "running", "other", "horizontal mattress")
        return strong and bool(find_sizes(scene)) and (has_core(desk, scene) or role == TENDON)
    if role == CORE and mention.value in ("running", "running locking", "cross-stitch", "other"):
        first, last = scene.part(mention.i)
        return bool([s for s in find_sizes(scene) if first <= s[1] < last]) and not any(
            first <= a.i < last and a.role == CORE for a in others
        )
    return False
