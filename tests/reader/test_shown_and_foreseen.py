"""What was explained, shown on a drape, foreseen or forgotten, or told of the case before, is no finding."""

import pytest
from reader_sentences import each

SEWN = "Left index FDP wholly divided, repaired, 4-0 Prolene. "


@pytest.mark.parametrize(
    "text",
    [
        "It was explained to the medical student that an epitendinous suture adds perhaps a third to the strength.",
        "I told the house officer that a peripheral suture doubles the strength.",
        "The trainees were reminded that a running edge suture is worth its while.",
    ],
)
def test_lessons(text: str) -> None:
    assert not each(SEWN + text, "peripheral")


def test_a_purchase_that_was_taught() -> None:
    text = "I explained to the intern that 10 mm of purchase is best; here 8 mm of purchase was taken."
    assert each(SEWN + text, "purchase_mm") == {"index FDP": (8, 8)}


def test_what_a_learner_was_shown_here() -> None:
    text = "The registrar was shown that there was no gap on traction."
    assert each(SEWN + text, "gap") == {"index FDP": "none"}


@pytest.mark.parametrize(
    "text",
    [
        "A running edge suture was demonstrated on the drape but not put in the tendon.",
        "A running epitendinous suture was shown on a glove, and none was put in.",
    ],
)
def test_shown_and_not_placed(text: str) -> None:
    assert each(SEWN + text, "peripheral") == {"index FDP": "absent"}


def test_a_stitch_shown_on_a_drape() -> None:
    assert not each(SEWN + "An Adelaide was demonstrated on a drape.", "stitch")


def test_a_towel_under_the_wrist() -> None:
    text = "No gap was shown on testing with the towel under the wrist."
    assert each(SEWN + text, "gap") == {"index FDP": "none"}


@pytest.mark.parametrize(
    "text", ["Expected outcome: good glide.", "Anticipated: free glide.", "Prognosis: free glide.", "Aims: free glide."]
)
def test_foreseen(text: str) -> None:
    assert not each(SEWN + text, "glide")


def test_as_expected() -> None:
    assert each(SEWN + "As expected the tendon ran freely.", "glide") == {"index FDP": "free"}


@pytest.mark.parametrize(
    "text",
    ["PLAN BEFORE INCISION: six-strand core, epitendinous 6-0.", "Plan on arrival: four strands, epitendinous 6-0."],
)
def test_plans_with_their_hour(text: str) -> None:
    assert not each(text + " " + SEWN, "peripheral")


@pytest.mark.parametrize(
    "text",
    [
        "The finishing stitch I no longer remember either way.",
        "Of the edge suture I have no recollection.",
        "The epitendinous suture I can no longer recall.",
        "Epitendinous: unsure if done, tape ran out.",
        "Peripheral: cannot say whether done.",
        "Epitendinous suture: not certain it was placed.",
    ],
)
def test_forgotten(text: str) -> None:
    assert not each(SEWN + text, "peripheral")


def test_something_else_forgotten() -> None:
    text = "An epitendinous suture was run, and the colour of the drape I no longer remember."
    assert each(SEWN + text, "peripheral") == {"index FDP": "present"}


@pytest.mark.parametrize(
    "text",
    [
        "It may well have run freely under the pulleys, but I did not see it do so.",
        "It may have glided freely but with the arm paralysed I could not tell.",
    ],
)
def test_may_have_run(text: str) -> None:
    assert not each(SEWN + text, "glide")


@pytest.mark.parametrize(
    "text",
    [
        "This was the second of two hands on the morning list; the first had an eight-strand FPL.",
        "The last of three cases today: the one before had eight strands in the FPL.",
    ],
)
def test_the_case_before(text: str) -> None:
    assert "thumb FPL" not in each(text + " " + SEWN, "strands")


def test_the_first_of_two_repairs() -> None:
    text = "Two repairs of the one hand: the thumb FPL had an eight-strand core."
    assert each(text, "strands") == {"thumb FPL": 8}


@pytest.mark.parametrize("text", ["Second of two hands on the list; the", "Last of two cases, the", "To be"])
def test_notes_that_break_off(text: str) -> None:
    assert not each(text, "strands")
