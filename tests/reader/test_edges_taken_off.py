"""The edge of a pulley that was taken off, told apart from its name."""

import pytest
from reader_sentences import told

HEAD = "Ring finger. FDP repaired with four strands. "


@pytest.mark.parametrize(
    ("text", "share"),
    [
        ("A2 intact. It caught on the distal lip of A2 and I took 5 mm off the distal edge.", {"extent_mm": 5}),
        ("A2 preserved. It snagged on the distal lip of A2. I shaved 3 mm from that lip.", {"extent_mm": 3}),
        ("A2 intact. The join snagged under A2 and I cut away 4 mm of its distal margin.", {"extent_mm": 4}),
    ],
)
def test_an_edge_taken_off_is_trimmed(text: str, share: dict[str, object]) -> None:
    found = told(HEAD + text, "finding", "extent_mm", "part", group="pulleys")
    assert found == {"ring A2": {"finding": "trimmed", "part": "distal", **share}}


def test_of_a_bare_edge_the_part_is_not_told() -> None:
    found = told(HEAD + "It caught on the edge of A2, so 3 mm was taken off the edge.", group="pulleys")
    assert found == {"ring A2": {"finding": "trimmed", "extent_mm": 3}}


@pytest.mark.parametrize(
    "text",
    [
        "A2 intact. The tendon had a flap. It caught under A2, so 2 mm was shaved off the edge of the flap.",
        "A2 intact. The stump lay under A2 and 2 mm was taken off the edge.",
        "A2 intact. It caught under A2. No more than 2 mm of the bone was cut off its distal edge.",
    ],
)
def test_the_edge_of_another_thing_is_none_of_the_pulley(text: str) -> None:
    assert told(HEAD + text, "finding", group="pulleys") == {"ring A2": {"finding": "intact"}}


@pytest.mark.parametrize("head", ["Addendum: Omitted: ", "Addendum: Omitted above: ", "Omitted from the note: "])
def test_what_a_note_omitted_to_say_was_done(head: str) -> None:
    found = told(HEAD + head + "A2 was vented by 4 mm.", "finding", group="pulleys")
    assert found == {"ring A2": {"finding": "vented"}}


@pytest.mark.parametrize("text", ["Omitted: peripheral suture, A2 repair.", "Omitted: venting of A2, tested glide."])
def test_what_an_operation_omitted_was_not(text: str) -> None:
    assert told(HEAD + text, "finding", "peripheral", group="pulleys") == {}
