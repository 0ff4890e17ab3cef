"""A second grid whose rows bear no more than the number of a row above, and labels at options not ticked."""

from reader_sentences import each, told

ABOVE = (
    "\n           digit    tendon   zone   cut %    done\n"
    " line 1    thumb    FPL      2      100      sutured\n"
    " line 2    index    FDP      2      100      sutured\n\n"
)


def test_rows_named_above() -> None:
    note = ABOVE + (
        "           core       strands   calibre    epitendinous\n"
        " line 1    Kessler    2         3.0 PDS    none\n"
        " line 2    Savage     6         4.0 PDS    5.0 PDS\n"
    )
    assert told(note, "stitch", "size", "peripheral") == {
        "thumb FPL": {"stitch": "kessler", "size": "3-0", "peripheral": "absent"},
        "index FDP": {"stitch": "savage", "size": "4-0", "peripheral": "present"},
    }


def test_rows_of_another_name() -> None:
    note = (
        "\nrow     tendon         cut         done\n"
        "row 1   ring FDP       complete    repaired\n"
        "row 2   small FDP      60 %        repaired\n\n"
        "row     core            size         gap\n"
        "row 1   Adelaide        3-0 Ticron   none\n"
        "row 2   Kessler         4-0 Ticron   1 mm\n"
    )
    assert told(note, "stitch", "gap") == {
        "ring FDP": {"stitch": "adelaide", "gap": "none"},
        "small FDP": {"stitch": "kessler", "gap": "seen"},
    }


def test_rows_that_no_row_above_names() -> None:
    note = ABOVE + (
        "           core       strands   calibre\n"
        " line 3    Kessler    2         3.0 PDS\n"
        " line 4    Savage     6         4.0 PDS\n"
    )
    assert "savage" not in each(note, "stitch").values()


def test_a_row_whose_first_option_is_not_ticked() -> None:
    note = (
        "\n            core                      calibre\n"
        " index FDP  [ ] Kessler [x] Bunnell   3.0 PDS\n"
        " ring FDP   [x] Kessler [ ] Bunnell   4.0 PDS\n"
    )
    assert each(note, "stitch") == {"index FDP": "bunnell", "ring FDP": "kessler"}
    done = "\n            done\n index FDP  [ ] sutured [x] left\n ring FDP   [x] sutured [ ] left\n"
    assert each(done, "treatment") == {"index FDP": "left", "ring FDP": "repaired"}
