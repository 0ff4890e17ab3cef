"""Sentences that deal sutures, results and ends out over the two flexors of one finger."""

import random
from dataclasses import dataclass

_THREADS = {"Prolene": "polypropylene", "Ethibond": "braided polyester", "FiberWire": "polyblend", "nylon": "nylon"}
_COUNTS = {2: "two", 4: "four", 6: "six"}

Told = dict[tuple[str, str], object]  # tendon, field
Wording = tuple[str, Told]


@dataclass(frozen=True, slots=True)
class TwoTendons:
    """A note on the deep and the superficial flexor of one finger, and what it says of each."""

    text: str
    truth: Told


def two_tendons(seed: int) -> TwoTendons:
    """Return the note that belongs to a seed."""
    chance = random.Random(seed)
    finger = chance.choice(("index", "middle", "ring", "small"))
    deep, other = chance.choice((("FDP", "FDS"), ("profundus", "superficialis")))
    cut = chance.choice(("completely divided", "lacerated", "cut"))
    parts = [
        (f"The {deep} and {other} of the {finger} finger were {cut}.", {}),
        chance.choice((*_ends(deep, other), ("", {}))),
        chance.choice(_cores(chance, deep, other)),
        chance.choice((*_purchases(deep, other), ("", {}))),
        chance.choice((*_peripherals(chance, deep, other), ("", {}))),
        chance.choice((*_results(deep, other), ("", {}))),
    ]
    truth: Told = {(tendon, "treatment"): "repaired" for tendon in ("FDP", "FDS")}
    for _, told in parts:
        truth |= told
    sentences = (sentence[0].upper() + sentence[1:] for sentence, _ in parts if sentence)
    return TwoTendons(" ".join(sentences) + "\n", truth)


def _of(field: str, deep: object, other: object) -> Told:
    return {("FDP", field): deep, ("FDS", field): other}


def _cores(chance: random.Random, deep: str, other: str) -> list[Wording]:
    a, b = chance.sample(list(_COUNTS), 2)
    thread, thread2 = chance.sample(list(_THREADS), 2)
    size, size2 = chance.choice((("3-0", "4-0"), ("4-0", "3-0")))
    one, two = f"{_COUNTS[a]} strands of {size} {thread}", f"{_COUNTS[b]} strands of {size2} {thread2}"
    apart = _of("strands", a, b) | _of("size", size, size2) | _of("material", _THREADS[thread], _THREADS[thread2])
    alike = _of("strands", a, a) | _of("size", size, size) | _of("material", _THREADS[thread], _THREADS[thread])
    return [
        (f"The {deep} was repaired with {one} and the {other} with {two}.", apart),
        (f"{deep}: {a} strands {size} {thread}. {other}: {b} strands {size2} {thread2}.", apart),
        (f"{one.capitalize()} in the {deep}; {two} in the {other}.", apart),
        (f"Both were repaired: the {deep} with {one}, the {other} with {two}.", apart),
        (f"Both tendons received {one}.", alike),
        (f"Both were repaired with {one}.", alike),
        (f"The {deep} was repaired with {one}. The {other} was repaired in the same manner.", alike),
    ]


def _peripherals(chance: random.Random, deep: str, other: str) -> list[Wording]:
    size = chance.choice(("5-0", "6-0"))
    one = {("FDP", "peripheral"): "present", ("FDP", "peripheral_size"): size, ("FDS", "peripheral"): "absent"}
    return [
        (f"The {deep} had a running {size} as well, the {other} none.", one),
        (f"Epitendinous {size} for the {deep}, none for the {other}.", one),
        (f"A running {size} was added to the {deep} but not to the {other}.", one),
        (f"A running {size} went round the {deep} and the {other} was left without.", one),
        (f"Round the {deep} went a running {size}; the {other} was left without.", one),
        (f"The {deep} was given a running {size}, the {other} was not.", one),
        ("No epitendinous suture in either.", _of("peripheral", "absent", "absent")),
    ]


def _results(deep: str, other: str) -> list[Wording]:
    gap = {("FDP", "gap"): "none", ("FDS", "gap"): "seen"}
    return [
        (f"There was no gap in the {deep} and a 2 mm gap in the {other}.", gap | {("FDS", "gap_mm"): 2}),
        (f"{deep} no gap, {other} gap 1 mm.", gap | {("FDS", "gap_mm"): 1}),
        (f"The {other} gapped 1 mm, the {deep} did not.", gap | {("FDS", "gap_mm"): 1}),
        (f"Gliding was free in the {deep} and restricted in the {other}.", _of("glide", "free", "restricted")),
        (f"The {deep} ran freely; the {other} caught under A2.", _of("glide", "free", "catching")),
        ("No gap in either.", _of("gap", "none", "none")),
    ]


def _ends(deep: str, other: str) -> list[Wording]:
    return [
        (f"The {deep} ends were clean, those of the {other} ragged.", _of("ends", "clean", "ragged")),
        (f"Ends: {deep} ragged, {other} clean.", _of("ends", "ragged", "clean")),
        (f"The {deep} was cleanly cut and the {other} frayed.", _of("ends", "clean", "ragged")),
    ]


def _purchases(deep: str, other: str) -> list[Wording]:
    return [
        (f"Purchase was 10 mm in the {deep} and 7 mm in the {other}.", _of("purchase_mm", 10, 7)),
        (f"Bites of 8 mm in the {deep} and of 6 mm in the {other}.", _of("purchase_mm", 8, 6)),
    ]
