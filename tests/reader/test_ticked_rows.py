"""Rows of a form with several ticked fields: whose each tick is, and that an empty mark leaves unsaid."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "note",
    [
        "Index: FDP cut [x] partial [ ] intact [ ] | FDS cut [ ] partial [ ] intact [x]",
        "INDEX  FDP [x] cut [ ] partial [ ] intact   FDS [ ] cut [ ] partial [x] intact",
        "FDP: index cut (x) / part ( ) / intact ( )\nFDS: index cut ( ) / part ( ) / intact (x)",
        "Index finger\n  FDP   \u2612 cut  \u2610 part  \u2610 intact\n  FDS \u2610 cut  \u2610 part  \u2612 intact",
        "|  | Index |\n| FDP | {x}divided / { }partial / { }intact |\n| FDS | { }divided / { }partial / {x}intact |",
    ],
)
def test_each_tendon_has_its_own_tick(note: str) -> None:
    assert each(note, "extent") == {"index FDP": "complete", "index FDS": "intact"}


@pytest.mark.parametrize(
    "note",
    [
        "       Middle                       Ring\n"
        "FDP    cut (x) part ( ) intact ( )   cut ( ) part ( ) intact (x)\n"
        "FDS    cut ( ) part ( ) intact ( )   cut ( ) part (x) intact ( )",
        "FDP: middle: [x] complete [ ] partial [ ] intact; ring: [ ] complete [ ] partial [x] intact\n"
        "FDS: middle: [ ] complete [ ] partial [ ] intact; ring: [ ] complete [x] partial [ ] intact",
    ],
)
def test_each_finger_has_its_own_tick(note: str) -> None:
    assert each(note, "extent") == {
        "middle FDP": "complete",
        "ring FDP": "intact",
        "ring FDS": "partial",
    }


@pytest.mark.parametrize(
    "note",
    [
        "Ring: FDP divided [ ] intact [ ]   FDS divided [x] intact [ ]   A2 intact [ ] vented [ ]",
        "RING:  FDP ( )divided ( )intact, FDS (x)divided ( )intact, A2 ( )intact ( )vented",
    ],
)
def test_a_field_without_a_tick_says_nothing(note: str) -> None:
    assert each(note, "extent") == {"ring FDS": "complete"}
    assert each(note, "finding", "pulleys") == {}


@pytest.mark.parametrize(
    "note",
    [
        "A2: index intact [ ] vented [x]     small intact [x] vented [ ]",
        "A2: index: \u25a1intact \u2611vented; small: \u2611intact \u25a1vented",
        "Index:  A2 [ ] intact [x] vented\nSmall:  A2 [x] intact [ ] vented",
    ],
)
def test_each_finger_has_its_own_pulley(note: str) -> None:
    assert each(note, "finding", "pulleys") == {"index A2": "vented", "small A2": "intact"}


@pytest.mark.parametrize(
    "note",
    [
        "Ring finger\nFDS divided.\nA2 repaired.\nSmall finger\nFDP intact.\nFDS intact.\nA2 intact.",
        "RING\n- FDS: divided\n- A2: repaired\nSMALL\n- FDP: intact\n- FDS: intact\n- A2: intact",
    ],
)
def test_a_pulley_under_the_heading_of_a_whole_finger(note: str) -> None:
    assert each(note, "finding", "pulleys") == {"ring A2": "repaired", "small A2": "intact"}


@pytest.mark.parametrize("note", ["Tendons: FDP [x] FDS [ ]", "Tendons: [x] FDP [ ] FDS", "Digit: index [x] ring [ ]"])
def test_names_may_be_the_options(note: str) -> None:
    assert each(note, "extent") == {}


@pytest.mark.parametrize(
    "row",
    [
        "FDP  | [x] cut  [ ] part  [ ] whole      ends [ ] clean [x] ragged",
        "FDP  cut [x]  partial [ ]     Stumps: clean [ ] ragged [x]",
    ],
)
def test_a_field_without_a_name_is_of_the_tendon_before_it(row: str) -> None:
    note = f"Ring finger\n{row}\nFDS  intact"
    assert each(note, "ends") == {"ring FDP": "ragged"}
    assert each(note, "extent") == {"ring FDP": "complete", "ring FDS": "intact"}
