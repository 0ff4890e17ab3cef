"""One kind of state dealt out over fingers in one sentence: 'cut through in the ring and whole in the small'.

States and places stand by turns. Whichever opens the sentence tells how they belong together: 'whole in the index and
cut through in the ring' puts each state before its fingers, 'the index was whole; the ring, cut through' behind.
"""

from dataclasses import dataclass

from notereader.reader.desk import Desk
from notereader.reader.groups import Group, Target, has
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_BEFORE_PLACE = word_list("dealt_out", "before_place")
_BEFORE_STATE = word_list("dealt_out", "before_state")
_BETWEEN_PAIRS = word_list("dealt_out", "between_pairs")
_TURNS_TO_IT = word_list("dealt_out", "turns_to_it")
_FEWEST = 2  # pairs
_OTHER_PARTS = ("structure", "sided", "bundle", "anynerve", "anyartery", "pulley", "slip")

Span = tuple[int, int]
Dealt = dict[Span, tuple[str, ...]]
Past = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Place:
    """Fingers named together, words i to j; `apart`: those that a sentence leaves out of what it says of all."""

    i: int
    j: int
    digits: tuple[str, ...]
    apart: bool = False


def dealt_out(desk: Desk, scene: Scene, states: list[Span], told_once: Past | None = None) -> Dealt:
    """Return the fingers of each state where a sentence deals them out, by its words; {} where it does no such thing.

    `states`: the words of each, in order; they are of one kind of tendon, which must be told. `told_once`: they are
    zones, of whatever tendon, and words of these kinds between them are said of all.
    """
    if len(states) < _FEWEST or not scene.kinds.isdisjoint(_OTHER_PARTS):
        return {}
    places = _places(scene)
    told = [d for p in places if not p.apart for d in p.digits]
    if not places or len(set(told)) < len(told):
        return {}
    if told_once is None and len(kinds_told(scene)) != 1:
        return {}
    if any(p.apart for p in places):
        return _all_but(desk, scene, states, places)
    if "respectively" in scene.said:
        return _in_turn(scene, states, places)
    return {state: place.digits for state, place in _by_turns(scene, states, places, told_once or ()).items()}


def by_turns(scene: Scene, states: list[Span], past: Past = ()) -> Dealt:
    """Return the fingers of each state of something else than a tendon, where states and fingers stand by turns.

    `past`: words of these kinds between them are said of all.
    """
    places = _places(scene) if len(states) >= _FEWEST else []
    told = [d for p in places for d in p.digits]
    if len(set(told)) < len(told) or any(p.apart for p in places) or any(g.tendons for g in scene.setting.groups):
        return {}
    return {state: place.digits for state, place in _by_turns(scene, states, places, past).items()}


def tendons_by_turns(scene: Scene, states: list[Span], past: Past = ()) -> dict[Span, Group]:
    """Return the tendons of each state where states and tendons stand by turns: 'free in the FDP, tight in the FDS'."""
    groups = scene.setting.groups
    if len(states) < _FEWEST or not all(g.tendons for g in groups):
        return {}
    if any(g.reference or g.four or g.excepted or g.every or g.generic for g in groups):
        return {}
    targets = [(d, t) for g in groups for t in g.tendons for d in (g.digits or ("",))]
    if len(set(targets)) < len(targets):
        return {}
    by_word = {g.i: g for g in groups}
    places = [Place(g.i, g.j, g.digits) for g in groups]
    return {state: by_word[place.i] for state, place in _by_turns(scene, states, places, past).items()}


def kinds_told(scene: Scene) -> tuple[str, ...]:
    """Return the kinds of tendon a sentence is about: those it names, else those that were spoken of before."""
    named = dict.fromkeys(t for g in scene.setting.groups if not g.reference for t in g.tendons)
    if not named and scene.said.isdisjoint(_TAKES_UP):
        return ()  # 'The pulleys of the index were torn, those of the ring intact'
    return tuple(named or dict.fromkeys(t.tendon for t in scene.setting.focus))


_TAKES_UP = frozenset(["it", "they", "this", "these"])


def targets_of_kind(scene: Scene, digits: tuple[str, ...]) -> list[Target]:
    """Return the tendons of the kind that a sentence is about, of the digits that have it."""
    return [Target(d, t) for d in digits for t in kinds_told(scene) if has(d, t)]


def _places(scene: Scene) -> list[Place]:
    groups = [g for g in scene.setting.groups if g.digits]
    if any(g.reference or g.four or g.generic not in ("", "one") for g in groups):
        return []
    return [Place(g.i, g.j, g.digits, g.excepted) for g in groups]


def _by_turns(scene: Scene, states: list[Span], places: list[Place], past: Past) -> dict[Span, Place]:
    """Pair states and places two by two, as they follow one another.

    'Cut in the ring, while in the small it was whole' turns the order round, which only a new clause may do.
    """
    if len(states) != len(places) or len(places) < _FEWEST:
        return {}
    dealt: dict[Span, Place] = {}
    end, places_first = scene.sentence.i, places[0].i < states[0][0]
    for state, place in zip(states, places, strict=True):
        turned = (place.i < state[0]) != places_first
        places_first = place.i < state[0]
        first, second = ((place.i, place.j), state) if places_first else (state, (place.i, place.j))
        led = _BEFORE_STATE if places_first else _BEFORE_PLACE
        if first[1] > second[0] or not _only(scene, first[1], second[0], led, past):
            return {}
        if dealt and not (end <= first[0] and _only(scene, end, first[0], _BETWEEN_PAIRS, past)):
            return {}
        if turned and _NEW_CLAUSE.isdisjoint(scene.words(end, first[0])):
            return {}
        dealt[state], end = place, second[1]
    return dealt


_NEW_CLAUSE = frozenset(["while", "whereas", "but", ";"])


def _only(scene: Scene, i: int, j: int, allowed: frozenset[str], past: Past = ()) -> bool:
    """Tell whether words i to j are only words of a list, names of tendons and mentions of the kinds to pass by."""
    named = {k for m in scene.of("tendon", "side", *past) for k in range(m.i, m.j)}
    return all(k in named or scene.page.words[k] in allowed for k in range(i, j))


def _in_turn(scene: Scene, states: list[Span], places: list[Place]) -> Dealt:
    """'The index, ring and small were cut through, cut to 60 % and whole respectively': the n-th to the n-th."""
    digits = [d for p in places for d in p.digits]
    if len(digits) != len(states):
        return {}
    apart = max(p.j for p in places) <= states[0][0] or states[-1][1] <= min(p.i for p in places)
    return {state: (digit,) for state, digit in zip(states, digits, strict=True)} if apart else {}


def _all_but(desk: Desk, scene: Scene, states: list[Span], places: list[Place]) -> Dealt:
    """'Cut through in all but the ring, where it was whole': one state is of what is left out, one of the others."""
    left_out = [p for p in places if p.apart]
    if len(states) != _FEWEST or len(left_out) != 1:
        return {}
    place = left_out[0]
    behind = [s for s in states if s[0] >= place.j]
    own = behind[0] if behind else None
    if own is None or not _TURNS_TO_IT.intersection(scene.words(place.j, min(place.j + 2, own[0]))):
        return {}
    if not _only(scene, place.j, own[0], _BEFORE_STATE | _TURNS_TO_IT):
        return {}
    rest = _others(desk, scene, place, [p for p in places if not p.apart])
    other = next(s for s in states if s != own)
    return {own: place.digits, other: rest} if rest else {own: place.digits}


def _others(desk: Desk, scene: Scene, place: Place, named: list[Place]) -> tuple[str, ...]:
    """Return the fingers from which some are left out: those the sentence names, else those spoken of before."""
    digits = tuple(d for p in named for d in p.digits) or scene.setting.digits
    if not set(digits) - set(place.digits):
        digits = scene.every_digit
    rest = tuple(d for d in digits if d not in place.digits)
    known = {t.digit for t in desk.named}
    return rest if known.issuperset(rest) or named or scene.setting.digits == digits else ()
