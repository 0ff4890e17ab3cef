"""Repairs that a note takes for granted: 'the FDP repair ran freely', 'over the repaired profundus'.

Whoever says how a repair lies, moves or holds says that there is one. This yields to every other word on what was done.
"""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.drafting.settling import SPOKEN_OF
from notereader.reader.groups import Group, Target, has
from notereader.reader.needs import needs
from notereader.reader.reasons import Reason
from notereader.reader.rules.deeds.denied_deeds import denied_below
from notereader.reader.rules.deeds.other_days import of_another_day
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_REPAIR = word_list("spoken_of_repairs", "repair")  # 'the FDP repair'
_SEWN = word_list("spoken_of_repairs", "sewn")  # 'the repaired FDP'
_OTHER = word_list("spoken_of_repairs", "other")  # 'the earlier FDP repair', 'for FDP repair', 'no FDP repair'
PUT_OFF = word_list("spoken_of_repairs", "put_off")  # 'the FDP repair was postponed'
_NEVER = phrases_by_first_word("spoken_of_repairs", "never_made")  # 'direct suture was out of the question'
_FOUND_WHOLE = frozenset(["intact", "sound", "solid", "whole"])  # an earlier repair, as it was found
_FOUND_BROKEN = frozenset(["apart", "parted", "dehisced", "snapped", "loose"])
_REASON = Reason("only_spoken_of")
_ARTICLES = frozenset(["the", "this", "his", "her", "our", "my", "of", "left", "right", "tendon", "single", "finished"])
_THE = frozenset(["the", "a", "newly", "now", "his", "her"])
_NO_PLACE = frozenset(["procedure", "diagnosis", "indication", "previous", "admin", "consent"])
_SUTURED = ("nerve", "anynerve", "structure", "sided", "bundle", "anyartery", "pulley", "pulleys")


@needs(words=_REPAIR | _SEWN)
def spoken_of_repairs(desk: Desk, scene: Scene) -> None:
    """Lay down as repaired each tendon whose repair is spoken of, where nothing else tells what was done to it."""
    if scene.sentence.section in _NO_PLACE:
        return
    for group in scene.setting.groups:
        span = None if group.reference or group.excepted else _spoken_of(scene, group)
        if span is None or not all(scene.told(k) for k in range(*span)) or scene.negated(*span, 3):
            continue
        if any(d.i == group.j and denied_below(desk, scene, d) for d in scene.of("deed")):
            continue  # 'FDS REPAIR', and below it 'Core technique: n/a'
        for target in _whose(desk, scene, group):
            if target not in desk.treatments and desk.extents.get(target) != "intact":
                desk.tendon(scene, target, "treatment", "repaired", [span], SPOKEN_OF, _REASON)


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
    inside = scene.words(group.i, group.i + 2)
    if not _REPAIR.isdisjoint(inside) and "of" in scene.words(group.i, group.j):
        return group.i, group.j  # 'the repair of the small FDP'
    if scene.next_word(group.j) in _REPAIR:
        other = of_another_day(scene, group.i, group.j + 1)
        behind = scene.words(group.j + 1, min(group.j + 6, scene.sentence.j))
        broken = scene.words(group.j + 1, min(group.j + 8, scene.sentence.j))
        found = not _FOUND_WHOLE.isdisjoint(behind) or found_broken(broken)
        return None if other or found else (group.i, group.j + 1)  # 'the FDP repair ran freely'
    if begin - 1 > first and words[begin - 1] in _SEWN and words[begin - 2] in _THE and group.tendons:
        return begin - 1, group.j  # 'over the repaired FDP'; 'repaired the FDP' is a deed, and told as one
    return None


def found_broken(words: list[str]) -> bool:
    """'FDP repair found pulled apart', 'the FDS repair had also given way': what words behind a repair tell of it."""
    return not _FOUND_BROKEN.isdisjoint(words) or ("given", "way") in pairwise(words)


def never_made(scene: Scene, k: int) -> bool:
    """'A suture of the FDP was out of the question', 'a primary repair could not be done': told behind word k."""
    for n in range(k, min(k + _NEVER_SOON, scene.sentence.j)):
        if scene.page.words[n] in _PARTING:
            return False
        if any(scene.words(n, n + len(phrase)) == phrase for phrase in _NEVER.get(scene.page.words[n], ())):
            return True
    return False


_NEVER_SOON = 12  # words
_PARTING = frozenset([",", ";", ".", "and", "but", "because", "with"])


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
