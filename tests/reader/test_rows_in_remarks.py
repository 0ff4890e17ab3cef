"""Remarks below a grid that name its rows by number: 'except No. 3', 'Ad 2-4:', and rows of several fingers."""

import pytest
from reader_sentences import each

GRID = """Wrist, zone 5.
No.  Structure      Found          Core
 1   FCR            divided        mod. Kessler 2-0 Mersilene
 2   FDS 2          divided        Becker 3-0 Mersilene
 3   FDS 3          divided        Becker 3-0 Mersilene
 4   FDS 4          divided        Becker 3-0 Mersilene
 5   PL             divided        left unrepaired
 6   FDP 3-5        intact

Remarks
"""
OTHERS = {"FCR": "clean", "index FDS": "clean", "ring FDS": "clean"}


@pytest.mark.parametrize(
    ("remark", "state"),
    [
        ("Ends clean except No. 3, which was crushed and cut back 5 mm.", "crushed"),
        ("All ends clean but No. 3, which was ragged and trimmed 5 mm.", "ragged"),
        ("The ends were clean except row 3, which was ragged and trimmed 5 mm.", "ragged"),
    ],
)
def test_a_row_left_out_and_told_of_by_itself(remark: str, state: str) -> None:
    ends = each(GRID + remark, "ends")
    assert {k: v for k, v in ends.items() if k != "PL"} == {**OTHERS, "middle FDS": state}
    assert each(GRID + remark, "trimmed_mm") == {"middle FDS": 5}


@pytest.mark.parametrize(
    ("remark", "whose"),
    [
        ("Nos. 2 and 3 were trimmed 4 mm.", {"index FDS", "middle FDS"}),
        ("Ad 2-4: trimmed 4 mm.", {"index FDS", "middle FDS", "ring FDS"}),
        ("Number 4 was trimmed 4 mm.", {"ring FDS"}),
    ],
)
def test_rows_by_their_numbers(remark: str, whose: set[str]) -> None:
    assert set(each(GRID + remark, "trimmed_mm")) == whose


def test_a_figure_that_is_no_row() -> None:
    assert each(GRID + "No 9-0 was at hand.", "size")["FCR"] == "2-0"


def test_a_range_of_fingers_heads_a_row() -> None:
    extents = each(GRID, "extent")
    assert {k: v for k, v in extents.items() if v == "intact"} == dict.fromkeys(
        ("middle FDP", "ring FDP", "small FDP"), "intact"
    )


def test_the_cell_of_a_wrist_flexor_tells_of_it() -> None:
    assert each(GRID, "treatment")["PL"] == "left"


def test_all_but_one_told_of_behind_which() -> None:
    note = "FDS of index, middle and ring cut through, each a Becker with 3-0. All ends clean but the middle FDS, "
    assert each(note + "which was ragged.", "ends") == {
        "index FDS": "clean",
        "middle FDS": "ragged",
        "ring FDS": "clean",
    }
