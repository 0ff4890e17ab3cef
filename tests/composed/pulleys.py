"""Sentences on pulleys: one pulley dealt out over fingers, or several of one finger, each with its own fate."""

import random
from dataclasses import dataclass

from dealt import in_order, row, that, was

_FATES = {
    "intact": ("intact", "preserved", "left intact", "found intact"),
    "vented": ("vented", "partially released", "partly opened", "vented by a few millimetres"),
    "released": ("fully released", "divided along its whole length", "completely divided"),
    "excised": ("excised", "sacrificed"),
    "repaired": ("opened and repaired", "repaired", "divided and then repaired"),
    "reconstructed": ("reconstructed", "reconstructed with a slip of FDS"),
}
_DONE = ("vented", "released", "excised", "repaired")

Place = tuple[str, str]  # finger, pulley


@dataclass(frozen=True, slots=True)
class Pulleys:
    """A note, and what it says of each pulley; a pulley of `free` may also be read as intact."""

    text: str
    truth: dict[Place, str]
    free: frozenset[Place] = frozenset()


def pulleys_of_fingers(seed: int) -> Pulleys:
    """Return a note that deals two fates of a pulley out over two or three fingers."""
    chance = random.Random(seed)
    fingers = in_order(chance.sample(("index", "middle", "ring", "small"), chance.choice((2, 2, 3))))
    a = in_order(chance.sample(fingers, chance.randint(1, len(fingers) - 1)))
    b = tuple(f for f in fingers if f not in a)
    pulley = chance.choice(("A1", "A2", "A3", "A4"))
    other = chance.choice([p for p in ("A2", "A3", "A4") if p != pulley])
    x, y = chance.sample(list(_FATES), 2)
    told, wider = _dealt(chance, (fingers, a, b), (pulley, other), (x, y))
    truth = {(f, pulley): x if f in a else y for f in fingers} | wider
    return Pulleys(f"The FDP of the {row(fingers)} fingers was completely divided and repaired. {told}\n", truth)


def _dealt(
    chance: random.Random, fingers: tuple[tuple[str, ...], ...], pulleys: tuple[str, str], fates: tuple[str, str]
) -> tuple[str, dict[Place, str]]:
    every, a, b = fingers
    pulley, other = pulleys

    def first() -> str:
        return chance.choice(_FATES[fates[0]])

    def second() -> str:
        return chance.choice(_FATES[fates[1]])

    def each(lead: str) -> list[str]:
        return [f"{f}{lead} {first() if f in a else second()}" for f in every]

    whole = {(f, other): "intact" for f in every}
    one, two = row(a), row(b)
    plain = (
        f"{pulley} was {first()} in the {one} and {second()} in the {two}.",
        f"The {pulley} pulley was {first()} in the {one}, but in the {two} it was {second()}.",
        f"In the {one} {pulley} was {first()}; in the {two} it was {second()}.",
        f"{pulley}: {', '.join(each(''))}.",
        f"The {pulley} of the {one} {was(a)} {first()}, {that(b)} of the {two} finger{'s' * (len(b) > 1)} {second()}.",
        f"{pulley} was {second()} in the {two} only; in the {one} it was {first()}.",
        f"Only in the {two} was {pulley} {second()}; in the {one} it was {first()}.",
        f"Pulleys - {'; '.join(each(f' {pulley}'))}.",
        f"{pulley} {'/'.join(a)} {first()}, {'/'.join(b)} {second()}.",
        f"{pulley} ({one}) {first()}. {pulley} ({two}) {second()}.",
        f"{pulley} was {first()} in the {one}. The same pulley was {second()} in the {two}.",
    )
    with_other = (
        (" ".join(f"{part.capitalize()}, {other} intact." for part in each(f": {pulley}")), whole),
        (
            f"{pulley} and {other} were {first()} in the {one}. "
            f"In the {two} {pulley} was {second()} and {other} was intact.",
            {(f, other): fates[0] if f in a else "intact" for f in every},
        ),
    )
    return chance.choice((*((sentence, {}) for sentence in plain), *with_other))


def pulleys_of_one_finger(seed: int) -> Pulleys:
    """Return a note on two or three pulleys of one finger."""
    chance = random.Random(seed)
    finger = chance.choice(("index", "middle", "ring", "small"))
    p, q, r = chance.sample(("A1", "A2", "A3", "A4"), 3)
    x, y = chance.sample(_DONE, 2)
    first, second, kept = (chance.choice(_FATES[fate]) for fate in (x, y, "intact"))
    vent = f"{chance.choice(('vented', 'opened', 'vented over'))} {chance.choice((3, 4, 5, 6))} mm"
    told: dict[str, dict[str, str]] = {
        f"All pulleys were {kept} but for {p}, which was {first}.": {p: x},
        f"No pulley was divided except {p}, which was {vent}.": {p: "vented"},
        f"{p} and {q} were {kept}; {r} was {first}.": {p: "intact", q: "intact", r: x},
        f"{p} {kept}, {q} {first}, {r} {second}.": {p: "intact", q: x, r: y},
        f"We spared {p} and {q}, and {r} was {first}.": {p: "intact", q: "intact", r: x},
        f"The repair would not pass {p}, which was therefore {vent}; {q} remained whole.": {p: "vented", q: "intact"},
        f"{p} was {vent} at its distal end. {q} was {first}.": {p: "vented", q: x},
        f"Access was through {p}, which was {first}, between {q} and {r}.": {p: x},
        f"Pulleys: {p} {kept}; {q}: {first}; {r} - {second}.": {p: "intact", q: x, r: y},
        f"{p} was opened for access and closed again with 6-0 nylon; {q} was {kept}.": {p: "repaired", q: "intact"},
        f"{p} was {kept} and so was {q}, whereas {r} was {first}.": {p: "intact", q: "intact", r: x},
        f"Neither {p} nor {q} was opened; {r} was {first}.": {p: "intact", q: "intact", r: x},
        f"{p} was {first}, as was {q}; {r} was {kept}.": {p: x, q: x, r: "intact"},
        f"{p} was torn in the accident and not repaired. {q} was {first}.": {p: "injured", q: x},
        f"{p} was {kept} at first, but the repair caught on it and it was {vent}. {q} {kept}.": {
            p: "vented",
            q: "intact",
        },
        f"{p} was {kept}, but the tendon would not pass and it was {vent}.": {p: "vented"},
    }
    sentence = chance.choice(list(told))
    truth = {(finger, pulley): fate for pulley, fate in told[sentence].items()}
    rest = frozenset((finger, pulley) for pulley in ("A1", "A2", "A3", "A4"))
    free = rest if sentence.startswith(("All", "No")) else frozenset()
    text = f"The FDP of the {finger} finger was completely divided and repaired. {sentence}\n"
    return Pulleys(text, truth, free - truth.keys())
