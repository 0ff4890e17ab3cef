"""'Make that 7 mm', 'I beg your pardon, four': a figure said anew takes the place of the one before it."""

import pytest
from reader_sentences import each

LENGTH = "Middle finger FDP, purchase 10 mm. "


@pytest.mark.parametrize(
    "text",
    [
        "Make that 7 mm. Core four strands, 4-0 Prolene.",
        "Correction, 7 mm. Core four strands.",
        "Sorry, 7 mm.",
        "No, 7 mm. Core four strands.",
        "I mean 7 mm.",
        "Scratch that, it was 7 mm.",
        "Make that 7.",
    ],
)
def test_lengths(text: str) -> None:
    assert each(LENGTH + text, "purchase_mm") == {"middle FDP": (7, 7)}


@pytest.mark.parametrize(
    ("text", "strands"),
    [
        ("Index FDP repaired, four strands. Make that two.", 2),
        ("Index FDP repaired, core six strands, make that four.", 4),
        ("Index FDP repaired, two strands, I beg your pardon, four: two crossed and two parallel.", 4),
        ("Index FDP repaired with six strands, beg pardon, four.", 4),
    ],
)
def test_counts(text: str, strands: int) -> None:
    assert each(text, "strands") == {"index FDP": strands}


def test_sizes_and_materials() -> None:
    assert each("Index FDP repaired, core 3-0. Make that 4-0.", "size") == {"index FDP": "4-0"}
    text = "Thumb FPL repaired with four strands of Ethibond, let me check the packet, Ethilon, 4-0."
    assert each(text, "material") == {"thumb FPL": "nylon"}


@pytest.mark.parametrize("text", ["The lock was 3 mm.", "No, the core was not 7 mm long.", "Sorry for 7 mm of delay."])
def test_other_figures(text: str) -> None:
    assert each(LENGTH + text, "purchase_mm") == {"middle FDP": (10, 10)}


def test_a_gap_said_anew() -> None:
    assert each(LENGTH + "Gap none. Make that 1 mm.", "gap").get("middle FDP") != "none"
