"""What is still to be checked is not told; what was checked is."""

import pytest
from reader_sentences import each, told

SEWN = "The FDP of the ring finger was completely divided and was repaired. "


@pytest.mark.parametrize(
    "text",
    [
        "Please check that A2 is intact.",
        "Need to confirm that A2 is intact.",
        "A2 intact - verify with video.",
        "A2 intact (to be confirmed).",
        "Awaiting confirmation that the A2 was kept.",
        "The old note speaks of an intact A2.",
        "I did not check that the A2 was intact.",
        "It was too dark to see that A2 was intact.",
        "I took it for granted that the A2 was intact.",
        "Word from the scrub nurse was that A2 was intact.",
        "The resident tells me the A2 is intact.",
        "I would not swear that A2 was intact.",
        "A4 was supposed to stay intact.",
    ],
)
def test_a_pulley_still_to_be_checked_is_not_told(text: str) -> None:
    assert each(SEWN + text, "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    "text",
    [
        "Six strands (to be confirmed by the fellow).",
        "Strands: six (to be confirmed).",
        "TBC: six strands of 3-0.",
        "Size 3-0, to be verified.",
        "The plan called for six strands.",
        "Six strands had been foreseen.",
        "A six-strand repair crossed my mind.",
        "The scrub nurse swears that six strands went in.",
        "The patient before him had six strands.",
    ],
)
def test_a_core_still_to_be_checked_is_not_told(text: str) -> None:
    assert told(SEWN + text, "strands", "size") == {}


@pytest.mark.parametrize(
    "text",
    [
        "Check that it glides freely.",
        "Glide free - to be confirmed.",
        "Fingers crossed that it glides freely.",
        "My wish was for no gap.",
        "Gap and glide went untested.",
        "The registrar assures me that there was no gap.",
        "I seem to remember that there was no gap.",
        "I make no claim of a free glide.",
        "In the hope of a free glide the sheath was opened.",
    ],
)
def test_a_behaviour_still_to_be_checked_is_not_told(text: str) -> None:
    assert told(SEWN + text, "gap", "glide") == {}


@pytest.mark.parametrize(
    "text",
    [
        "I could confirm that A2 was intact.",
        "A2 was checked and was intact.",
        "We were able to verify that A2 was intact.",
        "A2 intact; the splint is to be checked on day 4.",
    ],
)
def test_a_pulley_that_was_checked_is_told(text: str) -> None:
    assert each(SEWN + text, "finding", group="pulleys") == {"ring A2": "intact"}


def test_that_a_tendon_was_repaired_stays_told() -> None:
    text = "The FDP of the ring finger was repaired with six strands (to be confirmed)."
    assert told(text, "treatment", "strands") == {"ring FDP": {"treatment": "repaired"}}


def test_what_was_done_in_hope_is_told() -> None:
    text = f"{SEWN}In the hope of a snug join I took a second bite of the peripheral 6-0 nylon."
    assert told(text, "peripheral") == {"ring FDP": {"peripheral": "present"}}
