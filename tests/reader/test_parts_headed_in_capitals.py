"""Parts of a note headed by a number and a finger, and short names that head them."""

from reader_sentences import each

NOTE = "CARD 1, RING\n* FDP: cut through.\n\nCARD 2, SMALL\n* FDP: cut to 40 %.\n\nCARD 3, MIDDLE\n* FDP: uninjured.\n"


def test_a_short_name_in_a_line_of_capitals_heads_its_part() -> None:
    assert each(NOTE, "extent") == {"ring FDP": "complete", "small FDP": "partial", "middle FDP": "intact"}


def test_parts_and_letters() -> None:
    note = "PART A - INDEX\nFDP: cut through.\n\nPART B - SMALL\nFDP: intact.\n"
    assert each(note, "extent") == {"index FDP": "complete", "small FDP": "intact"}


def test_hurried_names_of_the_index() -> None:
    note = "IDX\nfdp thru and thru, complete\n\nMID\nfdp 40% cut\n"
    assert each(note, "extent") == {"index FDP": "complete", "middle FDP": "partial"}


def test_short_names_of_nerves_and_arteries_in_a_grid() -> None:
    note = (
        "| structure | RING | SMALL |\n|---|---|---|\n| n. dig. radial | complete, sutured 9-0 | intact |\n"
        "| a. dig. ulnar | intact | complete, ligated |\n"
    )
    found = each(note, "extent", group="injuries")
    assert found == {
        "ring digital nerve radial": "complete",
        "small digital nerve radial": "intact",
        "ring digital artery ulnar": "intact",
        "small digital artery ulnar": "complete",
    }
