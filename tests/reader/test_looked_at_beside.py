"""'The index I looked at through the same wound, its FDP is whole' ends a paragraph; what follows is of the other."""

import pytest
from reader_sentences import each

CUT = "Left hand. Small finger: FDP cut through. "
NEXT = "\n\nProcedure: FDP repaired with 4-0 nylon. A2 was kept whole.\n"


@pytest.mark.parametrize(
    "look",
    [
        "The ring finger I looked at through the same cut and its profundus and superficialis are intact.",
        "Through the wound the ring finger was inspected too: FDP and FDS whole.",
    ],
)
def test_a_look_beside_turns_to_no_other_finger(look: str) -> None:
    assert each(CUT + look + NEXT, "finding", group="pulleys") == {"small A2": "intact"}
    assert each(CUT + look + NEXT, "extent")["ring FDP"] == "intact"


@pytest.mark.parametrize(
    "look",
    [
        "The ring finger was explored and its FDP and FDS are intact. A2 of it was kept whole.",
        "In the ring finger the FDP was looked at and found to be cut by a third. A2 was kept whole.",
    ],
)
def test_a_finger_that_more_is_told_of(look: str) -> None:
    assert each(CUT + look, "finding", group="pulleys") == {"ring A2": "intact"}
