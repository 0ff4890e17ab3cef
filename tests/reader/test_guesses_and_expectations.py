"""A guess, an expectation or a thing not looked for is no finding."""

import pytest
from reader_sentences import told

HEAD = "Left index finger. FDP cut, repaired. "
GUESSES = [
    "It was repaired, probably with four strands.",
    "I think four strands were placed.",
    "Six strands would be better.",
    "No gap was to be expected.",
    "Gap: not looked for.",
    "A gap was not sought.",
    "No comment on gap.",
    "No mention is made of a gap or of the epitendinous suture.",
    "The gap closed when flexed.",
    "Billing: four-strand repair code.",
]
AT_FIRST = ["A2 intact at the start.", "A2 was initially intact.", "A2 was intact to begin with."]


@pytest.mark.parametrize("words", GUESSES)
def test_a_guess_is_no_finding(words: str) -> None:
    assert told(HEAD + words, "strands", "gap", "peripheral", "size") == {}


@pytest.mark.parametrize("words", AT_FIRST)
def test_what_a_pulley_was_at_first_is_not_what_it_came_to(words: str) -> None:
    assert told(HEAD + words, group="pulleys") == {}


def test_a_range_from_nought_is_a_gap() -> None:
    assert told(HEAD + "Gap 0-1 mm.", "gap", "gap_mm")["index FDP"] == {"gap": "seen", "gap_mm": 1}


@pytest.mark.parametrize(
    ("words", "field", "value"),
    [
        ("As was to be expected, no gap was seen.", "gap", "none"),
        ("It was probably a clean knife; four strands were placed.", "strands", 4),
        ("No gap, and no comment from the student.", "gap", "none"),
    ],
)
def test_what_is_told_beside_such_words_stays(words: str, field: str, value: object) -> None:
    assert told(HEAD + words, field)["index FDP"] == {field: value}
