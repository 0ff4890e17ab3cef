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


NOTED = """Right palm, saw, zone III.

         | FDP found       | FDP done          | FDS found    | FDS done
---------+-----------------+-------------------+--------------+-----------------
index    | cut through     | 4-strand Becker a | intact       | --
middle   | cut through     | as index a        | cut through  | mod. Kessler b
ring     | 1/3 cut         | smoothed off c    | cut through  | as middle b
small    | intact          | --                | cut through  | not sewn d

a  3-0 Ethibond, 12 mm taken either side, knot inside the join. {edge}
b  4-0 Ethibond, no edge suture. Two strands.
c  {unused}
d  The stump was thin as a thread. Left as it lay, not excised.
"""


@pytest.mark.parametrize(
    ("edge", "unused"),
    [
        (
            "Running 5-0 Prolene round the edge.",
            "I had a 5-0 ready in the holder, but the flap was thin and no stitch was placed.",
        ),
        ("5-0 Prolene, running, as epitendinous.", "Flap held by itself."),
    ],
)
def test_small_letters_that_point_to_notes_below(edge: str, unused: str) -> None:
    sewn = told(NOTED.format(edge=edge, unused=unused), "strands", "size", "peripheral", "peripheral_size", "knot")
    deep = {"strands": 4, "size": "3-0", "knot": "buried", "peripheral": "present", "peripheral_size": "5-0"}
    assert sewn["index FDP"] == sewn["middle FDP"] == deep
    assert sewn["middle FDS"] == sewn["ring FDS"] == {"strands": 2, "size": "4-0", "peripheral": "absent"}
    assert "ring FDP" not in sewn
    assert "small FDS" not in sewn


def test_a_letter_without_a_note_points_to_nothing() -> None:
    note = NOTED.format(edge="", unused="thin").replace("\nd  The stump", "\nThe stump")
    assert "size" not in told(note)["index FDP"]


SIGNS = """Right wrist, zone V.

FOUND ({legend})
  FCR + -> ends crushed
  FCU 0
  FDS x 4: 0   FDP x 4: 0
  Median n.: bruised, 0 cut

DONE
  FCR -> 4-strand, 3-0 Ticron. Wrist passively to 30 ext -> FCR gap 0. Tension on FCR join: 0. Bulk 0.
"""


@pytest.mark.parametrize("legend", ["+ = cut, 0 = whole", "+ = cut through, 0 = intact"])
def test_signs_of_a_paragraph(legend: str) -> None:
    extents = each(SIGNS.format(legend=legend), "extent")
    fingers = {
        f"{digit} {tendon}": "intact" for digit in ("index", "middle", "ring", "small") for tendon in ("FDS", "FDP")
    }
    assert extents == fingers | {"FCU": "intact"}


def test_a_nought_of_another_paragraph_is_no_sign() -> None:
    results = told(SIGNS.format(legend="+ = cut, 0 = whole"), "gap", "tension", "bulk")
    assert results == {"FCR": {"gap": "none", "tension": "none", "bulk": "none"}}


@pytest.mark.parametrize(
    "note",
    [
        "FDP index: technique 1.\nFDP ring: technique 2.\n\nTechnique 1: four strands.\nTechnique 2: two strands.",
        "The FDP index had repair A and the FDP ring repair B.\nRepair A: four strands.\nRepair B: two strands of 3-0.",
        "|INDEX | RING\nFDP | cut | cut\nDone | repair A | repair B\n\nRepair A: four strands.\nRepair B: two strands.",
    ],
)
def test_a_repair_may_be_named_with_a_letter_and_told_below(note: str) -> None:
    found = {name: facts["strands"] for name, facts in told(note, "strands").items()}
    assert found == {"index FDP": 4, "ring FDP": 2}


def test_letters_that_nothing_speaks_of_name_no_repairs() -> None:
    assert told("Ring FDP cut.\nCore A: four strands of 4-0.\nCore B: 3-0.", "strands") == {"ring FDP": {"strands": 4}}
