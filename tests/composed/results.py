"""Sentences that deal out over fingers how repairs behaved and how ends looked, and what each finger is told."""

import random

from dealt import Dealt, in_order, row, that, was

_FINGERS = ("index", "middle", "ring", "small")
_RESULTS = {
    "gap": (("none", ("no gap", "no gapping")), ("seen", ("a gap of 1 mm", "a 1 mm gap"))),
    "glide": (("free", ("glided freely", "ran freely")), ("catching", ("caught at A2", "snagged on A2"))),
    "ends": (("clean", ("clean",)), ("ragged", ("ragged", "frayed"))),
    "bulk": (("present", ("bulky",)), ("none", ("not bulky", "slim"))),
}


def results(seed: int) -> Dealt:
    """Return the note that belongs to a seed."""
    chance = random.Random(seed)
    fingers = in_order(chance.sample(_FINGERS, chance.choice((2, 2, 3, 3))))
    a = in_order(chance.sample(fingers, chance.randint(1, len(fingers) - 1)))
    b = tuple(f for f in fingers if f not in a)
    name = chance.choice(list(_RESULTS))
    (x, one), (y, other) = chance.sample(_RESULTS[name], 2)
    told = chance.choice(_told(name, a, b, chance.choice(one), chance.choice(other)))
    lead = f"The FDP tendons of the {row(fingers)} fingers were completely divided and each repaired with 4-0 nylon. "
    truth: dict[tuple[str, str, str], str] = {(f, "FDP", name): x if f in a else y for f in fingers}
    return Dealt(f"{lead}{told}\n", truth)


def _told(name: str, a: tuple[str, ...], b: tuple[str, ...], x: str, y: str) -> tuple[str, ...]:
    """Return the ways to deal two results out."""
    first, second = row(a), row(b)
    if name == "gap":
        return (
            f"On traction there was {x} in the {first} and {y} in the {second}.",
            f"Traction: {x} in the {first}, {y} in the {second}.",
            f"In the {first} there was {x}; in the {second}, {y}.",
            f"I saw {x} in the {first} but {y} in the {second}.",
            f"The {first} showed {x}, the {second} {y}.",
        )
    if name == "glide":
        return (
            f"The {first} {x}; the {second} {y}.",
            f"The {first} {x}, whereas the {second} {y}.",
            f"On passive motion the {first} {x} and the {second} {y}.",
            f"In the {first} the repairs {x}; in the {second} they {y}.",
        )
    if name == "ends":
        return (
            f"The ends were {x} in the {first} and {y} in the {second}.",
            f"The ends of the {first} were {x}, those of the {second} {y}.",
            f"In the {first} the ends were {x}; in the {second} they were {y}.",
        )
    return (
        f"The repair was {x} in the {first} and {y} in the {second}.",
        f"The repairs of the {first} {was(a)} {x}, {that(b)} of the {second} {y}.",
        f"In the {first} the repair was {x}, in the {second} it was {y}.",
    )
