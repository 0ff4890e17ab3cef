"""'All cut' behind one name, 'intact all round', 'complete preserved': small words that tell how much of a thing."""

import pytest
from reader_sentences import each

HEAD = "Left small finger, zone II. "


@pytest.mark.parametrize(
    ("found", "extents"),
    [
        ("FDP all cut, ends tidy.", {"small FDP": "complete"}),
        (
            "FDS: radial slip all cut, ulnar slip half cut.",
            {"small FDS radial": "complete", "small FDS ulnar": "partial"},
        ),
        ("All cut tendon ends were clean.", {}),
    ],
)
def test_all_cut_behind_one_name(found: str, extents: dict[str, str]) -> None:
    assert each(HEAD + found, "extent") == extents


@pytest.mark.parametrize(
    "whole", ["followed through the window, intact all round", "inspected on both sides, intact all around"]
)
def test_whole_all_round_is_no_suture(whole: str) -> None:
    assert each(f"{HEAD}FDP: {whole}.", "extent") == {"small FDP": "intact"}


@pytest.mark.parametrize("kept", ["complete preserved", "completely intact"])
def test_wholly_preserved_is_no_complete_cut(kept: str) -> None:
    note = f"{HEAD}FDP cut through. The ulnar bundle is in order, nerve and artery {kept}."
    assert set(each(note, "extent", group="injuries").values()) == {"intact"}


@pytest.mark.parametrize("pulley", ["middle a two vented at its far end", "so middle a two was vented at its far end"])
def test_a_finger_before_a_pulley_spelt_out(pulley: str) -> None:
    note = (
        f"right hand middle and ring fingers fdp of the middle finger and fdp of the ring finger cut pulleys {pulley}"
    )
    assert each(note, "finding", group="pulleys") == {"middle A2": "vented"}
