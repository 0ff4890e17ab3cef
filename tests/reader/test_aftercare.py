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
        "SR on POD 14.",
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


# --- further turns of phrase


@pytest.mark.parametrize("text", ["Backslab dorsal, wrist 10 flexed.", "Splint: plaster, dorsal, MCPs 45."])
def test_a_slab_told_dorsal_behind_its_name(text: str) -> None:
    assert value(text, "splint") == "dorsal blocking"


def test_splint_none_is_no_splint() -> None:
    assert value("Splint: none. Therapy: move it freely.", "splint") is None


@pytest.mark.parametrize(
    ("text", "name", "expected"),
    [
        ("DBS with 20 degrees flexion of the wrist and 50 degrees flexion in the MP joints.", "wrist_flexion_deg", 20),
        ("DBS with 20 degrees flexion of the wrist and 50 degrees flexion in the MP joints.", "mcp_flexion_deg", 50),
        ("Dorsal slab in 30 deg wrist flexion, 60 deg MCP flexion, IP extension.", "wrist_flexion_deg", 30),
        ("DBS, wrist in 20 degrees of flexion and the knuckles (MCP joints) in 60 degrees.", "mcp_flexion_deg", 60),
        ("DBS, wrist 20 flexed, MP 60, IPs ext.", "ip_flexion_deg", 0),
        ("DBS, wrist 0, MCP 40-50 flexion, IP in extension.", "ip_flexion_deg", 0),
        ("DBS, MCPJ 30 deg flexion, IPJs extended, for three and a half weeks.", "ip_flexion_deg", 0),
        ("Volar slab, wrist 20 extension, MCP 70 flexion, PIP straight.", "ip_flexion_deg", 0),
        ("DBS, wrist 20 flex, MCPJ 40, IPJ O.", "ip_flexion_deg", 0),
        ("Dorsal POP W0 MP60 IP0.", "mcp_flexion_deg", 60),
        ("Dorsal POP W0 MP60 IP0.", "wrist_flexion_deg", 0),
        ("DBS. Wrist 20\u00b0 F, MP 70\u00b0, PIP+DIP 0\u00b0.", "wrist_flexion_deg", 20),
        ("DBS wrist 30 fl / MCP 60.", "wrist_flexion_deg", 30),
        ("Hold wrist 30 ext during holds only. Splint wrist 0, MCP 45.", "wrist_flexion_deg", 0),
        ("Splint: DBS for 5 weeks, wr. 10 extension.", "wrist_flexion_deg", -10),
    ],
)
def test_joint_positions_in_further_words(text: str, name: str, expected: float) -> None:
    assert value(text, name) == exactly(expected)


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("DBS, wrist 0 to 20 degrees flexion, MCP ___, IP straight.", "mcp_flexion_deg"),
        ("DBS, wrist in slight extension, MCPs 40.", "wrist_flexion_deg"),
        ("DBS, the knuckles well bent and the fingers straight.", "mcp_flexion_deg"),
        ("DBS. Synergistic wrist motion to 30 degrees extension.", "wrist_flexion_deg"),
    ],
)
def test_positions_that_are_not_told(text: str, name: str) -> None:
    assert value(text, name) is None


@pytest.mark.parametrize(
    ("text", "low", "high"),
    [
        ("DBS wrist neutral, MCPs 30, IPs 0. 5/52.", 5, 5),
        ("DBS. Controlled active motion from day 5. 6 weeks.", 6, 6),
        ("Splint off at 5 weeks.", 5, 5),
        ("Wean splint at five weeks.", 5, 5),
        ("Out of splint after week 6.", 6, 6),
        ("Splint through week 6.", 6, 6),
        ("DBS x6/52.", 6, 6),
        ("Splint x6wk. F/U 10d.", 6, 6),
        ("Slab to splint same day; 6/52 all told", 6, 6),
        ("Splint duration: 6 weeks", 6, 6),
        ("Splint: 6 weeks. Button off at 6 weeks.", 6, 6),
        ("DBS now. She should wear it for six to eight weeks.", 6, 8),
        ("DBS, wrist neutral + MP 60 + IP 0 -> 6 wk", 6, 6),
        ("Dorsal slab, worn for at least six weeks.", 6, None),
        ("Slab, knuckles in 60, for three and a half weeks.", 3.5, 3.5),
        ("place and hold from day four no lifting for twelve weeks splint for six weeks", 6, 6),
        ("DBS (wrist 0, MCP 30) 5/52 FT + 1/52 nights.", 5, 5),
        ("Plaster, no motion, for _4_ weeks", 4, 4),
        ("Kept completely still for three weeks in the slab.", 3, 3),
    ],
)
def test_weeks_of_splint_in_further_words(text: str, low: float, high: float | None) -> None:
    assert value(text, "splint_weeks") == Interval(low=low, high=high)


@pytest.mark.parametrize(
    "text",
    [
        "DBS. Review at 2 weeks.",
        "DBS. No driving for 8 weeks.",
        "Splint changed at 2 weeks in clinic.",
        "We talked about a splint for six weeks if one was cut.",
    ],
)
def test_weeks_of_something_else(text: str) -> None:
    assert value(text, "splint_weeks") is None


@pytest.mark.parametrize(
    ("text", "low", "high"),
    [
        ("HT: 3-5 days. Early passive.", 3, 5),
        ("HT 4/7 for early active mobs.", 4, 4),
        ("Hand therapy appointment day 4, DBS then.", 4, 4),
        ("Exercises to begin between the third and the fifth day.", 3, 5),
        ("OT to mould a splint tomorrow. Early passive only, from day 5.", 5, 5),
        ("Active movement hourly from the evening of surgery.", 0, 0),
        ("I should be grateful if your therapist would begin early passive movement on the fifth day.", 5, 5),
    ],
)
def test_start_in_further_words(text: str, low: float, high: float) -> None:
    assert value(text, "start_day") == exactly(low, high)


def test_start_on_a_form() -> None:
    form = "PLAN [x] early active\nSTART  day 5          WEEKS IN SPLINT  6\nSIGNED  staff\n"
    text = f"FDP repaired with 3-0 Ethibond, 4 strands.\n\n{form}"
    care = read(text).aftercare
    assert care["start_day"].value == exactly(5)
    assert care["splint_weeks"].value == exactly(6)


@pytest.mark.parametrize(
    "text",
    [
        "Had it been tendon alone we should have begun early active motion on day 4.",
        "In an adult I would have asked you for early active motion from day four.",
        "The usual tendon regime (early active, day 4) does NOT apply.",
    ],
)
def test_a_day_that_is_no_order(text: str) -> None:
    assert value(text, "start_day") is None
    assert value(text, "programme") is None


@pytest.mark.parametrize(
    ("text", "programme"),
    [
        ("Passive DIP flex from d2.", "early passive"),
        ("On the fourth day active flexion to half a fist.", "early active"),
        ("start passive with therapy at day five", "early passive"),
        ("Move it passively from day 3, no active pull.", "early passive"),
        ("HT: active from day 1, place and hold too.", "early active"),
        ("Four weeks without movement in the plaster.", "immobilisation"),
        ("Slab. No movement 3 weeks, then therapist.", "immobilisation"),
        ("Passive only, four weeks.", "early passive"),
        ("Slab for three weeks, throughout which no movement is to be permitted.", "immobilisation"),
        ("The finger is kept completely still for three weeks.", "immobilisation"),
        ("Passive flexion and active place-and-hold from day 5.", "place and hold"),
    ],
)
def test_programme_in_further_words(text: str, programme: str) -> None:
    assert value(text, "programme") == programme


@pytest.mark.parametrize(
    "text",
    [
        "HT day 3. Their call: place and hold or early active.",
        "Regime: Belfast, Duran - therapist to choose.",
        "I know that some of you prefer place and hold.",
        "No active flexion for six weeks.",
        "Physio after 3 weeks, passive ROM.",
        "Immobilisation: POP dorsal blocking, wrist 10 flex.",
        "Active extension within the splint.",
        "OT Thursday. I'd guess passive only but attending will write it.",
        "Immobilization [X] dorsal blocking splint [ ] cast",
    ],
)
def test_no_programme_is_ordered(text: str) -> None:
    assert value(text, "programme") is None


def test_an_addendum_corrects_the_orders() -> None:
    text = (
        "Op: FDP repair, left ring.\nFDP was cut.\n\nPlan\nEarly active motion from day 3.\n\n"
        "Addendum 11 March 2035\nPlan is changed: place and hold. Hand therapy to start on day 5, not day 3.\n"
    )
    care = read(text).aftercare
    assert care["programme"].value == "place and hold"
    assert care["start_day"].value == exactly(5)
    assert [r.value for r in care["start_day"].rivals] == [exactly(3)]


def started(order: str) -> object:
    text = f"Date of operation: 10 February 2033\nFDP was cut and repaired with 3-0 Ethibond.\n\nPlan: {order}\n"
    found = read(text).aftercare.get("start_day")
    return None if found is None else found.value


@pytest.mark.parametrize(
    "order",
    [
        "The therapists will see him on 14 February and begin.",
        "Hand therapy 14.02.2033 for splint and early active.",
        "To OT, February 14, 2033, for the passive protocol.",
    ],
)
def test_a_start_told_by_its_date(order: str) -> None:
    assert started(order) == exactly(4)


@pytest.mark.parametrize(
    "order",
    ["Clinic on 14 February, therapy later.", "Stitches out 24 February 2033, therapist to remind him.", "Seen 14.02."],
)
def test_dates_of_other_visits_are_no_start(order: str) -> None:
    assert started(order) is None


def test_a_day_told_goes_before_a_date() -> None:
    assert started("Therapist on 16 February for the splint; early active from day 4.") == exactly(4)


@pytest.mark.parametrize(
    "text",
    [
        "Jelonet, gauze, crepe, POP dorsal blocking slab including the thumb. Wrist\n20 deg flex.",
        "Dressing: Jelonet, gauze, crepe, POP dorsal blocking incl. thumb. Wrist\n20 deg flex.",
        "Dorsal blocking plaster with the fingers free in front of it, and then the wrist\n20 degrees flexed.",
    ],
)
def test_an_angle_on_the_line_below_its_joint(text: str) -> None:
    assert value(f"Index FDP repaired with 3-0 Ethibond.\n{text}", "wrist_flexion_deg") == exactly(20)


def test_a_count_on_the_line_below_the_wrist() -> None:
    assert value("Left wrist\n2 flexors cut, dorsal blocking slab.", "wrist_flexion_deg") is None
