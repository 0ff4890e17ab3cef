"""Orders for the aftercare that an addendum cancels or replaces, and programmes only spoken of."""

import pytest

from notereader.reader import read
from notereader.record import Interval


def _aftercare(text: str) -> dict[str, object]:
    found = {place.field: fact.value for place, fact in read(text).walk() if place.group == "aftercare"}
    return {name: value.low if isinstance(value, Interval) else value for name, value in found.items()}


@pytest.mark.parametrize(
    ("text", "programme", "day"),
    [
        (
            "Ring FDP repaired. Plan: early active from day 4.\nADDENDUM. The early active plan is cancelled. "
            "She is to have an early passive programme, beginning on day 4 as before.",
            "early passive",
            4,
        ),
        (
            "Ring FDP repaired. Plan: early active motion from day 4.\nLATER ENTRY. Motion from day 4 withdrawn: begin "
            "on day 6.",
            "early active",
            6,
        ),
        (
            "Ring FDP repaired. Place and hold was debated and not chosen; early passive motion from day 5.",
            "early passive",
            5,
        ),
        (
            "Ring FDP repaired. PLAN: Kleinert? NO, we stopped doing that. Early active from day 2.",
            "early active",
            2,
        ),
    ],
)
def test_the_order_that_stands(text: str, programme: str, day: float) -> None:
    found = _aftercare(text)
    assert (found.get("programme"), found.get("start_day")) == (programme, day)
