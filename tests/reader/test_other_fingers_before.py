"""Another finger, or another repair, of an earlier operation told beside this one."""

import pytest
from reader_sentences import each

SMALL = "Small finger FDP complete. "


@pytest.mark.parametrize(
    ("text", "strands"),
    [
        (
            "His middle finger, which I operated on last year, had a six-strand repair and never gapped. "
            "This one got four strands of 4-0 nylon.",
            4,
        ),
        (
            "The index, which a colleague mended last year, did well with six strands. "
            "Here I used four strands of 4-0 nylon.",
            4,
        ),
        (
            "The middle finger, operated on in 2031, had a six-strand repair with no gap. "
            "This one was given two strands of 4-0 nylon.",
            2,
        ),
    ],
)
def test_a_finger_operated_on_before(text: str, strands: int) -> None:
    assert each(SMALL + text, "strands") == {"small FDP": strands}
    assert not each(SMALL + text, "gap")


def test_an_aside_on_the_pulley_of_this_operation() -> None:
    text = "A2, which had been opened at the first operation, was vented further."
    assert each(SMALL + text, "finding", "pulleys") == {"small A2": "vented"}


@pytest.mark.parametrize(
    "text",
    [
        "Unlike the first repair in June 2033, which had only two strands and pulled apart, "
        "today's re-repair carries six strands of 4-0 Supramid.",
        "In contrast to the first repair, which had two strands, this one has six strands of 4-0.",
        "The first repair had two strands and failed; today six strands of 4-0 Supramid were placed.",
    ],
)
def test_held_against_the_first_repair(text: str) -> None:
    assert each("Left index FDP. " + text, "strands") == {"index FDP": 6}


def test_the_first_repair_alone() -> None:
    assert not each("Left index FDP. The first repair had two strands, placed today a year ago.", "strands")
