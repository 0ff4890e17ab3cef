"""'No gap in any FDP repair; the others were not tested', 'none in the Becker repairs': of one kind or make only."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.rules.sutures.repairs_of_a_make import is_excepted, named_by_make, of_a_make
from notereader.reader.scene import Scene, group_targets

_ANY = frozenset(["any", "either", "each", "every", "all", "no"])
_MAKES = frozenset(["core", "technique", "type", "method", "pattern", "construct"])
_REPAIRS = frozenset(["repair", "repairs", "tendon", "tendons"])
_SMALL = frozenset(["of", "the", "these", "those", "two", "three", "four"])


def of_one_make(desk: Desk, scene: Scene, i: int, j: int) -> list[Target]:
    """Return the sewn tendons of the one kind, of the one lettered core or make, that a result is told of."""
    return _of_the_kind_named(desk, scene, i, j) or _of_the_letter(desk, scene) or _of_the_make(desk, scene, i)


def others_untested(scene: Scene) -> int | None:
    """'..., no gap; the others were not tested': return where the others begin of whom nothing was seen."""
    words, last = scene.page.words, scene.sentence.j
    for k in (k for k in range(scene.sentence.i, last - 1) if words[k] in _OTHERS):
        behind = words[k + 1 : min(k + _SOON, last)]
        if "untested" in behind or ("not" in behind and not _TESTED.isdisjoint(behind)):
            return k
    return None


_OTHERS = frozenset(["others", "rest", "remaining", "remainder", "other"])
_TESTED = frozenset(["tested", "test", "checked", "tried", "examined", "pulled", "moved"])
_SOON = 6  # words: 'the other repairs were not tested'


def _of_the_kind_named(desk: Desk, scene: Scene, i: int, j: int) -> list[Target]:
    """'No gap in any FDP repair', 'no FDP repair gapped': not those of the other kinds."""
    first, last = scene.part(i)
    here = [g for g in scene.setting.groups if first <= g.i < last and not g.reference]
    if len(here) != 1 or not here[0].tendons or here[0].digits or here[0].generic:
        return []
    at = here[0].i
    lead = [w for w in scene.words(j if at >= j else first, at) if w not in _SMALL]
    if _REPAIRS.isdisjoint(scene.words(at, here[0].j + 1)) or lead[-1:] == [] or lead[-1] not in _ANY:
        return []
    return [t for t in desk.sewn() if t.tendon in here[0].tendons]


def _of_the_make(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """'The Becker repairs did not gap', 'no gap except in the two Kesslers': of those, or of all the others."""
    make = named_by_make(desk, scene)
    if make is not None and i < make.i and is_excepted(scene, make):
        return make.others
    return of_a_make(desk, scene, i)


def _of_the_letter(desk: Desk, scene: Scene) -> list[Target]:
    """'No gap in any core A repair', below a grid whose cells say 'core A': of the tendons that were sewn so."""
    words, first, last = scene.page.words, scene.sentence.i, scene.sentence.j
    spots = (k for k in range(first, last - 1) if words[k] in _MAKES and len(words[k + 1]) == 1)
    k = next((k for k in spots if words[k + 1].isalpha()), None)
    if k is None:
        return []
    told = (s for s in desk.scenes if s.sentence.prefix and _means(scene, s.sentence.i, words[k + 1]))
    labelled = ((s, g) for s in told for g in s.setting.groups if g.i == g.j == s.sentence.i and g.tendons)
    return list(dict.fromkeys(t for s, g in labelled for t in group_targets(s, g)))


def _means(scene: Scene, i: int, letter: str) -> bool:
    return scene.page.words[i - 2 : i] == [letter, "="]
