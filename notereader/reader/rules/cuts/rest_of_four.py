"""Those of the four fingers of which no cut was told: 'the remaining FDPs', 'the other three', 'all the profundi'."""

from itertools import pairwise

from notereader.reader.desk import HURT_KINDS, Desk
from notereader.reader.groups import DIGITS, Group, Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Mention
from notereader.reader.scene import Scene, group_targets

_KINDS = ("FDP", "FDS")
_OTHER = frozenset(["remaining", "other", "others", "rest"])
_COUNTED = frozenset(["the", "two", "three", "of", "2", "3", "all"])
_PLURAL_KINDS = frozenset(["profundi", "fdps", "fdp's", "superficiales", "fdss", "fds's"])  # of fingers not named
_FINGERS = frozenset(["fingers", "digits"])
_ALL_FOUR = frozenset([("all", "four"), ("all", "4")])


def the_rest(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'The remaining FDPs not cut', 'FDPs: all 4 intact': those of the four fingers of which no cut was told."""
    others = _to_other_fingers(desk, scene, group)
    if others:
        return others
    lead = [w for w in scene.words(max(scene.sentence.i, group.i - 4), group.i) if w not in _COUNTED]
    other = lead[-1:] != [] and lead[-1] in _OTHER and len(group.tendons) == 1
    several = not _PLURAL_KINDS.isdisjoint(scene.words(group.i, group.j))
    several = several or (group.four == 1 and "all" in scene.words(group.i - 2, group.i))  # 'all the profundus tendons'
    several = several and desk.at_wrist
    if not (group.every or other or several) and "all" not in scene.words(group.j, group.j + 3):
        return []
    before, after = lead[-1] if other else scene.word_before(group.i), scene.words(group.j, group.j + 4)
    at_wrist = bool(desk.values_told("zone") & {"IV", "V"})
    wrist = not desk.values_told("tendon").isdisjoint(("FCR", "FCU", "PL")) and len(set(scene.every_digit)) > 1
    if after[:2] == ["all", "intact"] and wrist:
        return [t for t in _of_four(group) if desk.extents.get(t) not in HURT_KINDS]  # 'FDP all intact'
    four = any(after[k : k + 2] in (["all", "4"], ["all", "four"]) for k in range(3)) or (
        before == "every" and at_wrist
    )
    if several and not other:
        fours = [t for t in _of_four(group) if desk.extents.get(t) not in HURT_KINDS]
        return [*fours, *(t for t in group_targets(scene, group) if t.tendon not in ("FDP", "FDS"))]
    if not four and before not in _OTHER:
        return []
    fingers = _of_four(group)
    known = {t.digit for t in desk.named} | set(scene.every_digit)
    if (
        not four
        and not (at_wrist or desk.at_wrist)
        and len(known - {"thumb", None}) < 2
        and not any(t.digit is None for t in desk.named)
    ):
        return []  # one finger was worked on: its neighbours were not looked at
    told_of = [] if four else _named_before(scene, group)  # 'FDP index cut; remaining FDPs ok'
    return [t for t in fingers if desk.extents.get(t) not in HURT_KINDS and t not in told_of]


def _to_other_fingers(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'Superficialis to the other fingers and every profundus tendon': those of which no cut was told."""
    told = [w for w in scene.words(group.i, group.j) if w != "the"]
    at = next((k for k in range(len(told) - 1) if told[k] in ("other", "remaining") and told[k + 1] in _FINGERS), None)
    if at is None or told[at - 1] not in ("to", "of", "in"):
        return []
    if "every" in told[at:] or len(group.tendons) == 1:
        named = _named_before(scene, group)
        return [t for t in _of_four(group) if desk.extents.get(t) not in HURT_KINDS and t not in named]
    return []


def rest_of_four(scene: Scene, group: Group) -> list[Target]:
    """'Only that of the index was whole. The other three were cut': the same tendon of the fingers not told of.

    'Of the profundi, those to the ring and small fingers were divided and the other two intact' tells of them before,
    and so does 'The index and ring profundi were divided, the remaining two were intact'.
    """
    named = [g for g in scene.setting.groups if g.tendons and g.j <= group.i and not g.reference]
    before = [g for g in named if g.digits]
    if not {"repair", "repairs"}.isdisjoint(scene.words(group.i, group.j + 1)):
        return []  # 'The index FDP was cut through again, the other three repairs were intact'
    told = group_targets(scene, before[-1]) if before else list(scene.setting.focus)
    told = [t for t in told if t.tendon in ("FDP", "FDS") and t.digit in DIGITS[1:] and t.slip is None]
    counted = next((count_of(w) for w in scene.words(group.i, group.j + 1) if count_of(w) > 1), 0)
    of_four = len({t.digit for t in told}) + counted == len(DIGITS[1:])
    if not of_four or len({t.tendon for t in told}) != 1 or (not before and len(scene.setting.focus) != 1):
        return []
    return [Target(d, told[0].tendon) for d in DIGITS[1:] if all(d != t.digit for t in told)]


def each_of(desk: Desk, scene: Scene, group: Group, mention: Mention) -> list[Target]:
    """'FPL, all the FDPs and the median nerve intact' at the wrist: those of all four fingers, but for the cut ones."""
    if mention.value == "intact" and not group.digits and (rest := the_rest(desk, scene, group)):
        return rest  # 'the other profundi and the median nerve were intact'
    if group.four != 1 or group.digits or mention.value != "intact" or not desk.at_wrist:
        return group_targets(scene, group)
    fours = [Target(d, t) for t in group.tendons if t in ("FDP", "FDS") for d in DIGITS[1:]]
    others = [t for t in group_targets(scene, group) if t.tendon not in ("FDP", "FDS")]
    return [*others, *(t for t in fours if desk.extents.get(t) not in HURT_KINDS)]


def and_the_others(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'The sublimis to ring and small and the other profundi': of one kind those named, of the other all the rest."""
    last = scene.word_before(group.j)
    lead = [w for w in scene.words(group.i, group.j - 1) if w not in _COUNTED]
    if last not in _PLURAL_KINDS or len(group.tendons) != len(_KINDS) or lead[-1:] == [] or lead[-1] not in _OTHER:
        return []
    deep = "FDP" if last[:1] in ("p",) or last.startswith("fdp") else "FDS"
    four = not _ALL_FOUR.isdisjoint(pairwise(scene.words(group.i, group.j)))
    named = [Target(d, t) for d in (DIGITS[1:] if four else group.digits) for t in group.tendons if t != deep]
    rest = [Target(d, deep) for d in DIGITS[1:] if desk.extents.get(Target(d, deep)) not in HURT_KINDS]
    told = _named_before(scene, group)
    return [*named, *(t for t in rest if t not in told)] if desk.at_wrist else []


def _named_before(scene: Scene, group: Group) -> list[Target]:
    """Return the tendons that a sentence, or the one before it, named by their finger before a group."""
    named = [g for g in scene.setting.groups if g.digits and g.tendons and g.j <= group.i and not g.reference]
    return [*scene.setting.focus, *(t for g in named for t in group_targets(scene, g))]


def _of_four(group: Group) -> list[Target]:
    """Return a group's deep or superficial flexors of all four fingers."""
    return [Target(d, t) for t in group.tendons if t in ("FDP", "FDS") for d in DIGITS[1:]]
