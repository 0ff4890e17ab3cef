"""Letters that a note defines itself, and what they say of the tendons that have them."""

import pytest
from reader_sentences import each, told

CUTS = """Right wrist, zone V, glass. Table of what was cut (K = cut through, T = part, I = intact):
   FPL  K      FCR  K      PL  I      FCU  I
   FDS II K    FDS III K   FDS IV T (40 %)   FDS V I
   N. med. K   N. uln. I
"""


def test_letters_of_cuts() -> None:
    assert each(CUTS, "extent") == {
        "thumb FPL": "complete",
        "FCR": "complete",
        "PL": "intact",
        "FCU": "intact",
        "index FDS": "complete",
        "middle FDS": "complete",
        "ring FDS": "partial",
        "small FDS": "intact",
    }
    assert each(CUTS, "extent_percent") == {"ring FDS": 40}


RECIPES = """Right palm, thumb and index. FPL, FDP index and FDS index completely cut, zone III.

REPAIR
 SET A = locking, 8-strand, 4-0 looped nylon, purchase 10 mm, peripheral 6-0 Prolene running, knots buried
 SET B = 4-strand cruciate, 4-0 Ticron, purchase 8 mm, peripheral none, knots buried
 FPL .............. A   [note: six strands only, not eight; palm wound too tight]
 FDP index ........ A
 FDS index ........ B   [note: knots ended up outside]
"""


def test_recipes_by_letter() -> None:
    sewn = told(RECIPES, "strands", "size", "peripheral", "knot", "purchase_mm")
    first = {"strands": 8, "size": "4-0", "peripheral": "present", "knot": "buried", "purchase_mm": (10, 10)}
    assert sewn["index FDP"] == first
    assert sewn["thumb FPL"] == {**first, "strands": 6}
    second = {"strands": 4, "size": "4-0", "peripheral": "absent", "knot": "external", "purchase_mm": (8, 8)}
    assert sewn["index FDS"] == second


def test_letters_in_the_cells_of_a_grid() -> None:
    note = """Left hand.

 key           SF FDP                 IF FDS
 extent        C                      P 3/4
 epi           5-0 Prolene            N
 (C = complete, P = partial, N = not put in)
"""
    assert each(note, "extent") == {"small FDP": "complete", "index FDS": "partial"}


def test_letters_that_nobody_defined() -> None:
    note = "Zone V. FPL  K   FCR  T.  FDP index  B. SET A was opened. K = 5."
    assert told(note, "extent", "strands") == {}


def test_names_given_to_wounds_are_no_legend() -> None:
    note = "S = SF zone I, FDP; I = IF zone III, FDS. Findings: FDP I cut. A2 S intact."
    assert "small FDP" not in each(note, "extent")


GRID = """FINGER   | FDP                        | FDS
middle   | complete, clean, {a}       | complete, {b}
ring     | complete, clean, {a}       | intact
small    | complete, ragged, {c}      | intact

{a}{s}6-strand Yoshizu, 4-0 Fiberwire, + 6-0 Prolene running, bites 10 mm.
{b}{s}each slip one 4-0 horizontal mattress, no edge suture.
{c}{s}Pennington (2 strands), 4-0 Fiberwire, + edge suture as in a. A second pair of strands was withdrawn.
"""


@pytest.mark.parametrize(
    "marks",
    [
        {"a": "REPAIR a", "b": "REPAIR b", "c": "REPAIR c", "s": " = "},
        {"a": "type 1", "b": "type 2", "c": "type 3", "s": " = "},
        {"a": "(a)", "b": "(b)", "c": "(c)", "s": " "},
    ],
)
def test_recipes_below_a_grid(marks: dict[str, str]) -> None:
    note = GRID.format(**marks)
    assert each(note, "strands") == {"middle FDP": 6, "ring FDP": 6, "small FDP": 2}
    assert each(note, "purchase_mm") == {"middle FDP": (10, 10), "ring FDP": (10, 10)}
    assert told(note, "size", "peripheral")["middle FDS"] == {"size": "4-0", "peripheral": "absent"}
