"""Ends taken up by a pronoun, and edges that are those of a hole in the sheath."""

import pytest
from reader_sentences import each

CUT = "Left index FDP, complete. "


@pytest.mark.parametrize(
    ("text", "ends"),
    [
        ("The emergency physician had described clean ends. I found them crushed over 4 mm.", "crushed"),
        ("The casualty officer described clean ends; they were in fact ragged.", "ragged"),
        ("The registrar who saw him first spoke of clean ends. At operation they were frayed.", "ragged"),
        ("The GP's letter speaks of clean ends. They were crushed.", "crushed"),
    ],
)
def test_what_others_said_of_the_ends(text: str, ends: str) -> None:
    assert each(CUT + text, "ends") == {"index FDP": ends}


def test_ends_of_a_nerve() -> None:
    text = "The ends of the ulnar digital nerve were found. They were crushed."
    assert not each(CUT + text, "ends")


@pytest.mark.parametrize(
    "text",
    [
        "The traumatic rent in the sheath was 8 mm long, its edges clean; closed with 6-0 nylon, running.",
        "The laceration of the pulley had ragged edges.",
        "The opening in A2 was ragged at its edges.",
        "Sheath rent 5 mm, edges clean.",
    ],
)
def test_edges_of_a_hole(text: str) -> None:
    assert not each("Left small finger: FDP repair. " + text, "ends")


def test_a_hole_and_the_ends() -> None:
    text = "The rent in the sheath was 8 mm long; the tendon ends were clean."
    assert each("Left small finger: FDP repair. " + text, "ends") == {"small FDP": "clean"}
