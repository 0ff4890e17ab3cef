"""A tendon that was left when the injury was fresh, and what was done with it now."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "then",
    [
        "not repaired at the time",
        "left untreated initially",
        "not sutured in his moment",
        "not treated at presentation",
    ],
)
def test_left_when_the_injury_was_fresh(then: str) -> None:
    note = (
        f"Left thumb. Diagnosis: old division of the FPL, zone III, {then}. "
        "Procedure: FPL graft with palmaris, Pulvertaft weave of 3-0 Ethibond."
    )
    assert each(note, "treatment") == {"thumb FPL": "grafted"}
    assert each(note, "size") == {"thumb FPL": "3-0"}


@pytest.mark.parametrize("now", ["FDS not repaired.", "FDS not treated", "The FDS was left untreated."])
def test_left_at_this_operation(now: str) -> None:
    note = f"Left ring finger. FDP and FDS completely divided. FDP repaired with a four-strand cruciate. {now}"
    assert each(note, "treatment") == {"ring FDP": "repaired", "ring FDS": "left"}
