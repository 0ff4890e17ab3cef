"""Forms whose fields are ticked by chance, with what they say: marks of many kinds, before their options or behind."""

import random
from dataclasses import dataclass

_MARKS = (
    *(("[ ]", tick) for tick in ("[x]", "[X]", "[\u2713]", "[\u221a]")),
    *(("\u2610", tick) for tick in ("\u2612", "\u2611", "\u2713")),
    ("( )", "(x)"),
    ("{ }", "{x}"),
    ("[_]", "[x]"),
    ("[  ]", "[ x ]"),
    ("\u25a1", "\u2611"),
    ("__", "X"),
    ("___", "_X_"),
    ("o", "x"),
    ("-", "X"),
)
_BARE = frozenset(["o", "-", "__", "___"])  # no marks without a space beside them
_SEPARATORS = (" ", "  ", "   ", "    ", " / ", " | ")
_LABEL_ENDS = (":", ": ", ":   ", "  ", "?  ", " ..... ")
_HEADS = ("Ring FDP repaired.", "RING FINGER, FDP repair", "Digit: ring   Tendon: FDP   Repaired: yes")

Options = tuple[tuple[str, object], ...]
# Field, its labels, and its options with what each means.
_FIELDS: tuple[tuple[str, tuple[str, ...], Options], ...] = (
    ("ends", ("Ends", "Stumps"), (("clean", "clean"), ("ragged", "ragged"), ("crushed", "crushed"))),
    ("strands", ("Strands", "Core strands", "No. of strands"), (("2", 2), ("4", 4), ("6", 6), ("8", 8))),
    ("peripheral", ("Epitendinous", "Peripheral suture"), (("yes", "present"), ("no", "absent"))),
    ("gap", ("Gap", "Gap after repair", "Gapping"), (("none", "none"), ("seen", "seen"))),
    ("gap", ("Gap", "Gap on testing"), (("no", "none"), ("yes", "seen"))),
    ("glide", ("Glide", "Gliding"), (("free", "free"), ("catching", "catching"), ("restricted", "restricted"))),
    ("bulk", ("Bulky", "Bulky repair"), (("yes", "present"), ("no", "none"))),
    ("tension", ("Tension", "Tension on repair"), (("yes", "present"), ("no", "none"))),
    ("hold", ("Hold", "Locking"), (("locking", "locking"), ("grasping", "grasping"))),
    ("A2", ("A2", "A2 pulley"), (("intact", "intact"), ("vented", "vented"), ("repaired", "repaired"))),
    ("A4", ("A4", "A4 pulley"), (("intact", "intact"), ("vented", "vented"), ("excised", "excised"))),
)
_SHOWN = 6  # fields of a form
_LEFT_EMPTY = 0.15


@dataclass(frozen=True, slots=True)
class Form:
    """A form and, by field or pulley, what is ticked in it; None where nothing is."""

    text: str
    truth: dict[str, object]


def form(seed: int) -> Form:
    """Return the form that belongs to a seed."""
    chance = random.Random(seed)
    empty, tick = chance.choice(_MARKS)
    leading, separator = chance.random() < 0.5, chance.choice(_SEPARATORS)
    glue = " " if empty in _BARE else chance.choice(("", " "))
    end = chance.choice(_LABEL_ENDS)
    lines, truth = [chance.choice(_HEADS)], dict[str, object]()
    for name, labels, options in chance.sample(_FIELDS, _SHOWN):
        if name in truth:
            continue
        chosen = None if chance.random() < _LEFT_EMPTY else chance.choice(options)
        marked = [(tick if option == chosen else empty, option[0]) for option in options]
        told = [f"{mark}{glue}{word}" if leading else f"{word}{glue}{mark}" for mark, word in marked]
        lines.append(chance.choice(labels) + end + separator.join(told))
        truth[name] = chosen[1] if chosen is not None else None
    return Form("\n".join(lines) + "\n", truth)
