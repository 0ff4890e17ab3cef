"""Forms that are answered in words, with what they say: lines below a finger, grids, one line for each finger or field.

Some answers tell nothing ('n/a', 'not recorded', a dash, a blank): what they stand behind is not known.
"""

import random
from dataclasses import dataclass

_FINGERS = ("index", "middle", "ring", "small")
_NO_ANSWERS = ("", "-", "n/a", "not recorded", "?", "....", "nr", "unknown", "not assessed")

Answers = tuple[tuple[str, object], ...]
# Field or pulley, its labels, and its answers with what each means.
_FIELDS: tuple[tuple[str, tuple[str, ...], Answers], ...] = (
    ("strands", ("Strands", "Core strands"), (("2", 2), ("4", 4), ("6", 6), ("four", 4), ("two", 2))),
    ("size", ("Core size", "Core suture", "Suture size"), (("3-0", "3-0"), ("4-0", "4-0"), ("4/0", "4-0"))),
    (
        "peripheral",
        ("Epitendinous", "Peripheral suture", "Circumferential suture"),
        (("yes", "present"), ("done", "present"), ("no", "absent"), ("none", "absent"), ("not done", "absent")),
    ),
    ("gap", ("Gap", "Gap on testing"), (("none", "none"), ("no", "none"), ("yes", "seen"), ("2 mm", "seen"))),
    ("glide", ("Glide", "Gliding"), (("free", "free"), ("catches", "catching"), ("restricted", "restricted"))),
    ("ends", ("Ends", "Stumps", "Tendon ends"), (("clean", "clean"), ("ragged", "ragged"), ("crushed", "crushed"))),
    ("A2", ("A2", "A2 pulley"), (("intact", "intact"), ("vented", "vented"), ("repaired", "repaired"))),
    ("A4", ("A4", "A4 pulley"), (("intact", "intact"), ("vented", "vented"), ("left alone", "intact"))),
    ("tension", ("Tension", "Tension on repair"), (("none", "none"), ("no", "none"), ("yes", "present"))),
)


@dataclass(frozen=True, slots=True)
class Answered:
    """A form and, by finger and field or pulley, what it says; None where it does not say."""

    text: str
    truth: dict[tuple[str, str], object]


@dataclass(slots=True)
class _Form:
    chance: random.Random
    fingers: list[str]
    labels: dict[str, str]
    answers: dict[str, Answers]
    unanswered: float
    truth: dict[tuple[str, str], object]

    def answer(self, finger: str, name: str) -> str:
        if self.chance.random() < self.unanswered:
            self.truth[finger, name] = None
            return self.chance.choice(_NO_ANSWERS)
        word, self.truth[finger, name] = self.chance.choice(self.answers[name])
        return word


def answered(seed: int) -> Answered:
    """Return the form that belongs to a seed."""
    chance = random.Random(seed)
    fields = chance.sample(_FIELDS, chance.choice((4, 5, 6)))
    form = _Form(
        chance,
        sorted(chance.sample(_FINGERS, chance.choice((1, 2, 2, 3))), key=_FINGERS.index),
        {name: chance.choice(labels) for name, labels, _ in fields},
        {name: answers for name, _, answers in fields},
        chance.choice((0.1, 0.3)),
        {},
    )
    plural = "s" if len(form.fingers) > 1 else ""
    title = f"Operation: repair of FDP, {' and '.join(form.fingers)} finger{plural}."
    lines = chance.choice((_below_each_finger, _fields_down, _fingers_down, _a_line_each, _fields_in_turn))(form)
    return Answered("\n".join([title, *lines]) + "\n", form.truth)


def _below_each_finger(form: _Form) -> list[str]:
    end, mark = form.chance.choice((": ", " - ", "    ", " ..... ", " = ", "? ")), form.chance.choice(("  ", "- "))
    lines: list[str] = []
    for finger in form.fingers:
        lines.append(finger.upper() + form.chance.choice((" FINGER, FDP", " FDP")))
        lines += [mark + label + end + form.answer(finger, name) for name, label in form.labels.items()]
    return lines


def _fields_down(form: _Form) -> list[str]:
    grid = [["", *(finger.upper() for finger in form.fingers)]]
    grid += [[label, *(form.answer(f, name) for f in form.fingers)] for name, label in form.labels.items()]
    return _drawn(form, grid)


def _fingers_down(form: _Form) -> list[str]:
    grid = [["Finger", *form.labels.values()]]
    grid += [[finger.capitalize(), *(form.answer(finger, name) for name in form.labels)] for finger in form.fingers]
    return _drawn(form, grid)


def _drawn(form: _Form, grid: list[list[str]]) -> list[str]:
    if form.chance.random() < 0.4:
        return ["| " + " | ".join(row) + " |" for row in grid]
    wide = [max(len(row[n]) for row in grid) + 4 for n in range(len(grid[0]))]
    return ["".join(told.ljust(wide[n]) for n, told in enumerate(row)).rstrip() for row in grid]


def _a_line_each(form: _Form) -> list[str]:
    between, end = form.chance.choice(("; ", ". ", "   ")), form.chance.choice((": ", " "))
    told = {f: [label + end + form.answer(f, name) for name, label in form.labels.items()] for f in form.fingers}
    return [f"{finger.upper()} FDP: {between.join(fields)}" for finger, fields in told.items()]


def _fields_in_turn(form: _Form) -> list[str]:
    between, end = form.chance.choice(("; ", ", ", "   ")), form.chance.choice((" ", ": "))
    told = {n: between.join(f + end + form.answer(f, n) for f in form.fingers) for n in form.labels}
    return [f"{label}: {told[name]}" for name, label in form.labels.items()]
