"""Grids whose cells go on over several lines, and whose blank labels stand for the label above."""

from reader_sentences import each, told

WIDE = """Operation of 3.4.2031. Left hand, zone 2.

                      MIDDLE          RING            LITTLE
FDP                   cut through     cut through     cut through
FDS                   radial slip     both slips      whole
                      cut, ulnar      cut
                      slip whole
FDS action            radial slip     left alone      n/a
                      repaired
FDP action            4-strand,       4-strand        Kessler,
                      3-0 Ticron;                     4-0 Ticron
                      + 6-0 Prolene,
                      running
epitendon             none            6/0 Prolene     left out,
                                                      5/0 not in stock
"""


def test_a_cell_goes_on_with_what_it_left_open() -> None:
    extents = each(WIDE, "extent")
    assert extents["middle FDS radial"] == "complete"
    assert "middle FDS" not in extents
    assert extents["small FDP"] == "complete"
    assert each(WIDE, "treatment")["middle FDS radial"] == "repaired"
    assert "middle FDS" not in each(WIDE, "treatment")


LABELS = """Right hand, zone 2.

FINGER   TENDON   FOUND                         DONE
-----------------------------------------------------------------------------
MIDDLE   FDP      cut through, ragged           trimmed 3 mm; Adelaide 4-strand,
                                                3/0 Ticron; epitendinous 6/0
                                                Prolene running
         FDS      50% cut                       left, no suture
RING     FDP      20% nick                      edge trimmed
         FDS      intact                        -
         A2       intact                        vented 6 mm at distal edge
SMALL    FDP      not injured                   -
"""


def test_blank_labels_stand_for_those_above() -> None:
    assert each(LABELS, "extent") == {
        "middle FDP": "complete",
        "middle FDS": "partial",
        "ring FDP": "partial",
        "ring FDS": "intact",
        "small FDP": "intact",
    }
    assert each(LABELS, "treatment") == {"middle FDP": "repaired", "middle FDS": "left", "ring FDP": "trimmed"}
    assert each(LABELS, "finding", group="pulleys") == {"ring A2": "vented"}


def test_a_line_right_of_the_labels_goes_on_with_its_row() -> None:
    sewn = told(LABELS, "size", "peripheral_size", "peripheral_pattern")
    assert sewn == {"middle FDP": {"size": "3-0", "peripheral_size": "6-0", "peripheral_pattern": "running"}}


def test_a_pulley_cut_for_a_purpose_is_vented() -> None:
    note = "Left thumb. FPL completely cut. The oblique pulley was {}."
    for words in ("cut over 4 mm, middle part, to pass the FPL", "cut for 4 mm to let the tendon through"):
        assert each(note.format(words), "finding", group="pulleys") == {"thumb oblique": "vented"}
    assert each(note.format("cut by the glass"), "finding", group="pulleys") == {"thumb oblique": "injured"}


def test_a_repair_done_here_in_an_earlier_year_is_history() -> None:
    note = "Operation date: 3 March 2030. FDP of the index cut and repaired with four strands. "
    for words in ("Right thumb FPL, done here 2024 (2 strand).", "Thumb FPL repaired here 2019 with 2 strands."):
        assert each(note + words, "strands") == {"index FDP": 4}
