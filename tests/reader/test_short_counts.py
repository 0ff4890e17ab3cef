"""Strand counts told without the word: 'the index had two', behind counts of strands or behind a stitch of both."""

import pytest
from reader_sentences import each

HEAD = "Left hand, zone II. FDP of the index and ring fingers completely divided. "


@pytest.mark.parametrize(
    "words",
    [
        "Both were repaired with a four-strand cruciate of 3-0 Ethibond. Correction: it was the ring and not the index "
        "that had four strands; the index had two.",
        "Both had four strands of 3-0 Ethibond. Correction: the index took only two.",
        "Both profundi got four strands of 3-0 Ethibond. Correction: the ring had four strands, the index two.",
        "Both profundi were repaired with a cruciate of 3-0 Ethibond; in the index there was room for two only.",
        "Both profundi were repaired with a cruciate of 3-0 Ethibond. The index took only two.",
        "Both received an Adelaide of 4-0 Ticron. In the ring four strands went in, the index accepted just two.",
    ],
)
def test_fewer_in_one_finger(words: str) -> None:
    assert each(HEAD + words, "strands") == {"index FDP": 2, "ring FDP": 4}


def test_a_correction_that_moves_the_greater_count() -> None:
    words = (
        "Index FDP: four strands of 3-0 nylon. Ring FDP: two strands of 3-0 nylon. Correction: it was the ring that "
    )
    assert each(HEAD + words + "had four strands, the index had two.", "strands") == {"index FDP": 2, "ring FDP": 4}


@pytest.mark.parametrize(
    "words",
    [
        "Both profundi were repaired with a cruciate of 3-0 Ethibond. The index had two pulleys vented.",
        "Both profundi were repaired with a cruciate of 3-0 Ethibond. The index was tested; it was moved two times.",
        "Both profundi were repaired with a cruciate of 3-0 Ethibond. The index took six.",
    ],
)
def test_counts_of_other_things(words: str) -> None:
    assert each(HEAD + words, "strands") == {"index FDP": 4, "ring FDP": 4}
