"""A suture told before the tendon it went into: 'the FDP took six strands, only a Kessler fitted into the FDS'."""

from notereader.reader.groups import Group
from notereader.reader.scene import Scene

_STOPS = frozenset([",", ";", ":", "while", "whereas", "but"])
_LEADS = (["into"], ["into", "the"], ["in"], ["in", "the"])
_WENT = frozenset(["fitted", "fit", "went", "go", "possible", "fitting", "accommodated"])


def fitted_into(scene: Scene, i: int, j: int, groups: list[Group]) -> Group | None:
    """Return the tendon or finger behind words i to j that the suture there went into, where its clause names no other.

    'A Kessler went into the FDS'; but not 'the FDP took a Kessler that went into the palm'.
    """
    if _WENT.isdisjoint(scene.said):
        return None
    words = scene.page.words
    first = next((k + 1 for k in range(i - 1, scene.sentence.i - 1, -1) if words[k] in _STOPS), scene.sentence.i)
    last = next((k for k in range(j, scene.sentence.j) if words[k] in _STOPS), scene.sentence.j)
    own = [g for g in groups if first <= g.i < last and (g.tendons or g.digits)]
    if len(own) != 1 or own[0].i < j:
        return None
    lead = scene.words(max(j, own[0].i - 3), own[0].i)
    went = next((k for k, word in enumerate(lead) if word in _WENT), -1)
    return own[0] if went >= 0 and lead[went + 1 :] in _LEADS else None
