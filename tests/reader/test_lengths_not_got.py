"""Lengths of tendon that could not be taken, the one taken instead, and how far off the cut a core takes hold."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "words",
    [
        "I could not persuade 9 mm of purchase out of the distal bit, so 6 mm each end.",
        "10 mm of purchase could not be had in the distal stump, so 6 mm.",
        "I could not coax 9 mm of hold out of the distal stump and settled for 6 mm.",
        "There was not enough length for 10 mm bites; 6 mm each side.",
        "We were unable to get 8 mm of purchase distally, so 6 mm was taken.",
    ],
)
def test_the_length_that_was_got(words: str) -> None:
    assert each(f"Ring FDP repaired. {words}", "purchase_mm") == {"ring FDP": (6, 6)}


@pytest.mark.parametrize(
    "words", ["I took 9 mm of purchase out of each end.", "I could take 9 mm of purchase each side."]
)
def test_a_length_that_was_got_at_once(words: str) -> None:
    assert each(f"Ring FDP repaired. {words}", "purchase_mm") == {"ring FDP": (9, 9)}


@pytest.mark.parametrize(
    ("words", "value"),
    [
        ("four-strand Strickland, locked at the corners, taking hold 8 mm off the cut.", (8, 8)),
        ("4-strand Adelaide, gripping 10 mm off the cut end.", (10, 10)),
        ("modified Kessler. Each grips 1 cm+ of tendon.", (10, None)),
        ("modified Kessler, purchase 8 mm + knots outside.", (8, 8)),
    ],
)
def test_hold_off_the_cut(words: str, value: object) -> None:
    assert each(f"Index FDP repaired, {words}", "purchase_mm") == {"index FDP": value}


@pytest.mark.parametrize(
    "words",
    [
        "two strand, plus a second pair crossing at right angles = 4 in all.",
        "two strands, and another pair added, four in all.",
    ],
)
def test_a_pair_added(words: str) -> None:
    assert each(f"Small FDP: modified Kessler 3-0, {words}", "strands") == {"small FDP": 4}


def test_a_pair_of_something_else() -> None:
    note = "Small FDP: modified Kessler 3-0, two strands, then a second pair of hands was needed, four people in all."
    assert each(note, "strands") == {"small FDP": 2}


def test_right_angles_are_no_side() -> None:
    note = "Small FDP: Kessler, two strand, plus a second pair at right angles = 4 in all."
    assert told(note, "side", group="operation") == {}


@pytest.mark.parametrize(
    "words",
    ["cut 13 mm from where it inserts, ends clean.", "cut. I took 2 mm off the bulge by another epi bite."],
)
def test_lengths_that_were_not_trimmed(words: str) -> None:
    assert each(f"Ring FDP repaired. It was completely {words}", "trimmed_mm") == {}


def test_a_length_that_was_trimmed() -> None:
    assert each("Ring FDP repaired. It was completely cut. I took 2 mm off the proximal end.", "trimmed_mm") == {
        "ring FDP": 2
    }


@pytest.mark.parametrize("words", ["I took 2 mm off the bulge by another bite.", "I shaved 1 mm off the lump."])
def test_a_lump_taken_down(words: str) -> None:
    assert each(f"Ring FDP repaired. {words} No gap.", "bulk") == {}


def test_a_lump_that_stayed() -> None:
    assert each("Ring FDP repaired. There was a bulge at the repair. No gap.", "bulk") == {"ring FDP": "present"}
