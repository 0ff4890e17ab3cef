"""Sentences that deal two states out over several fingers, and what each finger's tendon is told to be.

The state is what became of the tendon, how far it was cut, or the zone of the cut; each way of saying it is drawn by
chance.
"""

import random
from collections.abc import Callable
from dataclasses import dataclass

_FINGERS = ("index", "middle", "ring", "small")
_FATES = {
    "repaired": ("repaired", "sutured"),
    "excised": ("excised", "resected"),
    "left": ("left unrepaired", "not repaired", "left alone"),
}
_CUTS = {
    "complete": ("completely divided", "cut through", "transected"),
    "partial": ("partially divided", "60 % cut", "partly lacerated"),
    "intact": ("intact", "uninjured"),
}
_ZONES = ("I", "II", "III")

Place = tuple[str, str, str]  # finger, tendon, field


@dataclass(frozen=True, slots=True)
class Dealt:
    """A note, and what it says by finger, tendon and field."""

    text: str
    truth: dict[Place, str]


@dataclass(frozen=True, slots=True)
class _Two:
    """The fingers of two states, and how the sentence calls them."""

    fingers: tuple[str, ...]
    a: tuple[str, ...]
    b: tuple[str, ...]

    @property
    def first(self) -> str:
        return row(self.a)

    @property
    def second(self) -> str:
        return row(self.b)


def dealt(seed: int) -> Dealt:
    """Return the note that belongs to a seed."""
    chance = random.Random(seed)
    fingers = in_order(chance.sample(_FINGERS, chance.choice((2, 3, 3, 4))))
    a = in_order(chance.sample(fingers, chance.randint(1, len(fingers) - 1)))
    two = _Two(fingers, a, tuple(f for f in fingers if f not in a))
    return chance.choice((_fates, _cuts, _zones))(chance, two)


def in_order(fingers: tuple[str, ...] | list[str]) -> tuple[str, ...]:
    """Return fingers from the index on."""
    return tuple(f for f in _FINGERS if f in fingers)


def row(names: tuple[str, ...]) -> str:
    """Return names as a sentence lists them: 'index, middle and ring'."""
    return names[0] if len(names) == 1 else f"{', '.join(names[:-1])} and {names[-1]}"


def was(names: tuple[str, ...]) -> str:
    """Return the verb that so many names take."""
    return "was" if len(names) == 1 else "were"


def that(names: tuple[str, ...]) -> str:
    """Return the word that takes up so many names: 'that of the ring', 'those of the ring and small'."""
    return "that" if len(names) == 1 else "those"


def _each(two: _Two, x: Callable[[], str], y: Callable[[], str]) -> list[str]:
    return [x() if finger in two.a else y() for finger in two.fingers]


def _sentence(chance: random.Random, tendon: str, two: _Two, x: Callable[[], str], y: Callable[[], str]) -> str:
    """Return one of the ways to deal two states of a tendon out."""
    a, b, told = two.first, two.second, _each(two, x, y)
    pairs = ", ".join(f"{finger} {state}" for finger, state in zip(two.fingers, told, strict=True))
    return chance.choice(
        (
            f"The {tendon} was {x()} in the {a} and {y()} in the {b}.",
            f"The {tendon} of the {a} {was(two.a)} {x()}; {that(two.b)} of the {b} {was(two.b)} {y()}.",
            f"The {tendon} of the {a} {was(two.a)} {x()}, {that(two.b)} of the {b} {y()}.",
            f"In the {a} the {tendon} was {x()}; in the {b} it was {y()}.",
            f"{tendon}: {pairs}.",
            f"{tendon} {x()}: {', '.join(two.a)}. {tendon} {y()}: {', '.join(two.b)}.",
            f"The {tendon} was {x()} in all but the {b}, where it was {y()}.",
            f"{tendon} ({', '.join(two.a)}) {x()}. {tendon} ({', '.join(two.b)}) {y()}.",
            f"As to the {tendon}, it was {x()} in the {a}, while in the {b} it was {y()}.",
            f"As it turned out, the {tendon} was {x()} in the {a} but {y()} in the {b}.",
            f"Only the {a} had the {tendon} {x()}; in the {b} it was {y()}.",
            f"{tendon} {'/'.join(two.a)} {x()}, {'/'.join(two.b)} {y()}.",
            f"The {tendon} tendons of the {row(two.fingers)} were {row(tuple(told))} respectively.",
            f"The {tendon} tendons were {x()} except {that(two.b)} of the {b}, which {was(two.b)} {y()}.",
        )
    )


def _fates(chance: random.Random, two: _Two) -> Dealt:
    """Return a note on what became of the superficial flexors."""
    x, y = chance.sample(list(_FATES), 2)
    told = _sentence(chance, "FDS", two, lambda: chance.choice(_FATES[x]), lambda: chance.choice(_FATES[y]))
    body = f"The FDP and FDS of the {row(two.fingers)} fingers were completely divided. The FDP tendons were repaired."
    truth = {(f, "FDS", "treatment"): x if f in two.a else y for f in two.fingers}
    truth |= {(f, "FDP", "treatment"): "repaired" for f in two.fingers}
    truth |= {(f, t, "extent"): "complete" for f in two.fingers for t in ("FDP", "FDS")}
    return Dealt(f"{body} {told}\n", truth)


def _cuts(chance: random.Random, two: _Two) -> Dealt:
    """Return a note on how far a tendon was cut."""
    x, y = chance.sample(list(_CUTS), 2)
    tendon = chance.choice(("FDP", "FDS"))
    told = _sentence(chance, tendon, two, lambda: chance.choice(_CUTS[x]), lambda: chance.choice(_CUTS[y]))
    text = f"Wounds of the {row(two.fingers)} fingers of the right hand. {told} The skin was closed.\n"
    return Dealt(text, {(f, tendon, "extent"): x if f in two.a else y for f in two.fingers})


def _zones(chance: random.Random, two: _Two) -> Dealt:
    """Return a note on where the deep flexors were cut."""
    x, y = chance.sample(_ZONES, 2)
    a, b = two.first, two.second
    told = chance.choice(
        (
            f"The FDP was completely divided in zone {x} in the {a} and in zone {y} in the {b}.",
            f"The FDP of the {a} {was(two.a)} cut through in zone {x}, {that(two.b)} of the {b} in zone {y}.",
            f"In the {a} the FDP was transected in zone {x}; in the {b}, in zone {y}.",
            f"Zone {x} in the {a}, zone {y} in the {b}. In each the FDP was cut through.",
        )
    )
    text = f"Wounds of the {row(two.fingers)} fingers of the right hand. {told} The tendons were repaired.\n"
    truth = {(f, "FDP", "zone"): x if f in two.a else y for f in two.fingers}
    return Dealt(text, truth | {(f, "FDP", "treatment"): "repaired" for f in two.fingers})
