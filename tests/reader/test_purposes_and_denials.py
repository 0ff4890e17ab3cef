"""What was hoped for, and results denied: neither is a finding of the good kind."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    "words",
    [
        "With luck it glides freely.",
        "The repair ought to hold without a gap.",
        "I released A1 so that the tendon should not snag.",
        "A4 was vented in order for the repair to glide freely.",
    ],
)
def test_what_is_hoped_for_is_no_finding(words: str) -> None:
    note = (
        "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 Ethibond. "
        + words
    )
    assert told(note, "gap", "glide") == {}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("A1 was released so that the tendon would not snag. It ran freely.", {"ring FDP": {"glide": "free"}}),
        ("A4 was vented so that it might pass. It still catches at A2.", {"ring FDP": {"glide": "catching"}}),
    ],
)
def test_a_result_beside_a_purpose(words: str, expected: Shown) -> None:
    note = (
        "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 Ethibond. "
        + words
    )
    assert told(note, "glide") == expected


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("The repair moved, but not freely.", {"ring FDP": {"glide": "restricted"}}),
        ("The tendon slides but not freely, no gap.", {"ring FDP": {"glide": "restricted"}}),
        ("It catches under A4 and does not run freely.", {"ring FDP": {"glide": "catching"}}),
    ],
)
def test_not_freely_is_restricted(words: str, expected: Shown) -> None:
    note = (
        "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 Ethibond. "
        + words
    )
    assert told(note, "glide") == expected


@pytest.mark.parametrize(
    "words",
    [
        "Avoid tension on the join for six weeks.",
        "The hand was rested in flexion to guard against tension on the repair.",
    ],
)
def test_tension_to_be_avoided_is_none_there(words: str) -> None:
    note = (
        "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 Ethibond. "
        + words
    )
    assert told(note, "tension") == {}


@pytest.mark.parametrize(
    "words",
    [
        "Six strands is what one would choose in a fresh wound.",
        "Others would have chosen a running peripheral suture as well.",
    ],
)
def test_what_one_would_choose_was_not_done(words: str) -> None:
    note = (
        "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 Ethibond. "
        + words
    )
    assert told(note, "strands", "peripheral") == {"ring FDP": {"strands": 4}}


@pytest.mark.parametrize(
    "words",
    [
        "In the ring finger the profundus was completely divided, just short of the insertion of the superficialis.",
        "Ring finger: the profundus was cut through just proximal to the decussation of the superficialis.",
    ],
)
def test_a_part_of_another_tendon_is_a_place(words: str) -> None:
    note = "Right ring finger, zone II. " + words + " It was repaired with a four-strand cruciate of 3-0 Ethibond."
    assert set(told(note, "extent", "treatment", "strands")) == {"ring FDP"}


@pytest.mark.parametrize(
    "words",
    ["His right hand was caught under a hatch.", "The hand got caught beneath the lid of a press."],
)
def test_a_hand_that_was_caught_is_no_glide(words: str) -> None:
    note = (
        words + " FDP of the ring finger completely divided and repaired with a four-strand cruciate of 3-0 Ethibond."
    )
    assert told(note, "glide") == {}
