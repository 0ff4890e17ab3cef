"""Fingers that close what is told of each pulley: 'A2 was vented in the index and A4 was released in the ring'."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.groups import Group
from notereader.reader.page import Mention
from notereader.reader.rules.pulleys.pulley_names import made_from
from notereader.reader.rules.structures.part_digits import every_digit
from notereader.reader.scene import Scene

_FEWEST = 2  # places
_QUANTIFIERS = frozenset(["the", "all", "each", "both", "every", "of", "two", "three", "four", "these", "those"])
_JOINTS = frozenset([",", ";", "and", "but", "while", "whereas"])


def fingers_behind(scene: Scene, mention: Mention) -> tuple[str, ...]:
    """'A2 was vented in the index and middle fingers and A4 was released in the ring': each pulley has its fingers."""
    fingers = [g for g in scene.setting.groups if g.digits and not (g.tendons or g.reference)]
    pulleys = [m for m in scene.of("pulley") if scene.told(m.i)]
    if len(fingers) < _FEWEST or not all(starts(scene, g.i) for g in fingers) or mention not in pulleys:
        return ()
    names = [p for p, after in zip(pulleys, [*pulleys[1:], None], strict=True) if not _runs_on(scene, p, after)]
    order = _order(names, fingers)
    crossed = order in ([True, False, False, True], [False, True, True, False])
    if crossed and len(names) == _FEWEST:  # 'A2 was vented in the index, while in the ring A2 was preserved'
        return fingers[names.index(mention)].digits if mention in names else ()
    if order != [True, False] * len(fingers):
        return ()
    return next(g.digits for g in fingers if g.i >= mention.j)


def _order(names: list[Mention], places: list[Group]) -> list[bool]:
    in_order = sorted([*((p.i, True) for p in names), *((g.i, False) for g in places)])
    return [is_pulley for _, is_pulley in in_order]


def of_its_statement(desk: Desk, scene: Scene, mention: Mention) -> tuple[str, ...]:
    """'A2 was vented and A4 kept in the index, and A3 vented in the ring', 'A4 kept in all three, A2 in the ring'.

    Each place closes a statement: it is of the pulleys named since the place before.
    """
    pulleys = [m for m in scene.of("pulley") if scene.told(m.i)]
    if len(pulleys) < _FEWEST or mention not in pulleys:
        return ()
    places = [g for g in scene.setting.groups if (g.digits or g.every) and not g.generic and _no_tendon(scene, g)]
    if len(places) < _FEWEST or any(g.reference or g.excepted for g in places) or pulleys[0].i > places[0].i:
        return ()
    if not all(_led(scene, g) for g in places) or pulleys[-1].i > places[-1].i:
        return ()
    for place, after in pairwise(places):
        between = [p for p in pulleys if place.j <= p.i < after.i]
        if not between or _JOINTS.isdisjoint(scene.words(place.j, place.j + 1)):
            return ()
    own = next((g for g in places if g.i >= mention.j), None)
    if own is None:
        return ()
    return own.digits or tuple(d for d in every_digit(desk, scene, own) if d is not None)


def _no_tendon(scene: Scene, g: Group) -> bool:
    """Tell whether only fingers are named; in 'rebuilt with palmaris in the ring' the tendon is only what was used."""
    return not g.tendons or made_from(scene, g)


def _led(scene: Scene, g: Group) -> bool:
    """Tell whether 'in' leads up to a place, with what says how many: 'in each of the three fingers'."""
    if g.tendons:
        return "in" in scene.words(g.i, g.j)
    k = g.i
    while k > scene.sentence.i and scene.page.words[k - 1] in _QUANTIFIERS:
        k -= 1
    return scene.word_before(k) in ("in", "on")


def _runs_on(scene: Scene, pulley: Mention, after: Mention | None) -> bool:
    return after is not None and joined(scene, pulley, after)


def joined(scene: Scene, first: Mention, second: Mention) -> bool:
    """Tell whether two pulleys are named together: 'A2 and A4 in both fingers'."""
    i, j = sorted((first, second), key=lambda m: m.i)
    return all(w in ("and", ",", "&", "+", "/", "pulley", "the") for w in scene.words(i.j, j.i))


def starts(scene: Scene, k: int) -> bool:
    """Tell whether 'in' or 'in the' leads up to word k."""
    return scene.words(k - 1, k) == ["in"] or scene.words(k - 2, k) == ["in", "the"]
