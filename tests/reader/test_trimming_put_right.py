"""A length cut away that a speaker puts right is cut away as well, and is nothing the core takes."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "note",
    [
        "FPL cut. I took off two millimeters each side no sorry two on the proximal side only. Core Becker 3-0 nylon.",
        "FPL cut. 3 mm was trimmed off each end, no, correction, 3 on the distal side. Core Becker 3-0 nylon.",
    ],
)
def test_a_trimmed_length_put_right_is_no_purchase(note: str) -> None:
    assert told(note, "purchase_mm") == {}


def test_a_purchase_put_right_is_read() -> None:
    note = "FPL cut. Becker, 3-0 nylon, purchase 8 mm each side, no sorry, 7 mm."
    assert "purchase_mm" in told(note, "purchase_mm")["thumb FPL"]
