"""Small words that turn what is told: a try taken out again, a repair declined, 'the middle' beside other fingers."""

import pytest
from reader_sentences import each, told

SEWN = "Small finger FDP completely divided; two-strand Kirchmayr, 4-0 Prolene."


@pytest.mark.parametrize(
    "remark",
    [
        "The peripheral stitch I began there cut out twice and was taken out again, so none remains.",
        "A running 6-0 was tried and tore out, so it was taken out again.",
    ],
)
def test_a_try_taken_out_again_is_none(remark: str) -> None:
    assert "peripheral_size" not in told(f"{SEWN} {remark}")["small FDP"]
    assert each(f"{SEWN} {remark}", "peripheral").get("small FDP") != "present"


@pytest.mark.parametrize(
    "words",
    [
        "Repair of the ring FDS, both slips of which are divided, was declined given the late presentation.",
        "The FDS repair of the ring finger was abandoned.",
    ],
)
def test_a_repair_declined_is_none(words: str) -> None:
    assert told(words, "treatment") == {}


def test_the_middle_beside_another_finger() -> None:
    note = "Looking at the index: FDP intact. Looking at the middle: FDP completely cut."
    assert each(note, "extent") == {"index FDP": "intact", "middle FDP": "complete"}


def test_a_middle_where_no_finger_is_named_is_none() -> None:
    note = "FPL of the thumb repaired. The knot lies in the middle."
    assert set(told(note)) == {"thumb FPL"}


def test_a_pulley_spared_in_brackets_is_no_tendon() -> None:
    note = "Thumb FPL repaired with 3-0 nylon. FPL passed beneath the oblique pulley (spared) without trouble."
    assert told(note, "extent") == {}


def test_repairs_that_slid_cleanly_say_nothing_of_their_ends() -> None:
    note = (
        "Index and ring FDP completely divided, repaired with 4-0 nylon. The index and ring FDP repairs slid cleanly."
    )
    assert told(note, "ends") == {}


def test_a_partial_cut_stitched_peripherally_has_no_core() -> None:
    note = "FDP of the middle finger, half through, stitched peripherally with 6-0 nylon running only."
    assert told(note, "size", "peripheral_size") == {"middle FDP": {"peripheral_size": "6-0"}}


def test_a_note_whose_first_deed_is_left_out_is_read() -> None:
    note = "All were repaired but not the thumb FPL, which was left alone."
    assert "size" not in told(note).get("thumb FPL", {})
