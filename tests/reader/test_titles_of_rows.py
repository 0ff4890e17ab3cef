"""A line with one name among the rows of a grid of fingers is the title of the rows below it, not their end."""

import pytest
from reader_sentences import each, told

FORM = """Left hand.
1. Tendons            INDEX               MIDDLE
   Zone               II                  II
   FDP                cut through         60% cut
   FDS                cut through         intact
2. FDP repair
   Core               Savage              {other}
   Strands            6                   --
   Suture             4-0 Ethibond        --
   Hold          locking ( ) grasping (X)   --
   Epitendinous       cross-stitch        none
     thread           6-0 PDS             --
3. FDS repair
   Core               Tsuge               --
   Suture             4-0 Supramid loop   --
4. Pulleys            INDEX               MIDDLE
   A2                 intact              vented
5. Nerves
   Radial digital     cut -> repaired     intact
   Ulnar digital      intact              cut -> repaired
"""


def test_each_finger_gets_what_stands_in_its_column() -> None:
    note = FORM.format(other="none")
    assert each(note, "stitch") == {"index FDP": "savage", "index FDS": "tsuge"}
    assert each(note, "strands")["index FDP"] == 6
    assert each(note, "size") == {"index FDP": "4-0", "index FDS": "4-0"}
    assert each(note, "finding", group="pulleys") == {"index A2": "intact", "middle A2": "vented"}


def test_the_title_repairs_no_finger_without_a_core() -> None:
    assert each(FORM.format(other="none, left"), "treatment")["middle FDP"] == "left"
    assert "middle FDP" not in each(FORM.format(other="--"), "treatment")


def test_nerves_under_their_title_are_those_of_their_column() -> None:
    nerves = each(FORM.format(other="none"), "extent", group="injuries")
    assert nerves == {
        "index digital nerve radial": "complete",
        "index digital nerve ulnar": "intact",
        "middle digital nerve radial": "intact",
        "middle digital nerve ulnar": "complete",
    }


def test_a_box_is_not_cut_in_two_where_a_column_begins() -> None:
    assert each(FORM.format(other="none"), "hold") == {"index FDP": "grasping"}


def test_a_deeper_row_is_of_the_row_above_it() -> None:
    facts = told(FORM.format(other="none"), "peripheral", "peripheral_size", "peripheral_pattern")
    assert facts["index FDP"] == {
        "peripheral": "present",
        "peripheral_size": "6-0",
        "peripheral_pattern": "cross-stitch",
    }


HANGING = """Left hand.
               RING                 SMALL
FDP            cut through          cut through
               ragged               clean
FDS            intact               cut through
"""


@pytest.mark.parametrize("grid", [HANGING, HANGING.replace("               ragged               clean\n", "")])
def test_rows_without_a_title_over_them(grid: str) -> None:
    assert each(grid, "extent") == {
        "ring FDP": "complete",
        "small FDP": "complete",
        "ring FDS": "intact",
        "small FDS": "complete",
    }


SHEET = """Left middle finger.

                 FDP                        FDS
Cut          [x] through [ ] part        [ ] through [x] part
Trimmed      {trimmed}                        ________
Core         {core}                 figure-of-eight
Suture       4/0 Ticron                  4/0 Ticron
"""


@pytest.mark.parametrize(
    ("trimmed", "core", "stitch"),
    [("_2_ mm", "mod Kessler", "modified kessler"), ("2 mm off", "locked cruciate", "locked cruciate")],
)
def test_cells_that_begin_left_of_their_titles(trimmed: str, core: str, stitch: str) -> None:
    note = SHEET.format(trimmed=trimmed, core=core)
    facts = told(note, "trimmed_mm", "stitch", "size")
    assert facts["middle FDP"] == {"trimmed_mm": 2, "stitch": stitch, "size": "4-0"}
    assert facts["middle FDS"] == {"stitch": "figure-of-eight", "size": "4-0"}


TICKS = """Right hand.

                         FDP ring              FDS ring              FDP little
5  Zone                  II ☒  III ☐           II ☒  III ☐           II ☐  III ☐
6  Cut                   {cut}         all ☐  part ☒ 60 %    all ☐  part ☐  none ☒
11 Suture                4-0 Ethibond          4-0 Ethibond
13 Epitendon             ☒ running ☐ cross     ☒ running ☐ cross
   suture                6-0 Prolene           6-0 PDS
17 Pulleys ring: A2 vented ☒ 7 mm distal; A4 whole ☒; others ........
"""


@pytest.mark.parametrize("cut", ["all ☒  part ☐", "cut ☒  part ☐"])
def test_options_ticked_behind_in_cells(cut: str) -> None:
    note = TICKS.format(cut=cut)
    assert each(note, "extent") == {"ring FDP": "complete", "ring FDS": "partial", "small FDP": "intact"}
    assert each(note, "zone") == {"ring FDP": "II", "ring FDS": "II"}
    assert each(note, "size") == {"ring FDP": "4-0", "ring FDS": "4-0"}
    assert told(note, "peripheral_size", "peripheral_material") == {
        "ring FDP": {"peripheral_size": "6-0", "peripheral_material": "polypropylene"},
        "ring FDS": {"peripheral_size": "6-0", "peripheral_material": "polydioxanone"},
    }


def test_a_line_of_ticks_with_an_empty_last_field() -> None:
    pulleys = each(TICKS.format(cut="all ☒  part ☐"), "finding", group="pulleys")
    assert pulleys == {"ring A2": "vented", "ring A4": "intact"}


@pytest.mark.parametrize("title", ["FDP zone ", "FDP level", "profundus zone"])
def test_a_row_asks_for_the_zone_of_a_tendon(title: str) -> None:
    note = f"""
                 INDEX            MIDDLE           RING
{title}          II               III              IIC
FDP              60% cut          divided          divided
"""
    assert each(note, "zone") == {"index FDP": "II", "middle FDP": "III", "ring FDP": "IIC"}
