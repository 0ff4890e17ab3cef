"""Fingers moved by the wrist, or pulled through their range by hand, are moved passively."""

import pytest
from reader_sentences import told

SEWN = "Index FDP completely divided and repaired with 3-0 Ticron, four strands."


@pytest.mark.parametrize(
    "remark",
    [
        "On moving the wrist to and fro, no gap could be seen.",
        "With the wrist carried from flexion to extension, the repair did not gap.",
        "Tenodesis gave a full curl and full straightening, and it ran without any hitch.",
        "With the wrist dropped back the fingertip came down with the others, and the join did not part.",
        "I let the wrist flex and extend on the table and saw no gap.",
        "Pulling the finger through its range, no gap was seen.",
    ],
)
def test_moved_by_the_wrist_or_by_hand(remark: str) -> None:
    assert told(f"{SEWN} {remark}", "test") == {"index FDP": {"test": "passive"}}


@pytest.mark.parametrize(
    "remark",
    [
        "Dorsal splint with the wrist flexed 20 and the fingers extended; no gap.",
        "The sutures were tied with the wrist flexed. No gap.",
        "Tension was set by tenodesis of the wrist so that the fingertip lay right.",
    ],
)
def test_a_wrist_held_is_no_test(remark: str) -> None:
    assert told(f"{SEWN} {remark}", "test") == {}


def test_a_patient_who_moves_the_wrist_tests_actively() -> None:
    assert told(f"{SEWN} The patient bent it with the wrist back. No gap.", "test") == {"index FDP": {"test": "active"}}


def test_a_pull_on_the_tendon_stays_a_pull() -> None:
    assert told(f"{SEWN} Pulling on the tendon at the wrist, no gap.", "test") == {"index FDP": {"test": "traction"}}
