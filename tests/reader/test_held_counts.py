"""What is said of 'the three repairs' reaches three tendons: the count a note gives is held to."""

import pytest
from reader_sentences import Shown, given_to, told

NICKED = (
    "Left index and ring fingers. FDP of both fingers and FDS of the index finger completely divided, FDS of the ring "
    "finger 40% divided. All four repaired with 4-0 Prolene. "
)
WRIST = "FDP of the ring and small fingers and FCU completely divided, all repaired with 3-0 Ethibond. "
THREE = {"index FDP": {"ends": "clean"}, "index FDS": {"ends": "clean"}, "ring FDP": {"ends": "clean"}}


@pytest.mark.parametrize(
    "remark",
    [
        "The ends of the three completely divided tendons were clean.",
        "The ends of all completely cut tendons were clean.",
        "The three severed tendons had clean ends.",
    ],
)
def test_those_cut_through_do_not_count_the_nicked_one(remark: str) -> None:
    assert told(NICKED + remark, "ends") == THREE


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            WRIST + "On passive movement the two finger tendons did not gap.",
            {"ring FDP": {"gap": "none"}, "small FDP": {"gap": "none"}},
        ),
        (
            WRIST + "Pulled on both profundus repairs: no gap in either.",
            {"ring FDP": {"gap": "none"}, "small FDP": {"gap": "none"}},
        ),
    ],
)
def test_counted_tendons_of_the_fingers_leave_out_the_wrist(note: str, expected: Shown) -> None:
    assert told(note, "gap") == expected


@pytest.mark.parametrize(
    "note",
    [
        "FDP and FDS of the ring finger and FDP of the small finger divided and repaired with 3-0 Prolene. "
        "FDS of the small finger repaired with 4-0 Prolene. None of the five repairs gapped.",
        "FDP and FDS of the ring finger and FDP of the small finger divided and repaired with 3-0 Prolene. "
        "FDS of the small finger repaired with 4-0 Prolene. The four repairs showed no gap.",
    ],
)
def test_a_count_that_takes_all_leaves_none_out(note: str) -> None:
    assert set(told(note, "gap")) == {"ring FDP", "ring FDS", "small FDP", "small FDS"}


@pytest.mark.parametrize(
    "remark",
    ["The two repairs showed no gap.", "Neither of the two repairs gapped."],
)
def test_nothing_is_said_where_the_two_that_are_meant_cannot_be_told(remark: str) -> None:
    note = (
        "The FDP of the index, middle and ring fingers was completely divided in zone II. Each was repaired with a "
        "four-strand cruciate of 3-0 Ethibond.\n\n"
    )
    assert told(note + remark, "gap") == {}


@pytest.mark.parametrize(
    "remark",
    [
        "FCU and both profundus tendons were clean at their ends.",
        "The FCU and the two profundus tendons had clean ends.",
    ],
)
def test_a_tendon_named_beside_the_counted_ones_is_not_cut_off(remark: str) -> None:
    assert set(told(WRIST + remark, "ends")) == {"FCU", "ring FDP", "small FDP"}


@pytest.mark.parametrize(
    "remark",
    ["Ends are clean on all three that are through.", "The ends were clean in those that were right through."],
)
def test_those_that_are_through_leave_out_the_nicked_one(remark: str) -> None:
    assert "ring FDS" not in told(NICKED + remark, "ends")


def test_a_fact_narrowed_by_a_count_says_so() -> None:
    assert "of_a_count" in given_to(NICKED + "The three severed tendons had clean ends.", "index FDP", "ends")


NICKED_AND_SEWN = "Ring FDP and small FDP were cut through. Small FDS was half cut. "
TWO = {"ring FDP": {"strands": 4}, "small FDP": {"strands": 4}}


@pytest.mark.parametrize(
    "remark",
    [
        "Both severed tendons were joined with a four-strand cruciate. The small FDS was sewn with one stitch of 4-0.",
        "Both divided tendons got a 4-strand Adelaide in 3-0 Prolene. Small FDS repaired with a 4-0 simple stitch.",
    ],
)
def test_both_cut_tendons_are_the_two_cut_through(remark: str) -> None:
    assert told(NICKED_AND_SEWN + remark, "strands") == TWO


def test_both_tendons_of_one_finger_stay_its_two() -> None:
    note = NICKED_AND_SEWN + "In the small finger both tendons were sewn with a 4-strand Adelaide in 3-0 Prolene."
    assert told(note, "strands") == {"small FDP": {"strands": 4}, "small FDS": {"strands": 4}}


@pytest.mark.parametrize(
    "remark",
    [
        "The finger tendon repairs were checked by passive movement. No gap seen.",
        "Digital tendon repairs: no gap on passive movement.",
    ],
)
def test_finger_tendons_are_not_those_of_the_wrist(remark: str) -> None:
    assert set(told(WRIST + remark, "gap")) == {"ring FDP", "small FDP"}


def test_repairs_of_whatever_kind_count_those_of_the_wrist() -> None:
    assert set(told(WRIST + "None of the repairs gapped.", "gap")) == {"ring FDP", "small FDP", "FCU"}
