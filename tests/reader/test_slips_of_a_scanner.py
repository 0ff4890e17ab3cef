"""Letters that a scanner takes for others: i read as l, noughts in short words; and notes that name no finger."""

import pytest
from reader_sentences import fact_of, told


@pytest.mark.parametrize(
    ("note", "entry"),
    [
        ("R LlTTLE finger. FDP divided and repaired with 4-0 nylon.", "small FDP"),
        ("Left mlddle finger: FDP cut, sutured with 3-0 Prolene.", "middle FDP"),
        ("Rlght rlng finger. The FDP was cut and repaired, 4-0 nylon.", "ring FDP"),
    ],
)
def test_i_read_as_l(note: str, entry: str) -> None:
    assert told(note, "treatment") == {entry: {"treatment": "repaired"}}


@pytest.mark.parametrize("note", ["N0 gap.", "A gap was n0t seen after the repair.", "Afterwards n0 gap."])
def test_a_denial_with_a_nought(note: str) -> None:
    assert told("Ring FDP divided and repaired with 4-0 nylon. " + note, "gap") == {"ring FDP": {"gap": "none"}}


@pytest.mark.parametrize(
    "note",
    [
        "Flexor tendon repair, right hand. FDP completely divided in zone II, repaired with a four-strand core.",
        "Op: FDP cut through. Repaired, 4 strands.",
    ],
)
def test_a_tendon_of_a_finger_that_no_word_names(note: str) -> None:
    assert told(note, "treatment", "strands") == {"FDP": {"treatment": "repaired", "strands": 4}}
    assert "the note names no finger" in fact_of(note, "FDP", "treatment").look_twice


def test_a_tendon_without_a_finger_where_two_are_named_is_left_out() -> None:
    note = "Index and ring finger opened. The FDP was cut and repaired with four strands."
    assert "FDP" not in told(note, "treatment")
