"""Choices of a form that nobody made, and those that somebody did."""

import pytest
from reader_sentences import each, told

RING = "Ring FDP repaired with two strands of 5-0 Prolene. "
PLAIN = {"ring FDP": {"treatment": "repaired", "strands": 2, "size": "5-0", "material": "polypropylene"}}
BARE = "Ring FDP repaired. "


@pytest.mark.parametrize(
    "choice",
    [
        "Ends: clean/ragged. Gap: yes/no. Glide: free/catching.",
        "Epitendinous: yes/no. Ends: clean/ragged.",
        "Epitendinous yes / no, 5-0 / 6-0.",
        "Glide: free / not free. Tension: nil / present.",
        "Gap: nil / < 2 mm / > 2 mm.",
        "Gap: none / 1 mm / 2 mm / more.",
        "Peripheral: none / running / locking / cross-stitch.",
        "Stitch: Kessler/Adelaide/Savage/other.",
        "Hold: grasping / locking (tick one).",
        "Ends clean or ragged (delete one).",
        "Repair under tension Y N. Bulky Y N.",
        "Tension: none/some.\nGap: none / seen\nEnds  clean | ragged | crushed",
    ],
)
def test_a_choice_left_open_tells_nothing(choice: str) -> None:
    assert told(RING + choice) == PLAIN


@pytest.mark.parametrize(
    "choice",
    [
        "Strands: 2 / 4 / 6 / 8 (circle one).",
        "Core strands (circle): 2 4 6.",
        "Strands 2 4 6 8 (ring one).",
        "Number of strands: 2, 4, 6 or 8.",
        "Strands: 2/4.",
        "2- / 4- / 6-strand (underline).",
        "Core suture: 3-0 / 4-0 / 5-0.",
        "Core: Ethibond / Prolene / FiberWire (circle).",
    ],
)
def test_nor_does_a_choice_of_figures_or_sutures(choice: str) -> None:
    assert told(BARE + choice, "strands", "size", "material", "peripheral") == {}


@pytest.mark.parametrize(
    "choice",
    [
        "A2: intact / vented / released (strike out). A4: intact/vented.",
        "A2 pulley: intact / partly vented / fully released.",
    ],
)
def test_nor_one_of_pulleys(choice: str) -> None:
    assert told(BARE + choice, group="pulleys") == {}


def test_a_tendon_is_named_by_a_label_whose_choice_was_left_open() -> None:
    assert told("Ring FDP: complete / partial. Repaired, 4-0 Prolene.") == {
        "ring FDP": {"treatment": "repaired", "size": "4-0", "material": "polypropylene"}
    }


def test_what_was_chosen_is_told() -> None:
    assert each(BARE + "Strands: 2 / 4 / 6 -> 4. Ends: clean/ragged -> ragged.", "strands") == {"ring FDP": 4}
    assert each(BARE + "Ends: clean / ragged / crushed -> crushed.", "ends") == {"ring FDP": "crushed"}
    assert told(BARE + "Tension: none. Gap: none / glide: free.", "tension", "gap", "glide") == {
        "ring FDP": {"tension": "none", "gap": "none", "glide": "free"}
    }


def test_two_sutures_are_no_choice() -> None:
    core = "Index FDP repaired. Core: 3-0 Ethibond / 6-0 Prolene epitendinous."
    assert each(core, "size") == {"index FDP": "3-0"}
    assert each(core, "peripheral_size") == {"index FDP": "6-0"}


def test_a_note_cut_off_within_a_choice_is_read() -> None:
    assert told("Ring finger. FDP completely divided.\nKnots buried Y /", "extent") == {
        "ring FDP": {"extent": "complete"}
    }


@pytest.mark.parametrize(
    "words", ["A2: distal 1/3 opened -> repair passes.", "A2: prox 1/2 vented -> free.", "A2 distal 2/3 -> opened."]
)
def test_a_fraction_before_an_arrow_is_no_choice(words: str) -> None:
    shown = told("Left ring finger. FDP divided. " + words, "finding", group="pulleys")
    assert shown == {"ring A2": {"finding": "vented"}}


@pytest.mark.parametrize(
    ("line", "field"),
    [
        ("Gap: none   seen", "gap"),
        ("Gap: none   seen*", "gap"),
        ("Gap: none*   seen", "gap"),
        ("Gap: none   *seen*", "gap"),
        ("Gap: none   1 mm   2 mm", "gap"),
        ("Glide: free   catching", "glide"),
        ("Ends: clean   ragged   crushed", "ends"),
        ("Tension: none   some", "tension"),
    ],
)
def test_answers_side_by_side_that_nobody_marked(line: str, field: str) -> None:
    assert each(BARE + "\n" + line, field) == {}


@pytest.mark.parametrize(
    ("line", "field", "value"),
    [
        ("Gap: none   Glide: free", "gap", "none"),
        ("Gap: none   none", "gap", "none"),
        ("Glide: free   free", "glide", "free"),
        ("Gap: none   Ends: clean   Bulk: slim", "ends", "clean"),
        ("Epitendinous: 6-0 Prolene   running", "peripheral_pattern", "running"),
    ],
)
def test_answers_to_labels_side_by_side(line: str, field: str, value: str) -> None:
    assert each(BARE + "\n" + line, field) == {"ring FDP": value}
