"""Knots told for several fingers or tendons at once, and counts of strands that are none of this operation."""

import pytest
from reader_sentences import each

TWO = (
    "Left hand, zone II. FDP of the ring and little fingers completely divided. Both were repaired with a cruciate of "
    "3-0 Ethibond, four strands. {}\n"
)
ONE = (
    "Right ring finger, zone II. FDP and FDS completely divided. FDP repaired with a cruciate of 3-0 Ethibond, FDS "
    "with a Kessler of 4-0 Ethibond. {}\n"
)


@pytest.mark.parametrize(
    "words",
    [
        "Knots: ring finger buried, little finger external.",
        "Knots inside in the ring, outside in the little finger.",
        "The ring knot was buried, the little finger knot left outside.",
    ],
)
def test_knots_of_two_fingers(words: str) -> None:
    assert each(TWO.format(words), "knot") == {"ring FDP": "buried", "small FDP": "external"}


@pytest.mark.parametrize("words", ["Knots: buried in FDP, outside in FDS.", "Knots: FDP buried, FDS external."])
def test_knots_of_two_tendons(words: str) -> None:
    assert each(ONE.format(words), "knot") == {"ring FDP": "buried", "ring FDS": "external"}


@pytest.mark.parametrize(
    "words",
    [
        "The trainees were reminded that two strands are not enough for early motion.",
        "Learning issue: what is the rupture rate of 2-strand vs 6-strand repairs.",
        "The FDP of the ring finger had been mended elsewhere in May with two strands, from your summary.",
    ],
)
def test_counts_of_remarks_and_of_earlier_repairs(words: str) -> None:
    assert each(TWO.format(words), "strands") == {"ring FDP": 4, "small FDP": 4}
