"""'Of the deep flexors only the middle was cut, the remaining three being bruised and in continuity.'"""

import pytest
from reader_sentences import each

HEAD = "Index finger, middle finger, ring finger. Zone V. "


@pytest.mark.parametrize(
    "found",
    [
        "Of the deep flexors only the middle was divided, the remaining three being bruised and in continuity.",
        "Of the profundi only the middle finger was divided; the other three were contused and in continuity.",
        "The middle profundus was divided, the remaining three were intact.",
    ],
)
def test_the_rest_of_a_kind(found: str) -> None:
    rest = dict.fromkeys(("index FDP", "ring FDP", "small FDP"), "intact")
    assert each(HEAD + found, "extent") == {"middle FDP": "complete"} | rest


def test_fingers_behind_their_kind() -> None:
    note = HEAD + "Of the superficial flexors, the middle and ring were divided."
    assert each(note, "extent") == {"middle FDS": "complete", "ring FDS": "complete"}


@pytest.mark.parametrize(
    "found",
    [
        "The middle FDP was divided again, the other three repairs were intact.",
        "The middle FDP was divided; the other two pulleys were intact.",
        "The middle FDP was divided, the remaining fibres crushed and in continuity.",
    ],
)
def test_the_rest_of_something_else(found: str) -> None:
    assert each(HEAD + found, "extent") == {"middle FDP": "complete"}


@pytest.mark.parametrize("found", ["bruised and in continuity", "contused within its paratenon and in continuity"])
def test_bruised_and_whole(found: str) -> None:
    assert each(f"Ring FDP cut. The FDS of the ring was {found}.", "extent")["ring FDS"] == "intact"


def test_crushed_is_not_whole() -> None:
    assert "ring FDS" not in each("Ring FDP cut. The FDS of the ring was crushed and in continuity.", "extent")
