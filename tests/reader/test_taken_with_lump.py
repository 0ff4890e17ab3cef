"""A rim of a pulley that came away with a lump: the pulley was trimmed, neither kept whole nor taken out."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("note", "pulley"),
    [
        (
            "Ganglion off the A1 pulley of the ring finger, shelled out with a cuff of the pulley leaving most.",
            "ring A1",
        ),
        ("The cyst on A2 of the ring finger came away with a rim of the pulley, most of it left.", "ring A2"),
        ("Cyst of A1 of the middle finger removed with a strip of the pulley, leaving the rest.", "middle A1"),
    ],
)
def test_a_piece_taken_with_a_lump_is_trimmed(note: str, pulley: str) -> None:
    assert told(note, "finding", group="pulleys") == {pulley: {"finding": "trimmed"}}


def test_a_pulley_kept_beside_a_lump_is_intact() -> None:
    note = "The ganglion was removed with a cuff of joint capsule, the A2 pulley of the ring finger was preserved."
    assert told(note, "finding", group="pulleys") == {"ring A2": {"finding": "intact"}}


@pytest.mark.parametrize(
    "note", ["We worked on A2 of the ring, leaving most of it.", "A2 of the ring: kept most of it."]
)
def test_most_of_a_pulley_left_is_not_the_whole(note: str) -> None:
    assert told(note, "finding", group="pulleys") == {}
