"""Plain words for a repair that ran, and for one that rubbed."""

import pytest
from reader_sentences import each

CUT = "Index FDP cut through and sewn with 3-0 Prolene. "


@pytest.mark.parametrize(
    ("words", "glide"),
    [
        ("Full range passively, repair moving freely.", "free"),
        ("FDP runs sweet.", "free"),
        ("Good play of the tendon at passive mobilisation.", "free"),
        ("Slight friction against A4 remains, which is accepted.", "restricted"),
        ("There was some friction under A2.", "restricted"),
        ("Not moving freely under A2.", "restricted"),
        ("At first slight friction, after venting A2 then free.", "free"),
    ],
)
def test_how_it_ran(words: str, glide: str) -> None:
    assert each(CUT + words, "glide") == {"index FDP": glide}


@pytest.mark.parametrize(
    "words", ["She was moving freely around the ward.", "The other fingers were moving freely before the operation."]
)
def test_what_else_moved(words: str) -> None:
    assert each(CUT + words, "glide") == {}
