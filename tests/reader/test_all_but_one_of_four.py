"""'All four FDP cut and all but the small repaired': what is told of all but one, behind what is told of all."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "text",
    [
        "All four FDP tendons completely divided and all but the small repaired with four strands of 3-0 Ethibond. "
        "The small was too frayed and was left.",
        "All four FDP were cut through; all but the little finger's were sewn with four strands of 3-0 Ethibond.",
        "All four FDP were cut through. All but the small were repaired with four strands of 3-0 Ethibond.",
    ],
)
def test_the_one_left_out(text: str) -> None:
    assert each(text, "strands") == {"index FDP": 4, "middle FDP": 4, "ring FDP": 4}
    assert each(text, "treatment").get("small FDP") == "left"
    assert each(text, "extent")["small FDP"] == "complete"


def test_small_things_are_no_finger() -> None:
    text = "All four FDP cut through and repaired with four strands. All but the small vessels were cut."
    assert set(each(text, "strands")) == {"index FDP", "middle FDP", "ring FDP", "small FDP"}
