"""Shares of a tendon told in lists, ranges and columns, or by the edge that was cut."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right hand.\nFDP: MF 100, RF 45, LF 0.\n",
            {
                "middle FDP": {"extent": "complete"},
                "ring FDP": {"extent": "partial", "extent_percent": 45},
                "small FDP": {"extent": "intact"},
            },
        ),
        (
            "Left hand, saw.\nFDP: IF 100, MF 60, RF 0.\n",
            {
                "index FDP": {"extent": "complete"},
                "middle FDP": {"extent": "partial", "extent_percent": 60},
                "ring FDP": {"extent": "intact"},
            },
        ),
        (
            "Left hand, saw. FDS: IF 25, MF 100, RF 100.\n",
            {
                "index FDS": {"extent": "partial", "extent_percent": 25},
                "middle FDS": {"extent": "complete"},
                "ring FDS": {"extent": "complete"},
            },
        ),
        (
            "Left hand.\nFDP: ring finger 100, small finger 40.\n",
            {"ring FDP": {"extent": "complete"}, "small FDP": {"extent": "partial", "extent_percent": 40}},
        ),
    ],
)
def test_shares_listed_finger_by_finger(note: str, expected: Shown) -> None:
    assert told(note, "extent", "extent_percent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right index finger. FDP cut half to two thirds.",
            {"index FDP": {"extent": "partial", "extent_percent": 67}},
        ),
        (
            "Right index finger. FDP: laceration of 40 to 60% of the width.",
            {"index FDP": {"extent": "partial", "extent_percent": 60}},
        ),
    ],
)
def test_a_range_of_shares_takes_the_larger(note: str, expected: Shown) -> None:
    assert told(note, "extent", "extent_percent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right hand, glass.\nFDP RF    100%\nFDS RF    2/3\n",
            {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "partial", "extent_percent": 67}},
        ),
        (
            "Right hand, glass.\nFDS MF    1/4\nFDP MF    intact\n",
            {"middle FDS": {"extent": "partial", "extent_percent": 25}, "middle FDP": {"extent": "intact"}},
        ),
        (
            "Right hand, glass. FDS of index: one third, at its ulnar edge.",
            {"index FDS": {"extent": "partial", "extent_percent": 33}},
        ),
        (
            "Right hand, glass. FDP of the small finger: a quarter, on the radial edge.",
            {"small FDP": {"extent": "partial", "extent_percent": 25}},
        ),
    ],
)
def test_a_bare_share_in_a_column_or_behind_a_colon(note: str, expected: Shown) -> None:
    assert told(note, "extent", "extent_percent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Right ring finger. FDP cut (ulnar quarter).",
            {"ring FDP": {"extent": "partial", "extent_percent": 25}},
        ),
        (
            "Right ring finger. FDP cut, ulnar quarter. FDS intact.",
            {"ring FDP": {"extent": "partial", "extent_percent": 25}, "ring FDS": {"extent": "intact"}},
        ),
    ],
)
def test_the_edge_that_was_cut(note: str, expected: Shown) -> None:
    assert told(note, "extent", "extent_percent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Index and middle fingers. FDP of index and middle 60% and 100% divided respectively.",
            {"index FDP": {"extent": "partial", "extent_percent": 60}, "middle FDP": {"extent": "complete"}},
        ),
        (
            "Ring finger. FDP and FDS were 70% and 30% cut respectively.",
            {
                "ring FDP": {"extent": "partial", "extent_percent": 70},
                "ring FDS": {"extent": "partial", "extent_percent": 30},
            },
        ),
    ],
)
def test_shares_dealt_out_respectively(note: str, expected: Shown) -> None:
    assert told(note, "extent", "extent_percent") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Ring finger. FDP hanging by a third of its fibres.",
            {"ring FDP": {"extent": "partial", "extent_percent": 67}},
        ),
        (
            "Small finger. FDS held by a quarter of its width.",
            {"small FDS": {"extent": "partial", "extent_percent": 75}},
        ),
    ],
)
def test_the_rest_of_a_share_that_is_held_is_cut(note: str, expected: Shown) -> None:
    assert told(note, "extent", "extent_percent") == expected


@pytest.mark.parametrize(
    ("words", "percent"),
    [
        ("The ring FDP was cut for perhaps a quarter to a third of its breadth.", 33),
        ("A nick through a third to a half of the width of the ring FDP.", 50),
        ("The ring FDP was cut through a half to two thirds.", 67),
    ],
)
def test_of_a_range_of_fractions_the_larger_share(words: str, percent: float) -> None:
    assert told(words, "extent_percent") == {"ring FDP": {"extent_percent": percent}}
