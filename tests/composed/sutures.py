"""Sentences that deal sutures out over the deep flexors of two to four fingers, and what each is told to have."""

import random
from collections.abc import Iterator
from dataclasses import dataclass

from dealt import Place, in_order, row, was

_FINGERS = ("index", "middle", "ring", "small")
_COUNTS = {2: "two", 4: "four", 6: "six", 8: "eight"}
_GAUGES = ("2-0", "3-0", "4-0")
_THREADS = ("Prolene", "Ethibond", "nylon", "PDS")
_NONE_IN = (
    "in the {b} none was placed",
    "in the {b} it was left out",
    "but not in the {b}",
    "the {b} went without",
)


@dataclass(frozen=True, slots=True)
class Sewn:
    """A note, and what it says by finger, tendon and field; lengths are in millimetres."""

    text: str
    truth: dict[Place, str | int | float]


@dataclass(frozen=True, slots=True)
class _Two:
    """Two sutures, the fingers that have the one and those that have the other."""

    fingers: tuple[str, ...]
    a: tuple[str, ...]
    b: tuple[str, ...]
    strands: tuple[int, int]
    sizes: tuple[str, str]
    threads: tuple[str, str]

    def facts(self, name: str, one: str | int | float, other: str | int | float) -> dict[Place, str | int | float]:
        return {(f, "FDP", name): one if f in self.a else other for f in self.fingers}

    def all(self, name: str, value: str | int | float) -> dict[Place, str | int | float]:
        return self.facts(name, value, value)


def sewn(seed: int) -> Sewn:
    """Return the note that belongs to a seed."""
    chance = random.Random(seed)
    fingers = in_order(chance.sample(_FINGERS, chance.choice((2, 3, 3, 4))))
    a = in_order(chance.sample(fingers, chance.randint(1, len(fingers) - 1)))
    first, second = chance.sample(list(_COUNTS), 2)
    sizes, threads = chance.sample(_GAUGES, 2), chance.sample(_THREADS, 2)
    b = tuple(f for f in fingers if f not in a)
    two = _Two(fingers, a, b, (first, second), (sizes[0], sizes[1]), (threads[0], threads[1]))
    lead = f"The FDP tendons of the {row(fingers)} fingers were completely divided. "
    told, truth = chance.choice([*_cores(two), *_said_of_all(two), *_left_out(chance, two), *_lengths(two)])
    return Sewn(f"{lead}{told}\n", truth | two.all("extent", "complete"))


Told = tuple[str, dict[Place, str | int | float]]


def _cores(two: _Two) -> Iterator[Told]:
    """Yield the ways to give each group of fingers a core of its own."""
    a, b, (n, m), (s, z), (t, u) = row(two.a), row(two.b), two.strands, two.sizes, two.threads
    nn, mm = _COUNTS[n], _COUNTS[m]
    truth = two.facts("strands", n, m) | two.facts("size", s, z)
    yield f"The {a} {was(two.a)} repaired with {nn} strands of {s} {t}, the {b} with {mm} strands of {z} {u}.", truth
    yield (
        f"In the {a} a {nn}-strand core of {s} {t} was placed, whereas the {b} got a {mm}-strand core of {z} {u}.",
        truth,
    )
    yield f"I used {nn} strands of {s} {t} on the {a}. On the {b} I used {mm} strands of {z} {u}.", truth
    yield f"{a}: {nn}-strand {s} {t}. {b}: {mm}-strand {z} {u}.".capitalize(), truth
    rest = "the other took only" if len(two.b) == 1 else "the others took only"
    yield f"The {a} took {nn} strands of {s} {t}; {rest} {mm}, of {z} {u}.", truth
    lines = (f"{f}: {n if f in two.a else m} strands, {s if f in two.a else z} {t}" for f in two.fingers)
    yield "\n".join(lines), truth


def _said_of_all(two: _Two) -> Iterator[Told]:
    """Yield the ways to deal out one thing and say the other of all."""
    a, b, (n, m), (s, z), (t, u) = row(two.a), row(two.b), two.strands, two.sizes, two.threads
    nn, mm = _COUNTS[n], _COUNTS[m]
    counted = two.facts("strands", n, m) | two.all("size", s)
    yield f"{s} {t} was used for the core throughout, {nn} strands in the {a} and {mm} in the {b}.", counted
    yield f"The {a} got {nn} strands and the {b} {mm}, all of {s} {t}.", counted
    yield f"FDP repaired ({a}: {nn} strands; {b}: {mm} strands), {s} {t} throughout.", counted
    size_of_a = {(f, "FDP", "size"): s for f in two.a}  # of those left out the size is not told again
    excepting = f"All were repaired with {nn} strands of {s} {t}, save that the {b} got {mm}."
    yield excepting, two.facts("strands", n, m) | size_of_a
    sized = two.all("strands", n) | two.facts("size", s, z)
    yield f"A {nn}-strand core was used throughout: {s} {t} for the {a} and {z} {u} for the {b}.", sized


def _left_out(chance: random.Random, two: _Two) -> Iterator[Told]:
    """Yield the ways to give some fingers a peripheral suture and the others none."""
    a, b, nn, s, t = row(two.a), row(two.b), _COUNTS[two.strands[0]], two.sizes[0], two.threads[0]
    core = f"Each was repaired with {nn} strands of {s} {t}"
    truth = two.all("strands", two.strands[0]) | two.all("size", s) | two.facts("peripheral", "present", "absent")
    without = chance.choice(_NONE_IN).format(b=b)
    yield f"{core}. A running 6-0 epitendinous suture was added in the {a}; {without}.", truth
    excepted = f"except in the {b}, where no peripheral suture was put in"
    yield f"{core} and a running 6-0 peripheral suture, {excepted}.", truth


def _lengths(two: _Two) -> Iterator[Told]:
    """Yield the ways to deal out how much tendon the core holds."""
    a, b, nn, s, t = row(two.a), row(two.b), _COUNTS[two.strands[0]], two.sizes[0], two.threads[0]
    truth = two.all("strands", two.strands[0]) | two.all("size", s) | two.facts("purchase_mm", 10.0, 7.0)
    core = f"Each was repaired with {nn} strands of {s} {t}"
    yield f"{core}. Purchase was 10 mm in the {a} and 7 mm in the {b}.", truth
    yield f"{core}, with bites of 10 mm in the {a} but only 7 mm in the {b}.", truth
