"""'Splint for three weeks, then start moving': rest told by what begins behind it, where no other start is told."""

import pytest
from reader_sentences import told

RING = "Ring FDP cut and repaired with 3-0 Ethibond. Dorsal blocking slab. "
REST = {"programme": "immobilisation", "start_day": (21.0, 21.0)}


@pytest.mark.parametrize(
    "words",
    [
        "Splint for three weeks then start moving.",
        "Plaster for 3 weeks, then mobilise.",
        "He is to rest in it for three weeks, without exercises, and will then begin with our therapist.",
    ],
)
def test_rest_until_motion_begins(words: str) -> None:
    assert told(RING + words, "programme", "start_day", group="aftercare") == {"": REST}


@pytest.mark.parametrize(
    "words",
    [
        "Splint for six weeks, then strengthening.",
        "Splint off at 3 weeks then start moving the wrist.",
        "Splint for 3 weeks, then physio.",
    ],
)
def test_no_rest_is_told(words: str) -> None:
    assert told(RING + words, "programme", "start_day", group="aftercare") == {}


def test_a_start_told_before_holds() -> None:
    words = "Early active from day 4. Splint for six weeks, then start moving freely."
    shown = told(RING + words, "programme", "start_day", group="aftercare")
    assert shown == {"": {"programme": "early active", "start_day": (4.0, 4.0)}}


@pytest.mark.parametrize(
    "words",
    [
        "Splint: tip only; PIP and MP left free   Weeks: 6",
        "Above-elbow plaster, wrist a little bent, because I do not trust boys of six.",
    ],
)
def test_figures_that_are_no_angles(words: str) -> None:
    shown = told("Ring FDP cut and repaired.\n" + words, "mcp_flexion_deg", "wrist_flexion_deg", group="aftercare")
    assert shown == {}


def test_a_bare_figure_is_an_angle() -> None:
    note = "Ring FDP cut and repaired.\nDorsal blocking splint, MP 45, weeks: 6"
    assert told(note, "mcp_flexion_deg", group="aftercare") == {"": {"mcp_flexion_deg": (45.0, 45.0)}}
