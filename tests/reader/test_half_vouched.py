"""What is left open, known from papers or hearsay only, or was what a family was told, is no finding."""

import pytest
from reader_sentences import each

SEWN = "Right index: FDP divided, repaired. "


@pytest.mark.parametrize(
    "text",
    [
        "There may or may not have been a hair of gapping; the light was poor and I cannot say.",
        "It may or may not have gapped at the end.",
        "It might or might not have shown a gap.",
        "Whether or not it gapped I cannot tell.",
        "I could not say whether there was no gap, the wound being closed by then.",
    ],
)
def test_a_gap_left_open(text: str) -> None:
    assert not each(SEWN + text, "gap")


def test_tension_and_bulk_left_open() -> None:
    assert not each(SEWN + "There may or may not have been tension on it.", "tension")
    assert not each(SEWN + "It may not have been bulky.", "bulk")


def test_a_hair_that_was_not_there() -> None:
    assert each(SEWN + "There was not a hair of gapping on extension.", "gap") == {"index FDP": "none"}


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("An edge stitch was run as well, or so the count of needles suggests.", "peripheral"),
        ("An edge stitch went in too, if the needle count is to be believed.", "peripheral"),
        ("Judging from the count sheet there was a 6-0 edge stitch.", "peripheral"),
        ("An edge stitch was placed, to judge by the needle count.", "peripheral"),
        ("It was done with six strands, or so I was told.", "strands"),
        ("No gap, or so the assistant thought.", "gap"),
        ("It glided freely, or at least so it seemed from where I stood.", "glide"),
    ],
)
def test_only_hearsay(text: str, field: str) -> None:
    assert not each(SEWN + text, field)


def test_or_so_behind_a_figure() -> None:
    assert each(SEWN + "Core of four strands of 4-0 or so.", "strands") == {"index FDP": 4}


def test_so_as_to() -> None:
    text = "The edges were run with 6-0 so as to tidy them."
    assert each(SEWN + text, "peripheral") == {"index FDP": "present"}


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("Thumb: the family was told by telephone that the FPL had been repaired.", "treatment"),
        ("Thumb: the patient was told in recovery that the FPL had been repaired with no gap.", "gap"),
        ("Thumb: the parents were informed that the FPL was repaired with six strands.", "strands"),
    ],
)
def test_what_the_family_was_told(text: str, field: str) -> None:
    assert not each(text, field)


def test_what_the_family_was_told_of_a_pulley() -> None:
    assert not each("Ring: his wife was told that the A2 pulley was intact.", "finding", "pulleys")


def test_told_of_what_was_done() -> None:
    text = "FPL repaired with four strands. The patient was told that she must not grip."
    assert each(text, "strands") == {"thumb FPL": 4}
