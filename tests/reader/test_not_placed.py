"""Sutures told as not placed, or placed and no part of the join, give nothing to the thread beside them."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, FDS completely divided. FDS was joined with one mattress of 4-0 Prolene and no "
            "epitendinous suture.",
            {"ring FDS": {"size": "4-0", "material": "polypropylene", "peripheral": "absent"}},
        ),
        (
            "Left small finger, FDS completely divided. A single figure-of-eight of 4-0 nylon, without a "
            "circumferential suture.",
            {"small FDS": {"size": "4-0", "material": "nylon", "peripheral": "absent"}},
        ),
        (
            "Right index finger, FDP completely divided. Sewn with a two-strand Kessler of 3-0 Ethibond and "
            "nothing epitendinous.",
            {"index FDP": {"size": "3-0", "material": "braided polyester", "peripheral": "absent"}},
        ),
    ],
)
def test_a_denied_round_takes_no_thread(note: str, expected: Shown) -> None:
    assert told(note, "size", "material", "peripheral", "peripheral_size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, FDP completely divided. Four-strand cruciate of 3-0 Ethibond and a 6-0 running.",
            {"ring FDP": {"size": "3-0", "peripheral": "present", "peripheral_size": "6-0"}},
        ),
        (
            "Left thumb, FPL completely divided. Two-strand Kessler of 4-0 Prolene plus a running 5-0 nylon "
            "epitendinous suture.",
            {"thumb FPL": {"size": "4-0", "peripheral": "present", "peripheral_size": "5-0"}},
        ),
    ],
)
def test_a_round_that_was_placed_keeps_its_thread(note: str, expected: Shown) -> None:
    assert told(note, "size", "peripheral", "peripheral_size") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left small finger, FDS completely divided. The superficialis was repaired with two simple sutures of "
            "4-0 Prolene.",
            {"small FDS": {"size": "4-0", "material": "polypropylene"}},
        ),
        (
            "Right middle finger, FDS completely divided. FDS was sutured with a simple stitch of 5-0 nylon.",
            {"middle FDS": {"size": "5-0", "material": "nylon"}},
        ),
        (
            "Left ring finger, FDS completely divided. It was repaired with one horizontal mattress of 4-0 Prolene.",
            {"ring FDS": {"size": "4-0", "material": "polypropylene"}},
        ),
    ],
)
def test_what_alone_joins_a_tendon_is_its_core(note: str, expected: Shown) -> None:
    assert told(note, "size", "material", "peripheral") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, FDP completely divided. Four strands of 3-0 Ethibond, running 6-0 Prolene round "
            "the edge. The stay suture was then taken out.",
            {"ring FDP": {"strands": 4, "size": "3-0", "peripheral": "present"}},
        ),
        (
            "Left index, FDP completely divided. Six strands of 4-0 Prolene, epitendinous 6-0 nylon. The traction "
            "sutures were removed.",
            {"index FDP": {"strands": 6, "size": "4-0", "peripheral": "present"}},
        ),
    ],
)
def test_stay_sutures_taken_out_leave_the_repair(note: str, expected: Shown) -> None:
    assert told(note, "strands", "size", "peripheral") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, FDP completely divided. Four strands of 3-0 Ethibond. A gap of 1 mm opened on the "
            "volar side, and two more 6-0 stitches closed it.",
            {"ring FDP": {"size": "3-0", "gap": "seen"}},
        ),
        (
            "Left index finger, FDP completely divided. Six strands of 4-0 Prolene, running 6-0. On traction the "
            "edge gapped; three more 6-0 bites were put there.",
            {"index FDP": {"size": "4-0", "gap": "seen"}},
        ),
    ],
)
def test_more_stitches_put_in_are_no_new_core(note: str, expected: Shown) -> None:
    assert told(note, "size", "gap") == expected


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, FDP completely divided. Four strands of 3-0 Ethibond. A gap of 1 mm opened. One "
            "more throw was put in. Pulled again: nothing.",
            {"ring FDP": {"gap": "none"}},
        ),
        (
            "Left thumb, FPL completely divided. Four strands of 3-0 Ethibond. On traction a 2 mm gap was seen. "
            "The core was tightened. Tested again, none.",
            {"thumb FPL": {"gap": "none"}},
        ),
    ],
)
def test_a_test_repeated_with_nothing_seen(note: str, expected: Shown) -> None:
    assert told(note, "gap") == expected


@pytest.mark.parametrize(
    "note",
    [
        (
            "Left ring finger, FDP completely divided. Four strands of 3-0 Ethibond. The wound was looked at "
            "again, nothing."
        ),
        "Left thumb, FPL completely divided. Four strands of 3-0 Ethibond. Radiographs again: none.",
    ],
)
def test_something_else_looked_at_again(note: str) -> None:
    assert told(note, "gap") == {}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, FDP completely divided. Sewn with four strands of 3-0 Ethibond. On traction the "
            "repair is not without a gap.",
            {"ring FDP": {"gap": "seen"}},
        ),
        (
            "Right thumb, FPL completely divided, sewn with two strands of 4-0 Prolene. Under load the join was "
            "not without gapping.",
            {"thumb FPL": {"gap": "seen"}},
        ),
    ],
)
def test_not_without_a_gap_is_a_gap(note: str, expected: Shown) -> None:
    assert told(note, "gap") == expected


@pytest.mark.parametrize(
    "note",
    [
        (
            "Left ring finger, FDP off the distal phalanx. Reinserted with a mini anchor, both limbs tied over the"
            " stump."
        ),
        (
            "Left small finger, FDP avulsed from the distal phalanx. An anchor was placed; its four limbs were "
            "passed through the tendon."
        ),
    ],
)
def test_limbs_of_a_suture_are_no_strands(note: str) -> None:
    assert told(note, "strands") == {}


@pytest.mark.parametrize(
    "note",
    [
        (
            "Left ring finger, FDP completely divided. Sewn with four strands of 3-0 Ethibond.\n\n[ Record saved "
            "17:40 ]   [ Locked ]\n"
        ),
        ("Left thumb, FPL completely divided. Sewn with four strands of 3-0 Ethibond.\n\nForm signed and locked.\n"),
    ],
)
def test_locked_of_a_record_is_no_hold(note: str) -> None:
    assert told(note, "hold") == {}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left ring finger, hurt changing the lock of a door. FDP completely divided, sewn with four strands "
            "of 3-0 Ethibond.",
            {},
        ),
        (
            "Left ring finger, FDP completely divided. A first thread broke before it was locked. Sewn with four "
            "strands of 4-0 Prolene.",
            {},
        ),
        (
            "Left index, FDP completely divided. Sewn with four strands of 4-0 Prolene, each pass locked.",
            {"index FDP": {"hold": "locking"}},
        ),
    ],
)
def test_a_lock_that_is_no_stitch(note: str, expected: Shown) -> None:
    assert told(note, "hold") == expected


@pytest.mark.parametrize(
    "note",
    [
        (
            "Left ring finger, FDP completely divided. Sewn with four strands of 3-0 Ethibond. Sheath: nothing "
            "opened, nothing released."
        ),
        (
            "Left index finger, FDP completely divided, sewn with two strands of 4-0 Prolene. Pulleys: nothing "
            "opened or released."
        ),
    ],
)
def test_nothing_opened_of_pulleys_is_no_gap(note: str) -> None:
    assert told(note, "gap") == {}
