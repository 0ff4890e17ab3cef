"""Digital nerves told by a side and a finger, whose noun stands before them: 'of the nerves, the ulnar of the ring'."""

import pytest
from reader_sentences import told

NOTE = "Index and ring fingers, zone II. Both FDP were cut. "
INDEX, RING = "index digital nerve radial", "ring digital nerve ulnar"


def _extents(words: str) -> dict[str, object]:
    found = told(NOTE + words, "extent", "treatment", group="injuries")
    return {name: facts.get("extent") for name, facts in found.items()}


@pytest.mark.parametrize(
    "words",
    [
        "Of the nerves, the radial digital of the index and the ulnar digital of the ring were divided.",
        "Of the digital nerves, the radial of the index and the ulnar of the ring were divided.",
        "The radial digital nerve of the index and the ulnar digital of the ring were divided.",
        "Nerves: radial digital of index divided, ulnar digital of ring divided.",
        "Among the nerves the radial digital to the index and the ulnar digital to the ring had been divided.",
    ],
)
def test_each_side_of_its_finger(words: str) -> None:
    assert _extents(words) == {INDEX: "complete", RING: "complete"}


@pytest.mark.parametrize(
    ("words", "ring"),
    [
        ("Of the digital nerves, the radial of the index was divided; the ulnar of the ring was bruised.", "contused"),
        ("Nerves: the radial digital of the index was divided, the ulnar digital of the ring was intact.", "intact"),
    ],
)
def test_each_with_its_own_state(words: str, ring: str) -> None:
    assert _extents(words) == {INDEX: "complete", RING: ring}


def test_a_side_of_something_else_is_no_nerve() -> None:
    wound = (
        "The radial digital nerve of the index was divided, on the ulnar side of the ring finger the wound was shallow."
    )
    assert _extents(wound) == {INDEX: "complete"}
    vessel = "The nerves were intact. The radial artery of the index and the ulnar of the ring were divided."
    assert RING not in _extents(vessel)
