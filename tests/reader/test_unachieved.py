"""What was not managed, not needed, given up or left open, and what rules ask for, is no finding."""

import pytest
from reader_sentences import each, told

SEWN = "The FDP of the ring finger was completely divided and repaired. "


@pytest.mark.parametrize(
    "text",
    [
        "We were unable to preserve A2.",
        "I failed to keep A2 intact.",
        "I cannot say whether A2 was preserved.",
        "It is not recorded whether A2 was preserved.",
        "It remains unclear if A2 was left intact.",
        "A neighbouring theatre had just finished a case in which A2 was preserved.",
        "Textbooks recommend preservation of A2.",
    ],
)
def test_a_pulley_that_was_not_kept_is_not_told_to_be_whole(text: str) -> None:
    assert each(SEWN + text, "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    "text",
    [
        "It was not possible to place six strands of 3-0 Ethibond.",
        "We failed to place six strands of 3-0 Ethibond.",
        "There was no need to place six strands of 3-0 Ethibond.",
        "I regret that I did not place six strands of 3-0 Ethibond.",
        "Our protocol asks for six strands of 3-0 Ethibond.",
        "The literature recommends a six-strand core of 3-0 Ethibond.",
        "A six-strand core of 3-0 Ethibond was abandoned.",
    ],
)
def test_a_core_that_was_not_placed_is_not_told(text: str) -> None:
    assert told(SEWN + text, "strands", "size", "material") == {}


@pytest.mark.parametrize(
    "text", ["We were unable to see no gap on passive motion.", "I cannot tell whether no gap was seen."]
)
def test_a_gap_left_open_is_not_denied(text: str) -> None:
    assert each(SEWN + text, "gap") == {}


@pytest.mark.parametrize(
    ("text", "finding"),
    [("We were unable to vent A4.", "intact"), ("There was no need to open A4.", "intact")],
)
def test_a_pulley_that_was_not_opened_is_whole(text: str, finding: str) -> None:
    assert each(SEWN + text, "finding", group="pulleys") == {"ring A4": finding}


def test_what_was_done_instead_is_told() -> None:
    text = SEWN + "It was not possible to place six strands, so four strands of 3-0 Ethibond were placed."
    assert told(text, "strands", "size") == {"ring FDP": {"strands": 4, "size": "3-0"}}


def test_what_was_forgotten_to_be_said_is_told() -> None:
    assert each(SEWN + "Forgot to say: four strands of 3-0 Ethibond.", "strands") == {"ring FDP": 4}


def test_a_protocol_for_the_weeks_to_come_is_an_order() -> None:
    text = SEWN + "\n\nInstructions: our protocol asks for early active motion from day 3.\n"
    assert each(text, "programme", group="aftercare") == {"": "early active"}


@pytest.mark.parametrize(
    "text",
    [
        "Repair of A2 was omitted.",
        "Reconstruction of A2 had to be dispensed with.",
        "A2 repair not carried out.",
        "A2 reconstruction waived, too tight.",
    ],
)
def test_a_pulley_whose_repair_was_omitted_is_not_told_repaired(text: str) -> None:
    assert each(SEWN + text, "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    "text",
    ["Repair of the FDS was omitted.", "FDS repair not done.", "Suture of the FDS was not performed."],
)
def test_a_tendon_whose_repair_was_omitted_is_not_told_repaired(text: str) -> None:
    assert "ring FDS" not in each(SEWN + text, "treatment")
    assert each(SEWN + text.replace("FDS", "ulnar digital nerve"), "treatment", group="injuries") == {
        "ring digital nerve ulnar": "left"
    }


def test_something_else_that_was_omitted_takes_nothing_back() -> None:
    text = SEWN + "A2 was repaired, drainage was omitted."
    assert each(text, "finding", group="pulleys") == {"ring A2": "repaired"}
    assert each(text, "treatment") == {"ring FDP": "repaired"}


@pytest.mark.parametrize("text", ["Active testing was omitted.", "Traction test skipped."])
def test_a_test_that_was_omitted_is_none(text: str) -> None:
    assert each(SEWN + text, "test") == {}


@pytest.mark.parametrize("later", ["secondary grafting", "a delayed graft", "a secondary repair"])
def test_a_nerve_left_for_a_later_day_is_left(later: str) -> None:
    text = SEWN + f"The ulnar digital nerve was divided and left for {later}."
    assert told(text, "extent", "treatment", group="injuries") == {
        "ring digital nerve ulnar": {"extent": "complete", "treatment": "left"}
    }
    assert "ring FDS" not in each(SEWN + f"FDS cut, left for {later}.", "treatment")
