"""'Gliding w/o catching', 'repaired w/out tension': the hurried 'without' is one; 'W/O + debridement' is a washout."""

import pytest
from reader_sentences import told

INDEX = "Index. FDP completely divided, repaired with a 4-strand Kessler. "


@pytest.mark.parametrize(
    ("words", "field", "value"),
    [
        ("It caught at A4, so A4 was vented, now running w/o triggering.", "glide", "free"),
        ("It glides thru A2 w/o snagging.", "glide", "free"),
        ("Repair w/out gap.", "gap", "none"),
        ("W/out gap.", "gap", "none"),
        ("Repaired w/o tension.", "tension", "none"),
        ("FDP repaired w/o epitendinous suture.", "peripheral", "absent"),
    ],
)
def test_without_in_short(words: str, field: str, value: str) -> None:
    assert told(INDEX + words, field)["index FDP"] == {field: value}


def test_left_without_repair() -> None:
    assert told(INDEX + "FDS divided, left w/o repair.", "treatment")["index FDS"] == {"treatment": "left"}


@pytest.mark.parametrize("words", ["W/O + repair of the index FDP.", "w/o and repair of the index FDP."])
def test_a_washout_denies_nothing(words: str) -> None:
    assert told(words, "treatment") == {"index FDP": {"treatment": "repaired"}}
