"""Lengths dealt out over two fingers behind what they are taken from: '10 mm from the cut end in the middle ...'."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "told",
    [
        "placed 10 mm from the cut end in the middle and 8 mm in the ring",
        "standing 10 mm from the cut surface in the middle finger and 8 mm in the ring finger",
        "entering 10 mm back from the edge in the middle and 8 mm in the ring",
        "with bites of 10 mm in the middle and 8 mm in the ring",
    ],
)
def test_each_its_own(told: str) -> None:
    note = f"Middle and ring FDP were cut and repaired with four-strand sutures of 3-0 Ticron, {told}."
    assert each(note, "purchase_mm") == {"middle FDP": (10, 10), "ring FDP": (8, 8)}


def test_a_length_of_something_else() -> None:
    note = "Index and small FDP were repaired with bites of 10 mm, and 8 mm of A2 was opened in the index."
    assert each(note, "purchase_mm") == {"index FDP": (10, 10), "small FDP": (10, 10)}
