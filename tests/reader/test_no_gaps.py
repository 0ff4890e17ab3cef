"""'No gaps.' in a sentence that names nothing is said of every repair."""

import pytest
from reader_sentences import each

THREE = (
    "Index and middle fingers. FDP of both cut through and sewn with 3-0 Ethibond, FDS of the index cut through and"
    " sewn with 4-0 Ethibond.\n"
)


@pytest.mark.parametrize("words", ["Passively no gaps.", "No gaps seen, nothing catches."])
def test_no_gaps_at_all(words: str) -> None:
    assert each(THREE + words, "gap") == {"index FDP": "none", "middle FDP": "none", "index FDS": "none"}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("In the middle finger no gaps.", {"middle FDP": "none"}),
        ("No gaps in the FDPs.", {"index FDP": "none", "middle FDP": "none"}),
        ("Skin closed loosely, gaps left for drainage.", {}),
        ("Middle FDP gaps 1 mm.", {"middle FDP": "seen"}),
    ],
)
def test_gaps_of_some(words: str, expected: dict[str, object]) -> None:
    assert each(THREE + words, "gap") == expected
