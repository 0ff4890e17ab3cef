"""Shares that hold, wholes that close a statement, results told without stops, and slips named in a label."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "state",
    [
        "was two thirds in continuity",
        "was only a third still in continuity",
        "was partly in continuity",
        "was in continuity in part only",
    ],
)
def test_a_share_in_continuity_is_no_whole_tendon(state: str) -> None:
    assert told(f"Ring finger. The FDS {state}.", "extent") == {}


def test_a_tendon_in_continuity_is_whole() -> None:
    assert each("Ring finger. The FDS was in continuity.", "extent") == {"ring FDS": "intact"}


@pytest.mark.parametrize("state", ["intact, all of it", "intact all of it", "spared entirely", "whole (all of it)"])
def test_all_of_a_whole_tendon_is_no_cut(state: str) -> None:
    assert each(f"Ring finger. FDP torn off. The FDS was {state}.", "extent") == {
        "ring FDP": "complete",
        "ring FDS": "intact",
    }


def test_all_of_a_cut_tendon_is_cut() -> None:
    assert each("Ring finger. FDP cut, all of it.", "extent") == {"ring FDP": "complete"}


@pytest.mark.parametrize(
    ("result", "field", "value"),
    [
        ("no gaping at all little bit bulky on the ulnar side", "bulk", "present"),
        ("no gap a touch bulky", "bulk", "present"),
        ("no gapping no tension bit thick", "bulk", "present"),
        ("no triggering a bit tight", "tension", "present"),
        ("no gap catches at A2", "glide", "catching"),
        ("no gap at all it catches a bit on A2", "glide", "catching"),
        ("no gap or catching", "glide", "free"),
        ("no gap nor any catching", "glide", "free"),
        ("no gap no catching not bulky", "bulk", "none"),
    ],
)
def test_a_state_behind_a_denied_noun_is_told_anew(result: str, field: str, value: str) -> None:
    assert each(f"ring finger FDP repaired {result}", field) == {"ring FDP": value}


@pytest.mark.parametrize(
    "lines",
    [
        "FDS radial: divided, one Tsuge 4-0 nylon\nFDS ulnar: divided, excised",
        "FDS radial .. severed. One Tsuge, 4-0 nylon\nFDS ulnar ... severed. Cut away to make room",
        "FDS (radial): divided, one Tsuge 4-0 nylon. FDS (ulnar): divided, excised",
    ],
)
def test_a_side_behind_the_superficialis_labels_a_slip(lines: str) -> None:
    assert told(f"Ring finger.\n{lines}", "extent", "treatment", "stitch") == {
        "ring FDS radial": {"extent": "complete", "treatment": "repaired", "stitch": "tsuge"},
        "ring FDS ulnar": {"extent": "complete", "treatment": "excised"},
    }


def test_a_side_before_the_superficialis_is_a_slip() -> None:
    note = "Index finger. The ulnar FDS was excised and the radial FDS sutured with a 4-0 PDS mattress."
    assert each(note, "treatment") == {"index FDS ulnar": "excised", "index FDS radial": "repaired"}


@pytest.mark.parametrize("cut", ["FDS radial border cut 30%", "FDS radial 30% cut"])
def test_a_side_that_places_a_cut_is_no_slip(cut: str) -> None:
    assert each(f"Ring finger. {cut}.", "extent") == {"ring FDS": "partial"}


def test_both_sides_of_a_superficialis_are_the_whole() -> None:
    assert each("Ring finger. Radial and ulnar FDS cut and repaired.", "treatment") == {"ring FDS": "repaired"}
