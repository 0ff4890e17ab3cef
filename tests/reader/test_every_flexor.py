"""'Every finger flexor': all eight of them, at a wrist only."""

import pytest
from reader_sentences import each

EIGHT = {f"{d} {t}" for d in ("index", "middle", "ring", "small") for t in ("FDP", "FDS")}


@pytest.mark.parametrize(
    "words",
    [
        "I found every finger flexor and the FPL intact.",
        "Each of the finger flexors was inspected and intact.",
        "All finger flexors and the FPL were intact.",
    ],
)
def test_every_finger_flexor_whole(words: str) -> None:
    found = each(f"Left wrist, flexor retinaculum divided. {words}", "extent")
    assert {entry for entry, value in found.items() if value == "intact"} >= EIGHT


def test_one_that_was_cut_is_not_whole() -> None:
    found = each("Wrist, zone 5. FDS ring cut through. Every finger flexor was then seen intact.", "extent")
    assert found["ring FDS"] == "complete"


@pytest.mark.parametrize(
    "words",
    [
        "Not every finger flexor was intact.",
        "Every finger flexor was seen.",
        "Every finger flexor but one was intact.",
        "If every finger flexor is intact, close.",
    ],
)
def test_not_told_of_every_one(words: str) -> None:
    assert each(f"Left wrist, flexor retinaculum divided. {words}", "extent") == {}


def test_not_away_from_the_wrist() -> None:
    assert each("Ring finger, A1 released. Every finger flexor was intact.", "extent") == {}
