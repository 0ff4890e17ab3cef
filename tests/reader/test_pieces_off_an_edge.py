"""A piece taken off the edge of a pulley with its length behind it, and what 'maybe' and 'over' before a figure say."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "note",
    [
        "FDP small finger cut. The A4 was in the way so I took a piece off the far edge maybe three millimeters and "
        "kept the rest.",
        "FDP small finger cut. The A4 was tight so I took a sliver off the distal rim, perhaps 3 mm.",
        "FDP small finger cut. A4 caught it and a strip was shaved off its distal edge, about 3 mm.",
    ],
)
def test_a_piece_off_the_edge_with_its_length_behind_it(note: str) -> None:
    assert told(note, group="pulleys") == {"small A4": {"finding": "trimmed", "extent_mm": 3, "part": "distal"}}


@pytest.mark.parametrize(
    "note",
    [
        "The A4 of the small finger was in the way and we looked along the far edge, maybe 3 mm.",
        "The A4 of the small finger was kept and a piece was taken off the distal edge of the flap, 3 mm.",
    ],
)
def test_another_length_at_an_edge_is_no_trimming(note: str) -> None:
    assert "trimmed" not in each(note, "finding", group="pulleys").values()


@pytest.mark.parametrize(
    ("note", "share"),
    [
        ("FDP index cut over 90 percent.", 90),
        ("The FDP of the index was torn across over 80 percent.", 80),
        ("The FDP of the index was divided by over 75% of its width.", 75),
    ],
)
def test_a_cut_over_a_share_is_partial(note: str, share: int) -> None:
    assert told(note, "extent", "extent_percent") == {"index FDP": {"extent": "partial", "extent_percent": share}}


def test_a_limit_for_sewing_is_no_share_of_the_cut() -> None:
    assert told("The FDP of the index was looked at: over 50 percent we would sew.", "extent_percent") == {}


@pytest.mark.parametrize(
    ("aside", "bulk"),
    [("it did not bunch up", "none"), ("it bunched up a little", "present"), ("it did not look bulky", "none")],
)
def test_a_denial_of_the_next_statement_leaves_the_suture(aside: str, bulk: str) -> None:
    note = (
        "I did fix the FDP of the small finger so a modified kessler with four oh fiber wire then round the front a "
        f"six oh nylon run around {aside} pulled it with the wire hook at the wrist and there was no gap in it at all"
    )
    expected = {"peripheral": "present", "peripheral_pattern": "running", "bulk": bulk, "gap": "none"}
    assert told(note, *expected) == {"small FDP": expected}
