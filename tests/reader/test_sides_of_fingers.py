"""'Small finger, left, FDP severed': the side of the hand, and not a tendon left as it was."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "text",
    [
        "Small finger, left, FDP severed in full. Kessler, 3-0 Ticron.",
        "Small, left, zone II: FDP completely divided. Kessler, 3-0 Ticron.",
    ],
)
def test_left_behind_a_finger_is_its_side(text: str) -> None:
    shown = told(text, "extent", "treatment", "size")
    assert shown == {"small FDP": {"extent": "complete", "treatment": "repaired", "size": "3-0"}}


@pytest.mark.parametrize("text", ["Small finger FDS 40% cut, left.", "Small finger: FDS, one third divided, left."])
def test_left_behind_a_cut_is_a_deed(text: str) -> None:
    assert told(text, "treatment") == {"small FDS": {"treatment": "left"}}
