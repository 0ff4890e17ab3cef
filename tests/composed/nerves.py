"""Sentences on the digital nerves and arteries of one or several fingers, and what each is told to be."""

import random
from collections.abc import Callable
from dataclasses import dataclass

_FINGERS = ("index", "middle", "ring", "small")
_CUT = ("divided", "cut through", "transected", "severed")
_WHOLE = ("intact", "uninjured", "in continuity")

Place = tuple[str, str, str, str]  # finger, nerve or artery, side, field


@dataclass(frozen=True, slots=True)
class Nerves:
    """A note, and what it says by finger, structure, side and field."""

    text: str
    truth: dict[Place, str]


@dataclass(frozen=True, slots=True)
class _Case:
    """The fingers, the first and the last of them, one side and the other, and words drawn for a state."""

    fingers: tuple[str, ...]
    side: str
    other: str
    cut: Callable[[], str]
    whole: Callable[[], str]

    @property
    def first(self) -> str:
        return self.fingers[0]

    @property
    def last(self) -> str:
        return self.fingers[-1]


def nerves(seed: int) -> Nerves:
    """Return the note that belongs to a seed."""
    chance = random.Random(seed)
    fingers = tuple(sorted(chance.sample(_FINGERS, chance.choice((1, 2, 2, 3))), key=_FINGERS.index))
    side, other = chance.sample(("radial", "ulnar"), 2)
    case = _Case(fingers, side, other, lambda: chance.choice(_CUT), lambda: chance.choice(_WHOLE))
    told, truth = chance.choice(_of_one(case) if len(fingers) == 1 else _of_several(case))
    plural = "s" if len(fingers) > 1 else ""
    body = (
        f"Wounds of the {_row(fingers)} finger{plural} of the right hand. "
        f"The FDP of the {_row(fingers)} was completely divided and repaired."
    )
    return Nerves(f"{body} {told}\n", truth)


def _row(names: tuple[str, ...]) -> str:
    return names[0] if len(names) == 1 else f"{', '.join(names[:-1])} and {names[-1]}"


def _is(finger: str, side: str, value: str, structure: str = "digital nerve") -> dict[Place, str]:
    return {(finger, structure, side, "extent"): value}


def _done(finger: str, side: str, value: str, structure: str = "digital nerve") -> dict[Place, str]:
    return _is(finger, side, "complete", structure) | {(finger, structure, side, "treatment"): value}


def _both(finger: str, value: str, structure: str = "digital nerve") -> dict[Place, str]:
    return _is(finger, "radial", value, structure) | _is(finger, "ulnar", value, structure)


Told = tuple[str, dict[Place, str]]


def _of_one(c: _Case) -> list[Told]:
    f, s, o = c.first, c.side, c.other
    artery = "digital artery"
    return [
        (
            f"The {s} digital nerve was {c.cut()} and was repaired with 9-0 nylon; the {o} one was {c.whole()}.",
            _done(f, s, "repaired") | _is(f, o, "intact"),
        ),
        (f"Both digital nerves were {c.whole()}.", _both(f, "intact")),
        (
            f"The {s} neurovascular bundle was {c.whole()}; the {o} digital nerve was {c.cut()} and coapted with 9-0.",
            _is(f, s, "intact") | _is(f, s, "intact", artery) | _done(f, o, "repaired"),
        ),
        (
            f"Of the digital nerves the {s} was {c.cut()} and the {o} {c.whole()}.",
            _is(f, s, "complete") | _is(f, o, "intact"),
        ),
        (f"Nerves: {s} {c.cut()}, {o} {c.whole()}.", _is(f, s, "complete") | _is(f, o, "intact")),
        (
            f"The {s} digital nerve and artery were {c.cut()}; the nerve was sutured with 9-0 and the artery ligated. "
            f"The {o} bundle was {c.whole()}.",
            _done(f, s, "repaired")
            | _done(f, s, "ligated", artery)
            | _is(f, o, "intact")
            | _is(f, o, "intact", artery),
        ),
        (
            f"{s.capitalize()} digital nerve {c.cut()}, repaired 9-0. {o.capitalize()} {c.whole()}.",
            _done(f, s, "repaired") | _is(f, o, "intact"),
        ),
    ]


def _of_several(c: _Case) -> list[Told]:
    a, b, s, o, every = c.first, c.last, c.side, c.other, _row(c.fingers)
    artery = "digital artery"
    all_whole = {k: v for f in c.fingers for k, v in _both(f, "intact").items()}
    one_side = {k: v for f in c.fingers for k, v in (_done(f, s, "repaired") | _is(f, o, "intact")).items()}
    return [
        (
            f"The {s} digital nerve of the {a} was {c.cut()} and repaired with 9-0; both of the {b} were {c.whole()}.",
            _done(a, s, "repaired") | _both(b, "intact"),
        ),
        (
            f"The {s} digital nerve of the {a} and the {o} digital nerve of the {b} were {c.cut()}; both were sewn.",
            _done(a, s, "repaired") | _done(b, o, "repaired"),
        ),
        (
            f"In the {a} the {s} digital nerve was {c.cut()}, in the {b} the {o}.",
            _is(a, s, "complete") | _is(b, o, "complete"),
        ),
        (
            f"{a.capitalize()}: {s} digital nerve {c.cut()}, repaired; {o} {c.whole()}. {b.capitalize()}: both intact.",
            _done(a, s, "repaired") | _is(a, o, "intact") | _both(b, "intact"),
        ),
        (f"All digital nerves of the {every} were {c.whole()}.", all_whole),
        (
            f"All digital nerves were {c.whole()} except the {s} one of the {a}, which was {c.cut()} and repaired.",
            all_whole | _done(a, s, "repaired"),
        ),
        (
            f"The neurovascular bundles of the {b} were {c.whole()}. In the {a} the {s} bundle was {c.cut()}; "
            f"the nerve was repaired and the artery ligated.",
            _both(b, "intact") | _both(b, "intact", artery) | _done(a, s, "repaired") | _done(a, s, "ligated", artery),
        ),
        (
            f"Nerves: {a} {s} {c.cut()}, {o} {c.whole()}; {b} both {c.whole()}.",
            _is(a, s, "complete") | _is(a, o, "intact") | _both(b, "intact"),
        ),
        (
            f"The {s} digital nerves of the {every} were {c.cut()} and repaired; the {o} digital nerves were intact.",
            one_side,
        ),
        (
            f"The {s} digital nerve was {c.cut()} in the {a} and {c.whole()} in the {b}.",
            _is(a, s, "complete") | _is(b, s, "intact"),
        ),
    ]
