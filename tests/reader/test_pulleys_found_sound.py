"""Pulleys rebuilt before and found sound, pulleys told of both behind a landmark, and other words for whole."""

import pytest
from reader_sentences import each

SECOND = "Second stage, left ring finger. "
BOTH = {"ring A2": "intact", "ring A4": "intact"}


@pytest.mark.parametrize(
    "text",
    [
        "A2 and A4 (reconstructed in stage I) were found competent. The graft was drawn through.",
        "A2 and A4 had been rebuilt in May. The rod lay free. Both reconstructed pulleys were firm.",
        "The pulleys made last time, A2 and A4, were strong and I let them be.",
        "The rebuilt A2 and the rebuilt A4 of stage one were both intact.",
    ],
)
def test_rebuilt_at_the_first_stage(text: str) -> None:
    assert each(SECOND + text, "finding", group="pulleys") == BOTH


@pytest.mark.parametrize(
    "text",
    [
        SECOND + "The pulleys made last time, A2 and A4, were not strong.",
        "Left ring finger, FDP cut. A2 and A4 were made anew from FDS; the new pulleys were firm. Sheath rebuilt.",
    ],
)
def test_not_found_sound(text: str) -> None:
    assert "intact" not in each(text, "finding", group="pulleys").values()


@pytest.mark.parametrize(
    "text",
    [
        "The tendon was drawn under A2 and A4, both of which I kept.",
        "The FDP was led under A2 and A4 (both undisturbed) with a catheter.",
        "It was passed below A2 + A4, neither of which required opening.",
    ],
)
def test_landmarks_of_which_more_is_told(text: str) -> None:
    assert each("Left ring finger, FDP cut. " + text, "finding", group="pulleys") == BOTH


def test_landmarks_of_which_nothing_is_told() -> None:
    text = "Left ring finger, FDP cut. The tendon was drawn under A2 and A4, both with difficulty."
    assert each(text, "finding", group="pulleys") == {}


@pytest.mark.parametrize("words", ["never touched", "survived", "not encroached upon", "stayed as it was", "not hurt"])
def test_words_for_whole(words: str) -> None:
    text = f"Left ring finger, FDP cut. A2 {words}."
    assert each(text, "finding", group="pulleys") == {"ring A2": "intact"}


@pytest.mark.parametrize(
    "words",
    ["slit across its length", "released altogether", "divided along its whole length", "split from end to end"],
)
def test_over_its_length(words: str) -> None:
    text = f"Left ring finger, FDP cut. A3 was {words}."
    assert each(text, "finding", group="pulleys") == {"ring A3": "released"}
