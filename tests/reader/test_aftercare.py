"""Orders after the operation: splint, joint positions, programme, start, weeks; every class with at least two wordings.

All examples are invented; the conventions are those of the record's format version 1.
"""

import pytest

from notereader.reader import read
from notereader.record import Interval


def value(text: str, name: str, heading: str = "Plan:") -> object:
    found = read(f"FDP was cut and repaired. Skin 5-0 nylon.\n\n{heading} {text}\n").aftercare.get(name)
    return None if found is None else found.value


def exactly(low: float, high: float | None = None) -> Interval:
    return Interval(low=low, high=low if high is None else high)


# --- splint


@pytest.mark.parametrize(
    "text",
    [
        "Dorsal blocking slab for now.",
        "Splint on the dorsal side blocking extension.",
        "A plaster slab behind the fingers to stop them from straightening.",
        "Dorsal slab to block extension.",
        "Splint from the therapist today (dorsal blocking).",
        "Dorsal splint only.",
    ],
)
def test_dorsal_blocking_splint(text: str) -> None:
    assert value(text, "splint") == "dorsal blocking"


@pytest.mark.parametrize("text", ["Volar extension splint at night.", "Above-elbow plaster.", "Thumb spica plaster."])
def test_other_splint(text: str) -> None:
    assert value(text, "splint") == "other"


@pytest.mark.parametrize("text", ["No splint.", "Splint off at six weeks if healed.", "Sticking plaster."])
def test_no_splint(text: str) -> None:
    assert value(text, "splint") is None


def test_a_splint_is_shown_by_its_kind() -> None:
    text = "FDP repaired.\n\nSplint: volar plaster slab, wrist neutral\n"
    found = read(text).aftercare["splint"]
    assert "volar plaster slab" in [e.exact for e in found.evidence]


# --- joint positions


@pytest.mark.parametrize(
    ("text", "name", "expected"),
    [
        ("DBS, wrist 20 ext, MCPJs 50, IPJs straight.", "wrist_flexion_deg", exactly(-20)),
        ("DBS, wrist 20 ext, MCPJs 50, IPJs straight.", "mcp_flexion_deg", exactly(50)),
        ("DBS, wrist 20 ext, MCPJs 50, IPJs straight.", "ip_flexion_deg", exactly(0)),
        ("Splint with the wrist in 30 degrees of flexion.", "wrist_flexion_deg", exactly(30)),
        ("Splint with 30 degrees of wrist extension.", "wrist_flexion_deg", exactly(-30)),
        ("Slab: wrist neutral, base joints 60 flexed.", "mcp_flexion_deg", exactly(60)),
        ("Slab: wrist neutral, middle and end joints 0.", "ip_flexion_deg", exactly(0)),
        ("Plaster, wrist 30 flexed, knuckles 60 flexed, fingers straight.", "ip_flexion_deg", exactly(0)),
        ("Splint, wrist level, MCP 60-70.", "mcp_flexion_deg", exactly(60, 70)),
    ],
)
def test_joint_positions(text: str, name: str, expected: Interval) -> None:
    assert value(text, name) == expected


@pytest.mark.parametrize("text", ["Splint, wrist 30, MCP 60.", "Splint six weeks, wrist for review."])
def test_the_wrist_needs_a_direction(text: str) -> None:
    assert value(text, "wrist_flexion_deg") is None


def test_an_addendum_corrects_a_position() -> None:
    text = "Plan: DBS, wrist 30 degrees of flexion.\n\nADDENDUM\nThe splint has the wrist straight, not flexed.\n"
    assert read(text).aftercare["wrist_flexion_deg"].value == exactly(0)


# --- programme


@pytest.mark.parametrize(
    ("text", "programme"),
    [
        ("Early active motion with the therapist.", "early active"),
        ("HT from day 4 for EAM.", "early active"),
        ("Place & hold from day 3.", "place and hold"),
        ("Passive programme only, until the wires are out.", "early passive"),
        ("Kleinert traction.", "early passive"),
        ("Plaster four weeks, no motion meanwhile.", "immobilisation"),
        ("Slab 4 weeks, no exercises in that time.", "immobilisation"),
        ("Cast for a month. No movement of the finger until then.", "immobilisation"),
        ("Kept immobilised for 3 weeks.", "immobilisation"),
        ("[x] early passive  [ ] early active", "early passive"),
    ],
)
def test_programme(text: str, programme: str) -> None:
    assert value(text, "programme") == programme


@pytest.mark.parametrize(
    "text",
    [
        "No motion until I have spoken with the therapist.",
        "No orders for exercise were given.",
        "If it sticks, drop back to passive motion.",
        "No EAM till seen.",
    ],
)
def test_no_programme(text: str) -> None:
    assert value(text, "programme") is None


# --- start of motion


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Early active motion from day 4 w/ OT.", exactly(4)),
        ("HT D3-5 for EAM.", exactly(3, 5)),
        ("Place and hold, starting between day 3 and day 5.", exactly(3, 5)),
        ("Early passive mobilisation from 3rd POD.", exactly(3)),
        ("Early passive motion from the 2nd day on.", exactly(2)),
        ("Therapy on the fourth postoperative day.", exactly(4)),
        ("Motion to start at 48 hours.", exactly(2)),
        ("HT 3-5/7 post-op.", exactly(3, 5)),
        ("Early active exercises start tomorrow.", exactly(1)),
        ("Start post op day 3.", exactly(3)),
        ("Therapy starts POD#2.", exactly(2)),
        ("Therapy from day 21.", exactly(21)),
        ("Regime? Early active. From which day? 5.", exactly(5)),
    ],
)
def test_start_of_motion(text: str, expected: Interval) -> None:
    assert value(text, "start_day") == expected


@pytest.mark.parametrize(
    "text",
    [
        "He has a therapy order and returns in 8 days.",
        "Stitches out on day 12.",
        "Antibiotics for 3 days, therapy to be booked.",
        "Wound check day 7.",
    ],
)
def test_other_visits_are_no_start(text: str) -> None:
    assert value(text, "start_day") is None


# --- weeks of splint


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("DBS 6/52.", exactly(6)),
        ("Splint [6] weeks.", exactly(6)),
        ("Dorsal slab, wrist 30 flexion, MCP 70 flexion, IP joints straight, for 4 weeks.", exactly(4)),
        ("Cast, the wrist at 40 degrees of flexion, MCPs 70, IPs straight, for three to four weeks.", exactly(3, 4)),
        ("Dorsal splint, wrist 20 degrees in flexion, during 6 weeks.", exactly(6)),
        ("Immobilised four weeks in a cast.", exactly(4)),
        ("Splint x 5 weeks.", exactly(5)),
    ],
)
def test_weeks_of_splint(text: str, expected: Interval) -> None:
    assert value(text, "splint_weeks") == expected


def test_weeks_answered_in_a_form() -> None:
    assert value("Dorsal blocking.   Weeks?  5 to 6.", "splint_weeks", "17. Splint?") == exactly(5, 6)
    assert value("volar slab.   Weeks?  4.", "splint_weeks", "Splint?") == exactly(4)


@pytest.mark.parametrize("text", ["Splint. No lifting for 12 weeks.", "DBS. Review at 6 weeks.", "Wires out 4/52."])
def test_other_weeks(text: str) -> None:
    assert value(text, "splint_weeks") is None
