"""What a suture belongs to: core, peripheral, skin, sheath, nerve, vessel, pulley, bone, extensor, tag or drain.

Sizes and materials stand beside words that say their part: 'running 6-0 nylon epitendinous stitch', 'skin 5/0',
'core of 5-0'. The noun right after counts most, then what stands right before, then the nearest in the same part of
the sentence, then what the sentence spoke of before.
"""

import re
from dataclasses import dataclass
from itertools import pairwise

from notereader.reader.groups import Group
from notereader.reader.page import Mention
from notereader.reader.rules.strangers import strange_subject
from notereader.reader.rules.sutures.things_closed import patterns_of_things
from notereader.reader.scene import Scene, is_landmark
from notereader.vocabulary.wordlists import word_list

CORE, PERIPHERAL, TENDON = "core", "peripheral", "tendon"

_STRONG_SKIN = word_list("roles", "strong_skin")
_CLOSING = word_list("roles", "closing")
_HEAD_GLUE = word_list("roles", "head_glue")
_LEAD_GLUE = word_list("roles", "lead_glue")

_KIND_ROLES = {
    "structure": "other",
    "sided": "nerve",
    "bundle": "nerve",
    "anynerve": "nerve",
    "anyartery": "vessel",
    "fracture": "bone",
    "anchor": CORE,
    "button": CORE,
}
_KINDS = ("role", "stitch", "strandword", "pattern", "pulley", "pulleys", *_KIND_ROLES)  # that may be an anchor
_ADDING = word_list("roles", "adding")


@dataclass(slots=True)
class Anchor:
    """A word that tells what sutures near it are for."""

    i: int
    j: int
    role: str
    strong: bool = True


_TIMED = frozenset(["after", "before", "once", "until", "while"])


def anchors(scene: Scene) -> list[Anchor]:
    """Return the words of a sentence that tell what its sutures are for, in order."""
    found: list[Anchor] = []
    closing = not _CLOSING.isdisjoint(scene.said)
    for m in scene.of(*_KINDS):
        anchor = None if _is_no_epitendinous(scene, m) else _anchor(scene, m, closing)
        if anchor is not None:
            found.append(anchor)
    for group in scene.setting.groups:
        timed = scene.words(max(scene.sentence.i, group.i - 2), group.i)
        over = "over" in timed and any(a.role == "pulley" and a.i < group.i for a in found)
        over = over or any(m.value == "sheath" and m.i <= group.i < m.j for m in scene.of("role"))  # 'tendon sheath'
        if (group.tendons or group.generic) and not over and _TIMED.isdisjoint(timed):
            # 'around the profundus, 6-0 running', '6-0 Prolene (FDP rim)'
            led = not {"around", "round"}.isdisjoint(timed) or scene.next_word(group.j) == "rim"
            around = bool(group.tendons) and led and _sews(scene) and not _of_another_thing(scene, found, group)
            found.append(Anchor(group.i, group.j, PERIPHERAL if around else TENDON, strong=around))
    found += _of_strangers(scene)
    found.sort(key=lambda a: a.i)
    return _of_the_thing_sewn(scene, _of_things_closed(scene, found))


def _of_things_closed(scene: Scene, found: list[Anchor]) -> list[Anchor]:
    """'..., and the sheath was closed with a running 6-0': the pattern is of the sheath."""
    if "pattern" not in scene.kinds:
        return found
    skin = [(m.i, m.j, "skin") for m in scene.of("role") if m.value == "skin"]
    whose = patterns_of_things(scene, [*((a.i, a.j, a.role) for a in found), *skin])
    return [Anchor(a.i, a.j, whose[a.i]) if a.role == "pattern" and a.i in whose else a for a in found]


def _of_the_thing_sewn(scene: Scene, found: list[Anchor]) -> list[Anchor]:
    """'Volar plate avulsed, fixed back with an anchor, two-strand, 2-0 FiberWire': all of it holds the plate.

    So do all threads of a statement that opens on a structure or pulley, tells it sewn and names no tendon and no part
    of a tendon's repair.
    """
    if not any(a.role in THINGS for a in found):
        return found
    found = _of_labelled_extensor(scene, found)
    if MENDED.isdisjoint(scene.said):
        return found
    words, kept = scene.page.words, list(found)
    starts = [scene.sentence.i, *(k + 1 for k in range(scene.sentence.i, scene.sentence.j) if words[k] == ";")]
    for first, last in pairwise([*starts, scene.sentence.j + 1]):
        own = [a for a in kept if first <= a.i < last]
        if not own or own[0].role not in THINGS or own[0].i - first > _OPENING or _names_a_repair(scene, own):
            continue
        mended = next((k for k in range(own[0].j, min(last, scene.sentence.j)) if words[k] in MENDED), last)
        timed = words[first] in _TIMED  # 'After the vein was closed with 9-0, a six-strand core was placed'
        end = next((k for k in range(mended, scene.sentence.j) if words[k] == ","), last) if timed else last
        moved = [a for a in own if mended < a.i < end]
        kept = [Anchor(a.i, a.j, own[0].role) if a in moved else a for a in kept]
    return kept


def _of_labelled_extensor(scene: Scene, found: list[Anchor]) -> list[Anchor]:
    """'Extensor over the PIP joint: four-strand core with running 5-0 edge stitch': all of it is of the extensor."""
    named = next((m for m in scene.of("structure") if m.value == "extensor tendon"), None)
    if named is None or named.i - scene.sentence.i > _OPENING or any(a.role == TENDON for a in found):
        return found
    label = range(named.j, min(named.j + _LONGEST_LABEL, scene.sentence.j))
    colon = next((k for k in label if scene.page.words[k] == ":"), 0)
    intact = any(m.value == "intact" and m.i > colon for m in scene.of("extent"))
    if not colon or intact:
        return found
    return [Anchor(a.i, a.j, "other") if a.i > colon else a for a in found]


_LONGEST_LABEL = 8  # words: 'over the dorsum of the PIP joint'


def _names_a_repair(scene: Scene, own: list[Anchor]) -> bool:
    """Tell whether a statement names a tendon, or the core or peripheral suture of one by its name."""
    parts = {m.i for m in scene.of("role") if m.value in (CORE, PERIPHERAL)}
    return any(a.role == TENDON or a.i in parts for a in own)


THINGS = frozenset(["other", "pulley", "nerve", "vessel", "skin"])
MENDED = word_list("roles", "mended")
_OPENING = 4  # words: 'the torn radial collateral ligament'


def of_thing_sewn(scene: Scene, i: int) -> bool:
    """'A2 was sutured back with four strands of 5-0': tell whether the strands at word i hold no tendon."""
    if scene.kinds.isdisjoint(_NAMING_THINGS) and not any(m.value in THINGS for m in scene.of("role")):
        return False
    moved = {a.i for a in anchors(scene) if a.role in THINGS}
    return any(m.i in moved and i <= m.i <= i + _COUNTED for m in scene.of("strandword"))


_COUNTED = 2  # words from 'four' to 'strands': 'four - strand'
_NAMING_THINGS = ("pulley", "pulleys", "structure", "sided", "anynerve", "anyartery")


def _before_dressing(scene: Scene) -> bool:
    """'Suture 5-0 nylon. Vaseline gauze, dorsal splint.': the skin's, told right before the dressing."""
    first, last = scene.sentence.i, scene.sentence.j
    bare = scene.page.words[first] in ("suture", "sutures", "stitches") and last - first <= _BARE
    return bare and not _DRESSING.isdisjoint(scene.page.words[last : last + _BARE])


_BARE = 6  # words
_DRESSING = frozenset(
    ["gauze", "dressing", "dressings", "jelonet", "bactigras", "adaptic", "xeroform", "bandage", "wool"]
)


def _of_strangers(scene: Scene) -> list[Anchor]:
    """'The flap was inset with 5-0 nylon', 'Closed with 4-0 Ethilon': threads that hold no tendon."""
    if scene.words(scene.sentence.i, scene.sentence.i + 2) == ["closed", "with"] or _before_dressing(scene):
        return [Anchor(scene.sentence.i, scene.sentence.i + 1, "skin")]
    threads = scene.of("material", "stitch")
    nouns = {strange_subject(scene, m.i) for m in threads} - {-1} | _things_sewn(scene)
    return [Anchor(k, k + 1, "other") for k in sorted(nouns)]


def _things_sewn(scene: Scene) -> set[int]:
    """'Running 5-0 to the fascia', '..., the flap sewn with 5-0': a thing sewn, and not only where one worked."""
    if _SOFT.isdisjoint(scene.said):
        return set()
    words = scene.page.words
    spots = [k for k in range(scene.sentence.i, scene.sentence.j) if words[k] in _SOFT]
    led = {k for k in spots if scene.words(k - 2, k) in (["to", "the"], ["for", "the"]) or words[k - 1] == "to"}
    led |= {
        k for k in spots if words[k - 1] in ("the", "a") and words[k - 2] in MENDED
    }  # 'a running 5-0 closed the flap'
    behind = ((k, scene.words(k + 1, min(k + 4, scene.sentence.j))) for k in spots)
    return led | {k for k, after in behind if not _SEWN.isdisjoint(after) and "down" not in after}


_SOFT = word_list("roles", "soft_things")
_SEWN = MENDED - {"tacked"}  # 'the profundus was sewn and its flap tacked down with a running 6-0' is of the tendon


def _sews(scene: Scene) -> bool:
    """Tell whether a thread or a stitch is told of at all: 'Scarring around the FDP was cleared' is no suture."""
    told = scene.kinds & {"material", "pattern", "stitch"} or not _SEWING.isdisjoint(scene.said)
    return bool(told) or any(_SIZE.fullmatch(w) for w in scene.said)


def _of_another_thing(scene: Scene, found: list[Anchor], group: Group) -> bool:
    """'The sheath was closed around the FDP with 6-0', 'a tag was passed round the FDP': no suture of the tendon."""
    first = scene.part(group.i)[0]
    other = any(first <= a.i < group.i and a.role not in _OF_TENDON for a in found)
    return other or not _WRAPS.isdisjoint(scene.words(first, group.i))


_OF_TENDON = (CORE, PERIPHERAL, TENDON, "pattern")
_WRAPS = frozenset(["fat", "flap", "graft", "fascia", "vein", "loop", "loops", "sling", "tape", "drain", "sheath"])
_SEWING = frozenset(
    ["suture", "sutures", "stitch", "stitches", "running", "continuous", "nothing", "none", "no", "ran"]
)
_SIZE = re.compile(r"[0-9]{1,2}[-/]0")


def _is_no_epitendinous(scene: Scene, m: Mention) -> bool:
    """'After 30 minutes for the epi to work', 'epi-perineural suture': injected, or of a nerve."""
    if scene.words(m.i, m.j) != ["epi"]:
        return False
    if any(word.startswith(("perineur", "neur")) for word in scene.words(m.j, m.j + 2)):
        return True  # 'epi-perineural suture 9-0'
    works = scene.words(m.j, m.j + 2) in (["to", "work"], ["to", "act"], ["to", "take"])
    return works or not _INJECTED.isdisjoint(scene.said)


_INJECTED = frozenset(["lidocaine", "lignocaine", "xylocaine", "bupivacaine", "marcaine", "infiltrated", "injected"])


def placed(scene: Scene, found: list[Anchor], k: int) -> list[Anchor]:
    """Leave out what is told behind word k as not placed: 'one mattress of 4-0 Prolene and no epitendinous suture'."""
    denied = [a for a in found if a.role == PERIPHERAL and a.i >= k]
    denied = [
        a for a in denied if scene.negated(a.i, a.j, 3) or scene.word_before(a.i) == "nothing" or _given_up(scene, a)
    ]
    return [a for a in found if a not in denied]


def _given_up(scene: Scene, a: Anchor) -> bool:
    """'4-0 Prolene, fine adaptation here was abandoned'."""
    return not _GIVEN_UP.isdisjoint(scene.words(a.j, min(a.j + _SHORTLY, scene.sentence.j)))


_GIVEN_UP = frozenset(["abandoned", "omitted", "skipped", "forgone", "waived"])
_SHORTLY = 4  # words


def _anchor(scene: Scene, m: Mention, closing: bool) -> Anchor | None:
    if m.kind == "role":
        phrase = " ".join(scene.words(m.i, m.j))
        own = phrase in _STRONG_SKIN or phrase.split(" ")[0] in ("skin", "ed", "old", "stitches", "sutures")
        if m.value == "skin" and (own or _sewn_shut(scene, m)):
            return Anchor(m.i, m.j, m.value)
        if m.value == "skin" and not closing:
            return None
        if m.value == "skin" and is_place(scene, m):
            return None
        return Anchor(m.i, m.j, m.value)
    if m.kind == "stitch" and m.value not in ("horizontal mattress", "figure-of-eight", "simple"):
        return Anchor(m.i, m.j, CORE)
    if m.kind == "strandword":
        return Anchor(m.i, m.j, CORE) if scene.word_before(m.i) != "loose" else None
    if m.kind == "pattern":
        return Anchor(m.i, m.j, "pattern", strong=False)
    named = m.kind == "pulley" or (m.kind == "pulleys" and "pulley" in scene.words(m.i, m.j))
    if named and not is_landmark(scene, m):
        return Anchor(m.i, m.j, "pulley")
    if m.kind in _KIND_ROLES and not (m.kind != "structure" and is_landmark(scene, m)):
        return Anchor(m.i, m.j, _KIND_ROLES[m.kind])
    return None


def _sewn_shut(scene: Scene, m: Mention) -> bool:
    """'Two 4-0 nylon stitches to each wound' where no tendon is named, no four-strand repair in the wound."""
    told = scene.of("strandword", "tendon", "generic")
    if scene.page.words[m.j - 1] not in _WOUNDS or any(True for _ in told):
        return False
    led = scene.words(max(scene.sentence.i, m.i - _FEW), m.i)
    leads = [n for n, word in enumerate(led) if word in _SHUTS]
    return bool(leads) and _OF_EACH.issuperset(led[leads[-1] + 1 :]) and any(t.j <= m.i for t in scene.of("material"))


_WOUNDS = frozenset(["wound", "wounds", "incision", "incisions"])
_FEW = 4  # words
_SHUTS = frozenset(["to", "for", "per"])
_OF_EACH = frozenset(["the", "each", "both", "all", "every", "two", "three", "palm", "palmar", "finger", "digital"])


def is_place(scene: Scene, m: Mention) -> bool:
    """Tell whether a wound or palm is only where something was done ('through the wound', 'in the palm')."""
    before = scene.words(max(scene.sentence.i, m.i - 2), m.i)
    return any(w in ("in", "through", "via", "at", "into", "from", "to", "with") for w in before)


def role_of(scene: Scene, i: int, j: int, found: list[Anchor]) -> str:
    """Return the role of the suture in words i to j; '' where the sentence does not tell."""
    found = [a for a in found if a.i < j or not _leads_on(scene, a)]
    inside = [a for a in found if i <= a.i and a.j <= j and a.role != TENDON]
    if inside:
        return _leaning(inside)
    if scene.words(j, j + 2) in (["(", "pulley"], ["(", "pulleys"]):
        return "pulley"  # '5-0 Prolene (pulley), 4-0 Ethibond (FDP)'
    head = _head(scene, j, found)
    if head and head != TENDON:
        return head
    if head == TENDON:
        lead = _lead(scene, i, found)
        return lead if lead == PERIPHERAL else head  # 'Peripheral 6-0 on FDP II and III'
    lead = _lead(scene, i, found)
    if lead:
        return lead
    first, last = scene.part(i)
    if scene.words(first - 2, first) in _IN_VERB:
        first = scene.part(first - 1)[0]  # 'A2 was then repaired with interrupted sutures'
    part = [a for a in found if first <= a.i < last and not (a.i >= j and _next_suture(scene, j, a.i))]
    if part:
        return _nearest(part, i, j)
    before = [a for a in found if a.j <= i]
    if before:
        reach = scene.part(before[-1].i)[0]
        return _leaning([a for a in before if a.i >= reach])
    after = [a for a in found if a.i >= j]
    if after and after[0].role == PERIPHERAL and scene.part(after[0].i) != scene.part(i):
        return ""  # what comes after in a clause of its own is the next suture
    return _leaning(after[:1]) if after else ""


def _leads_on(scene: Scene, a: Anchor) -> bool:
    """'A four-strand core of 4-0 Ethibond finished with a running 6-0': of the thread behind it, not before."""
    return a.role == PERIPHERAL and a.j - a.i > 1 and scene.page.words[a.j - 1] in ("with", "by")


_IN_VERB = [["was", "then"], ["were", "then"], ["been", "then"]]


def _head(scene: Scene, j: int, found: list[Anchor]) -> str:
    """Return the role of the noun right after a suture: '6-0 nylon epitendinous stitch', '4-0 nylon to skin'."""
    for anchor in found:
        if anchor.i < j:
            continue
        between = scene.words(j, anchor.i)
        if between == ["("] and scene.next_word(anchor.j) == ")":
            return anchor.role  # '3-0 Ethibond (core)'
        if all(w in _HEAD_GLUE for w in between) or (
            between
            in (
                ["to"],
                ["to", "the"],
                ["for", "the"],
                ["for"],
                ["in", "the"],
                ["in"],
                ["around", "the"],
                ["on", "the"],
                ["through", "the"],
                ["on"],
            )
        ):
            if anchor.role == "pattern":
                continue
            if anchor.role in (TENDON, CORE) and not between and anchor.role == TENDON:
                return TENDON
            return anchor.role
        return ""
    return ""


def _lead(scene: Scene, i: int, found: list[Anchor]) -> str:
    """Return the role of what stands right before a suture: 'core of 5-0', 'skin: 4-0', 'running 6-0'."""
    before = [a for a in found if a.j <= i]
    if not before:
        return ""
    last = before[-1]
    between = scene.words(last.j, i)
    if len(between) > 5 or any(w not in _LEAD_GLUE for w in between) or "," in between:
        return ""
    if last.role == "pattern" and any(a.role == "core" for a in before) and not between:
        return PERIPHERAL
    if last.role == "pattern":
        others = [a for a in before if a.role != "pattern" and last.i - a.j <= 2 and scene.part(a.i) == scene.part(i)]
        return _leaning([*others, last]) if others else ""
    if last.role == TENDON:
        return ""
    return last.role


def _next_suture(scene: Scene, i: int, j: int) -> bool:
    """'with Ti-Cron 3-0 and in addition a running suture with 5-0': what follows these words is another suture."""
    return not _ADDING.isdisjoint(scene.words(i, j))


def _nearest(part: list[Anchor], i: int, j: int) -> str:
    """Return the role of the anchor nearest in the part; weak ones only where there is no strong one."""
    strong = [a for a in part if a.strong] or part
    nearest = min(strong, key=lambda a: (a.i - j if a.i >= j else i - a.j, a.i < i))
    return _leaning([a for a in part if a.role == "pattern"] + [nearest]) if not nearest.strong else nearest.role


def _leaning(found: list[Anchor]) -> str:
    """Return the role of the last strong anchor; a pattern beside a tendon leans to the peripheral suture."""
    strong = [a for a in found if a.strong]
    if strong:
        return strong[-1].role
    roles = [a.role for a in found]
    if "pattern" in roles:
        return "pattern"
    return roles[-1] if roles else ""
