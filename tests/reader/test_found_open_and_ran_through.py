"""Words of glide, gaps, tension, bulk and pulleys as they were found, each beside a sentence that only looks so."""

import pytest
from reader_sentences import each

HEAD = "Left ring finger. FDP completely divided and repaired with 4-0 nylon. "


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("It goes under A2 but its excursion is short.", "glide", "restricted"),
        ("It glides, with a short excursion.", "glide", "restricted"),
        ("On further cycling the movement was unhindered.", "glide", "free"),
        ("It comes through clean.", "glide", "free"),
        ("On passive extension no space appeared between the ends.", "gap", "none"),
        ("On extending it no space was seen between the tendon ends.", "gap", "none"),
        ("Tight to bring together, the wrist had to be flexed.", "tension", "present"),
        ("The ends were hard to bring together.", "tension", "present"),
        ("The join is a touch plump.", "bulk", "present"),
        ("The repair looked fat at the A2 entrance.", "bulk", "present"),
        ("When I moved the joint for her it slid easily.", "test", "passive"),
        ("I bent the joint for him and it slid easily.", "test", "passive"),
    ],
)
def test_results_of_a_repair(text: str, field: str, value: str) -> None:
    assert each(HEAD + text, field) == {"ring FDP": value}


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("A space was left between the sutures of the skin.", "gap"),
        ("A short excursion to the store was needed for the nylon.", "bulk"),
        ("The dressing looked fat.", "bulk"),
    ],
)
def test_what_only_looks_so(text: str, field: str) -> None:
    assert each(HEAD + text, field) == {}


@pytest.mark.parametrize(
    ("text", "finding"),
    [
        ("A3 was already open from the glass.", "injured"),
        ("A3 already laid open by the saw.", "injured"),
        ("A3 slit through to pass the stump.", "released"),
        ("A3 was slit right through.", "released"),
        ("A3 present, good.", "intact"),
        ("A3 is yours to trust, nobody went near it.", "intact"),
    ],
)
def test_pulleys(text: str, finding: str) -> None:
    assert each(HEAD + text, "finding", group="pulleys") == {"ring A3": finding}


def test_a_sheath_that_was_open_is_no_pulley() -> None:
    found = each(HEAD + "The sheath was already open from the glass. A2 intact.", "finding", group="pulleys")
    assert found == {"ring A2": "intact"}


@pytest.mark.parametrize("text", ["FDS wasn't cut.", "FDS wasn't divided."])
def test_a_tendon_that_was_not_cut(text: str) -> None:
    assert each(f"Left ring finger. {text}", "extent") == {"ring FDS": "intact"}


@pytest.mark.parametrize("text", ["Radial a: pulsing.", "The radial artery was still pulsing."])
def test_an_artery_that_pulses(text: str) -> None:
    assert each(f"Left wrist. {text}", "extent", group="injuries") == {"radial artery": "intact"}


@pytest.mark.parametrize("text", ["PL divided, not bothered with.", "PL cut. PL: not bothered with."])
def test_what_was_not_bothered_with(text: str) -> None:
    assert each(f"Left wrist. {text}", "treatment") == {"PL": "left"}
