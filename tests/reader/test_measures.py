"""Figures and figure words with their units, ranges among them, read through the facts they end in."""

import pytest
from reader_sentences import told

CORE = "Right middle finger. FDP completely divided and repaired with a core suture of 4-0 nylon, "
AFTER = "Left small finger. FDP divided and repaired with 3-0 nylon.\n\nPOSTOPERATIVE: "


@pytest.mark.parametrize(
    ("words", "ends"),
    [
        ("10 mm", (10, 10)),
        ("9mm", (9, 9)),
        ("8 millimetres", (8, 8)),
        ("7 millimeters", (7, 7)),
        ("1 cm", (10, 10)),
        ("0.8 cm", (8, 8)),
        ("1,2 cm", (12, 12)),
        ("a centimetre", (10, 10)),
        ("half a centimetre", (5, 5)),
        ("seven mm", (7, 7)),
        ("twelve millimetres", (12, 12)),
        ("8-10 mm", (8, 10)),
        ("8 to 10 mm", (8, 10)),
        ("8 mm to 10 mm", (8, 10)),
        ("0.7 - 1 cm", (7, 10)),
        ("between 7 and 9 mm", (7, 9)),
        ("about 8 mm", (8, 8)),
        ("at least 9 mm", (9, None)),
        ("lO mm", (10, 10)),
    ],
)
def test_lengths(words: str, ends: tuple[float, float | None]) -> None:
    assert told(CORE + f"purchase of {words} on each side.", "purchase_mm") == {"middle FDP": {"purchase_mm": ends}}


@pytest.mark.parametrize(
    ("words", "percent"),
    [
        ("40 %", 40),
        ("35%", 35),
        ("60 percent", 60),
        ("45 per cent", 45),
        ("thirty percent", 30),
        ("sixty-five %", 65),
        ("50-60 %", 60),
        ("20 to 30 %", 30),
    ],
)
def test_shares(words: str, percent: float) -> None:
    note = f"Right middle finger. FDP cut through {words} of its width."
    assert told(note, "extent", "extent_percent") == {"middle FDP": {"extent": "partial", "extent_percent": percent}}


@pytest.mark.parametrize(
    "sentence",
    [
        "Block with 10 ml of 1 % lidocaine.",
        "Skin prepared with 10 % povidone iodine.",
        "0.5 % bupivacaine, 20 ml.",
        "Tourniquet 250 mmHg for 60 min.",
        "A 25 mm incision was made.",
        "The plate was 40 mm long with 2 mm screws.",
        "A 27 gauge needle was used.",
        "Half of the cases like this one stiffen: 50 %.",
    ],
)
def test_figures_that_are_no_facts_of_the_tendon(sentence: str) -> None:
    note = f"Right middle finger. {sentence} FDP completely divided and repaired with 4-0 nylon. {sentence}"
    assert told(note) == {
        "middle FDP": {"extent": "complete", "treatment": "repaired", "size": "4-0", "material": "nylon"}
    }


@pytest.mark.parametrize(
    ("words", "field", "ends"),
    [
        ("Dorsal splint for 6 weeks.", "splint_weeks", (6, 6)),
        ("Dorsal splint 5/52.", "splint_weeks", (5, 5)),
        ("Dorsal blocking splint for four to six weeks.", "splint_weeks", (4, 6)),
        ("Splint for a fortnight.", "splint_weeks", (2, 2)),
        ("Start active motion on day 3.", "start_day", (3, 3)),
        ("Start therapy in 3 to 5 days.", "start_day", (3, 5)),
        ("Start motion 4/7 post op.", "start_day", (4, 4)),
        ("Dorsal splint with the wrist in 20 degrees of flexion.", "wrist_flexion_deg", (20, 20)),
        ("Dorsal splint, wrist 10° extension.", "wrist_flexion_deg", (-10, -10)),
        ("Dorsal splint, MCP joints flexed 60-70 degrees.", "mcp_flexion_deg", (60, 70)),
        ("Dorsal splint, MCPJ forty-five degrees of flexion.", "mcp_flexion_deg", (45, 45)),
        ("Dorsal splint, wrist neutral.", "wrist_flexion_deg", (0, 0)),
    ],
)
def test_weeks_days_and_degrees(words: str, field: str, ends: tuple[float, float]) -> None:
    assert told(AFTER + words, field, group="aftercare") == {"": {field: ends}}
    assert told(
        "Right hand. Ring FDP cut, repaired, core 4-0 nylon.\n\nAftercare: " + words, field, group="aftercare"
    ) == {"": {field: ends}}


@pytest.mark.parametrize(
    ("first", "second", "lengths"),
    [
        ("7 mm", "9 mm", {"index FDP": (7, 7), "small FDP": (9, 9)}),
        ("1 cm", "8 mm", {"index FDP": (10, 10), "small FDP": (8, 8)}),
    ],
)
def test_lengths_of_two_digits(first: str, second: str, lengths: dict[str, tuple[float, float]]) -> None:
    note = (
        f"Left hand. Index FDP divided and repaired with 4-0 nylon, purchase {first}. "
        f"Small FDP divided and repaired with 3-0 nylon, purchase {second}."
    )
    assert {entry: facts["purchase_mm"] for entry, facts in told(note, "purchase_mm").items()} == lengths
