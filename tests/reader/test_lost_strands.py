"""Strands that broke or pulled out are no strands of the repair."""

import pytest
from reader_sentences import each, fact_of

NOTE = "Ring finger. FDP divided and repaired with a {} of 3-0 PDS. "


@pytest.mark.parametrize(
    ("core", "words", "left"),
    [
        ("cruciate", "Two of the four strands broke and were not replaced.", 2),
        ("six-strand Savage", "One strand cut out, so five remain.", 5),
        ("four-strand cruciate", "One of the strands pulled out.", 3),
        ("cruciate", "One strand snapped.", 3),
        ("four-strand cruciate", "One strand broke and was replaced.", 4),
        ("four-strand cruciate", "The strands did not pull out.", 4),
    ],
)
def test_what_is_left_of_the_strands(core: str, words: str, left: int) -> None:
    assert each(NOTE.format(core) + words, "strands") == {"ring FDP": left}


def test_strands_passed_and_pulled_out_in_one_sentence() -> None:
    note = "Ring finger. FDP divided, four strands were passed but two pulled out, 3-0 Prolene."
    assert each(note, "strands") == {"ring FDP": 2}


def test_a_lessened_count_says_so() -> None:
    fact = fact_of(NOTE.format("four-strand cruciate") + "One of the strands pulled out.", "ring FDP", "strands")
    assert any("not to have held" in reason for reason in fact.look_twice)


@pytest.mark.parametrize(
    "words",
    [
        "One of the strands in the index pulled out.",
        "In the index finger one strand broke.",
        "Index: one strand tore out.",
    ],
)
def test_a_strand_lost_in_one_finger(words: str) -> None:
    note = "Index and ring. FDP of both divided and repaired with a four-strand cruciate of 3-0 PDS. " + words
    assert each(note, "strands") == {"index FDP": 3, "ring FDP": 4}


@pytest.mark.parametrize("words", ["Not one strand pulled through.", "Not one of the strands pulled out."])
def test_not_one_strand_lost(words: str) -> None:
    """'Not one strand pulled through': all of them held."""
    assert each(f"Ring. FDP cut through. Double modified Kessler, four strands. {words}", "strands") == {"ring FDP": 4}


SIX = "Ring. FDP cut through and repaired with a six-strand core of 3-0 PDS"


@pytest.mark.parametrize(
    "words",
    [
        ". The six strands became four when one broke.",
        ". Six became four.",
        " that became four when a loop broke.",
        ". A loop snapped, leaving four.",
        ". It was reduced to four when a loop cut out.",
        ", but it is now a four-strand repair as one loop pulled out.",
        ". Reduced to four strands after a break.",
        ". Two of them were cut by the needle so only four cross the repair.",
        ". Two broke at the knot and four remain.",
    ],
)
def test_as_many_as_were_left(words: str) -> None:
    """'Six became four': the count that is left is told, and none is taken off it again."""
    assert each(SIX + words, "strands") == {"ring FDP": 4}


@pytest.mark.parametrize(
    "words",
    [
        ". The wound was closed with nylon, leaving two drains.",
        ". The gap of three mm was reduced to one.",
        ". A2 was vented, leaving four mm.",
        ". Four of the five fingers remained straight.",
    ],
)
def test_what_is_left_of_another_thing(words: str) -> None:
    assert each(SIX + words, "strands") == {"ring FDP": 6}


def test_as_many_as_were_left_in_one_finger() -> None:
    note = "Index and ring. FDP of both cut and repaired with six strands. In the ring a loop broke, leaving four."
    assert each(note, "strands") == {"index FDP": 6, "ring FDP": 4}
