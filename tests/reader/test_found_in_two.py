"""Tendons found in two: fallen apart again, cut in one slip, shares 'under' a figure, and how their edges looked."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "note",
    [
        "Ring finger. Today I found the profundus pulled apart in zone II, a centimetre between the ends.",
        "Ring finger. The FDP repair had given way fully.",
        "Ring finger. The profundus lay apart under A2.",
        "Ring finger. FDP across, ends retracted.",
        "Ring finger: the FDP was cut a cross at the proximal phalanx.",
        "Ring FDP a hundred percent lacerated.",
    ],
)
def test_found_in_two(note: str) -> None:
    assert each(note, "extent")["ring FDP"] == "complete"


@pytest.mark.parametrize(
    "note",
    [
        "Ring FDP 60% cut, repaired with 4-0 nylon. On traction the FDP pulled apart by 1 mm.",
        "Ring FDP 60% cut. The FDP was passed across the joint and repaired with 4-0 nylon.",
        "Ring FDP 60% cut. The FDP had not come apart.",
    ],
)
def test_not_found_in_two(note: str) -> None:
    assert each(note, "extent") == {"ring FDP": "partial"}


@pytest.mark.parametrize(
    "note",
    [
        "The ring superficialis was divided only in its ulnar slip; the radial slip was intact.",
        "The ring superficialis was cut on its ulnar slip, the radial slip being whole.",
        "The ring FDS was severed through the ulnar slip; its radial slip was intact.",
    ],
)
def test_cut_in_one_slip(note: str) -> None:
    assert each(note, "extent") == {"ring FDS radial": "intact", "ring FDS ulnar": "complete"}


@pytest.mark.parametrize(
    ("note", "share"),
    [
        ("Ring FDP had a superficial laceration, under 20 percent.", 20),
        ("Ring FDP cut, below 30% of its width.", 30),
    ],
)
def test_at_most_so_much(note: str, share: float) -> None:
    assert told(note)["ring FDP"]["extent_percent"] == share


@pytest.mark.parametrize(
    ("note", "found"),
    [
        ("Ring FDP 60% cut, clean edge. Repaired with 4-0 nylon.", "clean"),
        ("Ring FDP cut right through, neat.", "clean"),
        ("Ring FDP wholly severed. Edges straight.", "clean"),
        ("Ring FDP off completely. Ends rough, cut back 2 mm each.", "ragged"),
        ("Ring FDP and FDS completely severed, tendon ends torn.", "ragged"),
    ],
)
def test_looks_of_edges(note: str, found: str) -> None:
    assert each(note, "ends")["ring FDP"] == found
