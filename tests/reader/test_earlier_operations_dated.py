"""Words that tell of an earlier operation only beside a day or a month."""

import pytest
from reader_sentences import each, told

NEW = "Date: 9 December 2031. Right index finger. "


@pytest.mark.parametrize(
    "words",
    [
        "His FDP was repaired here on 4 November 2031 with a two-strand Kessler. ",
        "The profundus was joined by a colleague in July with a two-strand Kessler. ",
    ],
)
def test_a_repair_of_an_earlier_day_is_history(words: str) -> None:
    note = NEW + words + "It ruptured. FDP repaired with four strands of 4-0 nylon."
    assert each(note, "strands") == {"index FDP": 4}
    assert not each(NEW + words, "strands")


@pytest.mark.parametrize(
    "words",
    [
        "FDP repaired with four strands of 4-0 nylon, assisted by a colleague.",
        "FDP was repaired here with four strands of 4-0 nylon.",
        "On 9 December 2031 the FDP was repaired here with four strands.",
        "FDP repaired, four strands, no gap at that time.",
    ],
)
def test_the_same_words_without_a_day_tell_of_this_one(words: str) -> None:
    assert each(NEW + words, "strands") == {"index FDP": 4}


def test_therapy_in_another_unit_is_no_history() -> None:
    note = NEW + "FDP repaired with 4-0 nylon. Hand therapy in your unit, early active motion may start on day 4."
    assert told(note, "programme", "start_day", group="aftercare")[""] == {
        "programme": "early active",
        "start_day": (4, 4),
    }


@pytest.mark.parametrize(
    "words", ["The core crosses the repair at 2 mm from the edge.", "The thread crosses to the other side 2 mm back."]
)
def test_a_thread_that_crosses_is_no_lock(words: str) -> None:
    assert not each(NEW + "FDP repaired with four strands of 4-0 nylon. " + words, "lock_mm")
