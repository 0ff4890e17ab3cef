"""Pulleys as they were found in the end: against expectation, after another case, or in place of an opening."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "note",
    [
        "Against all my expectation the A2 pulley of the ring finger turned out to be intact.",
        "The A2 of the ring finger, I am glad to say, turned out to be preserved.",
        "Ring finger. Unlike last week's case, in which A2 was lost, here A2 is intact.",
        "Ring finger. Unlike my last case of this kind, in which A2 was excised, here A2 is intact.",
        "I went in meaning to vent A2 of the ring finger but never needed to: A2 was left intact.",
        "We began intending to release A2 of the ring finger but did not need to: A2 was left intact.",
    ],
)
def test_a_pulley_that_is_whole(note: str) -> None:
    assert each(note, "finding", group="pulleys") == {"ring A2": "intact"}


@pytest.mark.parametrize(
    "note",
    [
        "Ring finger. A2, to be preserved at all costs, was examined.",
        "Ring finger. In another case in which A2 was intact we used six strands.",
    ],
)
def test_a_pulley_not_said_to_be_whole(note: str) -> None:
    assert told(note, group="pulleys") == {}


def test_a_pulley_meant_to_be_opened_and_opened() -> None:
    note = "I went in meaning to vent A2 of the ring finger and did so over 5 mm."
    assert each(note, "finding", group="pulleys") == {"ring A2": "vented"}
