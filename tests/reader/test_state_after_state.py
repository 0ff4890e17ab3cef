"""'FDP divided FDS intact' without a comma: the state behind each tendon is its own."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "words",
    [
        "Ring finger FDP cut through FDS okay.",
        "Ring finger FDP divided FDS intact.",
        "Ring finger same thing profundus gone all the way sublimis okay.",
    ],
)
def test_each_state_stands_behind(words: str) -> None:
    assert each(words, "extent") == {"ring FDP": "complete", "ring FDS": "intact"}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("Ring finger: divided FDP, intact FDS.", {"ring FDP": "complete", "ring FDS": "intact"}),
        ("Ring finger: intact FDS and divided FDP.", {"ring FDP": "complete", "ring FDS": "intact"}),
        ("Ring finger: FDP intact, divided FDS repaired.", {"ring FDP": "intact", "ring FDS": "complete"}),
        ("Ring finger: FDP and FDS divided.", {"ring FDP": "complete", "ring FDS": "complete"}),
    ],
)
def test_a_state_before(words: str, expected: dict[str, object]) -> None:
    assert each(words, "extent") == expected
