"""What a form shows by marks: words struck out by dashes, circled options, stars for notes below, slashes for cells."""

import itertools

import pytest
from reader_sentences import each, told

_SEWN = "Ring finger FDP divided completely, repaired with two strands.\n"
_ORDER = "Record of operation (strike out what does not apply)\n"


@pytest.mark.parametrize(
    ("line", "glide"),
    [
        ("Glide   --free--  catching  --restricted--", "catching"),
        ("Glide: ==free== / catching", "catching"),
        ("Glide: free --catching-- --restricted--", "free"),
    ],
)
def test_struck_by_dashes(line: str, glide: str) -> None:
    assert each(_ORDER + _SEWN + line, "glide") == {"ring FDP": glide}


@pytest.mark.parametrize(
    "line",
    [
        "Glide -- free -- all along.",
        "Glide free --as it should be-- all along.",
        "Glide: free--not catching--all along.",
    ],
)
def test_asides_between_dashes_strike_nothing(line: str) -> None:
    assert each(_SEWN + line, "glide") == {"ring FDP": "free"}


_FINGERS = {
    "columns": "Ray:   II   III   IV*   V     (*circled)",
    "words": "Finger: Index  Middle  Ring*  Little  (* = ringed)",
    "slashes": "Finger: Index / Middle / Ring* / Little   (*circled)",
    "one space": "Finger: Index Middle *Ring Little   (*chosen)",
}


@pytest.mark.parametrize(("line", "gap"), [("Gap: none   seen*", "seen"), ("Gap: none* / seen", "none")])
@pytest.mark.parametrize("finger", _FINGERS.values(), ids=_FINGERS)
def test_circled(finger: str, line: str, gap: str) -> None:
    note = f"{finger}\n{line}\nFDP divided completely, repaired with two strands."
    assert told(note, "strands", "gap") == {"ring FDP": {"strands": 2, "gap": gap}}


def test_a_long_vinculum_is_no_finger() -> None:
    note = "Ring finger.\nVincula           long: kept    short: torn\nFDP divided completely."
    assert each(note, "extent") == {"ring FDP": "complete"}


_GRIDS = {
    "bars": "| FDS index | cut | {} |\n| FCR | cut | 4-strand 3-0 Ethibond |\n| FDS ring | cut | {} |\n",
    "spaces": "FDS index     cut     {}\nFCR           cut     4-strand 3-0 Ethibond\nFDS ring      cut     {}\n",
}
_MARKS = (("see *", "*"), ("see **", "**"), ("as \u2020", "\u2020"))
_NOTES = ("{}  each: 2-strand, 4-0 Mersilene, Kessler\n", "{} both: 2-strand,\n   4-0 Mersilene, Kessler\n")


@pytest.mark.parametrize("grid", _GRIDS.values(), ids=_GRIDS)
def test_notes_by_a_star(grid: str) -> None:
    expected = {name: {"strands": 2, "size": "4-0"} for name in ("index FDS", "ring FDS")}
    missed = []
    for (pointer, mark), note in itertools.product(_MARKS, _NOTES):
        text = f"Structure   State   Repair\n{grid.format(pointer, pointer)}\n{note.format(mark)}"
        found = told(text, "strands", "size")
        if found != {**expected, "FCR": {"strands": 4, "size": "3-0"}}:
            missed.append((text, found))
    assert not missed


def test_bullets_are_no_notes() -> None:
    note = "FDP ring cut, 2-strand, see *\n* 4-strand for the FDP middle\n* 6-strand for the FDP small\n"
    assert each(note, "strands") == {"ring FDP": 2, "middle FDP": 4, "small FDP": 6}


_TITLES = ("ray / tendon / zone / % cut / strands", "finger / tendon / zone / cut % / strands")


@pytest.mark.parametrize("title", _TITLES)
@pytest.mark.parametrize("fingers", [("3", "4"), ("middle", "ring")])
def test_cells_parted_by_slashes(title: str, fingers: tuple[str, str]) -> None:
    a, b = fingers
    rows = f"{a} / FDP / II / 100 / 4\n{a} / FDS / II / 40 / none\n{b} / FDP / - / 0\n"
    found = told(f"Left hand\n{title}\n{rows}", "extent", "extent_percent", "strands")
    assert found == {
        "middle FDP": {"extent": "complete", "strands": 4},
        "middle FDS": {"extent": "partial", "extent_percent": 40},
        "ring FDP": {"extent": "intact"},
    }


@pytest.mark.parametrize("sign", ["do.", "ditto", '"'])
@pytest.mark.parametrize("number", ["", "{} "])
def test_names_told_by_ditto(sign: str, number: str) -> None:
    rows = (("FDS", "index    intact"), (sign, "middle   divided completely"), ("FDP", "index    intact"))
    lines = [number.format(n) + f"{name:6}{told}" for n, (name, told) in enumerate(rows, 1)]
    found = each("\n".join(lines), "extent")
    assert found == {"index FDS": "intact", "middle FDS": "complete", "index FDP": "intact"}


_COUNTS = (
    "Strand count of the FDP is in fact 4.",
    "The number of strands in the FDP was actually four.",
    "Strand count for the FDP: 4.",
)


@pytest.mark.parametrize("line", _COUNTS)
def test_counts_of_the_tendon_they_name(line: str) -> None:
    note = "Middle finger FDP: 3-0 FiberWire, strands: 6. FDS: 4-0 FiberWire modified Kessler, two strands.\n"
    assert each(note + line, "strands") == {"middle FDP": 4, "middle FDS": 2}


_LEGENDS = (
    "Zone V.  Legend: X = cut through   P = partly cut   0 = not cut",
    "Legend: X = cut through, P = partly cut, 0 = not cut",
)


@pytest.mark.parametrize("legend", _LEGENDS)
def test_letters_side_by_side(legend: str) -> None:
    grid = "          index    long     ring\n FDS        0        X        X\n FDP        0        P        0\n"
    found = each(f"Left wrist\n{legend}\n\n{grid}\n      FCR: 0       PL: X       FCU: X\n", "extent")
    assert found == {
        **dict.fromkeys(("index FDS", "index FDP", "ring FDP", "FCR"), "intact"),
        **dict.fromkeys(("middle FDS", "ring FDS", "PL", "FCU"), "complete"),
        "middle FDP": "partial",
    }


def test_a_nought_in_a_column_of_gaps_is_no_legend() -> None:
    grid = "             cut      gap\n FDS ring      X        0\n FCU           X        0\n"
    found = each(f"X = cut through   0 = not cut\n\n{grid}", "extent")
    assert found == {"ring FDS": "complete", "FCU": "complete"}
