"""Forms with brackets for blanks, filled in or left wide and empty; quotes are those of the note as it stands."""

import pytest
from reader_sentences import each, quote_of, told

from notereader.reader.text.filled_brackets import without_brackets

FORM = """Date of operation: [ 26 / 09 / 2031 ]    Digit: [ ring ]    Assistant: [          ]
FDP: [x] complete   [ ] partial      Ends: [x] clean  [ ] ragged
FDP core: technique [            ]  strands [ 4 ]   suture [ 3/0 ] [          ]
Epitendinous: [x] yes [ ] no      pattern [            ]  suture [ 6/0 ] [ Prolene ]
Gap: [ ] yes [x] no     Complications: [            ]
"""
NAMED_INSIDE = FORM.replace("[            ]", "").replace("[          ]", "")


def test_answers_between_brackets() -> None:
    facts = told(FORM)["ring FDP"]
    assert (facts["strands"], facts["size"]) == (4, "3-0")
    assert (facts["peripheral"], facts["peripheral_size"]) == ("present", "6-0")
    assert facts["peripheral_material"] == "polypropylene"
    assert quote_of(FORM, "ring FDP", "strands") == "strands [ 4"


def test_the_text_keeps_its_length() -> None:
    plain = without_brackets(FORM)
    assert len(plain) == len(FORM)
    assert "strands : 4  " in plain
    assert "[x] complete   [ ] partial" in plain


@pytest.mark.parametrize("text", [NAMED_INSIDE, "[DIAGNOSIS] ring FDP cut [zone II] [see form] [REPAIR] 4 strands"])
def test_without_blanks_brackets_stay(text: str) -> None:
    assert without_brackets(text) == text


@pytest.mark.parametrize("date", ["26 / 09 / 2031", "26 . 09 . 2031", "26 - 9 - 2031"])
def test_a_date_whose_parts_stand_apart(date: str) -> None:
    assert each(f"Date of operation: {date}\nFDP cut", "date", group="operation") == {"": "2031-09-26"}


def test_figures_apart_that_are_no_date() -> None:
    assert each("Date of operation: none. FDP cut 2 / 3 / 4 mm", "date", group="operation") == {}


def test_pulleys_with_an_empty_blank_are_told_nothing_of() -> None:
    note = f"{FORM}Pulley release: A1 [     ]  A3 [ all ]  A4 [     ]\n"
    assert each(note, "finding", group="pulleys") == {"ring A3": "released"}
