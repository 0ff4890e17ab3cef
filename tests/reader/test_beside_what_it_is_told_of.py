"""What is told of the skin, or of how far a test went, and tendons named for where another one runs."""

import pytest
from reader_sentences import told

SEWN = "Ring FDP cut across completely; two-strand core of 3-0 Prolene. "


@pytest.mark.parametrize(
    "note",
    [
        "Skin edges were brought together without tension, a running 5-0 nylon.",
        "The skin was closed loosely, a running 5-0 nylon.",
    ],
)
def test_a_thread_behind_the_skin_is_its_own(note: str) -> None:
    assert told(SEWN + note, "peripheral", "peripheral_size") == {}


def test_a_thread_around_the_tendon_is_peripheral() -> None:
    note = "The edges of the tendon were brought together with a running 6-0 Prolene."
    assert told(SEWN + note, "peripheral") == {"ring FDP": {"peripheral": "present"}}


@pytest.mark.parametrize(
    "passage",
    ["and gliding free between the slips", "gliding free between both slips", "gliding free through the slips"],
)
def test_the_tendon_that_runs_between_the_slips(passage: str) -> None:
    note = f"R index, FDS: radial slip half cut, trimmed. FDP: cut through, repaired with 4-0 Ticron, {passage}."
    assert told(note, "glide") == {"index FDP": {"glide": "free"}}


def test_a_smoothed_slip_that_runs() -> None:
    note = "R index FDS radial slip cut, trimmed away, now glides freely."
    assert told(note, "glide") == {"index FDS radial": {"glide": "free"}}


@pytest.mark.parametrize(
    "note", ["No gap at 20 degrees short of full extension.", "Gap absent until 30 degrees short of full extension."]
)
def test_how_far_the_finger_was_stretched_is_no_glide(note: str) -> None:
    assert told(SEWN + note, "glide") == {}


def test_an_excursion_that_falls_short_is_one() -> None:
    note = "The excursion was short of full."
    assert told(SEWN + note, "glide") in ({}, {"ring FDP": {"glide": "restricted"}})
