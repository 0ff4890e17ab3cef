"""Zones that stand beside their fingers in a sentence with more words than zones and fingers."""

import pytest
from reader_sentences import each

CUT = "\n\nFDP of both fingers completely divided."


@pytest.mark.parametrize(
    "diagnosis",
    [
        "Laceration of the ring and small fingers with cut tendons, zone IIC in the ring finger and zone IIB in "
        "the small finger.",
        "FDP laceration zone IIC ring finger and zone IIB small finger",
        "Flexor tendon injury of the ring finger (zone 2C) and of the small finger (zone 2B), both hands of glass.",
    ],
)
def test_each_finger_has_the_zone_beside_it(diagnosis: str) -> None:
    assert each(f"Diagnosis: {diagnosis}{CUT}", "zone") == {"ring FDP": "IIC", "small FDP": "IIB"}


def test_fingers_listed_with_one_zone_share_it() -> None:
    note = "Dx: index and ring fingers (zone II) and small finger (zone I).\n\nFDP of all three divided completely."
    assert each(note, "zone") == {"index FDP": "II", "ring FDP": "II", "small FDP": "I"}


def test_one_zone_is_not_dealt_out() -> None:
    assert each(f"Diagnosis: ring and small fingers, zone II.{CUT}", "zone") == {"ring FDP": "II", "small FDP": "II"}
