"""Notes that head what they tell with a finger's name: every bullet before it, every spelling, every sign behind it."""

import random
from dataclasses import dataclass

Place = tuple[str, str, str]

_BULLETS = (
    *(("", ""), ("1) ", "2) "), ("1. ", "2. "), ("(1) ", "(2) "), ("a) ", "b) "), ("- ", "- "), ("\u2022 ", "\u2022 ")),
    *(("* ", "* "), ("# ", "# "), ("## ", "## "), ("A. ", "B. "), ("i) ", "ii) "), ("1 ", "2 "), ("1 - ", "2 - ")),
    *(("No 1: ", "No 2: "), ("> ", "> "), ("[1] ", "[2] "), ("1.1 ", "1.2 ")),
)
_NAMES = (
    *("{name}", "{name} finger", "{NAME}", "{NAME} FINGER", "{Name}", "{Name} Finger", "Left {name} finger"),
    *("left {name}", "L{letter}F", "L {letter}F", "{letter}F", "D{number}", "Digit {number}", "{rank} finger"),
    *("{other} finger", "{Other}", "Left hand, {name} finger", "D{numeral}", "Digit {numeral}", "{Name} (left)"),
)
_ENDS = (
    *(":", ".", " -", " \u2013", "\n", ":\n", " |", ";", " (zone II):", ", zone 2:", " zone II -", " =", " ->", " ::"),
    *(",", "...", "**:", " /"),
)
_SPELT = {
    "middle": {"letter": "M", "number": "3", "numeral": "III", "rank": "third", "other": "long"},
    "small": {"letter": "S", "number": "5", "numeral": "V", "rank": "fifth", "other": "little"},
}
_TOLD = (
    (
        "FDP divided, FDS intact. A4 vented.",
        {("FDP", "extent"): "complete", ("FDS", "extent"): "intact", ("A4", "finding"): "vented"},
    ),
    (
        "FDP cut through, four-strand repair with 4-0. FDS left alone.",
        {("FDP", "extent"): "complete", ("FDP", "strands"): 4, ("FDP", "size"): "4-0", ("FDS", "treatment"): "left"},
    ),
    (
        "Profundus completely severed. Superficialis in continuity. A2 intact, A4 fully released.",
        {
            ("FDP", "extent"): "complete",
            ("FDS", "extent"): "intact",
            ("A2", "finding"): "intact",
            ("A4", "finding"): "released",
        },
    ),
)


@dataclass(frozen=True, slots=True)
class Headed:
    """A note of two fingers and what it says of each."""

    text: str
    truth: dict[Place, object]


def headed(seed: int) -> Headed:
    """Return the note that belongs to a seed."""
    chance = random.Random(seed)
    bullets, name, end = chance.choice(_BULLETS), chance.choice(_NAMES), chance.choice(_ENDS)
    fingers = chance.sample(sorted(_SPELT), 2)
    lines = ["Operation: flexor tendon repair left hand, middle and small fingers.\n"]
    truth: dict[Place, object] = {}
    for bullet, finger, (words, facts) in zip(bullets, fingers, chance.sample(_TOLD, 2), strict=True):
        spelt = _SPELT[finger]
        cases = {"name": finger, "NAME": finger.upper(), "Name": finger.title(), "Other": spelt["other"].title()}
        lines.append(f"{bullet}{name.format(**spelt, **cases)}{end} {words}")
        truth.update({(finger, part, field): value for (part, field), value in facts.items()})
    return Headed("\n".join(lines) + "\n", truth)
