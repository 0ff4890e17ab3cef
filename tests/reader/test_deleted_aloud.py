"""What a dictation or an attestation takes back holds no more, where it stands and where it was said."""

import pytest
from reader_sentences import told

ANCHOR = "Thumb FPL fixed to bone. One 1.8 mm anchor into P3 with 2-0 FiberWire.\n\n"


@pytest.mark.parametrize(
    "text",
    [
        "Small FDP repaired with a locked Krackow. Correction, delete locked Krackow, it was a plain modified Kessler.",
        "Small FDP repaired with a locked cruciate. No, strike locked cruciate, it was a modified Kessler.",
    ],
)
def test_a_stitch_deleted(text: str) -> None:
    assert told(text, "stitch", "hold") == {"small FDP": {"stitch": "modified kessler"}}


def test_a_deed_of_that_name_is_no_correction() -> None:
    text = "Small FDP repaired with a locked cruciate. I had to strike the old bone wax away."
    assert told(text, "stitch", "hold") == {"small FDP": {"stitch": "locked cruciate", "hold": "locking"}}


@pytest.mark.parametrize("head", ["-- Attending attestation 10/19/2033 17:32 --", "Teaching physician attestation:"])
def test_an_attestation_puts_right(head: str) -> None:
    text = ANCHOR + head + "\nI agree with the above. The suture on the anchor was 3-0 Ethibond, not FiberWire.\n"
    assert told(text, "size", "material") == {"thumb FPL": {"size": "3-0", "material": "braided polyester"}}


def test_what_is_only_told_again_stays() -> None:
    text = ANCHOR + "The suture on the anchor was 2-0 FiberWire.\n"
    assert told(text, "size") == {"thumb FPL": {"size": "2-0"}}
