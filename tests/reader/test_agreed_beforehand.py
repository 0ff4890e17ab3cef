"""What was agreed before the operation, what others allow, what was turned down or declined: none of it was done."""

import pytest
from reader_sentences import told

CUT = "Right ring FDP completely divided. "


@pytest.mark.parametrize(
    "plan",
    [
        "At the briefing we agreed on an M-Tang with looped 4-0. None were there, so this is a Kessler of 3-0.",
        "We had agreed on an Adelaide with 4-0. There was none; a Kessler of 3-0 was done instead.",
        "The team brief called for an Adelaide of 4-0 Ticron. In the event a Kessler of 3-0 was done.",
    ],
)
def test_what_a_meeting_chose_is_not_what_was_done(plan: str) -> None:
    assert told(CUT + plan, "stitch", "size", "looped") == {"ring FDP": {"stitch": "kessler", "size": "3-0"}}


@pytest.mark.parametrize(
    "note",
    [
        "As agreed at the briefing, an Adelaide of 4-0 Ticron was done.",
        "At the briefing we agreed on an Adelaide of 4-0 Ticron. This was carried out.",
        "I chose an Adelaide of 4-0 Ticron.",
    ],
)
def test_what_was_agreed_and_done(note: str) -> None:
    assert told(CUT + note, "stitch", "size") == {"ring FDP": {"stitch": "adelaide", "size": "4-0"}}


@pytest.mark.parametrize(
    "note",
    [
        "Textbooks allow up to half of A2 to be vented. I needed none of it: A2 was not touched and is intact.",
        "The literature permits A2 to be released completely. That was not needed here; A2 intact.",
        "Venting A2 was turned down; A2 stayed whole.",
        "Opening A2 was rejected; A2 remained intact.",
    ],
)
def test_what_is_allowed_or_turned_down_was_not_done(note: str) -> None:
    found = told(CUT + "Repaired. " + note, "finding", "extent_percent", group="pulleys")
    assert found == {"ring A2": {"finding": "intact"}}


def test_what_was_advised_and_done() -> None:
    found = told(CUT + "Repaired. To vent A2 was advised and I did so; A2 vented.", "finding", group="pulleys")
    assert found == {"ring A2": {"finding": "vented"}}


@pytest.mark.parametrize(
    "note", ["I declined six strands for fear of bulk and stayed with four.", "I refused six strands."]
)
def test_what_the_surgeon_declined(note: str) -> None:
    assert told(CUT + note + " 4-0 Ethibond.", "strands", "bulk") in ({}, {"ring FDP": {"strands": 4}})


@pytest.mark.parametrize("note", ["Afraid of bulk, I left out the epitendinous.", "No more than that, fearing bulk."])
def test_bulk_that_was_only_feared(note: str) -> None:
    assert told(CUT + "Four strands of 4-0. " + note, "bulk") == {}


@pytest.mark.parametrize(
    "note",
    [
        "Either Ethibond or Prolene was handed up, I did not notice which.",
        "The core was Ticron or Prolene, I do not recall which.",
    ],
)
def test_one_of_two_threads_nobody_knows_which(note: str) -> None:
    assert told(CUT + "Four strands. " + note, "material") == {}
