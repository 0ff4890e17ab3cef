"""Rows told in two columns, a finger told as a whole, and lengths of the one end and the other."""

import pytest
from reader_sentences import each, told

FOUND = "Findings: FDP of the left middle and ring fingers divided, zone II.\n\n"


@pytest.mark.parametrize(
    "rows",
    [
        "PULLEYS\nmiddle   A2 distal half vented.  A4 intact\nring     nil touched\nlittle   A1 released",
        "SHEATH\nmiddle    A2 vented.  A4 preserved\nring      not seen\nlittle    A1 released",
    ],
)
def test_a_row_ends_with_its_line(rows: str) -> None:
    found = each(FOUND + rows, "finding", group="pulleys")
    assert found["middle A4"] == "intact"
    assert "ring A4" not in found


def test_a_column_that_goes_on_is_read_on() -> None:
    note = "Findings: Left ring FDP divided.\n"
    note += "Core       3-0 Ethibond, four-strand cruciate with a\n           purchase of 9 mm."
    assert told(note, "purchase_mm") == {"ring FDP": {"purchase_mm": (9, 9)}}


@pytest.mark.parametrize(
    "rest", ["THUMB, SMALL\n- not injured", "Index, small:\n- uninjured", "INDEX AND THUMB\n- no injury, untouched"]
)
def test_a_finger_without_injury_names_no_tendon(rest: str) -> None:
    found = each("RING\n- FDP completely divided, repaired.\n\n" + rest, "extent")
    assert found == {"ring FDP": "complete"}


def test_a_tendon_under_the_name_of_its_finger_is_intact() -> None:
    note = "RING\n- FDP completely divided, repaired.\n\nSMALL\n- FDP not injured"
    assert each(note, "extent") == {"ring FDP": "complete", "small FDP": "intact"}


SEWN = "Right small finger FDP repaired with a four-strand core of 4-0 Ethibond, "


@pytest.mark.parametrize(
    ("lengths", "purchase"),
    [
        ("and I took a centimetre on the one side and a bit less, call it eight mil, on the other.", (8, 10)),
        ("with a bite of 9 mm on the one side and rather less, some 7 mm, on the other.", (7, 9)),
        ("with a bite of 9 mm on the one side and a lock of 2 mm on the other.", (9, 9)),
    ],
)
def test_bites_of_the_one_side_and_the_other(lengths: str, purchase: tuple[int, int]) -> None:
    assert told(SEWN + lengths, "purchase_mm") == {"small FDP": {"purchase_mm": purchase}}
