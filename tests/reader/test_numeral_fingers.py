"""Fingers named by Roman numerals that head a row or a clause, in notes that say so."""

import pytest
from reader_sentences import told

GRID = """Digits: II, III

Finger | Tendon | Cut     | Core
II     | FDP    | 100 %   | 4 strands, 3-0 nylon
III    | FDP    | 60 %    | 2 strands, 4-0 nylon
"""
LINES = """Digits: III, IV
III: FDP completely cut, repaired with 3-0 nylon.
IV: FDP cut through 60 % of its width, repaired with 4-0 nylon.
"""


@pytest.mark.parametrize(
    ("note", "sizes"),
    [
        (GRID, {"index FDP": {"size": "3-0"}, "middle FDP": {"size": "4-0"}}),
        (LINES, {"middle FDP": {"size": "3-0"}, "ring FDP": {"size": "4-0"}}),
    ],
)
def test_numerals_that_head_what_is_told_of_a_finger(note: str, sizes: dict[str, object]) -> None:
    assert told(note, "size") == sizes


@pytest.mark.parametrize(
    "note",
    [
        "Ring finger. II: FDP completely cut. III: repaired with 4-0 nylon.",
        "Zone | II | III\nRing FDP completely cut and repaired with 4-0 nylon.",
    ],
)
def test_numerals_that_only_count(note: str) -> None:
    assert set(told(note)) == {"ring FDP"}
