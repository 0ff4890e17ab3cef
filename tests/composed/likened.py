"""Two repairs, the second told only by its likeness to the first, with something or nothing that was done otherwise."""

import random
from dataclasses import dataclass

Place = tuple[str, str, str]
Facts = dict[str, object]

_FIRST: tuple[tuple[str, Facts], ...] = (
    (
        "The {a} FDP was repaired with a four-strand cruciate core of 4-0 Ticron and a running 6-0 Prolene epitendinous"
        " suture.",
        {"strands": 4, "size": "4-0", "peripheral": "present"},
    ),
    (
        "{A} FDP: four-strand modified Kessler, 4-0 FiberWire, 6-0 Prolene running epitendinous.",
        {"strands": 4, "size": "4-0", "peripheral": "present"},
    ),
    (
        "{A} finger: FDP was sutured with a 4-0 Supramid core, six strands, and completed with a 6-0 nylon"
        " circumferential.",
        {"strands": 6, "size": "4-0", "peripheral": "present"},
    ),
    (
        "I repaired the FDP of the {a} finger using four strands of 4-0 Ethibond, then a 6-0 peripheral.",
        {"strands": 4, "size": "4-0", "peripheral": "present"},
    ),
)
_SECOND = (
    *("The {b} FDP was repaired in the same way{x}.", "The {b} FDP was repaired in the same manner as the {a}{x}."),
    *("{B} FDP: same{x}.", "{B} FDP: as for the {a}{x}.", "{B} FDP: ditto{x}.", "{B}: as {a}{x}."),
    *("An identical repair was done to the {b} FDP{x}.", "The same was done for the {b} FDP{x}."),
    *("The {b} FDP was likewise repaired{x}.", "The {b} FDP was then sutured similarly{x}."),
    *("The FDP of the {b} finger was treated exactly as that of the {a} finger{x}.", "Same repair {b} FDP{x}."),
    *("For the {b} finger the same technique was used{x}.", "We did the {b} in the same fashion{x}."),
    *("I repeated this on the {b} FDP{x}.", "This was repeated for the {b} finger{x}."),
    *("The {b} finger FDP was fixed in exactly the same way{x}.", "{B} finger - identical{x}."),
    *("The {b} FDP repair was the same as the {a}{x}.", "The {b} was done the same{x}."),
    *("The {b} FDP was repaired with the same technique{x}.", "As for the {b} FDP, the same repair{x}."),
    *("{B} FDP repaired as above{x}.", "{B} FDP repaired like the {a}{x}.", "The {b} FDP was handled identically{x}."),
    *("In the {b} finger I did just the same{x}.", "{B} finger FDP, the same again{x}."),
)
_OTHERWISE: tuple[tuple[str, Facts], ...] = (
    ("", {}),
    (" but without an epitendinous suture", {"peripheral": "absent"}),
    (" but no epitendinous", {"peripheral": "absent"}),
    (" with the exception of the peripheral suture, which was omitted", {"peripheral": "absent"}),
    (" except for the epitendinous, which I left out", {"peripheral": "absent"}),
    ("; no peripheral suture was added", {"peripheral": "absent"}),
    (", less the epitendinous", {"peripheral": "absent"}),
    (" minus the peripheral", {"peripheral": "absent"}),
    (" (core only)", {"peripheral": "absent"}),
    (", the peripheral suture being 5-0 here", {"peripheral_size": "5-0"}),
    (", but with 3-0", {"size": "3-0"}),
    (" using 3-0 instead", {"size": "3-0"}),
    (", only here with 3-0", {"size": "3-0"}),
    (" except that only two strands were placed", {"strands": 2}),
    (", with two strands only", {"strands": 2}),
    (", but two strands", {"strands": 2}),
)
_FINGERS = ("index", "middle", "ring", "small")


@dataclass(frozen=True, slots=True)
class Likened:
    """A note of two repairs and what it says of each."""

    text: str
    truth: dict[Place, object]


def likened(seed: int) -> Likened:
    """Return the note that belongs to a seed."""
    chance = random.Random(seed)
    a, b = chance.sample(_FINGERS, 2)
    (first, facts), second, (otherwise, changed) = map(chance.choice, (_FIRST, _SECOND, _OTHERWISE))
    words = {"a": a, "b": b, "A": a.capitalize(), "B": b.capitalize()}
    between = chance.choice((" ", "\n"))
    text = (
        f"The FDP of the {a} and of the {b} finger were divided in zone II.\n{first.format(**words)}{between}"
        f"{second.format(x=otherwise, **words)} Both glided freely.\n"
    )
    own = {(a, "FDP", field): value for field, value in facts.items()}
    return Likened(text, own | {(b, "FDP", field): value for field, value in {**facts, **changed}.items()})
