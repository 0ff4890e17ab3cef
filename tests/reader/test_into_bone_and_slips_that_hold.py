"""A cross-stitch that draws a tendon into bone is its core; 'slips' that hold their stitches do not slide."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "words",
    [
        "The tendon was taken up with a crisscross of 3-0 wire, drawn through the bone and tied over a button.",
        "A criss-cross of 3-0 Prolene was woven into the tendon, drawn through the bone and tied over a button.",
    ],
)
def test_a_crisscross_drawn_into_bone(words: str) -> None:
    found = told(f"Left thumb. FPL avulsed. {words}", "size", "peripheral", "peripheral_size")
    assert found == {"thumb FPL": {"size": "3-0"}}


def test_a_crisscross_around_the_repair() -> None:
    note = "Left thumb. FPL cut, repaired with 3-0 Ethibond, four strands, and a criss-cross of 6-0 Prolene around it."
    assert told(note, "size", "peripheral") == {"thumb FPL": {"size": "3-0", "peripheral": "present"}}


@pytest.mark.parametrize("words", ["FDS slips held their stitches well.", "The slips were sewn nicely."])
def test_slips_that_hold(words: str) -> None:
    assert each(f"Right middle. FDP and FDS repaired with 4-0. {words}", "glide") == {}


def test_a_repair_that_slips_freely() -> None:
    note = "Right middle. FDP repaired with 4-0. The repair slips freely under A2."
    assert each(note, "glide") == {"middle FDP": "free"}
