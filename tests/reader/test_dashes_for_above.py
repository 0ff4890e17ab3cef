"""Rows without titles whose dashes repeat the row above, where the note says so."""

from reader_sentences import each, told

ROWS = """
FPL      Savage 6 str       | 3/0 Ticron | purchase 9 mm | epi 6/0 Prolene
FDP IF   -                  | -          | -             | -
FDP RF   Adelaide 4 str     | -          | 8 mm          | none
"""
NOTE = "R palm and R thumb. FPL, FDP IF and FDP RF 100%, zone 3.\n\nRep. one line each; {}\n" + ROWS


def test_a_dash_is_the_cell_above() -> None:
    sewn = told(NOTE.format("dash = as line above"), "strands", "size", "purchase_mm", "peripheral")
    first = {"strands": 6, "size": "3-0", "purchase_mm": (9, 9), "peripheral": "present"}
    assert sewn["thumb FPL"] == sewn["index FDP"] == first
    assert sewn["ring FDP"] == {"strands": 4, "size": "3-0", "purchase_mm": (8, 8), "peripheral": "absent"}


def test_another_sign_for_the_line_above() -> None:
    note = NOTE.replace(" - ", ' " ').replace("| -\n", '| "\n').format('" = same as above')
    assert each(note, "strands") == {"thumb FPL": 6, "index FDP": 6, "ring FDP": 4}


def test_a_dash_of_which_nothing_is_said_tells_nothing() -> None:
    sewn = told(NOTE.format("dash = nothing to enter"), "strands", "size")
    assert "index FDP" not in sewn
