"""What was hoped for, and results denied: neither is a finding of the good kind."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. With luck it glides freely.",
            {},
        ),
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. The repair ought to hold without a gap.",
            {},
        ),
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. I released A1 so that the tendon should not snag.",
            {},
        ),
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. A4 was vented in order for the repair to glide freely.",
            {},
        ),
    ],
)
def test_what_is_hoped_for_is_no_finding(note: str, expected: Shown) -> None:
    assert told(note, "gap", "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. A1 was released so that the tendon would not snag. It ran freely.",
            {"ring FDP": {"glide": "free"}},
        ),
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. A4 was vented so that it might pass. It still catches at A2.",
            {"ring FDP": {"glide": "catching"}},
        ),
    ],
)
def test_a_result_beside_a_purpose(note: str, expected: Shown) -> None:
    assert told(note, "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. The repair moved, but not freely.",
            {"ring FDP": {"glide": "restricted"}},
        ),
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. The tendon slides but not freely, no gap.",
            {"ring FDP": {"glide": "restricted"}},
        ),
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. It catches under A4 and does not run freely.",
            {"ring FDP": {"glide": "catching"}},
        ),
    ],
)
def test_not_freely_is_restricted(note: str, expected: Shown) -> None:
    assert told(note, "glide") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. Avoid tension on the join for six weeks.",
            {},
        ),
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. The hand was rested in flexion to guard against tension on the repair.",
            {},
        ),
    ],
)
def test_tension_to_be_avoided_is_none_there(note: str, expected: Shown) -> None:
    assert told(note, "tension") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. Six strands is what one would choose in a fresh wound.",
            {"ring FDP": {"strands": 4}},
        ),
        (
            "Left ring finger, zone II. FDP completely divided, joined with a four-strand cruciate of 3-0 "
            "Ethibond. Others would have chosen a running peripheral suture as well.",
            {"ring FDP": {"strands": 4}},
        ),
    ],
)
def test_what_one_would_choose_was_not_done(note: str, expected: Shown) -> None:
    assert told(note, "strands", "peripheral") == expected
