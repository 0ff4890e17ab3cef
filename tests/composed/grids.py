"""Grids of two or three fingers, across or down, under every way of heading a finger, with what they say.

Some cells tell nothing ('n/a', 'not recorded', a dash, a blank): what they stand for is not known.
"""

import random
from collections.abc import Callable
from dataclasses import dataclass

# Numeral, number and ordinal of each finger.
_FINGERS = {
    "index": ("II", "2", "2nd"),
    "middle": ("III", "3", "3rd"),
    "ring": ("IV", "4", "4th"),
    "small": ("V", "5", "5th"),
}
_ALSO = {"middle": "long", "small": "little"}
_INITIALS = {"index": "IF", "middle": "MF", "ring": "RF", "small": "SF"}

Head = Callable[[str, str, str, str], str]
_HEADS: tuple[Head, ...] = (
    lambda name, roman, number, nth: name,
    lambda name, roman, number, nth: f"{name.capitalize()} finger",
    lambda name, roman, number, nth: name.upper(),
    lambda name, roman, number, nth: f"dig {roman} ({name})",
    lambda name, roman, number, nth: f"{name} ({roman})",
    lambda name, roman, number, nth: f"{name.capitalize()} (D{number})",
    lambda name, roman, number, nth: f"D{number} {name}",
    lambda name, roman, number, nth: f"D{number} / {name}",
    lambda name, roman, number, nth: f"D{number} ({name})",
    lambda name, roman, number, nth: f"digit {number}",
    lambda name, roman, number, nth: f"{nth} ({name}) finger",
    lambda name, roman, number, nth: f"ray {roman}",
    lambda name, roman, number, nth: roman,
    lambda name, roman, number, nth: f"{name.capitalize()}, left",
    lambda name, roman, number, nth: f"L {name}",
    lambda name, roman, number, nth: f"{name} = D{number}",
    lambda name, roman, number, nth: f"{name} f.",
    lambda name, roman, number, nth: _INITIALS[{"2": "index", "3": "middle", "4": "ring", "5": "small"}[number]],
)
_NO_ANSWERS = ("-", "n/a", "", "not recorded", "\u2013")

Place = tuple[str, str, str]  # digit, part, field
Row = tuple[str, str, tuple[str, ...], tuple[tuple[str, object], ...]]  # part, field, labels, answers

_CUT: Row = (
    "FDP",
    "extent",
    ("FDP, cut", "FDP cut", "FDP: cut", "FDP - cut", "FDP", "FDP division", "FDP found", "FDP, extent", "State of FDP"),
    (("total", "complete"), ("complete", "complete"), ("through", "complete"), ("100 %", "complete")),
)
_REPAIRED: Row = (
    "FDP",
    "strands",
    ("FDP repaired with", "FDP sewn with"),
    (("4 strands", 4), ("2 strands", 2), ("six strands", 6)),
)
_ROWS: tuple[Row, ...] = (
    ("FDP", "zone", ("zone", "Zone", "Level (zone)", "Flexor zone"), (("II", "II"), ("I", "I"), ("III", "III"))),
    ("FDP", "ends", ("FDP, ends", "Ends of FDP", "FDP stumps"), (("ragged", "ragged"), ("clean", "clean"))),
    (
        "FDP",
        "trimmed_mm",
        ("FDP, taken away", "FDP trimmed", "FDP, trimmed by", "FDP shortened by"),
        (("5 mm", 5), ("2 mm", 2), ("none", None)),
    ),
    (
        "FDP",
        "purchase_mm",
        ("FDP, core purchase", "FDP purchase", "FDP bite", "FDP grip each side"),
        (("10 mm", 10), ("7 mm", 7)),
    ),
    (
        "FDP",
        "peripheral",
        ("FDP, epitendinous", "Epitendinous FDP", "FDP peripheral", "FDP rim suture", "Peripheral suture, FDP"),
        (("6-0 Prolene running", "present"), ("none", "absent"), ("no", "absent"), ("6-0", "present")),
    ),
    (
        "FDP",
        "gap",
        ("FDP, gap after", "FDP gap", "Gap FDP", "FDP gap on test", "Gap at FDP repair"),
        (("1 mm", "seen"), ("0", "none"), ("none", "none"), ("no", "none"), ("0 mm", "none")),
    ),
    (
        "FDP",
        "tension",
        ("FDP, tension", "FDP tension", "Tension on FDP"),
        (("yes, some", "present"), ("no", "none"), ("none", "none"), ("some", "present")),
    ),
    (
        "FDP",
        "glide",
        ("FDP, glides", "FDP glide", "FDP gliding", "Glide of FDP"),
        (("free", "free"), ("catches at A2", "catching"), ("freely", "free"), ("tight", "restricted")),
    ),
    (
        "FDS",
        "extent",
        ("FDS, cut", "FDS cut", "FDS: cut", "FDS", "FDS division", "FDS injury", "FDS found"),
        (("total", "complete"), ("60 %", "partial"), ("both slips through", "complete")),
    ),
    (
        "FDS",
        "treatment",
        ("FDS, done", "FDS treatment", "FDS treated by", "What became of FDS", "FDS repair"),
        (("excised", "excised"), ("left", "left"), ("repaired", "repaired"), ("not repaired", "left")),
    ),
    (
        "A2",
        "finding",
        ("A2", "A2 pulley", "Pulley A2", "A2 at the end"),
        (("whole", "intact"), ("vented", "vented"), ("torn, removed", "excised"), ("released", "released")),
    ),
    (
        "A4",
        "finding",
        ("A4", "A4 pulley", "Pulley A4"),
        (("whole", "intact"), ("vented", "vented"), ("intact", "intact"), ("torn, not repaired", "injured")),
    ),
)
_SILENT = 0.12  # share of cells that tell nothing


@dataclass(frozen=True, slots=True)
class Grid:
    """A grid and, by finger, tendon or pulley and field, what it says; None where it does not say."""

    text: str
    truth: dict[Place, object]


def grid(seed: int) -> Grid:
    """Return the grid that belongs to a seed: fingers across for even seeds, down for odd ones."""
    chance = random.Random(seed)
    digits = sorted(chance.sample(list(_FINGERS), chance.choice((2, 2, 3))), key=list(_FINGERS).index)
    head, other = chance.choice(_HEADS), chance.random() < 0.3
    heads = [head(_ALSO.get(d, d) if other else d, *_FINGERS[d]) for d in digits]
    truth: dict[Place, object] = {}
    corner = ("Finger", "Digit", "Ray") if seed % 2 else ("", "Finger", "", "Digit")
    lines = [[chance.choice(corner), *heads]]
    for part, field, labels, answers in (_CUT, *(row for row in _ROWS if chance.random() < 0.6), _REPAIRED):
        told = [chance.choice(answers) for _ in digits]
        if field not in ("extent", "strands"):
            told = [(chance.choice(_NO_ANSWERS), None) if chance.random() < _SILENT else each for each in told]
        truth |= {(digit, part, field): value for digit, (_, value) in zip(digits, told, strict=True)}
        lines.append([chance.choice(labels), *(word for word, _ in told)])
    table = [list(column) for column in zip(*lines, strict=True)] if seed % 2 else lines
    return Grid(_drawn(chance, table), truth)


def _drawn(chance: random.Random, table: list[list[str]]) -> str:
    wide = [max(len(row[n]) for row in table) for n in range(len(table[0]))]
    style = chance.choice(("bar", "bars", "columns", "ruled"))
    between = "    " if style == "columns" else " | "
    lines = [between.join(word.ljust(wide[n]) for n, word in enumerate(row)).rstrip() for row in table]
    if style == "bars":
        lines = [f"| {line} |" for line in lines]
    if style == "ruled":
        lines.insert(1, "-+-".join("-" * n for n in wide))
    title = chance.choice(("", "Operation: repair of flexor tendons, left hand.\n\n"))
    return title + "\n".join(lines) + "\n"
