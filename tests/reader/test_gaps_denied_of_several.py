"""Gaps denied of several tendons, in a hurry, or in an answer at the end; and gaps that only stayed as they were."""

import pytest
from reader_sentences import each

SEWN = "Ring FDP completely divided and repaired with four strands. "


@pytest.mark.parametrize(
    "text",
    [
        "None of the sutured tendons showed a gap.",
        "Bent it and straightened it by hand passively and it doesnt gap.",
        "Gap was checked again after this on passive extension: none.",
        "On full passive extension the repair didnt gap at all.",
    ],
)
def test_no_gap(text: str) -> None:
    assert each(SEWN + text, "gap") == {"ring FDP": "none"}


@pytest.mark.parametrize(
    "text",
    [
        "At the first pull there was 1 mm of gap. The gap did not increase at the second and I left it.",
        "A 1 mm gap opened on traction. The gap did not widen on repeating it.",
    ],
)
def test_a_gap_that_does_not_grow_is_a_gap(text: str) -> None:
    assert each(SEWN + text, "gap") == {"ring FDP": "seen"}
    assert each(SEWN + text, "gap_mm") == {"ring FDP": 1}


@pytest.mark.parametrize("text", ["Skin 4-0 nylon. Jelonet, bulky.", "Wound left open. Wet-to-dry gauze, bulky."])
def test_a_bulky_dressing_is_no_bulky_repair(text: str) -> None:
    assert each(SEWN + text, "bulk") == {}


def test_bulk_that_was_only_feared_is_none_told() -> None:
    assert each(SEWN + "No epitendinous suture, where it would only add bulk.", "bulk") == {}


@pytest.mark.parametrize("text", ["None of us looked for a gap.", "Nobody looked for any gapping."])
def test_a_gap_that_nobody_looked_for_is_not_denied(text: str) -> None:
    assert each(SEWN + text, "gap") == {}
