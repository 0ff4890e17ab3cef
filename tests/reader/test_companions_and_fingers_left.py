"""The other flexor called the companion; fingers not opened; knots of one finger; days of orders."""

import pytest
from reader_sentences import each, told

BOTH = "The middle FDP and FDS were divided. "
SEWN = "Ring FDP divided, repaired with a 4-strand 3-0 Ethibond core.\nAftercare: "


@pytest.mark.parametrize("word", ["companion", "partner", "fellow"])
def test_its_companion_is_the_other_flexor(word: str) -> None:
    note = (
        BOTH
        + f"The profundus was sewn with a 6-strand Savage of 3-0 Ethibond, its {word} with a Kessler of 4-0 Prolene."
    )
    assert each(note, "size") == {"middle FDP": "3-0", "middle FDS": "4-0"}


def test_the_companion_of_a_nerve_is_no_tendon() -> None:
    note = "The ring FDP was divided; the ulnar digital nerve was cut and its companion was intact."
    assert each(note, "extent") == {"ring FDP": "complete"}


@pytest.mark.parametrize(
    "words",
    [
        "The ring finger I did not need to open.",
        "I saw no reason to explore the ring finger.",
        "No need to enter the ring.",
    ],
)
def test_a_finger_that_was_not_opened(words: str) -> None:
    note = f"Left middle finger. FDP cut in zone II and sewn with a four-strand 4-0 Ticron core. {words} A2 was vented."
    assert each(note, "finding", group="pulleys") == {"middle A2": "vented"}


def test_a_finger_that_turns_up_again_is_turned_to() -> None:
    note = "Left middle finger: FDP cut. The ring finger: FDP cut as well. A2 was vented."
    assert each(note, "finding", group="pulleys") != {"middle A2": "vented"}


@pytest.mark.parametrize(
    "words",
    ["All core knots of the middle finger lay within the repair.", "The knots of the middle finger are buried."],
)
def test_knots_of_one_finger(words: str) -> None:
    note = "Index FDP and middle FDP divided, each repaired with 4-strand 3-0 Ethibond. " + words
    assert each(note, "knot") == {"middle FDP": "buried"}


def test_a_cruciate_pulley_is_no_stitch() -> None:
    note = "Ring FDP cut 45 %. In the ring finger nothing was opened save the cruciate C3, which was vented."
    assert each(note, "stitch") == {}
    assert each(note, "finding", group="pulleys") == {"ring C3": "vented"}


@pytest.mark.parametrize(
    ("words", "day"),
    [
        ("therapy from the twenty-second day", 22),
        ("Therapy begins on the twenty first day.", 21),
        ("Therapy from the twelfth day.", 12),
        ("Therapy from the second day.", 2),
    ],
)
def test_days_in_letters(words: str, day: int) -> None:
    assert told(SEWN + words, "start_day", group="aftercare") == {"": {"start_day": (day, day)}}


@pytest.mark.parametrize(
    ("words", "programme"),
    [
        ("Therapy active from the outset, day 4.", "early active"),
        ("Active from D3 w/ HT.", "early active"),
        ("Passive from D2.", "early passive"),
        ("She will start moving actively on the fourth day and the splint goes after 5 weeks.", "early active"),
    ],
)
def test_motion_from_a_day(words: str, programme: str) -> None:
    assert each(SEWN + words, "programme", group="aftercare") == {"": programme}


def test_motion_after_weeks_is_no_programme() -> None:
    assert each(SEWN + "Active from 6 weeks.", "programme", group="aftercare") == {}
