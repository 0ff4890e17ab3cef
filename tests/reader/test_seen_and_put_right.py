"""Words put right or denied only in part, questions, and what neither of two was given."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "words",
    [
        'What is in the tendon is a four-strand cruciate. The "six-strand modified Savage" above is an error.',
        'It is a four-strand cruciate. The "six-strand modified Savage" should be disregarded.',
    ],
)
def test_a_quoted_error(words: str) -> None:
    note = f"Index finger. FDP repaired, six-strand modified Savage, 4-0 Ethibond.\n\nADDENDUM\n\n{words}"
    assert told(note, "strands", "stitch")["index FDP"] == {"strands": 4, "stitch": "cruciate"}


@pytest.mark.parametrize(
    "words",
    ["Little FDP: not divided: a partial cut.", "Little FDP not divided, but a partial cut two thirds through."],
)
def test_not_divided_but_in_part(words: str) -> None:
    assert told(words, "extent").get("small FDP") in (None, {"extent": "partial"})


@pytest.mark.parametrize(
    "words",
    [
        "What our first operation had done to A2 was left as it was.",
        "Whatever had been done to A2 before was left alone.",
    ],
)
def test_what_was_done_before_is_no_whole_pulley(words: str) -> None:
    assert told(f"Ring FDP repaired. {words}", group="pulleys") == {}


@pytest.mark.parametrize("words", ["a separation of 1 mm, it is accepted", "a separation of 1 mm between the ends"])
def test_a_separation_is_a_gap(words: str) -> None:
    found = told(f"Ring FDP repaired 4 strands. Passive test: {words}.", "gap", "gap_mm")
    assert found == {"ring FDP": {"gap": "seen", "gap_mm": 1}}


@pytest.mark.parametrize(
    "words",
    [
        "Neither the middle finger nor the ring was given an epitendinous suture.",
        "Neither the middle, time being short, nor the ring finger got an epitendinous suture.",
    ],
)
def test_neither_was_given_one(words: str) -> None:
    found = each(f"Middle and ring FDP repaired with 4 strands. {words}", "peripheral")
    assert found == {"middle FDP": "absent", "ring FDP": "absent"}


@pytest.mark.parametrize("verb", ["closed", "repaired"])
def test_simple_sutures_alone_are_the_core(verb: str) -> None:
    found = told(f"Middle FDS 50% cut was {verb} with three simple sutures of 4-0 Ethibond.", "stitch", "peripheral")
    assert found == {"middle FDS": {"stitch": "simple"}}


def test_an_anchor_only_asked_for() -> None:
    note = "Thumb FPL cut. Surgeon asks is there an anchor set in house. Core done with 4-0."
    assert told(note, "treatment", "stitch") == {"thumb FPL": {"treatment": "repaired"}}


@pytest.mark.parametrize(
    "words",
    [
        "Not done: epitendinous suture, A2 repair.",
        "NOT DONE, though written on the list before we started: epitendinous suture, repair of A2, anchor.",
        "Omitted: epitendinous suture, A2 repair.",
    ],
)
def test_a_list_of_what_was_not_done(words: str) -> None:
    note = f"Ring FDP repaired, 4-0 Yoshizu. {words}"
    assert told(note, "peripheral", "stitch") == {"ring FDP": {"stitch": "yoshizu"}}
    assert told(note, group="pulleys") == {}


@pytest.mark.parametrize("words", ["A3 left as it was.", "A3 was preserved."])
def test_a_torn_pulley_left_is_not_whole(words: str) -> None:
    note = f"Ring FDP repaired, 4-0. A3 lacerated by the pot. The artery was cut. {words}"
    assert told(note, group="pulleys") == {"ring A3": {"finding": "injured"}}


@pytest.mark.parametrize(
    "words", ["nothing is done there, nor trimming nor suture", "we leave it so, without trimming, nor suture"]
)
def test_nor_sewn(words: str) -> None:
    found = told(f"Ring: FDP cut. FDS with a partial section of 20 %, {words}. FDP 4 strands.", "treatment")
    assert found["ring FDS"] == {"treatment": "left"}


@pytest.mark.parametrize(
    "words",
    ["Purchase was measured on the table as 8 mm, not 12.", "The purchase measured 8 mm on the table and not 12."],
)
def test_a_purchase_put_right(words: str) -> None:
    note = f"Ring FDP repaired with 4 strands, purchase 12 mm.\n\nADDENDUM\n{words}"
    assert each(note, "purchase_mm") == {"ring FDP": (8, 8)}
