"""A name below a blank line signs a note, and so does one behind the closing formula of a letter."""

import pytest

from notereader.reader import read

NOTE = (
    "Operation: FDP repair left ring finger.\n\nFDP cut through in zone II. Four-strand repair of 3-0 Ethibond.\n"
    "Skin 5-0 nylon.\n\nPlan: hand therapy day 3, sutures out at 2 weeks.\n\n"
)
LETTER = "Dear Dr Pell,\n\nI repaired the FDP of her left ring finger.\n\nPlease remove the stitches at two weeks.\n\n"


@pytest.mark.parametrize("line", ["B Ruthven", "R Ashgrove-Tull SpR3", "B. Ruthven ST7"])
def test_a_name_with_an_initial_signs(line: str) -> None:
    assert "signature" in read(NOTE + line + "\n").elements


@pytest.mark.parametrize(
    "closing", ["Yours ever,\nMaren Lindqvarn", "As ever,\n\nLeo", "Yours,\n\nConstanze Merriwold"]
)
def test_a_name_behind_a_closing_formula_signs(closing: str) -> None:
    assert "signature" in read(LETTER + closing + "\n").elements


@pytest.mark.parametrize(
    "line", ["Copy to GP", "Home today", "Dr Pell aware", "Discharge tomorrow.", "Next review: Mr Pell"]
)
def test_other_last_lines_do_not(line: str) -> None:
    assert "signature" not in read(NOTE + line + "\n").elements
