"""Grids whose fingers are headed by a numeral, twice over or with a side, and labels of rows that only ask."""

from collections.abc import Callable

import pytest
from reader_sentences import each

CORE = ("FDP core", "4 strands, cruciate", "2 strands, modified Kessler")
HEADS = [
    ("dig IV (ring)", "dig V (small)"),
    ("IV", "V"),
    ("ring, left", "small, left"),
    ("4th (ring) finger", "5th (small) finger"),
    ("D4 = ring", "D5 = small"),
    ("ring f.", "little f."),
]


def _across(heads: tuple[str, str], *rows: tuple[str, str, str]) -> str:
    return "\n".join(" | ".join(word.ljust(30) for word in row) for row in (("", *heads), *rows)) + "\n"


def _down(heads: tuple[str, str], *rows: tuple[str, str, str]) -> str:
    columns = [("Finger", *heads), *rows]
    return "\n".join("    ".join(column[n].ljust(26) for column in columns) for n in range(3)) + "\n"


@pytest.mark.parametrize("heads", HEADS)
@pytest.mark.parametrize("drawn", [_across, _down])
def test_a_finger_may_be_headed_in_many_ways(heads: tuple[str, str], drawn: Callable[..., str]) -> None:
    note = drawn(heads, ("FDP cut", "complete", "60 %"), CORE, ("A2", "vented", "whole"))
    assert each(note, "strands") == {"ring FDP": 4, "small FDP": 2}
    assert each(note, "extent") == {"ring FDP": "complete", "small FDP": "partial"}
    assert each(note, "finding", group="pulleys") == {"ring A2": "vented", "small A2": "intact"}


def test_bare_numbers_below_no_finger_are_no_fingers() -> None:
    found = each("Zone    FDP         FDS\nII      complete    intact\nIII     complete    intact\n", "extent")
    assert found.keys() == {"FDP", "FDS"}


@pytest.mark.parametrize("label", ["FDP tension", "Tension on FDP repair", "FDP, tension"])
def test_what_a_row_asks_is_no_finding(label: str) -> None:
    note = _across(HEADS[0], ("FDP cut", "complete", "complete"), CORE, (label, "some", "no"))
    assert each(note, "tension") == {"ring FDP": "present", "small FDP": "none"}


@pytest.mark.parametrize("label", ["FDP epitendinous", "Peripheral suture, FDP"])
def test_a_row_that_is_not_answered_promises_nothing(label: str) -> None:
    note = _across(HEADS[0], ("FDP cut", "complete", "complete"), CORE, (label, "6-0 Prolene", "-"))
    assert each(note, "peripheral") == {"ring FDP": "present"}


@pytest.mark.parametrize("label", ["FDP, taken away", "FDP shortened by", "FDP ends trimmed"])
def test_what_was_taken_from_the_ends_is_a_length(label: str) -> None:
    note = _across(HEADS[0], ("FDP cut", "complete", "complete"), (label, "5 mm", "none"), CORE)
    assert each(note, "trimmed_mm") == {"ring FDP": 5}
    assert each(note, "treatment") == {"ring FDP": "repaired", "small FDP": "repaired"}


@pytest.mark.parametrize("label", ["Gap at FDP repair", "Gap, FDP repair"])
def test_no_gap_at_a_repair_denies_no_repair(label: str) -> None:
    note = _across(HEADS[0], ("FDP cut", "complete", "complete"), CORE, (label, "no", "1 mm"))
    assert each(note, "gap") == {"ring FDP": "none", "small FDP": "seen"}
    assert each(note, "treatment") == {"ring FDP": "repaired", "small FDP": "repaired"}


@pytest.mark.parametrize(
    ("label", "first", "second", "truth"),
    [
        ("FDP, cut", "total", "60 %", ("complete", "partial")),
        ("FDS: cut", "60 %", "totally", ("partial", "complete")),
        ("State of FDP", "total", "intact", ("complete", "intact")),
    ],
)
def test_how_far_it_was_cut_in_a_word(label: str, first: str, second: str, truth: tuple[str, str]) -> None:
    part = "FDS" if "FDS" in label else "FDP"
    note = _across(HEADS[0], (label, first, second))
    assert each(note, "extent") == {f"ring {part}": truth[0], f"small {part}": truth[1]}


@pytest.mark.parametrize(("said", "truth"), [("freely", "free"), ("tight", "restricted"), ("smoothly", "free")])
def test_the_glide_in_a_word(said: str, truth: str) -> None:
    note = _across(HEADS[0], ("FDP cut", "complete", "complete"), CORE, ("FDP glide", said, "catches at A2"))
    assert each(note, "glide") == {"ring FDP": truth, "small FDP": "catching"}


@pytest.mark.parametrize("label", ["Flexor zone", "Zone"])
def test_a_zone_is_that_of_a_tendon_that_was_sewn(label: str) -> None:
    assert each(_across(HEADS[0], (label, "II", "III"), CORE), "zone") == {"ring FDP": "II", "small FDP": "III"}
