"""Tests and results told in other words: 'drawn upon with a hook', 'did not open the repair', 'on the thick side'."""

import pytest
from reader_sentences import told

RING = "Ring FDP cut, repaired with a 3-0 Ethibond cruciate. "


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("The sutured tendon was drawn upon with a hook and showed no diastasis.", {"test": "traction", "gap": "none"}),
        ("Traction on the FDP in the wrist did not open the repair.", {"test": "traction", "gap": "none"}),
        ("On drawing the finger out straight there was no gap.", {"test": "passive", "gap": "none"}),
        ("The finger was drawn out straight and no gap was seen.", {"test": "passive", "gap": "none"}),
        ("The repair is on the thick side.", {"bulk": "present"}),
        ("FDP tight after suture.", {"tension": "present"}),
    ],
)
def test_what_was_done_and_seen(words: str, expected: dict[str, str]) -> None:
    assert told(RING + words, "test", "gap", "bulk", "tension") == {"ring FDP": expected}


@pytest.mark.parametrize("words", ["The incision was drawn upon the skin.", "The drain was drawn out."])
def test_other_things_drawn(words: str) -> None:
    assert told(RING + words, "test", "gap") == {}


@pytest.mark.parametrize(
    "line", ["How ......... caught under the platen of a press", "Mechanism: caught under a falling slab"]
)
def test_how_it_happened_is_no_finding_of_the_repair(line: str) -> None:
    note = f"{line}\nRING FINGER\nFDP ...... divided, repaired with a 3-0 Ethibond cruciate\n"
    assert told(note, "glide") == {}


@pytest.mark.parametrize(("door", "how"), [("shower door", "sharp"), ("glass door", "sharp"), ("car door", "crush")])
def test_a_door_of_glass(door: str, how: str) -> None:
    shown = told(f"Fell against a {door}. Ring FDP cut and repaired.", "mechanism", group="operation")
    assert shown == {"": {"mechanism": how}}
