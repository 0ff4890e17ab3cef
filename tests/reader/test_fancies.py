"""What might have been ends where the sentence turns to what was."""

import pytest
from reader_sentences import told

SEWN = "Right index FDP cut through: four strands of 4-0. "


@pytest.mark.parametrize(
    "note",
    [
        "Had the repair jammed I would have vented A4; it did not jam, it ran freely, and A4 is intact.",
        "If the repair had caught I would have vented A4; it ran freely and A4 is intact.",
        "Even if A4 had been lost I would not have minded, but it was not lost: A4 intact. It ran freely.",
    ],
)
def test_what_was_stands_behind_what_might_have_been(note: str) -> None:
    assert told(SEWN + note, "finding", group="pulleys") == {"index A4": {"finding": "intact"}}
    assert told(SEWN + note, "glide") == {"index FDP": {"glide": "free"}}


@pytest.mark.parametrize(
    "note",
    [
        "If it gaps, therapy stops; if no gap is seen, it goes on.",
        "Should it gap he is to rest; if it glides freely he starts on day 4.",
        "If the glide is free he would be seen in a week; no gap, no splint.",
    ],
)
def test_a_condition_that_is_open_reaches_on(note: str) -> None:
    assert told(SEWN + note, "gap", "glide") == {}


@pytest.mark.parametrize(
    "note",
    [
        "Neither tension nor bulk nor gap after four-strand repair with 4-0 FiberWire.",
        "No gap after a four-strand repair with 4-0 FiberWire.",
    ],
)
def test_no_result_after_a_repair_that_was_made(note: str) -> None:
    found = told("Ring FDP completely divided. " + note, "strands", "gap")
    assert found == {"ring FDP": {"strands": 4, "gap": "none"}}


def test_a_core_that_is_denied() -> None:
    assert told("Ring FDP completely divided. No four-strand core was placed.", "strands") == {}
