"""Two nerves that share one noun, and 'deep one' beside a superficial tendon."""

import pytest

from notereader.reader import read

WRIST = "Left wrist laceration, zone V. FDS to all fingers and the FPL divided. "


@pytest.mark.parametrize(
    ("told", "extent"),
    [
        ("Median and ulnar nerves transected completely.", "complete"),
        ("The ulnar and median nerves were both cut.", "complete"),
        ("Median + ulnar nerves intact.", "intact"),
    ],
)
def test_median_and_ulnar_nerves_are_those_of_the_wrist(told: str, extent: str) -> None:
    found = {i.structure: i.facts["extent"].value for i in read(WRIST + told).injuries}
    assert found == {"median nerve": extent, "ulnar nerve": extent}


def test_radial_and_ulnar_nerves_of_a_finger_stay_digital() -> None:
    found = read("Left ring finger, FDP cut. Radial and ulnar nerves intact.").injuries
    assert {(i.structure, i.side) for i in found} == {("digital nerve", "radial"), ("digital nerve", "ulnar")}


@pytest.mark.parametrize(
    ("told", "deep", "superficial"),
    [
        ("superficial tendon right through, deep one nicked, a quarter", "partial", "complete"),
        ("superficial tendon intact; deep one cut across", "complete", "intact"),
        ("deep tendon cut across, superficial one half cut", "complete", "partial"),
    ],
)
def test_the_deep_one_is_the_profundus(told: str, deep: str, superficial: str) -> None:
    found = {r.tendon: r.facts["extent"].value for r in read(f"Left ring finger: {told}.").repairs}
    assert found == {"FDP": deep, "FDS": superficial}
