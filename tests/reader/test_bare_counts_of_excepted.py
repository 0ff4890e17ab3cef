"""The finger left out by a short name, and its count told without the word strands."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    ("text", "small"),
    [
        ("All four finger FDPs were repaired with four strands, except the small, where only two would fit.", 2),
        ("All four FDPs got four strands except the small finger, where only two would fit.", 2),
        ("Six strands were placed in all four FDPs save the small, which only took two.", 2),
    ],
)
def test_the_one_left_out(text: str, small: int) -> None:
    strands = each(text, "strands")
    assert strands.pop("small FDP") == small
    assert set(strands) == {"index FDP", "middle FDP", "ring FDP"}
    assert set(strands.values()) in ({4}, {6})


def test_a_word_that_is_no_count() -> None:
    text = "All four FDPs got four strands except the small finger, where two veins bled."
    assert "small FDP" not in each(text, "strands")


def test_nobody_left_out() -> None:
    assert each("All four finger FDPs were repaired with four strands.", "strands")["small FDP"] == 4


@pytest.mark.parametrize(
    "text",
    [
        "On tying, two of them snapped and were pulled out; the other two were tied and I accepted that.",
        "As the knot went down two of these broke; the other two hold.",
        "Two of them snapped on tying and were taken out, leaving two.",
    ],
)
def test_strands_lost_and_the_other_two(text: str) -> None:
    assert each("Small finger FDP repaired with four strands. " + text, "strands") == {"small FDP": 2}


def test_strands_replaced() -> None:
    text = "Small finger FDP repaired with four strands. On tying, two of them snapped and were replaced at once."
    assert each(text, "strands") == {"small FDP": 4}
