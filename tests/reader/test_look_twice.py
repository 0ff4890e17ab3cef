"""Which proposed facts carry a reason to look twice, and which do not."""

import pytest
from reader_sentences import fact_of, record_of, told

PLAIN = (
    "Right ring finger, zone II. FDP completely divided. FDP repaired with a four-strand core suture of 4-0 "
    "Ethibond and a "
    "running 6-0 Prolene epitendinous suture.",
    "Left thumb. FPL completely divided in zone I. FPL repaired with a six-strand core of 3-0 nylon. No gap. A2 "
    "intact.",
    "Left hand. Index FDP completely divided and repaired, 4-0 Prolene, two strands. Small FDP completely divided and "
    "repaired, 3-0 Prolene, four strands.",
)


@pytest.mark.parametrize("note", PLAIN)
def test_plain_words_need_no_second_look(note: str) -> None:
    assert told(note)
    for place, fact in record_of(note).walk():
        if place.group in ("repairs", "pulleys"):
            assert not fact.look_twice, (place.text(), fact.look_twice)


@pytest.mark.parametrize(
    ("note", "entry", "field"),
    [
        # implied by a name
        ("Ring FDP divided and repaired with a cruciate of 4-0 nylon.", "ring FDP", "strands"),
        ("Small FDP cut, repaired, Tajima, 3-0 Prolene.", "small FDP", "strands"),
        # a count against the usual one of a name
        ("Ring FDP divided and repaired with a four-strand Lim-Tsai of 4-0 nylon.", "ring FDP", "strands"),
        # said only in the title
        (
            "PROCEDURE: Four-strand repair of ring FDP.\n\nNARRATIVE: Ring FDP divided and repaired.",
            "ring FDP",
            "strands",
        ),
        ("PROCEDURE: Repair FDP small finger, six-strand.\n\nFINDINGS: Small FDP cut through.", "small FDP", "strands"),
        # two values
        (
            "PROCEDURE: Six-strand repair of ring FDP.\n\nNARRATIVE: Ring FDP divided, repaired with a "
            "four-strand core of 4-0 nylon.",
            "ring FDP",
            "strands",
        ),
        # misspelt
        ("Ring FDP divided and repaired with 4-0 Ethibnd.", "ring FDP", "material"),
        ("Small FDP divided and repaired with a Stricklnd of 4-0 nylon.", "small FDP", "stitch"),
        # of a finger that no title names
        (
            "PROCEDURE: Repair of FDP, left middle finger.\n\nNARRATIVE: The middle FDP was cut and repaired. The ring "
            "FDP was cut and repaired with 3-0 nylon.",
            "ring FDP",
            "size",
        ),
        (
            "DIAGNOSIS: FPL laceration, right thumb.\n\nFINDINGS: Thumb FPL cut and repaired. Index FDP cut, repaired.",
            "index FDP",
            "treatment",
        ),
        # of a finger last named some sentences before, or with another one
        (
            "Index and ring FDP cut and repaired. The index came first. It was cleaned. The wound was rinsed. The "
            "profundus took a core of 4-0 nylon.",
            "index FDP",
            "size",
        ),
    ],
)
def test_what_is_less_than_plain_carries_a_reason(note: str, entry: str, field: str) -> None:
    reasons = fact_of(note, entry, field).look_twice
    assert reasons
    assert all(reason == reason.strip() and len(reason) > 10 for reason in reasons)


@pytest.mark.parametrize(
    ("note", "entry", "field"),
    [
        ("Ring FDP divided and repaired with a cruciate of 4-0 nylon.", "ring FDP", "size"),
        ("Ring FDP divided and repaired with 4-0 Ethibnd.", "ring FDP", "size"),
        (
            "PROCEDURE: Repair of ring FDP.\n\nNARRATIVE: Ring FDP divided and repaired, 4-0 nylon.",
            "ring FDP",
            "treatment",
        ),
    ],
)
def test_the_reason_stays_with_its_fact(note: str, entry: str, field: str) -> None:
    assert not fact_of(note, entry, field).look_twice
