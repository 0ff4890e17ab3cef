"""Rows of labels that have their answers beside them, cells that close with a zone, and answers 'Y' before a deed."""

import pytest
from reader_sentences import each, told


def test_labels_with_answers_are_no_titles() -> None:
    note = (
        "3 Finger .... ring\n12 FDP .. cut, zone II\n18 FDP core .. Evans\n"
        "   strands 4  suture 4-0 Ethibond  knot inside  purchase 9 mm\n"
        "23 Gap after 5 active fists? .. N      24 Sticks? .. N, runs free\n"
    )
    found = told(note, "strands", "size", "purchase_mm", "gap", "glide")
    assert found == {
        "ring FDP": {"strands": 4, "size": "4-0", "purchase_mm": (9, 9), "gap": "none", "glide": "free"},
    }


def test_titles_of_a_grid_still_are() -> None:
    note = (
        "Left hand\ntendon       strands     suture      purchase\n"
        "FDP index    4           3-0 PDS     8 mm\nFDP ring     6           4-0 nylon   10 mm\n"
    )
    assert each(note, "strands") == {"index FDP": 4, "ring FDP": 6}


@pytest.mark.parametrize(("cell", "other"), [("cut through, II", "half cut, IIC"), ("divided, II", "60 % cut, IIC")])
def test_a_zone_that_closes_a_cell(cell: str, other: str) -> None:
    note = f"""Left hand
            | INDEX            | MIDDLE            | RING
------------+------------------+-------------------+-------------
FDP         | {cell:16} | {other:17} | not hurt
"""
    assert each(note, "zone") == {"index FDP": "II", "middle FDP": "IIC"}


@pytest.mark.parametrize("answer", ["Y", "yes"])
def test_a_yes_before_the_deed(answer: str) -> None:
    note = f"Ring finger. FDP cut. A2 {answer}, vented 6 mm .. A3 {answer}, whole length divided .. A4 N (untouched)"
    assert each(note, "finding", group="pulleys") == {"ring A2": "vented", "ring A3": "released", "ring A4": "intact"}


@pytest.mark.parametrize(
    "words", ["as were the four superficialis tendons", "and so were the four FDS", "as were its four superficialis"]
)
def test_as_were_the_four(words: str) -> None:
    found = each(f"Right wrist, zone V. FCR was completely divided, {words}; FPL was whole.", "extent")
    cut = dict.fromkeys(("index FDS", "middle FDS", "ring FDS", "small FDS", "FCR"), "complete")
    assert found == {**cut, "thumb FPL": "intact"}


@pytest.mark.parametrize("words", ["four strands, ends trimmed 2 mm", "4 strands, stumps trimmed 2 mm"])
def test_strands_and_then_the_ends(words: str) -> None:
    assert each(f"Left wrist. FCU sewn with two Bunnell sutures, so {words}.", "strands") == {"FCU": 4}


def test_torn_strands_of_a_tendon() -> None:
    assert each("Left wrist. FCU cut. Two strands of it, torn and thin, still held.", "strands") == {}
