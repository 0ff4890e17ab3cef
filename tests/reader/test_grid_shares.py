"""Bare figures in a grid's row or column of a tendon are shares of its cut, beside 100 or a state."""

from reader_sentences import each, told

ACROSS = """\
        IF       MF       RF
 zone   II       II       II
 FDP    100      100      40
 FDS    100      50       ok
 A2     ok       vented   ok
"""
DOWN = """\
 finger     FDP     FDS
 index      100     60
 ring       50      ok
"""
STRANDS = """\
        IF       MF       RF
 FDP    6        4        4
"""


def test_shares_in_a_row() -> None:
    assert told(ACROSS, "extent", "extent_percent") == {
        "index FDP": {"extent": "complete"},
        "index FDS": {"extent": "complete"},
        "middle FDP": {"extent": "complete"},
        "middle FDS": {"extent": "partial", "extent_percent": 50},
        "ring FDP": {"extent": "partial", "extent_percent": 40},
        "ring FDS": {"extent": "intact"},
    }


def test_shares_in_a_column() -> None:
    assert each(DOWN, "extent_percent") == {"index FDS": 60, "ring FDP": 50}


def test_small_figures_are_no_shares() -> None:
    assert each(STRANDS, "extent") == {}
