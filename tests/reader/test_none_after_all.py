"""An edge suture only spoken of, begun or habitual, and then denied of the tendon that was sewn."""

import pytest
from reader_sentences import each

SEWN = "Small finger, FDP repaired with four strands. "


@pytest.mark.parametrize(
    "text",
    [
        "It was explained to the student that an epitendinous stitch adds strength. For want of one none was placed.",
        "An edge stitch smooths the surface, as I told the resident. None was placed here.",
        "I usually finish with a running 6-0 but was called away, and the edges were left without one.",
        "The circumferential suture on the count sheet belongs to the artery. The tendon has none.",
        "My habit is to add a running 6-0; today there was no time and none was added.",
        "A running 6-0 was begun on the dorsal side, tore out at the third bite and was removed. No further attempt.",
        "A running 6-0 was tried on the dorsal side, but tore out and was taken away.",
        "A running 6-0 broke after three bites and was pulled out. I left it at that.",
        "Epitendinous suture placed, then taken down again because of bulk, leaving the core by itself.",
    ],
)
def test_none(text: str) -> None:
    assert each(SEWN + text, "peripheral") == {"small FDP": "absent"}


@pytest.mark.parametrize(
    "text",
    [
        "A running 6-0 was begun on the dorsal side and completed on the volar.",
        "A running 6-0 epitendinous stitch was placed. Of drains none was placed.",
        "A running 6-0 tore out at the third bite and was removed; a second one held.",
    ],
)
def test_one(text: str) -> None:
    assert each(SEWN + text, "peripheral") == {"small FDP": "present"}


def test_what_an_edge_stitch_does() -> None:
    assert not each(SEWN + "An edge stitch tidies the surface.", "peripheral")
