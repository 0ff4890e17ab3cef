"""Short notes of one finger with an addendum that puts some of it right, and what they say in the end.

Each way of putting a value right is drawn by chance; what is told elsewhere must stay as it was.
"""

import random
from dataclasses import dataclass

_HEADS = (
    *("ADDENDUM", "Addendum, next morning", "Addendum by the attending", "CORRECTION", "Amendment 5 May 2031"),
    *(
        "Late entry",
        "P.S.",
        "Note added the following day",
        "Supplement by the operating surgeon",
        "Addendum 2031-05-05",
    ),
)
_OPENINGS = ("I have read the above.", "On rereading this note I find errors.", "", "", "The above was dictated late.")
_ENDINGS = ("", "", "Everything else stands.", "The rest is correct.")
_COUNTS = {2: "two", 4: "four", 6: "six"}
_SIZES = ("2-0", "3-0", "4-0")
_FATES = {"repaired": "repaired", "excised": "excised", "left": "left unrepaired"}

Place = tuple[str, str]  # part, field


@dataclass(frozen=True, slots=True)
class Addended:
    """A note, its finger, and by part and field what it says once the addendum is heeded; which facts it puts right."""

    text: str
    digit: str
    truth: dict[Place, object]
    corrected: frozenset[Place]


@dataclass(frozen=True, slots=True)
class _Told:
    """What the body says of a field, what the addendum makes of it, and the ways to say so."""

    place: Place
    before: object
    after: object
    body: str
    corrections: tuple[str, ...]


def addended(seed: int) -> Addended:
    """Return the note that belongs to a seed."""
    chance = random.Random(seed)
    digit = chance.choice(("index", "middle", "ring", "small"))
    cut = (_extent,) if chance.random() < 0.5 else (_cut_through, _ends)  # what is cut in part has no ends
    makers = (_superficial, *cut, _strands, _size, _purchase, _peripheral, _gap, _pulley)
    told = [make(chance) for make in makers if make in (*cut, _strands) or chance.random() < 0.6]
    may_change = [each for each in told if each.corrections]
    righted = chance.sample(may_change, min(len(may_change), chance.choice((1, 1, 2, 3))))
    body = " ".join([f"Right {digit} finger, zone II.", *(each.body for each in told)])
    lines = [chance.choice(_OPENINGS), *(chance.choice(each.corrections) for each in righted), chance.choice(_ENDINGS)]
    head = chance.choice(_HEADS) + chance.choice(("\n", "\n", ": ", "\n\n"))
    return Addended(
        f"{body}\n\n{head}{' '.join(line for line in lines if line)}\n",
        digit,
        {each.place: each.after if each in righted else each.before for each in told},
        frozenset(each.place for each in righted),
    )


def _extent(chance: random.Random) -> _Told:
    if chance.random() < 0.5:
        corrections: tuple[str, ...] = (
            "The FDP was only partially divided, about 60 %.",
            "'FDP completely divided' should read 'FDP 60 % divided'.",
            "The FDP was cut to 60 %, not completely.",
        )
        return _Told(("FDP", "extent"), "complete", "partial", "The FDP was completely divided.", corrections)
    corrections = (
        "The FDP was completely divided, not 60 %.",
        "'FDP cut to 60 %' should read 'FDP completely divided'.",
        "The FDP was not partially but completely divided.",
    )
    return _Told(("FDP", "extent"), "partial", "complete", "The FDP was cut to 60 %.", corrections)


def _cut_through(_: random.Random) -> _Told:
    return _Told(("FDP", "extent"), "complete", None, "The FDP was completely divided.", ())


def _ends(chance: random.Random) -> _Told:
    a, b = chance.sample(("clean", "ragged"), 2)
    corrections = (
        f"The ends were {b}, not {a}.",
        f"The tendon ends were in fact {b}.",
        f"'Ends {a}' should read 'ends {b}'.",
        f"The ends were not {a} but {b}.",
    )
    return _Told(("FDP", "ends"), a, b, f"The ends were {a}.", corrections)


def _superficial(chance: random.Random) -> _Told:
    a, b = chance.sample(list(_FATES), 2)
    old, new = _FATES[a], _FATES[b]
    corrections = (
        f"The FDS was {new}, not {old}.",
        f"The superficialis was in fact {new}.",
        f"The FDS was not {old}, it was {new}.",
        f"The note says the FDS was {old}; it was {new}.",
        f"'FDS {old}' should read 'FDS {new}'.",
    )
    return _Told(("FDS", "treatment"), a, b, f"The FDS was completely divided and was {old}.", corrections)


def _strands(chance: random.Random) -> _Told:
    a, b = chance.sample(list(_COUNTS), 2)
    old, new = _COUNTS[a], _COUNTS[b]
    corrections = (
        f"The core suture had {new} strands, not {old}.",
        f"What I actually put in was a {new}-strand core.",
        f"For '{old} strands' read '{new} strands'.",
        f"'{old} strands' should read '{new} strands'.",
        f"The number of strands is wrong: there were {new}.",
        f"Where it says {old} strands it should say {new}.",
        f"The strand count is {b}, not {a} as dictated.",
        f"I wrote {old} strands; it was {new}.",
        f"Correct strand count: {b}.",
    )
    return _Told(("FDP", "strands"), a, b, f"The repair was done with {old} strands.", corrections)


def _size(chance: random.Random) -> _Told:
    (a, b), material = chance.sample(_SIZES, 2), chance.choice(("Ethibond", "Prolene", "Ticron"))
    corrections = (
        f"The core suture was {b}, not {a}.",
        f"For {a} read {b} in the core suture.",
        f"Core suture: {b}, not {a}.",
        f"What I actually used for the core was {b} {material}.",
        f"'{a}' should read '{b}'.",
        f"There was no {a} in the cupboard; the core was done with {b} {material}.",
    )
    return _Told(("FDP", "size"), a, b, f"The core suture was {a} {material}.", corrections)


def _purchase(chance: random.Random) -> _Told:
    a, b = chance.sample((7, 8, 10, 12), 2)
    corrections = (
        f"Purchase was {b} mm, not {a} mm.",
        f"The bites were {b} mm, not {a}.",
        f"The purchase was in fact {b} mm on each side.",
        f"For a purchase of {a} mm read {b} mm.",
        f"'{a} mm' should read '{b} mm'.",
        f"Purchase: {b} mm, not {a} mm.",
    )
    return _Told(("FDP", "purchase_mm"), float(a), float(b), f"Purchase was {a} mm on each side.", corrections)


def _peripheral(chance: random.Random) -> _Told:
    place = ("FDP", "peripheral")
    if chance.random() < 0.5:
        corrections: tuple[str, ...] = (
            "There was no epitendinous suture.",
            "The epitendinous suture was omitted, contrary to the above.",
            "Epitendinous: none.",
            "The epitendinous suture mentioned above was not placed.",
        )
        body = "A running 6-0 Prolene epitendinous suture was added."
        return _Told(place, "present", "absent", body, corrections)
    corrections = (
        "An epitendinous 6-0 Prolene was placed, contrary to the above.",
        "Epitendinous: 6-0 Prolene running.",
        "The epitendinous suture was not omitted: 6-0 Prolene was run round.",
        "I did put in a 6-0 Prolene epitendinous suture.",
    )
    return _Told(place, "absent", "present", "No epitendinous suture was placed.", corrections)


def _gap(chance: random.Random) -> _Told:
    place = ("FDP", "gap")
    if chance.random() < 0.6:
        corrections: tuple[str, ...] = (
            "There was a gap of 1 mm on testing, which I did not mention.",
            "The statement that there was no gap is wrong: there was a gap of 1 mm.",
            "'No gap' should read '1 mm gap'.",
            "Gap: 1 mm, not none.",
        )
        return _Told(place, "none", "seen", "On passive movement there was no gap.", corrections)
    corrections = ("'1 mm gap' should read 'no gap'.", "No gap was seen; the entry above is wrong.", "Gap: none.")
    return _Told(place, "seen", "none", "On passive movement a 1 mm gap was seen.", corrections)


def _pulley(chance: random.Random) -> _Told:
    place = ("A2", "finding")
    if chance.random() < 0.5:
        corrections: tuple[str, ...] = (
            "A2 was not left intact: its distal third was vented.",
            "'A2 intact' should read 'A2 vented'.",
            "I vented the distal third of A2 at the end.",
        )
        return _Told(place, "intact", "vented", "A2 was intact.", corrections)
    corrections = (
        "A2 was not vented; it is intact.",
        "'A2 vented' should read 'A2 intact'.",
        "A2: intact, not vented.",
    )
    return _Told(place, "vented", "intact", "A2 was vented distally.", corrections)
