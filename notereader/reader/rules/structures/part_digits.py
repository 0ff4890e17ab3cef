"""A structure named in a sentence, what was told of it so far, and of which digits it is."""

from dataclasses import dataclass

from notereader.reader.desk import Desk, Finding
from notereader.reader.groups import DIGITS, Group
from notereader.reader.scene import Scene, digits_at

_NO_DIGIT = frozenset(
    ["median nerve", "ulnar nerve", "radial nerve branch", "radial artery", "ulnar artery", "common digital nerve"]
)
PAIRED = frozenset(["digital nerve", "digital artery"])
_COUNTS = {"both": 2, "two": 2, "either": 2, "neither": 2, "three": 3, "four": 4}
# 'radial digital nerve repair, ring'
_LESIONS = frozenset(
    ["repair", "repaired", "suture", "graft", "grafting", "laceration", "division", "injury", "divided"]
)
_FINGERS = frozenset(["index", "middle", "ring", "small", "little", "thumb", "long"])
# What 'the nerve' and 'the artery' may be.
_CALLED = {
    "nerve": ("digital nerve", "common digital nerve", "median nerve", "ulnar nerve", "radial nerve branch"),
    "artery": ("digital artery", "radial artery", "ulnar artery"),
}


@dataclass(slots=True)
class Part:
    """A structure named in words i to j: which, on which sides."""

    i: int
    j: int
    structure: str
    sides: tuple[str | None, ...]
    bare: bool = False  # only its side is named: 'the radial was cut'
    digits: tuple[str | None, ...] = ()  # where it is the one told of before, that one's digits


def told_of(desk: Desk, structure: str) -> list[Finding]:
    """Return the findings laid down so far of a structure, on every side of every digit."""
    sides = ("radial", "ulnar", None)
    return [f for d in (*DIGITS, None) for side in sides for f in desk.told_of("injuries", (d, structure, side))]


def hurt_ones(desk: Desk, word: str) -> list[Finding]:
    """Return the findings of every 'nerve' or 'artery' that are not 'intact'."""
    return [f for name in _CALLED.get(word, ()) for f in told_of(desk, name) if f.value != "intact"]


def digits_of(desk: Desk, scene: Scene, part: Part) -> tuple[str | None, ...]:
    """Return the digits a structure is of; (None,) for those of the palm and the wrist."""
    if part.structure in _NO_DIGIT:
        return (None,)
    if part.digits:
        return part.digits
    every = _every_group(scene, part)
    if every is not None:
        return every_digit(desk, scene, every)
    if _of_that_finger(scene, part) and scene.setting.digits:
        return scene.setting.digits
    if _of_all_but_one(scene, part):
        return scene.setting.digits
    bare = _bare_digit(scene, part)
    if bare is not None:
        return (bare,)
    groups = [g for g in scene.setting.groups if g.digits]
    after = [g for g in groups if 0 <= g.i - part.j <= 5]
    links = ("of", "the", "to", "in", ",", "left", "right", "both", "l", "r")
    named = any(g.j == part.i for g in groups)  # 'IF RDN repair, MF FDP repair'
    if (
        after
        and not named
        and all(w in links or w in _FINGERS or w in _LESIONS for w in scene.words(part.j, after[0].i))
    ):
        return after[0].digits
    own = [g for g in groups if 0 <= part.i - g.j <= 6]
    if own:
        return own[-1].digits
    if scene.setting.digits and _next_told_apart(scene, part):
        return scene.setting.digits
    return digits_at(scene, None, part.i) or (None,)


def _next_told_apart(scene: Scene, part: Part) -> bool:
    """'Nerves fine both sides, the index was not opened': the finger named next is told its own, behind a comma."""
    after = next((g for g in scene.setting.groups if g.digits and g.i >= part.j), None)
    if after is None or any(g.digits and g.j <= part.i for g in scene.setting.groups):
        return False
    last = scene.part(part.i)[1]
    begin, end = scene.part(after.i)
    told = any(part.j <= m.i < last for m in scene.of(*_STATES))
    own = any(after.j <= m.i < end for m in scene.of(*_STATES))
    return begin >= last and told and own and scene.word_before(begin) in (",", ";")


_STATES = ("extent", "hurt", "opened", "nervestate", "deed")


def _of_that_finger(scene: Scene, part: Part) -> bool:
    """'The radial bundle of that finger', 'its radial digital nerve': of the finger spoken of."""
    own = [g for g in scene.setting.groups if g.digits and g.j <= part.i]
    if own:
        return False
    after = scene.words(part.j, min(part.j + 3, scene.sentence.j))
    that = (
        after[:1] == ["of"] and after[1:2] in (["that"], ["this"]) and after[2:3] in (["finger"], ["digit"], ["thumb"])
    )
    return that or scene.word_before(part.i) == "its"


def _of_all_but_one(scene: Scene, part: Part) -> bool:
    """'All digital nerves were whole except the radial one of the ring': of every finger spoken of before."""
    led = "all" in scene.words(max(scene.sentence.i, part.i - 3), part.i + 1)
    behind = next((g.i for g in scene.setting.groups if g.digits and g.i >= part.j), scene.sentence.i)
    named = any(g.digits and g.j <= part.i for g in scene.setting.groups)
    left_out = not EXCEPTING.isdisjoint(scene.words(part.j, behind))
    return led and left_out and not named and len(scene.setting.digits) > 1


EXCEPTING = frozenset(["except", "bar", "save", "apart", "excepting"])
_BARE_DIGITS = {"small": "small", "little": "small", "middle": "middle", "long": "middle", "ring": "ring"}
_BARE_DIGITS |= {"index": "index", "thumb": "thumb"}
_AFTER_DIGIT: tuple[list[str], ...] = ([], ["are"], ["were"], ["was"], ["is"], ["."], [";"])


def _bare_digit(scene: Scene, part: Part) -> str | None:
    """'Nerves: small radial digital nerve contused', 'fine on small: both arteries intact': no 'finger'."""
    words = scene.page.words
    before = _BARE_DIGITS.get(scene.word_before(part.i))
    if before is not None and words[part.i] in ("radial", "ulnar", "digital", "rdn", "udn", "nerve", "nerves"):
        return before
    behind = scene.words(part.j, min(part.j + 4, scene.sentence.j))
    if behind[:2] == ["of", "the"] and behind[2:3] and behind[2] in _BARE_DIGITS and behind[3:4] in _AFTER_DIGIT:
        return _BARE_DIGITS[behind[2]]  # 'both digital nerves of the middle are intact'
    for k in range(max(scene.sentence.i, part.i - 5), part.i - 1):
        if words[k] in ("on", "in", "of", "for") and words[k + 1] in _BARE_DIGITS and words[k + 2] in (":", ",", "."):
            return _BARE_DIGITS[words[k + 1]]
    return None


def hurt_digits(desk: Desk, part: Part, told: tuple[str | None, ...]) -> tuple[str | None, ...]:
    """Return the one digit in which this very nerve or artery was told cut, where that is not the one in focus."""
    every = told_of(desk, part.structure)
    if any(f.entry[0] in told and f.entry[2] in part.sides for f in every):
        return ()  # told of in this very digit
    cut = [f for f in every if f.value in ("complete", "partial")]
    digits = {f.entry[0] for f in cut if f.entry[2] and f.entry[2] in part.sides}
    return tuple(digits) if len(digits) == 1 and not digits & set(told) else ()


def _every_group(scene: Scene, part: Part) -> Group | None:
    """Return 'both fingers' where it follows a structure with no finger between."""
    for g in scene.setting.groups:
        every = g.every and not (g.tendons or g.digits or g.generic)
        between = [d for d in scene.setting.groups if d.digits and part.j <= d.i < g.i]
        if every and 0 <= g.i - part.j <= 8 and not between:
            return g
    return None


def every_digit(desk: Desk, scene: Scene, every: Group) -> tuple[str | None, ...]:
    """Return the digits of 'both fingers', 'all three': of the lists, of the sentence or those cut, by their count."""
    words = scene.words(max(scene.sentence.i, every.i - 4), every.j)
    wanted = next((_COUNTS[w] for w in words if w in _COUNTS), 0)
    if not wanted or len(scene.every_digit) == wanted:
        return scene.every_digit or (None,)
    here = tuple(dict.fromkeys(d for g in scene.setting.groups for d in g.digits))
    before = desk.scene_before(scene)
    just = tuple(dict.fromkeys(d for g in before.setting.groups for d in g.digits)) if before is not None else ()
    cut = tuple(dict.fromkeys(t.digit for t in desk.cut() if t.digit and t.digit != "thumb"))
    for found in (here[-wanted:], just, scene.setting.digits, cut):
        if len(found) == wanted:
            return found
    return (None,) if len(scene.every_digit) > wanted else scene.every_digit or (None,)
