"""A finger that a repair is likened to before its own suture is told: 'then as index: Savage 3/0', and its opposite."""

import pytest
from reader_sentences import each

LIST = "INDEX\nFDP ..... 100 %\nMIDDLE\nFDP ..... {}\nFDS ..... whole\n"


@pytest.mark.parametrize(
    "told",
    [
        "90 %, then as index: Savage 3/0 Ticron",
        "cut, repaired as for the index: Savage, 3/0 Ticron",
        "cut, then like index - Savage 3/0 Ticron",
        "cut, done as in index (Savage 3/0 Ticron)",
    ],
)
def test_the_finger_told_of_stays(told: str) -> None:
    note = LIST.format(told)
    assert each(note, "stitch") == {"middle FDP": "savage"}
    assert each(note, "extent")["middle FDS"] == "intact"


def test_a_finger_turned_to() -> None:
    note = "Middle FDP cut through. As for the index: FDP cut through, Savage 3/0 Ticron."
    assert each(note, "stitch") == {"index FDP": "savage"}
