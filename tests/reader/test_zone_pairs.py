"""Zones told with fingers, pair by pair, and tendons named only for the place they mark."""

import pytest
from reader_sentences import told

CUT = "Ring FDP completely cut. Small FDP completely cut."


@pytest.mark.parametrize(
    "words",
    [
        "Zone 3 in the ring finger, zone 2 in the small finger.",
        "Level: Z3 in D4, D5 Z2.",
        "The wound lay in zone 3 of the ring finger and zone 2 of the small finger.",
        "Ring finger zone 3, small finger zone 2.",
    ],
)
def test_a_zone_beside_each_finger(words: str) -> None:
    assert told(f"{words} {CUT}", "zone") == {"ring FDP": {"zone": "III"}, "small FDP": {"zone": "II"}}


@pytest.mark.parametrize(
    "words",
    [
        "FDP cut at the FDS insertion, 100 %, and repaired with 4-0 nylon.",
        "FDP completely divided just after the FDS insertion. Repaired with 4-0 nylon.",
        "The FDP was completely divided at the level of the FDS bifurcation and repaired with 4-0 nylon.",
    ],
)
def test_a_tendon_named_for_a_place(words: str) -> None:
    found = told(f"Ring finger. {words}")
    assert set(found) == {"ring FDP"}
    assert found["ring FDP"]["extent"] == "complete"


@pytest.mark.parametrize(("share", "percent"), [("60 pc cut", 60), ("cut to 60 pc of its width", 60)])
def test_pc_is_per_cent(share: str, percent: float) -> None:
    assert told(f"Ring finger. FDP {share}.", "extent_percent") == {"ring FDP": {"extent_percent": percent}}
