"""The day of the operation and the day of the injury in one breath."""

import pytest

from notereader.reader import read


def _days(text: str) -> tuple[object, object]:
    found = {place.field: fact.value for place, fact in read(text).walk() if place.group == "operation"}
    return found.get("date"), found.get("injury_date")


@pytest.mark.parametrize(
    ("text", "operated", "injured"),
    [
        (
            "op note please today is the fourth of march 2032 and the injury was the third of march 2032 a pruning "
            "knife left thumb",
            "2032-03-04",
            "2032-03-03",
        ),
        (
            "It is 17 May 2033; the wound is one day old, from 16 May 2033, and came from a roof slate.",
            "2033-05-17",
            "2033-05-16",
        ),
        (
            "12.03.2032 is the day of this operation, and the finger was cut on 10.03.2032 when she fell on a jar.",
            "2032-03-12",
            "2032-03-10",
        ),
        ("Dt 5 Feb 2031 ++ inj 4 Feb 2031 (window, glass)", "2031-02-05", "2031-02-04"),
        (
            "Day 19 January 2031, 8.10 h. Repaired by a colleague on 23 December 2030. On 17 January 2031 he lifted a "
            "crate, felt a snap, and the tip did not bend.",
            "2031-01-19",
            "2031-01-17",
        ),
    ],
)
def test_each_day_is_of_what_is_told_beside_it(text: str, operated: str, injured: str) -> None:
    assert _days(text) == (operated, injured)
