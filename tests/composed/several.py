"""Two or three repairs and what became of each, told by 'all', 'none', 'the others', 'except' and short names."""

import random
from dataclasses import dataclass

Place = tuple[str, str, str]

_FINGERS = ("index", "middle", "ring", "small")
_OPENINGS = (
    "The FDP of the {l} fingers were divided in zone II and each repaired with four strands of 4-0. ",
    "FDP {l} cut and repaired, four strands of 4-0 each.\n",
    "The {l} finger FDP tendons were repaired with a four-strand core of 4-0.\n\n",
)
# What is said, and the value it gives to one finger (a), to another (b) or to all the others (r).
_SAID: dict[str, tuple[tuple[str, dict[str, str]], ...]] = {
    "gap": (
        ("None gapped.", {"a": "none", "r": "none"}),
        ("Not one of the {n} gapped.", {"a": "none", "r": "none"}),
        ("Each repair was without a gap.", {"a": "none", "r": "none"}),
        ("The {a} gapped, {others} did not.", {"a": "seen", "r": "none"}),
        ("None gapped except the {a}.", {"a": "seen", "r": "none"}),
        ("All but the {a} were without a gap; the {a} gapped 1 mm.", {"a": "seen", "r": "none"}),
        ("The {a} repair showed a gap whereas the {r} showed none.", {"a": "seen", "r": "none"}),
        ("The {a} had no gap.", {"a": "none"}),
    ),
    "glide": (
        ("Each ran freely.", {"a": "free", "r": "free"}),
        ("None caught.", {"a": "free", "r": "free"}),
        ("The {a} caught on A4, {others} ran freely.", {"a": "catching", "r": "free"}),
        ("All glided freely except the {a}, which caught at A2.", {"a": "catching", "r": "free"}),
        ("With the exception of the {a} all ran freely; the {a} caught.", {"a": "catching", "r": "free"}),
        ("Only the {a} caught.", {"a": "catching"}),
        ("The {a} was the only one that caught.", {"a": "catching"}),
    ),
    "tension": (
        ("None was under tension.", {"a": "none", "r": "none"}),
        ("Only the {a} was under tension.", {"a": "present"}),
        ("The {a} was under some tension, {others} not.", {"a": "present", "r": "none"}),
        ("No tension in the {a}.", {"a": "none"}),
    ),
    "A4": (
        ("A4 was intact in all {n} fingers.", {"a": "intact", "r": "intact"}),
        ("All A4 pulleys were intact except that of the {a}, which was vented.", {"a": "vented", "r": "intact"}),
        ("The A4 pulleys were intact apart from the {a}, vented distally.", {"a": "vented", "r": "intact"}),
        ("The A4 of the {a} was vented, as was that of the {b}.", {"a": "vented", "b": "vented"}),
        (
            "The A4 of the {a} finger was released fully, and that of the {b} finger too.",
            {"a": "released", "b": "released"},
        ),
        ("The A4 pulley of the {a} had been destroyed. That of the {b} was intact.", {"a": "injured", "b": "intact"}),
        ("In the {a} finger A4 was vented; in the {b} it was left intact.", {"a": "vented", "b": "intact"}),
        ("A4 was vented in the {a} finger only.", {"a": "vented"}),
    ),
}


@dataclass(frozen=True, slots=True)
class Several:
    """A note of several repairs, what it says of each, and of which field it speaks."""

    text: str
    truth: dict[Place, object]
    part: str
    field: str


def several(seed: int) -> Several:
    """Return the note that belongs to a seed."""
    chance = random.Random(seed)
    fingers = chance.sample(_FINGERS, chance.choice((2, 3)))
    about = chance.choice(sorted(_SAID))
    said, values = chance.choice(_SAID[about])
    ordered = sorted(fingers, key=_FINGERS.index)
    rest = [f for f in ordered if f != fingers[0]]
    listed = " and ".join((", ".join(ordered[:-1]), ordered[-1]))
    words = {"a": fingers[0], "b": fingers[1], "r": " and ".join(rest), "n": {2: "two", 3: "three"}[len(fingers)]}
    text = chance.choice(_OPENINGS).format(l=listed) + said.format(
        others="the other" if len(rest) == 1 else "the others", **words
    )
    part, field = ("A4", "finding") if about == "A4" else ("FDP", about)
    whose = {"a": fingers[:1], "b": fingers[1:2], "r": rest}
    truth: dict[Place, object] = {(f, part, field): v for key, v in values.items() for f in whose[key]}
    return Several(text + "\n", truth, part, field)
