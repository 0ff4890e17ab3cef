"""Measures told one after another for several: the unit told once, and what 'respectively' deals out."""

import pytest
from reader_sentences import each, told

CUT = "Index and middle FDP completely divided and repaired. "


@pytest.mark.parametrize(
    ("words", "lengths"),
    [
        ("The profundus ends in the index and middle fingers were trimmed back 3 and 4 mm, respectively.", (3, 4)),
        ("The index and the middle FDP were trimmed back by 2 & 5 mm respectively.", (2, 5)),
    ],
)
def test_two_lengths_with_one_unit(words: str, lengths: tuple[int, int]) -> None:
    assert each(CUT + words, "trimmed_mm") == {"index FDP": lengths[0], "middle FDP": lengths[1]}


def test_two_lengths_that_nothing_deals_out() -> None:
    assert each(CUT + "The index FDP was trimmed back 3 and then 4 mm.", "trimmed_mm").get("middle FDP") is None


@pytest.mark.parametrize(
    ("words", "shares"),
    [
        (
            "The A4 pulleys of the index and middle fingers were vented over 5 and 6 mm, respectively.",
            {"index A4": {"extent_mm": 5}, "middle A4": {"extent_mm": 6}},
        ),
        (
            "In the index A1 and A3 were vented by 50% and 40% respectively.",
            {"index A1": {"extent_percent": 50}, "index A3": {"extent_percent": 40}},
        ),
        (
            "The A4 pulleys of the index and middle fingers were vented over 5 mm.",
            {"index A4": {"extent_mm": 5}, "middle A4": {"extent_mm": 5}},
        ),
    ],
)
def test_shares_of_pulleys_in_turn(words: str, shares: dict[str, dict[str, object]]) -> None:
    assert told(CUT + words, "extent_mm", "extent_percent", group="pulleys") == shares


@pytest.mark.parametrize(
    "words",
    [
        "A2 was preserved in the index finger; in the middle finger its distal 5 mm was shredded and was removed.",
        "A2 was kept in the index finger; in the middle finger its distal 5 mm was torn and therefore excised.",
    ],
)
def test_a_part_that_was_torn_and_removed_is_trimmed(words: str) -> None:
    found = told(CUT + words, group="pulleys")
    assert found["middle A2"] == {"finding": "trimmed", "extent_mm": 5, "part": "distal"}
    assert found["index A2"] == {"finding": "intact"}


@pytest.mark.parametrize(
    "words",
    [
        "The middle profundus and superficialis were completely divided in zone 2B and 2C, respectively.",
        "Middle FDP and FDS were divided in zone IIB and IIC respectively.",
    ],
)
def test_two_zones_in_turn(words: str) -> None:
    assert each(words, "zone") == {"middle FDP": "IIB", "middle FDS": "IIC"}
