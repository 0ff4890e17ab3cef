"""The deep flexor's full name misspelt at its end is the deep flexor, and not a flexor left unnamed."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "note",
    [
        "Repair of right index finger flexor digitorum profundis. Completely divided, 4-strand cruciate 3-0 Prolene.",
        "Right index. Flexor digitorum profundas cut through and repaired with a 4-strand cruciate of 3-0 Prolene.",
    ],
)
def test_a_misspelt_profundus(note: str) -> None:
    assert each(note, "strands") == {"index FDP": 4}


def test_the_superficial_one_stays_itself() -> None:
    note = "Right index. Flexor digitorum superficialis cut, repaired with a 4-strand cruciate of 3-0 Prolene."
    assert each(note, "strands") == {"index FDS": 4}
