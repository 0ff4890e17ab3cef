"""'Gapless', a gap before the ends were drawn together, and cuts told by 'ditto'."""

import pytest
from reader_sentences import each

SEWN = "Ring FDP cut through, two strands of 3-0. "


@pytest.mark.parametrize("note", ["It was gapless under the active test.", "A gapless repair."])
def test_gapless_is_without_a_gap(note: str) -> None:
    assert each(SEWN + note, "gap") == {"ring FDP": "none"}


@pytest.mark.parametrize("note", ["The repair was not gapless.", "It was hardly gapless."])
def test_not_gapless_is_not_without(note: str) -> None:
    assert each(SEWN + note, "gap") in ({}, {"ring FDP": "seen"})


@pytest.mark.parametrize(
    "note",
    [
        "Counted across the gap before it was drawn together: six strands of 4-0.",
        "Six strands bridged the gap before the ends were brought together.",
    ],
)
def test_the_gap_before_the_ends_were_together(note: str) -> None:
    assert each("Ring FDP cut through. " + note, "gap") == {}


def test_a_gap_of_the_repair() -> None:
    assert each(SEWN + "There was a gap of 1 mm before the epitendinous was sewn.", "gap") == {"ring FDP": "seen"}


@pytest.mark.parametrize("note", ["FDP cut across completely, ditto FDS.", "FDP completely divided, FDS ditto."])
def test_cut_like_the_one_before(note: str) -> None:
    assert each("Middle finger. " + note, "extent") == {"middle FDP": "complete", "middle FDS": "complete"}


def test_ditto_of_another_finger_is_no_cut() -> None:
    found = each("Ring FDP completely cut, four strands. Middle FDP: core ditto ring.", "extent")
    assert found == {"ring FDP": "complete"}
