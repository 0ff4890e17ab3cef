"""Sentences on the two slips of a superficialis: one is sewn, the other left, trimmed or taken out, or found whole."""

import random
from dataclasses import dataclass

_OTHER_FATES = {
    "excised": ("excised", "resected"),
    "left": ("left unrepaired", "left alone", "not repaired"),
    "trimmed": ("trimmed",),
}
_THREADS = {"Prolene": "polypropylene", "Ethibond": "braided polyester", "nylon": "nylon"}

Place = tuple[str, str]  # slip, field


@dataclass(frozen=True, slots=True)
class Slips:
    """A note on the slips of one superficialis, and what it says of each."""

    text: str
    truth: dict[Place, str]


def slips(seed: int) -> Slips:
    """Return the note that belongs to a seed."""
    chance = random.Random(seed)
    finger = chance.choice(("index", "middle", "ring", "small"))
    sewn, rest = chance.choice((("radial", "ulnar"), ("ulnar", "radial")))
    thread = chance.choice(list(_THREADS))
    size = chance.choice(("4-0", "5-0"))
    fate = chance.choice(list(_OTHER_FATES))
    told = chance.choice(_OTHER_FATES[fate])
    name = chance.choice(("FDS", "superficialis"))
    done = {"excised": f"excised the {rest}", "left": f"left the {rest} unrepaired", "trimmed": f"trimmed the {rest}"}
    with_thread = f"{size} {thread}"
    both_cut = {(sewn, "extent"): "complete", (rest, "extent"): "complete"}
    wordings: list[tuple[str, dict[Place, str]]] = [
        (f"The {rest} slip of the {name} was {told}. The {sewn} slip was repaired with {with_thread}.", {}),
        (f"{name}: {sewn} slip repaired ({with_thread}), {rest} slip {told}.", {}),
        (f"{name}. {sewn.capitalize()} slip: repaired, {with_thread}. {rest.capitalize()} slip: {told}.", {}),
        (f"Of the two {name} slips only the {sewn} was repaired, with {with_thread}; the {rest} was {told}.", {}),
        (f"One slip of {name}, the {rest}, was {told} to save room and the other was sewn with {with_thread}.", {}),
        (f"We repaired the {sewn} {name} slip with {with_thread} and {done[fate]}.", {}),
        (f"The {sewn} slip of the {name} was sewn with {with_thread}, while its {rest} slip was {told}.", {}),
        (
            f"Both slips of {name} were divided. "
            f"The {sewn} slip was repaired with {with_thread}, the {rest} slip was {told}.",
            both_cut,
        ),
        (
            f"{name}: both slips cut. {sewn.capitalize()} sutured with {with_thread}, {rest} {told}.",
            both_cut,
        ),
        (
            f"The {name} was cut in both slips; I sewed the {sewn} one with {with_thread} and {done[fate]}.",
            both_cut,
        ),
    ]
    sentence, more = chance.choice(wordings)
    truth = {(sewn, "treatment"): "repaired", (sewn, "size"): size, (sewn, "material"): _THREADS[thread]}
    truth |= {(rest, "treatment"): fate} | more
    return Slips(f"The FDP of the {finger} finger was completely divided and repaired. {sentence}\n", truth)
