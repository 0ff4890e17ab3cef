"""What is told on the way: some of the strands, a peripheral suture not yet placed, a pulley named twice."""

import pytest
from reader_sentences import each, told

CUT = "Ring FDP cut through. Four strands of 3-0 were laid. "


@pytest.mark.parametrize(
    "text",
    [
        "It was before the second pair of strands was tied.",
        "The first two strands were passed from the side.",
        "The last two strands were laid dorsally.",
    ],
)
def test_some_of_the_strands_are_not_their_count(text: str) -> None:
    assert each(CUT + text, "strands") == {"ring FDP": 4}


def test_a_second_repair_has_its_own_count() -> None:
    text = "Index and ring FDP cut through. Index: four strands. The second two-strand repair was of the ring."
    assert each(text, "strands") == {"index FDP": 4, "ring FDP": 2}


@pytest.mark.parametrize("denied", ["No epitendinous yet.", "No epitendinous suture so far.", "No peripheral as yet."])
def test_a_peripheral_suture_not_yet_placed_is_not_absent(denied: str) -> None:
    assert told(CUT + denied, "peripheral") == {}
    assert each(f"{CUT}{denied} Later the epitendinous was completed.", "peripheral") == {"ring FDP": "present"}


@pytest.mark.parametrize("denied", ["No epitendinous.", "No epitendinous at this level."])
def test_one_that_is_denied_is_absent(denied: str) -> None:
    assert each(CUT + denied, "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize("tail", ["left the epitendinous off", "dropped the peripheral suture"])
def test_one_left_off_is_absent(tail: str) -> None:
    assert each(f"{CUT}We {tail} for want of a soft edge.", "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize(
    "text", ["The epitendinous left the surface smooth.", "With the epitendinous tied it was slim."]
)
def test_one_that_left_something_is_there(text: str) -> None:
    assert each(CUT + text, "peripheral") == {"ring FDP": "present"}


@pytest.mark.parametrize(
    ("text", "finding"),
    [
        ("As it was catching under the A4, A4 was released in full.", "released"),
        ("Since it caught on A4, A4 was vented.", "vented"),
        ("A2, A2 and A4 were intact.", "intact"),
    ],
)
def test_a_pulley_named_again_has_its_deed(text: str, finding: str) -> None:
    assert told(CUT + text, "finding", group="pulleys")["ring A4"] == {"finding": finding}
