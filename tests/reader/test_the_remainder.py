"""'The rest', 'the remainder': every sewn tendon but those named before it in the sentence."""

import pytest
from reader_sentences import each

NOTE = "Left wrist, zone V. FCU, FPL and FDP index completely cut and repaired with four strands of 3-0 Ticron. "


@pytest.mark.parametrize(
    "words",
    [
        "The FCU came together under appreciable tension; the remainder came together without tension.",
        "The FCU lay under tension; the rest came together without tension.",
    ],
)
def test_the_remainder(words: str) -> None:
    assert each(NOTE + words, "tension") == {"FCU": "present", "thumb FPL": "none", "index FDP": "none"}


def test_others_that_came_together_are_not_the_one_before() -> None:
    words = "The FCU was tight; the others came together without tension."
    assert each(NOTE + words, "tension") == {"FCU": "present", "thumb FPL": "none", "index FDP": "none"}


def test_the_rest_of_something_is_no_tendons() -> None:
    words = "The FCU lay under tension. The rest of the wound was closed without tension."
    assert each(NOTE + words, "tension") == {"FCU": "present"}
