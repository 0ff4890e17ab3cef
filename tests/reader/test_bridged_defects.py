"""Grafts that bridge a defect, tests by the wrist, in brackets behind what was seen, and fingers compared with."""

import pytest
from reader_sentences import each, told

TORN = "The FPL was ruptured. "


@pytest.mark.parametrize(
    "words",
    [
        "I bridged the defect with palmaris longus, woven by the Pulvertaft manner and stitched with 3-0 Ethibond.",
        "The gap was spanned with the palmaris longus by a Pulvertaft weave of 3-0 Ethibond.",
        "The palmaris longus was used to bridge the defect, with Pulvertaft weaves of 3-0 Ethibond.",
    ],
)
def test_a_donor_that_bridges(words: str) -> None:
    shown = told(TORN + words, "treatment", "stitch", "size", "gap")
    assert shown == {"thumb FPL": {"treatment": "grafted", "stitch": "pulvertaft", "size": "3-0"}}


def test_a_palmaris_that_was_cut_itself() -> None:
    words = "The palmaris longus was cut too; no gap was left behind, and it was repaired with 3-0 Ethibond."
    assert each(TORN + words, "treatment") == {"PL": "repaired"}


def test_what_bridges_a_tendon_is_no_graft_of_the_nerve_before() -> None:
    nerve = "The median nerve was red but in one piece. "
    assert each(TORN + nerve + "I bridged the defect with palmaris longus.", "treatment", group="injuries") == {}
    cut = "The radial digital nerve was cut. I bridged the defect with a vein."
    assert each(cut, "treatment", group="injuries") == {"digital nerve radial": "conduit"}


@pytest.mark.parametrize(
    "words",
    [
        "Passive wrist motion makes the tip flex and extend.",
        "Dropping and lifting the wrist made the fingertip flex and extend.",
    ],
)
def test_a_wrist_that_moves_the_finger(words: str) -> None:
    assert each("The FPL was cut through and repaired. " + words, "test") == {"thumb FPL": "passive"}


def test_a_patient_who_moves_beside_the_wrist() -> None:
    words = "I made her flex and extend with the wrist held, no gap."
    assert each("The FPL was cut through and repaired. " + words, "test") == {"thumb FPL": "active"}


@pytest.mark.parametrize(
    ("words", "value"),
    [
        ("No gap. Glides freely. (passive)", "passive"),
        ("No gap, glides freely. (Active, patient awake.)", "active"),
    ],
)
def test_a_bracket_behind_what_was_seen(words: str, value: str) -> None:
    assert each("Ring FDP repaired. " + words, "test") == {"ring FDP": value}


@pytest.mark.parametrize("words", ["No gap. (Active motion from day 4.)", "A2 kept. (passive)"])
def test_a_bracket_that_is_no_test(words: str) -> None:
    assert each("Ring FDP repaired. " + words, "test") == {}


@pytest.mark.parametrize(
    "words",
    ["slightly tighter than the neighbouring middle finger", "a little more flexed than the adjacent small finger"],
)
def test_a_finger_compared_with(words: str) -> None:
    note = f"The ring FDP was repaired. I set it {words}. No gap was seen on passive motion."
    assert each(note, "gap") == {"ring FDP": "none"}


def test_a_neighbour_that_is_told_of() -> None:
    note = "The ring FDP was repaired. The neighbouring middle finger FDP was repaired too. It glided freely."
    assert each(note, "glide") == {"middle FDP": "free"}


@pytest.mark.parametrize(
    ("words", "values"),
    [
        ("Index free; middle hung up on A4 -> distal third of A4 opened -> free.", ["free", "free"]),
        ("Index free; middle catches on A4, A4 opened, free.", ["free", "free"]),
        ("Index free; middle catches on A4, A4 opened, no better.", ["free", "catching"]),
        ("Index free; middle drags a little in A2.", ["free", "restricted"]),
    ],
)
def test_free_told_twice(words: str, values: list[str]) -> None:
    note = "Index FDP and middle FDP repaired. Passive motion: no gap. " + words
    assert list(each(note, "glide").values()) == values
