"""A repair that caught under what was left of a pulley, and a finger that went all the way: two different things."""

import pytest
from reader_sentences import each

SEWN = "Left ring finger. FDP repaired with 3-0 Prolene. "


@pytest.mark.parametrize(
    "words",
    [
        "The repair passed below the rest of A2 with slight catching at the distal edge.",
        "It went through the rest of A4 with slight triggering.",
        "The repair ran under what was left of A2 with some catching.",
    ],
)
def test_caught_under_what_was_left(words: str) -> None:
    assert each(SEWN + words, "glide") == {"ring FDP": "catching"}


def test_free_under_what_was_left() -> None:
    assert each(SEWN + "The repair ran freely under the rest of A2.", "glide") == {"ring FDP": "free"}


@pytest.mark.parametrize(
    "words", ["On table excursion: passive full extension.", "Glide: full passive extension possible."]
)
def test_how_far_the_finger_went(words: str) -> None:
    assert each(SEWN + words, "glide") == {}


@pytest.mark.parametrize("words", ["On the table full excursion.", "Excursion: full and free."])
def test_how_far_the_tendon_went(words: str) -> None:
    assert each(SEWN + words, "glide") == {"ring FDP": "free"}
