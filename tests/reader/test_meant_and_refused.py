"""What was to follow and did not, what the writer will not say, and what others remember: none of it is a finding."""

import pytest
from reader_sentences import each, told

SEWN = "Ring FDP cut through and repaired with a four-strand core of 3-0 Ethibond. "


@pytest.mark.parametrize(
    "note",
    [
        "A running 6-0 edge suture was to follow, but tourniquet time was up and it was not placed.",
        "A circumferential 6-0 was to be added but the needle was lost and none went in.",
        "The epitendinous was to come last; time ran out and it was left off.",
        "A peripheral running suture was due next, but the tourniquet failed and it was never put in.",
    ],
)
def test_a_peripheral_suture_that_was_to_follow_and_did_not(note: str) -> None:
    assert each(SEWN + note, "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize(
    "note",
    [
        "An edge stitch was to follow and did follow, in 6-0 Prolene.",
        "The tourniquet was due down; a running 6-0 epitendinous was placed.",
    ],
)
def test_one_that_did_follow(note: str) -> None:
    assert each(SEWN + note, "peripheral") == {"ring FDP": "present"}


@pytest.mark.parametrize(
    "note",
    [
        "The words 'no gap' cannot honestly be written here.",
        'I will not write "no gap" in this note.',
        "I cannot put my name to 'no gap'.",
        'It would be wrong to write "no gap" here.',
    ],
)
def test_what_the_writer_will_not_say(note: str) -> None:
    assert told(SEWN + note, "gap") == {}


@pytest.mark.parametrize(
    "note",
    [
        'I can write "no gap" with a clear conscience.',
        'I do not hesitate to write "no gap".',
        'Not a doubtful one this: "no gap" on full extension.',
    ],
)
def test_what_the_writer_says(note: str) -> None:
    assert each(SEWN + note, "gap") == {"ring FDP": "none"}


@pytest.mark.parametrize(
    "note",
    [
        "My scrub nurse recalls that an edge stitch went in; I have no memory of one.",
        "The assistant remembers a running 6-0; I do not.",
        "The student is certain that there was no gap and that A2 was intact.",
        "The anaesthetist swears he saw it glide freely.",
    ],
)
def test_what_others_remember(note: str) -> None:
    assert told(SEWN + note, "peripheral", "gap", "glide") == {}
    assert told(SEWN + note, group="pulleys") == {}


@pytest.mark.parametrize(
    "note",
    [
        "The nurse recalls a running 6-0 epitendinous, and so do I.",
        "I recall that a running 6-0 epitendinous went in.",
        "A running 6-0 epitendinous was placed; the nurse handed it up.",
    ],
)
def test_what_the_writer_remembers_too(note: str) -> None:
    assert each(SEWN + note, "peripheral") == {"ring FDP": "present"}
