"""Statements on two fingers that a slash or another mark parts are told apart."""

import pytest
from reader_sentences import each, told

SEWN = "The FDP of the index and the middle finger were completely divided and were repaired. "


@pytest.mark.parametrize(
    ("text", "seen"),
    [
        ("No gap IF / 1 mm gap MF, left.", {"index FDP": "none", "middle FDP": "seen"}),
        ("IF no gap / MF 1 mm gap.", {"index FDP": "none", "middle FDP": "seen"}),
        ("No gap index & 2 mm gap middle finger.", {"index FDP": "none", "middle FDP": "seen"}),
        ("2 mm gap IF - no gap MF.", {"index FDP": "seen", "middle FDP": "none"}),
        ("No gap index/middle.", {"index FDP": "none", "middle FDP": "none"}),
        ("No gap IF / MF.", {"index FDP": "none", "middle FDP": "none"}),
    ],
)
def test_gaps_on_both_sides_of_a_mark(text: str, seen: dict[str, str]) -> None:
    assert each(SEWN + text, "gap") == seen


def test_glide_on_both_sides_of_a_mark() -> None:
    text = SEWN + "IF runs free / MF catches at A2."
    assert each(text, "glide") == {"index FDP": "free", "middle FDP": "catching"}


@pytest.mark.parametrize(
    ("text", "glide"),
    [
        ("IF = free. MF = catches at A2.", {"index FDP": "free", "middle FDP": "catching"}),
        ("Index: smooth. Middle: catches under A2, not vented.", {"index FDP": "free", "middle FDP": "catching"}),
        ("Index: free of pain before. Middle: sewn.", {}),
    ],
)
def test_one_word_beside_a_finger(text: str, glide: dict[str, str]) -> None:
    """'IF = free' tells how the repair ran where the next finger catches."""
    assert each(SEWN + text, "glide") == glide


@pytest.mark.parametrize(
    ("text", "strands"),
    [
        ("All three FDS: four strands.", {"index FDS": 4, "middle FDS": 4, "ring FDS": 4}),
        ("- The three FDS: two strands.", {"index FDS": 2, "middle FDS": 2, "ring FDS": 2}),
    ],
)
def test_a_label_with_its_count(text: str, strands: dict[str, int]) -> None:
    cut = "FDS index, middle and ring cut. FDS small intact.\n"
    assert each(cut + text, "strands") == strands
    assert told(cut + text, "extent") == {"small FDS": {"extent": "intact"}}


@pytest.mark.parametrize(
    ("text", "trimmed"),
    [
        ("Trimmed 5 + 3 mm (IF, MF).", {"index FDP": 5, "middle FDP": 3}),
        ("Ends trimmed back 2 and 4 mm (MF/IF).", {"middle FDP": 2, "index FDP": 4}),
        ("Trimmed 2 and 4 mm.", {"index FDP": 4, "middle FDP": 4}),
    ],
)
def test_lengths_of_fingers_in_brackets(text: str, trimmed: dict[str, int]) -> None:
    assert each(SEWN + text, "trimmed_mm") == trimmed


@pytest.mark.parametrize("label", ["both     ", "Both:  "])
def test_a_line_for_both(label: str) -> None:
    text = (
        "Core IF: 6 strands, 4-0 Ticron\nCore MF: 4 strands, 4-0 Ticron\n"
        + label
        + "6-0 Prolene running, knots buried\n"
    )
    shown = {"peripheral_size": "6-0", "knot": "buried"}
    assert told(SEWN + "\n" + text, "peripheral_size", "knot") == {"index FDP": shown, "middle FDP": shown}
