"""Tendons told in numbered layers or groups: 'Layer two: as for layer one'."""

import pytest
from reader_sentences import told

FIRST = "Left wrist, zone V. {} one (FPL, profundus to index): four-strand locked cruciate with 3-0 FiberWire. "
ANOTHER = "in the small finger the core was a two-strand modified Kessler with 4-0 Ethibond."


@pytest.mark.parametrize(
    ("noun", "words"),
    [
        ("Layer", "Layer two (superficialis to index and small): technique as for layer one, but "),
        ("Group", "Group two (FDS index and small): as group one, with a change: "),
    ],
)
def test_as_for_another_layer(noun: str, words: str) -> None:
    sewn = told(FIRST.format(noun) + words + ANOTHER, "strands", "size", "stitch")
    assert sewn["index FDS"] == sewn["thumb FPL"] == {"strands": 4, "size": "3-0", "stitch": "locked cruciate"}
    assert sewn["small FDS"] == {"strands": 2, "size": "4-0", "stitch": "modified kessler"}


def test_a_layer_that_was_not_told_is_no_tendon() -> None:
    note = FIRST.format("Layer") + "Layer two (superficialis to index): as for layer three."
    assert "index FDS" not in told(note, "strands")
