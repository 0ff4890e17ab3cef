"""'A cruciate of 3-0 was used for the FPL and a Kessler of 4-0 for the FDP', 'cruciate (thumb), Kessler (index)'."""

from itertools import pairwise

from notereader.reader.groups import Group
from notereader.reader.scene import Scene

_LEADS = frozenset(["for", "in", "to", "on", "into", "("])
_DETERMINERS = frozenset(["the", "left", "right", "his", "her", "this", "that", "one", "divided", "cut"])
_OF_CORE = ("stitch", "strandword", "material")


def named_behind(scene: Scene, i: int, j: int) -> Group | None:
    """Return the tendon or finger that the suture in words i to j was dealt out to; None where none is dealt out so.

    Each tendon stands behind its suture, with a word that leads to it, and no suture is told behind the last.
    """
    groups = [g for g in scene.setting.groups if (g.tendons or g.digits) and not (g.place or g.excepted)]
    if len(groups) < 2 or any(g.reference or g.generic for g in scene.setting.groups):
        return None
    own = [m.kind for m in scene.of(*_OF_CORE) if i <= m.i < j]
    kinds = own[:1] or ["material"]  # a size stands beside its thread
    ends = [scene.sentence.i, *(g.j for g in groups)]
    spots = [m.i for m in scene.of(*kinds) if scene.told(m.i)]
    if not all(any(a <= k < g.i for k in spots) for a, g in zip(ends, groups, strict=False)):
        return None  # 'Cores of 3-0 Ethibond: two strands in the index, four in the ring': of all that are listed
    behind_all = any(m.i >= groups[-1].j for m in scene.of(*_OF_CORE))
    if behind_all or not all(_is_led_to(scene, g) for g in groups):
        return None
    if len({(g.digits, g.tendons) for g in groups}) < len(groups) or any(a.j > b.i for a, b in pairwise(groups)):
        return None
    return next((g for g in groups if g.i >= j), None)


def _is_led_to(scene: Scene, group: Group) -> bool:
    k = group.i
    while k > scene.sentence.i and scene.page.words[k - 1] in _DETERMINERS:
        k -= 1
    return scene.word_before(k) in _LEADS
