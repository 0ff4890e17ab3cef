"""A count told of the finger that an exception names is its own, and the others keep theirs."""

import pytest
from reader_sentences import each

CUT = "Right hand, index, middle and ring FDP all completely divided. "


@pytest.mark.parametrize(
    "note",
    [
        "Four-strand 3-0 Ethibond repair in each except the ring, where only two strands would fit.",
        "Four-strand core of 3-0 in each but the ring, where two strands had to do.",
    ],
)
def test_the_excepted_has_a_count_of_its_own(note: str) -> None:
    assert each(CUT + note, "strands") == {"index FDP": 4, "middle FDP": 4, "ring FDP": 2}


def test_without_an_exception_all_have_the_same() -> None:
    assert each(CUT + "Four strands in each.", "strands") == {"index FDP": 4, "middle FDP": 4, "ring FDP": 4}
