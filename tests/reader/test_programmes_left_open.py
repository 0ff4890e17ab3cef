"""A programme that another is to choose, a rest before it, the trial on the table, and a finger held straight."""

import pytest
from reader_sentences import each, told

_HEAD = "Right middle finger FDP divided, four strand repair with 3-0 Ethibond.\n\nPlan: "


def _orders(words: str) -> dict[str, object]:
    return told(words, group="aftercare").get("", {})


@pytest.mark.parametrize(
    "words",
    [
        "Please see Friday for therapy: your early active or whatever you think.",
        "Early active motion or whatever the therapists prefer.",
        "Therapy from day 4, early passive or as you see fit.",
        "Therapy from day 4, early active or passive at your discretion.",
    ],
)
def test_left_open(words: str) -> None:
    assert "programme" not in _orders(_HEAD + words)


@pytest.mark.parametrize(
    ("words", "programme"),
    [
        ("Therapy from day 4, early active; call me whatever you see.", "early active"),
        ("Therapy from day 4, early active or active assisted.", "early active"),
        ("Keep elevated and immobile until day 4, then hand therapy for early active.", "early active"),
        ("Immobilised until day 3 and then place and hold.", "place and hold"),
        ("Immobilised until day 21 in plaster.", "immobilisation"),
    ],
)
def test_ordered(words: str, programme: str) -> None:
    assert _orders(_HEAD + words)["programme"] == programme


def test_on_the_table() -> None:
    words = (
        "FDP repaired. Passive through full range on table, no gap.\nHT day 3 -> start early active. Splint 6 weeks."
    )
    assert _orders(words)["programme"] == "early active"
    assert each("FDP repaired. Passive through full range on table, no gap.", "programme", group="aftercare") == {}


def test_motion_without_restriction() -> None:
    words = "FDP repaired. He will see therapy on day four for passive motion, of the index without restriction."
    assert _orders(words)["programme"] == "early passive"


@pytest.mark.parametrize("words", ["finger straight", "and the middle finger straight", "fingers straight"])
def test_finger_straight(words: str) -> None:
    assert _orders(_HEAD + "Splint with wrist neutral, MCP 50 flexed, " + words + ".")["ip_flexion_deg"] == (0, 0)


def test_headings_in_capitals_alone() -> None:
    body = "OPERATION Repair FDP left index\nEBL 20 ml\nSPECIMENS tissue for culture\n"
    plan = "PLAN Antibiotics 48 hours. Wrist neutral, MCPs 60, IPs straight."
    assert _orders(body + plan) == {"wrist_flexion_deg": (0, 0), "mcp_flexion_deg": (60, 60), "ip_flexion_deg": (0, 0)}
    assert _orders("Left index FDP divided.\n" + plan) == {}
