"""Lengths of tendon held that are dealt out over fingers, the second told without its unit."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "text",
    [
        "For both profundi we used a Savage of 4-0 nylon, taking 10 mm of tendon in the ring finger and only 6 in the "
        "small one.",
        "FDP ring and FDP small were repaired with 4-0 nylon, biting 10 mm of tendon in the ring, only 6 in the small.",
        "FDP of the ring and small was repaired with 4-0 nylon, purchase 10 mm in the ring, but only 6 in the small.",
        "Both profundi were sewn with 4-0 nylon, taking 10 mm of tendon in the ring and 6 mm of tendon in the small.",
    ],
)
def test_each_finger_its_length(text: str) -> None:
    note = "The FDP of the ring and small fingers was completely divided. " + text
    assert each(note, "purchase_mm") == {"ring FDP": (10, 10), "small FDP": (6, 6)}


def test_a_count_behind_a_length_is_no_length() -> None:
    note = "FDP of the ring and small was repaired with 4-0 nylon, holding 10 mm of tendon; 3 stitches in the small."
    assert each(note, "purchase_mm") == {"ring FDP": (10, 10), "small FDP": (10, 10)}


@pytest.mark.parametrize(
    "words",
    [
        "Distal stump too short to take a core stitch, so the end was advanced 6 mm into bone. Bunnell 3-0, button.",
        "The stump could not take a bite, and the tendon was shifted 8 mm into the bone with a pull-out of 3-0.",
    ],
)
def test_how_far_a_tendon_was_brought_is_no_purchase(words: str) -> None:
    assert each("Left ring finger, FDP avulsed. " + words, "purchase_mm") == {}
