"""Two tendons named and then denied a wound: 'The profundus and superficialis were seen. Neither had been cut.'"""

from notereader.reader.desk import HURT_KINDS, Desk
from notereader.reader.groups import Target
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_HURTS = word_list("tendons", "cut") | frozenset(
    ["divided", "torn", "ruptured", "transected", "hurt", "injured", "damaged", "harmed", "severed", "lacerated"]
)
_BEING = frozenset(["was", "is", "had", "has", "been", "were", "of", "them", "the", "two", "these", "tendon"])
_OTHERS = ("structure", "sided", "bundle", "anynerve", "anyartery", "bone", "fracture", "pulley", "pulleys")
_PAIR = 2
_FEW = 5  # words from 'neither' to the wound


def neither_of_those(desk: Desk, scene: Scene) -> None:
    """Lay down as whole the two tendons of the statement before, where neither of them was hurt."""
    if "neither" not in scene.said:
        return
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j):
        if words[k] != "neither" or not scene.told(k) or scene.word_before(k) not in _BEFORE:
            continue
        end = next((n for n in range(k + 1, min(k + _FEW, scene.sentence.j)) if words[n] not in _BEING), k)
        told = words[end] in _HURTS and not _VERBS.isdisjoint(words[k:end]) and scene.next_word(end + 1) in _CLOSES
        for target in _the_two(desk, scene, k) if told else []:
            if desk.extents.get(target) not in HURT_KINDS:
                desk.tendon(scene, target, "extent", "intact", [(k, end + 1)], "extent intact")


_BEFORE = frozenset(["", ",", ";", "and", "but"])
_CLOSES = frozenset(["", ".", ",", ";", "and", "but", "at", "by"])
_VERBS = frozenset(["was", "is", "had", "has", "were"])  # not 'neither cut nor intact'


def _the_two(desk: Desk, scene: Scene, k: int) -> list[Target]:
    """Return the two tendons named before 'neither', in its sentence or in the one before; [] where there are more."""
    here = [g for g in scene.setting.groups if g.j <= k]
    source = scene if here else desk.scene_before(scene)
    if source is None or source.sentence.block != scene.sentence.block:
        return []
    named = here or source.setting.groups
    others = [m for m in source.of(*_OTHERS) if source is not scene or m.i < k]
    if others or any(g.generic or g.reference or g.excepted for g in named if g.tendons):
        return []
    found = list(dict.fromkeys(t for g in named if g.tendons for t in group_targets(source, g)))
    return found if len(found) == _PAIR else []
