"""Tendons told to be cut with no word of how far: 'the FDP and FDS were lacerated. Both were repaired'."""

from notereader.reader.desk import Desk
from notereader.reader.needs import needs
from notereader.reader.page import Mention
from notereader.reader.rules.owners import tendon_owner
from notereader.reader.rules.pulleys.attach import is_denied
from notereader.reader.scene import Scene

_CUT = frozenset(["cut", "lacerated", "lacerations", "laceration", "lac", "injured", "slashed", "torn"])
_WAS = frozenset(["was", "were", "are", "is", "both", "found", "had", "been", ":", "-", "all", "tendon", "tendons"])
_NEAR = 4  # words
_PART = ("fraction", "extent")


@needs(kinds=["hurt"])
def bare_cuts(desk: Desk, scene: Scene) -> None:
    """Remember the tendons that a sentence tells to be cut, however far, so that 'both' may mean them.

    Nothing is laid down: how far they were cut is not told.
    """
    if not scene.kinds.isdisjoint(_PART) or "%" in scene.units or scene.sentence.section == "instructions":
        return
    for m in scene.of("hurt"):
        if _CUT.isdisjoint(scene.words(m.i, m.j)) or not scene.told(m.i) or is_denied(scene, m):
            continue
        targets, group = tendon_owner(desk, scene, m.i, m.j)
        if group is None or group.generic or group.reference or group.collective or not _says(scene, m, group.j):
            continue
        for target in targets:
            desk.hurt.setdefault(target, m.i)


def _says(scene: Scene, m: Mention, end: int) -> bool:
    """Tell whether a word for a cut stands right behind the tendons: 'FDP and FDS were both lacerated'."""
    return 0 <= m.i - end <= _NEAR and _WAS.issuperset(scene.words(end, m.i))
