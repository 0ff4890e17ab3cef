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
