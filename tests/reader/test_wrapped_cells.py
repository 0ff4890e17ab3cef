"""Cells of a ruled grid that go on in the lines below their row."""

import pytest
from reader_sentences import each, fact_of, told

GRID = """Left hand, middle, ring and small fingers.

+--------+-------------------------+-------------------------+-------------------------+
|        | MIDDLE                  | RING                    | SMALL                   |
+--------+-------------------------+-------------------------+-------------------------+
| Zone   | II                      | II                      | II                      |
| FDP    | completely cut          | completely cut, zone    | completely cut          |
|        |                         | IIC                     |                         |
| FDS    | intact                  | ulnar slip cut, radial  | {0:<24}|
|        |                         | slip intact             | {1:<24}|
| Core   | 4-strand Adelaide, 3-0  | Tajima, two strands,    | 3-0 PDS modified        |
|        | Ethibond                | 4-0 Ticron              | Kessler                 |
| Epi    | none                    | 6-0 Prolene, running    | 5-0 PDS                 |
|        |                         | locking                 |                         |
| Pulleys| A2 preserved            | A2 vented over its      | A4 left                 |
|        | A4 vented               | distal 4 mm             |                         |
+--------+-------------------------+-------------------------+-------------------------+
"""
NOTE = GRID.format("intact", "")


def test_a_slip_whose_side_ends_the_line_above() -> None:
    extents = each(NOTE, "extent")
    assert (extents["ring FDS ulnar"], extents["ring FDS radial"]) == ("complete", "intact")
    quotes = fact_of(NOTE, "ring FDS radial", "extent").evidence
    assert [e.exact for e in quotes] == ["ulnar slip cut, radial", "slip intact"]


def test_each_thread_with_its_stitch() -> None:
    found = told(NOTE, "stitch", "size", "material", "strands")
    polyester = "braided polyester"
    assert found["middle FDP"] == {"stitch": "adelaide", "strands": 4, "size": "3-0", "material": polyester}
    assert found["ring FDP"] == {"stitch": "tajima", "strands": 2, "size": "4-0", "material": polyester}
    assert found["small FDP"]["stitch"] == "modified kessler"


def test_a_pattern_and_a_zone_in_the_second_line() -> None:
    assert each(NOTE, "peripheral_pattern")["ring FDP"] == "running locking"
    assert each(NOTE, "zone")["ring FDP"] == "IIC"


def test_a_name_opens_a_statement_of_its_own() -> None:
    found = told(NOTE, "finding", "extent_mm", group="pulleys")
    assert found == {
        "middle A2": {"finding": "intact"},
        "middle A4": {"finding": "vented"},
        "ring A2": {"finding": "vented", "extent_mm": 4},
        "small A4": {"finding": "intact"},
    }


@pytest.mark.parametrize(
    ("first", "second", "extent"),
    [
        ("50 % cut, edge", "smoothed", "partial"),
        ("cut by one", "half", "partial"),
        ("not", "cut", "intact"),
        ("no longer", "intact", None),
    ],
)
def test_what_the_second_line_turns(first: str, second: str, extent: str | None) -> None:
    assert each(GRID.format(first, second), "extent").get("small FDS") == extent


def test_a_line_with_its_own_second_label_is_a_row() -> None:
    rows = "| finger | tendon | cut   | core         |\n| ring   | FDP    | 100 % | 3-0 Ethibond |\n"
    note = f"Left ring finger.\n\n{rows}|        | FDS    | 40 %  | none         |\n"
    assert each(note, "extent") == {"ring FDP": "complete", "ring FDS": "partial"}
    assert each(note, "size") == {"ring FDP": "3-0"}


def test_a_cell_under_an_empty_one_begins_a_row() -> None:
    rows = "|      | ring   | small  |\n| FDP  | 100 %  | 100 %  |\n| FDS  |        | intact |\n"
    note = f"Left hand.\n\n{rows}|      | intact | 4-0    |\n"
    assert each(note, "extent")["small FDS"] == "intact"
