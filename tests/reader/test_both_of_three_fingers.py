"""'In both' of a note with three fingers: those two that were told of right before."""

import pytest
from reader_sentences import each

CUT = "Middle, ring and small fingers explored. Middle and ring FDP cut through. "


@pytest.mark.parametrize(
    "pulleys",
    [
        "In the middle finger A2 was vented over 6 mm; in the ring finger A2 was left intact. A4 was intact in both.",
        "A2 was vented in the middle finger, whereas in the ring finger A2 was kept. A4 was preserved in both fingers.",
    ],
)
def test_both_are_those_told_of_before(pulleys: str) -> None:
    found = each(CUT + pulleys, "finding", group="pulleys")
    assert found == {"middle A2": "vented", "ring A2": "intact", "middle A4": "intact", "ring A4": "intact"}


def test_a_pulley_without_both_is_of_the_finger_told_of_last() -> None:
    note = CUT + "In the middle finger A2 was vented; in the ring finger A2 was kept. A4 was intact."
    assert "middle A4" not in each(note, "finding", group="pulleys")
