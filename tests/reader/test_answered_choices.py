"""Choices of a template with the answer typed behind them: only the answer is told."""

import pytest
from reader_sentences import told

SEWN = "Ring FDP transected and repaired. "


@pytest.mark.parametrize(
    ("field", "name", "value"),
    [
        ("Stitch Kessler/Strickland/Adelaide: Strickland.", "stitch", "strickland"),
        ("Stitch (Kessler/Adelaide/Savage): Adelaide.", "stitch", "adelaide"),
        ("Strands 2/4/6: 4.", "strands", 4),
        ("Size 3-0/4-0: 3-0.", "size", "3-0"),
        ("Gap none/seen: none.", "gap", "none"),
        ("Gap none/seen: seen.", "gap", "seen"),
        ("Bulk none/present: present.", "bulk", "present"),
        ("Glide free/catching: catching.", "glide", "catching"),
        ("Ends clean/ragged: ragged.", "ends", "ragged"),
    ],
)
def test_the_answer_is_told_and_the_choices_are_not(field: str, name: str, value: object) -> None:
    assert told(SEWN + field, name) == {"ring FDP": {name: value}}


def test_of_pulleys_too() -> None:
    assert told(SEWN + "A2 intact/vented: vented.", "finding", group="pulleys") == {"ring A2": {"finding": "vented"}}


@pytest.mark.parametrize(
    "field", ["Ends clean/ragged: not looked at.", "Gap none/seen:", "Gap none/seen: ?", "Bulk none/present"]
)
def test_a_choice_that_nobody_made(field: str) -> None:
    assert told(SEWN + field, "ends", "gap", "bulk") == {}


def test_sizes_and_names_with_strokes_offer_nothing() -> None:
    found = told("Ring FDP 4/0: 4 strands.", "size", "strands")
    assert found == {"ring FDP": {"size": "4-0", "strands": 4}}
    pulleys = told(SEWN + "A2/A4: A2 intact, A4 vented.", "finding", group="pulleys")
    assert pulleys == {"ring A2": {"finding": "intact"}, "ring A4": {"finding": "vented"}}
