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


@pytest.mark.parametrize("titles", ["Fourth                  Fifth", "Fourth (annular)        Fifth (last)"])
def test_ordinals_as_titles_of_a_grid(titles: str) -> None:
    note = f"""Left hand.

                    {titles}
FDP                 70 % cut                complete
A4                  intact                  distal third opened
"""
    assert told(note, "extent") == {"ring FDP": {"extent": "partial"}, "small FDP": {"extent": "complete"}}


@pytest.mark.parametrize("words", ["FDP sectioned, whole.", "FDP cut, whole, with clean ends."])
def test_a_whole_cut_is_no_whole_tendon(words: str) -> None:
    assert told(f"Ring finger. {words}", "extent") != {"ring FDP": {"extent": "intact"}}


@pytest.mark.parametrize(
    ("note", "finger"),
    [
        ("FDP avulsion R IV, zone I. FDP completely cut.", "ring"),
        ("FDS divided right II, zone III. FDP completely cut.", "index"),
        ("Laceration of FDP, left III. FDP completely cut.", "middle"),
        ("Ringfinger R, glass. FDP completely cut.", "ring"),
        ("Littlefinger, left. FDP completely cut.", "small"),
    ],
)
def test_a_finger_by_its_numeral_behind_the_side_or_in_one_word(note: str, finger: str) -> None:
    assert told(note, "extent")[f"{finger} FDP"] == {"extent": "complete"}


@pytest.mark.parametrize("words", ["left V zone", "left zone V"])
def test_a_zone_behind_the_side_is_no_finger(words: str) -> None:
    assert set(told(f"Middle FDP completely cut, {words}.")) == {"middle FDP"}
