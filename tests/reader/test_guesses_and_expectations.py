"""A guess, an expectation or a thing not looked for is no finding."""

import pytest
from reader_sentences import fact_of, told

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
    "Four-strand repair if possible.",
    "An epitendinous suture if time.",
    "To do: 4 strand repair, epitendinous, no gap.",
]
UNSURE = ["It was sewn with four strands, I think 3-0 Ethibond.", "The core was, I believe, 3-0 Ethibond."]
AT_FIRST = ["A2 intact at the start.", "A2 was initially intact.", "A2 was intact to begin with."]


@pytest.mark.parametrize("words", GUESSES)
def test_a_guess_is_no_finding(words: str) -> None:
    assert told(HEAD + words, "strands", "gap", "peripheral", "size") == {}


@pytest.mark.parametrize("words", UNSURE)
def test_a_thread_the_writer_is_not_sure_of_has_a_reason_to_look_twice(words: str) -> None:
    fact = fact_of(HEAD + words, "index FDP", "size")
    assert fact.value == "3-0"
    assert any("not sure" in reason for reason in fact.look_twice)


@pytest.mark.parametrize("words", AT_FIRST)
def test_what_a_pulley_was_at_first_is_not_what_it_came_to(words: str) -> None:
    assert told(HEAD + words, group="pulleys") == {}


def test_a_range_from_nought_is_a_gap() -> None:
    assert told(HEAD + "Gap 0-1 mm.", "gap", "gap_mm")["index FDP"] == {"gap": "seen", "gap_mm": 1}


@pytest.mark.parametrize(
    ("words", "field", "value"),
    [
        ("As was to be expected, no gap was seen.", "gap", "none"),
        ("Four strands were placed, and six would have been put in if needed.", "strands", 4),
        ("It was probably a clean knife; four strands were placed.", "strands", 4),
        ("No gap was seen; no comment was made on the tension.", "gap", "none"),
    ],
)
def test_what_is_told_beside_such_words_stays(words: str, field: str, value: object) -> None:
    assert told(HEAD + words, field)["index FDP"] == {field: value}


CORE = "Left index finger. FDP cut, repaired with four strands. "


@pytest.mark.parametrize(
    "words",
    [
        "An epitendinous suture could be added later.",
        "Epitendinous suture started but not finished.",
        "Ends clean after trimming.",
        "Purchase should be 10 mm.",
        "It glided freely before the last stitch.",
        "It ran freely up to A4, where it stopped.",
        "The other tendons glided freely.",
        "It almost glided freely.",
        "The needle glided freely.",
    ],
)
def test_what_promises_less_than_it_seems(words: str) -> None:
    facts = told(CORE + words)["index FDP"]
    assert set(facts) == {"treatment", "strands"}


def test_a_length_with_an_upper_end_only() -> None:
    facts = told(CORE + "Purchase not more than 7 mm.", "purchase_mm")
    assert facts == {"index FDP": {"purchase_mm": (None, 7.0)}}


@pytest.mark.parametrize("words", ["It had been repaired once before.", "The FDP had been sutured once before."])
def test_an_earlier_repair_is_not_this_one(words: str) -> None:
    assert told(f"Left index finger. FDP cut. {words}", "treatment") == {}
