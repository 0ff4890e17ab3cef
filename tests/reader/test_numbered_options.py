"""Options with numbers, answered by one: 'Ends  1 clean  2 ragged  -> 1', tendons with letters: 'Tendon A  FDP'."""

import pytest
from reader_sentences import each, told

from notereader.reader.text.numbered_options import without_options_left


@pytest.mark.parametrize(
    ("line", "kept"),
    [
        ("Ends   1 clean  2 ragged  3 crushed   -> 1", "Ends clean"),
        ("Gap  1 none 2 up to 5 mm 3 more -> 2  by: 1 mm", "Gap up to 5 mm by: 1 mm"),
        (" 1  Glide   (1) free (2) catches => [2]", "1 Glide catches"),
        ("A2: a) whole b) vented c) lost = b", "A2: vented"),
        ("Test: 1=none 2=passive 3=active : 3", "Test: active"),
        ("Found  1 FDP cut 2 FDS cut -> 1, 2", "Found FDP cut FDS cut"),
        ("Gap  1 none  2 seen  ->", "Gap"),
        ("1 FDP repaired 2 FDS repaired: 4-0", "1 FDP repaired 2 FDS repaired: 4-0"),
        ("Zone 2: FDP cut -> repaired", "Zone 2: FDP cut -> repaired"),
        ("Day 1 splint, day 2 motion", "Day 1 splint, day 2 motion"),
    ],
)
def test_only_the_option_chosen_stays(line: str, kept: str) -> None:
    left = without_options_left(line)
    assert len(left) == len(line)
    assert " ".join(left.split()) == kept


HEAD = "Left middle finger\nTendon A:   FDP\nTendon B:   FDS\n"


@pytest.mark.parametrize(
    ("lines", "expected"),
    [
        ("Division A   complete\nDivision B   none\n", ("complete", "intact")),
        ("Cut A:   complete\nCut B:   partial\n", ("complete", "partial")),
        ("12  Division A   partial\n13  Division B   complete\n", ("partial", "complete")),
    ],
)
def test_lettered_tendons(lines: str, expected: tuple[str, str]) -> None:
    assert each(HEAD + lines, "extent") == dict(zip(("middle FDP", "middle FDS"), expected, strict=True))


def test_what_is_asked_without_a_letter() -> None:
    """Where only tendon A was hurt, core and gap are of tendon A; where both were, nobody knows."""
    asked = "Core suture   4-0 Ticron\nGap   none\n"
    hurt = told(HEAD + "Division A   complete\nDivision B   none\n" + asked, "gap", "size")
    assert hurt == {"middle FDP": {"gap": "none", "size": "4-0"}}
    assert "middle FDS" not in each(HEAD + "Division A   none\nDivision B   none\n" + asked, "gap")


@pytest.mark.parametrize("cell", ["L / middle", "left, middle", "Lt - middle"])
@pytest.mark.parametrize("label", ["Side / digit   ", "Hand and finger: "])
def test_a_cell_of_hand_and_finger(label: str, cell: str) -> None:
    assert each(f"{label}{cell}\nTendon   FDP\nDivision   complete\n", "extent") == {"middle FDP": "complete"}


def test_a_middle_that_is_no_finger() -> None:
    assert each("Slip, middle\nTendon   FDP\nDivision   complete\n", "extent") == {"FDP": "complete"}
