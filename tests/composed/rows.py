"""Forms with several ticked fields on a line, and what they say: fingers in rows or in columns, or a line for each."""

import random
from collections.abc import Callable
from dataclasses import dataclass

_MARKS = (
    *(("[ ]", "[x]"), ("[ ]", "[X]"), ("[_]", "[x]"), ("( )", "(x)"), ("()", "(X)"), ("{ }", "{x}")),
    *(("\u2610", "\u2612"), ("\u25a1", "\u2611")),
)
_SEPARATORS = (" ", " ", "  ", " / ")
_FINGERS = ("index", "middle", "ring", "small")
_PARTS = ("FDP", "FDS", "A2", "A4")

Options = tuple[tuple[str, str], ...]
_CUTS: tuple[Options, ...] = (
    (("cut", "complete"), ("part", "partial"), ("intact", "intact")),
    (("complete", "complete"), ("partial", "partial"), ("intact", "intact")),
    (("divided", "complete"), ("intact", "intact")),
)
_PULLEYS: tuple[Options, ...] = (
    (("intact", "intact"), ("vented", "vented"), ("released", "released")),
    (("intact", "intact"), ("repaired", "repaired")),
)
_LEFT_EMPTY = 0.12


@dataclass(frozen=True, slots=True)
class Rows:
    """A form and, by finger and tendon or pulley, what is ticked; None where nothing is."""

    text: str
    truth: dict[tuple[str, str], str | None]


@dataclass(slots=True)
class _Hand:
    """How one surgeon's form is drawn, and how it was filled in."""

    chance: random.Random
    mark: tuple[str, str]
    leading: bool
    glue: str
    separator: str
    options: dict[str, Options]
    fingers: list[str]
    truth: dict[tuple[str, str], str | None]

    def cell(self, finger: str, part: str) -> str:
        options = self.options[part]
        chosen = None if self.chance.random() < _LEFT_EMPTY else self.chance.choice(options)
        self.truth[finger, part] = chosen[1] if chosen else None
        marked = [(self.mark[option == chosen], option[0]) for option in options]
        told = (f"{m}{self.glue}{w}" if self.leading else f"{w}{self.glue}{m}" for m, w in marked)
        return self.separator.join(told)


def rows(seed: int) -> Rows:
    """Return the form that belongs to a seed."""
    chance = random.Random(seed)
    cuts, pulleys = chance.choice(_CUTS), chance.choice(_PULLEYS)
    parts = _PARTS[: chance.choice((2, 3, 4))]
    hand = _Hand(
        chance,
        chance.choice(_MARKS),
        chance.random() < 0.5,
        chance.choice(("", " ")),
        chance.choice(_SEPARATORS),
        {part: pulleys if part.startswith("A") else cuts for part in parts},
        sorted(chance.sample(_FINGERS, chance.choice((1, 2, 3))), key=_FINGERS.index),
        {},
    )
    lines = chance.choice((_by_finger, _by_part, _in_columns, _one_below_another))(hand)
    return Rows("\n".join(lines) + "\n", hand.truth)


def _by_finger(hand: _Hand) -> list[str]:
    """'Index: FDP cut [x] intact [ ] | FDS cut [ ] intact [x]'."""
    case, end = _case(hand), hand.chance.choice((" ", ": ", "  "))
    between = hand.chance.choice(("   ", " | ", "; ", "     ", " ", ", "))
    fields = (
        (finger, between.join(part + end + hand.cell(finger, part) for part in hand.options)) for finger in hand.fingers
    )
    return [case(finger) + hand.chance.choice((": ", ":  ")) + told for finger, told in fields]


def _by_part(hand: _Hand) -> list[str]:
    """'FDP: index cut [x] intact [ ] | ring cut [ ] intact [x]'."""
    between, end = hand.chance.choice(("   ", " | ", "; ", "     ")), hand.chance.choice((" ", ": "))
    return [f"{part}: " + between.join(f + end + hand.cell(f, part) for f in hand.fingers) for part in hand.options]


def _in_columns(hand: _Hand) -> list[str]:
    case = _case(hand)
    grid = [["", *map(case, hand.fingers)]]
    grid += [[part, *(hand.cell(finger, part) for finger in hand.fingers)] for part in hand.options]
    if hand.chance.random() < 0.3:
        return ["| " + " | ".join(row) + " |" for row in grid]
    gaps = [hand.chance.choice((3, 4)) for _ in grid[0]]
    wide = [max(len(row[n]) for row in grid) + gap for n, gap in enumerate(gaps)]
    return ["".join(told.ljust(wide[n]) for n, told in enumerate(row)).rstrip() for row in grid]


def _one_below_another(hand: _Hand) -> list[str]:
    case, lines = _case(hand), list[str]()
    for finger in hand.fingers:
        lines.append(f"{case(finger)} finger")
        lines += [f"  {part}{hand.chance.choice((' ', ': ', '   '))}{hand.cell(finger, part)}" for part in hand.options]
    return lines


def _case(hand: _Hand) -> Callable[[str], str]:
    return hand.chance.choice((str.upper, str.capitalize))
