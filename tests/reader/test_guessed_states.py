"""A good state that a writer only guesses at, or that nobody confirmed, is not told; one that was seen is."""

import pytest
from reader_sentences import each, told

SEWN = "The FDP of the ring finger was completely divided and was repaired. "


@pytest.mark.parametrize(
    "guess",
    [
        "It may well be that the A2 is whole; I could not see it.",
        "It is quite possible that the A2 is intact.",
        "In all likelihood the A2 was intact.",
        "My impression is that the A2 is intact.",
        "I reckon A2 was intact, though nobody saw it.",
        "Chances are that the A2 is intact.",
        "The A2 could still be intact.",
        "A2 intact, unconfirmed.",
        "That the A2 is intact was not confirmed.",
        "Whether A2 was still whole nobody could tell me.",
    ],
)
def test_a_pulley_guessed_to_be_whole_is_not_told(guess: str) -> None:
    assert told(SEWN + guess, "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    "guess",
    [
        "One might guess from the way the joint bent that the FDS had escaped, but nobody traced it.",
        "I would guess that the FDS is intact.",
        "One would suppose from the cascade that the FDS was intact.",
    ],
)
def test_a_tendon_guessed_to_be_whole_is_not_told(guess: str) -> None:
    assert "ring FDS" not in told(SEWN + guess, "extent")


@pytest.mark.parametrize(
    "guess",
    [
        "I suspect it glides well enough, though I did not watch it do so.",
        "I dare say it glides freely.",
        "Free running was not confirmed.",
        "A free glide could not be demonstrated.",
        "It could not be shown that the repair glides freely.",
        "I trust that there is no gap.",
        "The odds are that there is no gap.",
        "No gap (unconfirmed).",
        "Absence of a gap was not verified.",
    ],
)
def test_a_repair_guessed_to_be_good_is_not_told(guess: str) -> None:
    assert told(SEWN + guess, "glide", "gap") == {}


@pytest.mark.parametrize(
    "guess",
    [
        "I must have put in a circumferential suture, but I cannot picture doing so.",
        "We must have added an epitendinous 6-0, though the count lists none.",
        "I will have run a peripheral 6-0 round it, as always.",
    ],
)
def test_a_suture_that_must_have_been_placed_is_not_told(guess: str) -> None:
    assert told(SEWN + guess, "peripheral") == {}


@pytest.mark.parametrize("words", ["I no longer recall", "I cannot remember", "is not in my notes"])
def test_a_size_left_open_is_not_told(words: str) -> None:
    assert told(f"{SEWN}Whether I used 3-0 or 4-0 {words}.", "size") == {}


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("A gap was not seen.", "none"),
        ("A gap was not demonstrated.", "none"),
        ("A2 was kept and a gap was not seen.", "none"),
        ("Whether pulled or let go, there was no gap.", "none"),
        ("I suspect that the repair gapped.", "seen"),
    ],
)
def test_a_gap_that_was_looked_for_is_told(text: str, value: str) -> None:
    assert told(SEWN + text, "gap") == {"ring FDP": {"gap": value}}


def test_what_stands_beside_the_unproven_is_told() -> None:
    assert each(f"{SEWN}A2 was intact and free running was not seen.", "finding", group="pulleys") == {
        "ring A2": "intact"
    }


@pytest.mark.parametrize("text", ["That went in without trouble.", "It came out easily.", "It went down smoothly."])
def test_what_is_put_in_or_taken_out_tells_no_glide(text: str) -> None:
    assert told(SEWN + text, "glide") == {}


@pytest.mark.parametrize("text", ["It went under A2 without trouble.", "It went in and out of A2 easily."])
def test_what_went_under_a_pulley_tells_the_glide(text: str) -> None:
    assert told(SEWN + text, "glide") == {"ring FDP": {"glide": "free"}}
