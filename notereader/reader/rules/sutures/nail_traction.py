"""Threads through a nail that pull on a finger: 'A 3-0 nylon through the nail for the rubber band'."""

from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_NAILS = frozenset(["nail", "nails", "fingernail", "fingernails"])
_TIPS = frozenset(["fingertip", "fingertips", "tip", "pulp"])
_BANDS = frozenset(["rubber", "elastic", "elastics", "kleinert"])
_PULLS = word_list("sutures", "nail_traction")
_HOLDS_A_TENDON = word_list("sutures", "nail_fixation")


def pulls_on_a_nail(scene: Scene) -> bool:
    """Tell whether a sentence tells of traction on a nail, and of nothing that ties a tendon over it.

    'A hook was sewn to the nail with 3-0 nylon' holds no tendon; 'FDP through the nail, tied over a button' does.
    """
    said = scene.said
    on_nail = not _NAILS.isdisjoint(said) and not _PULLS.isdisjoint(said)
    on_tip = not _TIPS.isdisjoint(said) and not _BANDS.isdisjoint(said)
    if not (on_nail or on_tip) or not _HOLDS_A_TENDON.isdisjoint(said):
        return False
    return not any(g.tendons or g.generic for g in scene.setting.groups)
