"""'It caught on A2, so I vented the distal 4 mm': a part is opened of the pulley that was in the way."""

import pytest
from reader_sentences import each, told

SEWN = "Right little finger, zone II. FDP cut through. Repaired with 3-0 Prolene. "


@pytest.mark.parametrize(
    "words",
    [
        "The repair caught on A2, so I vented its distal 4 mm.",
        "The repair caught on the edge of A2 and I vented the distal third.",
        "It hung up under A2, and we then opened the distal 30 %.",
    ],
)
def test_a_part_opened_of_the_pulley_it_met(words: str) -> None:
    assert each(SEWN + words, "finding", group="pulleys") == {"small A2": "vented"}
    assert each(SEWN + words, "part", group="pulleys") == {"small A2": "distal"}


@pytest.mark.parametrize(
    "words",
    [
        "The repair caught on A2, so I vented the distal part of A3.",
        "The repair caught on A2, so I opened the wound.",
        "The repair passed under A2, and I released the proximal end of the FDP.",
    ],
)
def test_what_is_opened_of_something_else(words: str) -> None:
    assert "small A2" not in told(SEWN + words, "finding", group="pulleys")
