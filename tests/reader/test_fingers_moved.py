"""Tests of the fingers say nothing of the wrist's tendons; a count of a grid with its name in two cells."""

import pytest
from reader_sentences import each

WRIST = (
    "Left wrist, zone V. FCU, FPL, FDP ring and FDP small completely cut and repaired with four strands of 3-0 Ticron. "
)


@pytest.mark.parametrize(
    "words",
    [
        "Full roll of fingers by hand, all go, none snag, none gap.",
        "Digits moved passively: all glide freely, none gaps.",
    ],
)
def test_fingers_moved_are_not_the_wrist(words: str) -> None:
    for field in ("gap", "glide", "test"):
        assert "FCU" not in each(WRIST + words, field)
        assert {"ring FDP", "small FDP"} <= each(WRIST + words, field).keys()


def test_finger_and_thumb_tendons() -> None:
    words = "The digits were moved through tenodesis, and there was no gapping in any of the finger and thumb tendons."
    assert each(WRIST + words, "gap") == dict.fromkeys(("thumb FPL", "ring FDP", "small FDP"), "none")


@pytest.mark.parametrize(
    "words",
    [
        "On passive motion of the digits no digital repair gapped, though the ring profundus repair lay bunched.",
        "No finger repair gapped, but the FCU was tight.",
        "None of the digital repairs gapped.",
        "On passive motion no finger repair opened.",
    ],
)
def test_digital_repairs_are_not_those_of_the_wrist(words: str) -> None:
    assert each(WRIST + words, "gap") == dict.fromkeys(("thumb FPL", "ring FDP", "small FDP"), "none")


@pytest.mark.parametrize("words", ["No wrist repair gapped.", "None of the wrist repairs gapped."])
def test_wrist_repairs_are_not_those_of_the_fingers(words: str) -> None:
    assert each(WRIST + words, "gap") == {"FCU": "none"}


def test_any_repair_is_also_of_the_wrist() -> None:
    words = "The fingers were taken through a full passive range and there was no gap in any repair."
    assert each(WRIST + words, "gap")["FCU"] == "none"


def test_a_name_in_two_cells_under_one_title() -> None:
    grid = """Wrist, left. Zone V.

count            cut    side/side note        sewn
  FCU            100%   -                     y
  FDS  MF        100%   -                     y
  FDS  LF        100%   thin as floss         n - left out
  FDP  LF        80%    rad fibres hold       y
"""
    assert each(grid, "extent") == {
        "FCU": "complete",
        "middle FDS": "complete",
        "small FDS": "complete",
        "small FDP": "partial",
    }
    assert each(grid, "treatment")["small FDS"] == "left"
