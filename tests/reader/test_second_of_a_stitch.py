"""Stitches told to be doubled by a bracket or 'plus a second', lumps and pulls of the finished repair."""

import pytest
from reader_sentences import each, told

CUT = "Ring finger. FDP completely divided. "


@pytest.mark.parametrize(
    ("words", "stitch"),
    [
        ("FDP repaired 4 strand modified Kessler (2 Kesslers) 3-0 Prolene.", "double modified kessler"),
        ("FDP repaired with four strands: one looped 4-0 nylon, Tsuge type, plus a second.", "double tsuge"),
        ("FDP repaired with one looped 4-0 nylon, Tsuge type, plus a second stitch in the skin.", "tsuge"),
        ("FDP repaired 2 strand modified Kessler 3-0 Prolene.", "modified kessler"),
    ],
)
def test_the_name_of_a_doubled_stitch(words: str, stitch: str) -> None:
    assert each(CUT + words, "stitch") == {"ring FDP": stitch}


@pytest.mark.parametrize(
    ("words", "field", "value"),
    [
        ("The ends sat together with no undue pull.", "tension", "none"),
        ("There was a fair lump at the repair.", "bulk", "present"),
        ("The suture stays still and without space when I move the finger.", "gap", "none"),
    ],
)
def test_how_the_repair_lay(words: str, field: str, value: str) -> None:
    assert each(CUT + "FDP repaired with 3-0 Prolene, four strands. " + words, field) == {"ring FDP": value}


def test_a_lump_in_the_palm_is_no_bulk() -> None:
    assert told("Ring finger. There was a tender lump in the palm. " + CUT + "FDP repaired with 3-0.", "bulk") == {}
