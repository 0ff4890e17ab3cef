"""What is told of the operation in a paragraph below its orders: 'PLAN: ...' and then 'FDS was not repaired.'."""

import pytest
from reader_sentences import each

NOTE = """PROCEDURE: Repair FDP index finger. Repair FDS index finger.

DESCRIPTION: FDP was completely lacerated. FDP was repaired using a 6-strand technique.

PLAN: Hand therapy in 3 days. Splint for 6 weeks.

"""


@pytest.mark.parametrize(
    "told",
    [
        "FDS was not repaired.",
        "The radial digital nerve was repaired with 9-0 nylon.\nFDS was not repaired.",
        "The FDS was not sutured.",
    ],
)
def test_told_below_the_orders(told: str) -> None:
    assert each(NOTE + told, "treatment") == {"index FDP": "repaired", "index FDS": "left"}


@pytest.mark.parametrize("ordered", ["FDS should be tested at 6 weeks.", "The FDS will be repaired if it fails."])
def test_orders_stay_orders(ordered: str) -> None:
    assert each(NOTE + ordered, "treatment") == each(NOTE, "treatment")
