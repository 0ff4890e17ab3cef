"""'With a 6-0 edge', 'a running edge', 'and no edge': the peripheral suture told by its edge alone."""

import pytest
from reader_sentences import each, told

CUT = "Left hand, ring and small FDP both completely cut. "


@pytest.mark.parametrize(
    "text",
    [
        "Ring: four strands, 3-0 Ethibond, running edge. Small: two strands of 4-0 Prolene and no edge.",
        "Ring FDP repaired with four strands of 3-0 Ethibond plus a 6-0 edge. Small FDP: two strands, no edge.",
    ],
)
def test_edges_that_are_sutures(text: str) -> None:
    assert each(CUT + text, "peripheral") == {"ring FDP": "present", "small FDP": "absent"}


def test_edges_of_two_slips() -> None:
    text = (
        "Left index. FDS radial slip: complete cut, 4-0 Ethibond, two strands, with a 6-0 edge. "
        "FDS ulnar slip: complete cut, same core, no edge."
    )
    assert each(text, "peripheral") == {"index FDS radial": "present", "index FDS ulnar": "absent"}
    assert each(text, "strands") == {"index FDS radial": 2, "index FDS ulnar": 2}


@pytest.mark.parametrize(
    "text",
    [
        "It caught on the distal edge of A2, which was cut at its edge.",
        "The wound had a ragged edge. A knife with no edge had cut it.",
    ],
)
def test_other_edges(text: str) -> None:
    assert not each("Ring FDP repaired with four strands of 3-0 Ethibond. " + text, "peripheral")


@pytest.mark.parametrize(
    "text",
    [
        "FDP core: 6 strands 4-0 Ethibond.\nFDP edge: 6/0 Ethilon, interrupted.",
        "FDP core 6 strands 4-0 Ethibond; FDP edge 6-0 Ethilon, interrupted.",
        "Core 6 strands 4-0 Ethibond.\nEdge: 6-0 Ethilon, interrupted.",
        "FDP core 6 strands.\nFDP edges - 6-0 Ethilon, interrupted.",
    ],
)
def test_an_edge_that_labels_its_thread(text: str) -> None:
    note = f"Left index. FDP cut through and repaired.\n{text}"
    assert told(note, "peripheral", "peripheral_size", "peripheral_pattern")["index FDP"] == {
        "peripheral": "present",
        "peripheral_size": "6-0",
        "peripheral_pattern": "interrupted",
    }


@pytest.mark.parametrize(
    "text", ["Edges: 5-0 Vicryl to skin.", "Skin edges: 5-0 nylon.", "FDP edge 5 mm shaved.", "A2 edge 5-0 nylon."]
)
def test_a_label_of_other_edges(text: str) -> None:
    assert not each(f"Left index. FDP cut through and repaired with four strands.\n{text}", "peripheral")
