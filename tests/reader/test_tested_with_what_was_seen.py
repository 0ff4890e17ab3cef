"""Whose result a sentence tells behind a test was tested: 'passive motion, no gap in any of the repairs'."""

import pytest
from reader_sentences import each

TWO = "Ring and small fingers, zone 2. FDP of both cut through and sewn with a four-strand cruciate. "
SLIP = TWO + "The ulnar slip of the small FDS was sewn with a modified Kessler. "
WRIST = "Zone 5, wrist. FCR and FDS of the middle finger were cut through and sewn with 3-0. "


@pytest.mark.parametrize(
    "remark",
    [
        "Passive motion of both fingers, no gap in any of the repairs.",
        "Both fingers were moved passively; there was no separation in any of the three repairs.",
    ],
)
def test_every_repair_that_was_watched(remark: str) -> None:
    expected = {"ring FDP": "passive", "small FDP": "passive", "small FDS ulnar": "passive"}
    assert each(SLIP + remark, "test") == expected


@pytest.mark.parametrize(
    "remark", ["Pull on FDP in the palm: ring gap 0, small gap 0.", "Pull on FDP in palm x 5 -> RF gap 0, LF gap 0."]
)
def test_each_finger_of_the_kind_pulled_on(remark: str) -> None:
    assert each(TWO + remark, "test") == {"ring FDP": "traction", "small FDP": "traction"}


def test_another_tendon_than_the_one_pulled_on_was_not_tested() -> None:
    remark = "I pulled on the ring FDP with a hook and no gap was seen; the small FDP glides freely."
    assert "small FDP" not in each(TWO + remark, "test")


@pytest.mark.parametrize(
    "remark",
    [
        "On extending the finger there was no gap.",
        "I ran the finger through flexion and extension, no gap.",
        "Bend and straighten by me: no gap.",
    ],
)
def test_a_finger_moved_by_the_surgeon(remark: str) -> None:
    note = "Ring finger, zone 2. FDP cut through and sewn with a four-strand cruciate. "
    assert each(note + remark, "test") == {"ring FDP": "passive"}


def test_a_wrist_tendon_is_not_moved_with_the_fingers() -> None:
    assert "FCR" not in each(WRIST + "No gaps on moving the fingers.", "test")
    assert each(WRIST + "No gaps on moving the wrist and fingers passively.", "test").get("FCR") == "passive"
