"""'The saw had cut the profundus and left the superficialis alone': left whole by what cut the other."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Group
from notereader.reader.page import Mention
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_SPARES = word_list("tendons", "wound_spares")
_UNHURT = word_list("tendons", "left_unhurt")
_DETERMINERS = frozenset(["the", "its", "his", "her", "their", "both"])
_SPEAKERS = frozenset(["i", "we"])


def spared_by_the_wound(desk: Desk, scene: Scene) -> None:
    """Lay down as whole the tendon that the knife, the bite or the like is told to have left alone."""
    for group in scene.setting.groups:
        verb = _verb_before(scene, group)
        if verb is not None and scene.told(verb) and not scene.negated(verb, verb + 1):
            span = (verb, min(group.j + 1, scene.sentence.j))
            for target in group_targets(scene, group):
                desk.tendon(scene, target, "extent", "intact", [span], "spared by what wounded it")


def of_a_wound(scene: Scene, mention: Mention) -> bool:
    """Tell whether a 'left' is what a wound left, and not what a surgeon did."""
    behind = (g for g in scene.setting.groups if g.i >= mention.j)
    group = next(behind, None)
    return group is not None and _verb_before(scene, group) == mention.i


def _verb_before(scene: Scene, group: Group) -> int | None:
    """Return the 'left' or 'missed' right before a tendon, where a blade, a bite or the like is its subject."""
    if not group.tendons or group.reference:
        return None
    k = group.i - 1
    while k > scene.sentence.i and scene.page.words[k] in _DETERMINERS:
        k -= 1
    word = scene.page.words[k]
    alone = word in _SPARES or (word == "left" and scene.next_word(group.j) in _UNHURT)
    if k <= scene.sentence.i or not alone or scene.page.words[k - 1] in _SPEAKERS:
        return None
    wounding = [m for m in scene.of("agent") if m.j <= k]
    said = scene.words(wounding[-1].j, k) if wounding else []
    return k if wounding and _SPEAKERS.isdisjoint(said) and ";" not in said else None
