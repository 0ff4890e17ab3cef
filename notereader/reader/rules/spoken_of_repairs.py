"""Repairs that a note takes for granted: 'the FDP repair ran freely', 'over the repaired profundus'.

Whoever says how a repair lies, moves or holds says that there is one. This yields to every other word on what was done.
"""

from notereader.reader.desk import Desk
from notereader.reader.groups import Group, Target, has
from notereader.reader.needs import needs
from notereader.reader.scene import Scene, group_targets
from notereader.reader.settling import SPOKEN_OF
from notereader.vocabulary.wordlists import word_list

_REPAIR = word_list("spoken_of_repairs", "repair")  # 'the FDP repair'
_SEWN = word_list("spoken_of_repairs", "sewn")  # 'the repaired FDP'
_OTHER = word_list("spoken_of_repairs", "other")  # 'the earlier FDP repair', 'for FDP repair', 'no FDP repair'
PUT_OFF = word_list("spoken_of_repairs", "put_off")  # 'the FDP repair was postponed'
# An earlier repair, as it was found.
_HOLDS = frozenset(
    [
        "holding",
        "intact",
        "sound",
        "solid",
        "whole",
        "had",
        "ago",
        "last",
        "healed",
        "ruptured",
        "failed",
        "dehisced",
        "broken",
    ]
)
_ARTICLES = frozenset(["the", "this", "his", "her", "our", "my", "of", "left", "right", "tendon", "single", "finished"])
_NO_PLACE = frozenset(["procedure", "diagnosis", "indication", "previous", "admin", "consent"])
_SUTURED = ("nerve", "anynerve", "structure", "sided", "bundle", "anyartery", "pulley", "pulleys")


@needs(words=_REPAIR | _SEWN)
def spoken_of_repairs(desk: Desk, scene: Scene) -> None:
    """Lay down as repaired each tendon whose repair is spoken of, where nothing else tells what was done to it."""
    if scene.sentence.section in _NO_PLACE or (_REPAIR | _SEWN).isdisjoint(scene.said):
        return
    for group in scene.setting.groups:
        span = None if group.reference or group.excepted else _spoken_of(scene, group)
        if span is None or not all(scene.told(k) for k in range(*span)) or scene.negated(*span, 3):
            continue
        for target in _whose(desk, scene, group):
            if target not in desk.treatments and desk.extents.get(target) != "intact":
                desk.tendon(scene, target, "treatment", "repaired", [span], SPOKEN_OF)


def _spoken_of(scene: Scene, group: Group) -> tuple[int, int] | None:
    """Return the words that take a repair of the group for granted, or None."""
    words, first = scene.page.words, scene.sentence.i
    end = scene.sentence.j if group.i <= first + 3 else scene.part(group.j - 1)[1]
    if not PUT_OFF.isdisjoint(scene.words(group.j, end)):
        return None
    begin = group.i
    while begin > first and words[begin - 1] in _ARTICLES:
        begin -= 1
    if not _OTHER.isdisjoint(words[max(first, begin - 2) : group.i]):
        return None
    own = scene.words(group.i, group.j)
    if any(own[n : n + 1] and own[n] in _REPAIR and "of" in own[n:] for n in (0, 1, 2)):
        return (group.i, group.j)  # 'the repair of the small FDP'
    if scene.next_word(group.j) in _REPAIR:
        behind = scene.words(group.j + 1, group.j + 6)
        return None if not _HOLDS.isdisjoint(behind) else (group.i, group.j + 1)
    led = words[begin - 1] if begin > first else ""
    if led in _SEWN and begin < group.i and group.tendons:
        return None  # 'repaired the FDP' is a deed, and told as one
    if led in _SEWN and group.tendons and words[begin - 2] in ("the", "a", "newly", "now", "his", "her"):
        return begin - 1, group.j
    if led in _REPAIR and "of" in words[begin : group.i] and _OTHER.isdisjoint(words[max(first, begin - 3) : begin]):
        return begin - 1, group.j
    return None


def _whose(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """Return the tendons of a group; of a finger alone its deep flexor, where no nerve or pulley is spoken of."""
    if not group.tendons:
        return [] if scene.of(*_SUTURED) else [t for t in desk.deep_named if t.digit in group.digits]
    targets = group_targets(scene, group)
    if any(t.digit is None for t in targets):
        fingers = {d for g in scene.setting.groups for d in g.digits} or set(scene.every_digit)
        own = [Target(d, t.tendon) for t in targets for d in fingers if len(fingers) == 1 and has(d, t.tendon)]
        return own or [t for t in targets if t.tendon not in ("FDP", "FDS", "FPL")]
    return targets
