"""A stump sewn over a tendon put back to bone, a wire that guards a joint, and a finger that came all the way."""

import pytest
from reader_sentences import each, told

_HEAD = "Left small finger FDP cut right through. "


@pytest.mark.parametrize(
    "words",
    [
        "2 anchors, each loaded w 3/0 Ethibond, FDP tied down onto bone. stump oversewn with 5/0 Prolene.",
        "FDP tied down to bone over an anchor with 3-0 Ethibond. Distal stump oversewn with 5/0 Prolene.",
    ],
)
def test_stump_oversewn(words: str) -> None:
    found = told(_HEAD + words, "size", "peripheral", "stitch")
    assert found == {"small FDP": {"size": "3-0", "stitch": "anchor"}}


@pytest.mark.parametrize("words", ["Stumps oversewn with 6/0 Prolene.", "Repair oversewn with 6/0 Prolene."])
def test_repair_oversewn(words: str) -> None:
    assert each(_HEAD + "Cruciate 3-0 Ethibond. " + words, "peripheral_size") == {"small FDP": "6-0"}


@pytest.mark.parametrize(
    "words",
    [
        "The stretched volar plate was repaired. I put a single K-wire across the DIP joint to guard it.",
        "The stretched volar plate of the joint was repaired. A wire through the joint was to hold it.",
    ],
)
def test_wire_beside_a_plate(words: str) -> None:
    assert told(_HEAD + words, group="injuries") == {"small volar plate": {"treatment": "repaired"}}


def test_plate_fixed() -> None:
    words = "Volar plate cut and sutured. It was held with an anchor."
    assert each(_HEAD + words, "treatment", group="injuries") == {"small volar plate": "fixed"}
    assert each(_HEAD + "Ulnar digital nerve stretched.", "extent", group="injuries") == {
        "small digital nerve ulnar": "contused"
    }


@pytest.mark.parametrize(
    ("words", "finding"),
    [
        ("I vented the distal 4 mm of A2 and the finger came all the way down and up.", "vented"),
        ("I opened the distal 5 mm of A2 and then the tendon went all the way through.", "vented"),
        ("A2 was opened all the way.", "released"),
    ],
)
def test_all_the_way(words: str, finding: str) -> None:
    assert each(_HEAD + words, "finding", group="pulleys") == {"small A2": finding}
