"""A gap looked for and not found, one that was not there, and glide through the sheath."""

import pytest
from reader_sentences import each, told

SEWN = "Ring FDP cut through, four-strand repair. "


@pytest.mark.parametrize(
    "note",
    [
        "A gap was looked for on extension and none found.",
        "I looked for a gap on extension and found none.",
        "A gap was sought and not found.",
        "A gap was looked for with the wrist straight and there was none.",
    ],
)
def test_a_gap_sought_and_not_found(note: str) -> None:
    assert each(SEWN + note, "gap") == {"ring FDP": "none"}


@pytest.mark.parametrize(
    "note",
    [
        "A gap was looked for on extension and found.",
        "I looked for a gap and a gap of 1 mm was found.",
        "There was a gap, and no reason for it was found.",
    ],
)
def test_a_gap_that_was_found(note: str) -> None:
    assert each(SEWN + note, "gap") == {"ring FDP": "seen"}


@pytest.mark.parametrize(
    "note",
    ["Had there been a gap I'd have added a stitch.", "Had there been a gap we'd have put in two more strands."],
)
def test_a_gap_thought_of(note: str) -> None:
    assert told(SEWN + note, "gap") == {}


@pytest.mark.parametrize(
    ("note", "glide"),
    [
        ("It glides freely through the whole sheath.", "free"),
        ("The repair glided freely from end to end of the sheath.", "free"),
        ("At closure it was restricted by a tight sheath.", "restricted"),
        ("It ran smoothly along the sheath.", "free"),
    ],
)
def test_glide_in_the_sheath(note: str, glide: str) -> None:
    assert each(SEWN + note, "glide") == {"ring FDP": glide}


def test_a_sheath_that_is_smooth() -> None:
    assert told(SEWN + "The sheath was smooth and free of blood.", "glide") == {}
