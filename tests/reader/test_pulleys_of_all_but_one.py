"""One pulley told of all fingers but one."""

import pytest
from reader_sentences import each

SEWN = "The FDP of the middle, ring and small fingers were divided and repaired. "


@pytest.mark.parametrize(
    "text",
    [
        "All A2 pulleys were intact except in the ring, where it was vented over 5 mm.",
        "All A2 pulleys were intact except that of the ring, which was vented.",
        "The A2 of the ring finger was vented, those of the others were intact.",
    ],
)
def test_one_is_told_apart(text: str) -> None:
    found = each(SEWN + text, "finding", group="pulleys")
    assert found == {"middle A2": "intact", "ring A2": "vented", "small A2": "intact"}


def test_two_pulleys_are_not_told_apart_so() -> None:
    found = each(SEWN + "A2 of the ring was vented, A4 of the others I did not see.", "finding", group="pulleys")
    assert found == {"ring A2": "vented"}


@pytest.mark.parametrize(
    "text",
    [
        "A rim of A4 has survived.",
        "A strip of A2 is whole.",
        "Only a fringe of the A4 was intact.",
        "A2 stretched but there.",
    ],
)
def test_what_is_left_of_a_pulley_is_no_whole_pulley(text: str) -> None:
    found = each(f"Ring FDP cut through and repaired. {text}", "finding", group="pulleys")
    assert "intact" not in found.values()


_TWO_FINGERS = "Ring and small FDP cut and sewn. Ring A2 was vented. "


@pytest.mark.parametrize(
    "words", ["A4s both preserved.", "Both A4s intact.", "A4 pulleys preserved.", "The A4s were kept."]
)
def test_one_pulley_in_the_plural_is_that_of_both_fingers(words: str) -> None:
    assert each(_TWO_FINGERS + words, "finding", group="pulleys") == {
        "ring A2": "vented",
        "ring A4": "intact",
        "small A4": "intact",
    }


def test_two_pulleys_together_are_those_of_the_finger() -> None:
    found = each(_TWO_FINGERS + "In the ring the A3 and A4 pulleys were kept.", "finding", group="pulleys")
    assert found == {"ring A2": "vented", "ring A3": "intact", "ring A4": "intact"}
