"""An anchor handed back or lost, an option only raised, and what is still to be tested: no findings."""

import pytest
from reader_sentences import each

CUT = "Small finger FDP, zone I, completely cut. "


@pytest.mark.parametrize(
    "text",
    [
        "A bone anchor was opened, found too big for the phalanx, and handed back. "
        "The tendon was brought down by a pull-out suture of 3-0 Prolene over a button.",
        "Anchor placed at P3, pulled out of bone on loading, discarded. Tendon secured by pull-out over a button.",
    ],
)
def test_anchors_not_left_in(text: str) -> None:
    assert each(CUT + text, "stitch") == {"small FDP": "pull-out"}


@pytest.mark.parametrize(
    "text",
    [
        "It was fixed with a bone anchor; the needle was discarded.",
        "Fixed by an anchor. Its inserter was discarded.",
        "Fixation: bone anchor",
    ],
)
def test_anchors_left_in(text: str) -> None:
    assert each(CUT + text, "stitch") == {"small FDP": "anchor"}


@pytest.mark.parametrize(
    "text",
    [
        "A4 release was raised as an option but was not needed, and A4 was preserved.",
        "Release of A4 was put forward as an option, but A4 was kept whole.",
    ],
)
def test_options(text: str) -> None:
    assert each("Small finger FDP repaired. " + text, "finding", group="pulleys") == {"small A4": "intact"}


@pytest.mark.parametrize(
    "text", ["To be tested for gap and glide once the block wears off.", "To be checked for gapping when he is awake."]
)
def test_still_to_be_tested(text: str) -> None:
    assert not each("Small finger FDP repaired. " + text, "gap")


def test_tested_already() -> None:
    text = "Small finger FDP repaired. To the eye there was no gap."
    assert each(text, "gap") == {"small FDP": "none"}
