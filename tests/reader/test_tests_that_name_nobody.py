"""A test that names no tendon, what is only to come, and the digits that 'fingers and thumb' stand for."""

import pytest
from reader_sentences import each

CUT = "Zone 5. FPL, FDP index and FDS ring were cut through and each sewn with a four-strand cruciate, 3-0 Ethibond. "


@pytest.mark.parametrize(
    "remark", ["Passive tenodesis gave a good cascade. No gaps.", "Moved passively at the end. No gaps anywhere."]
)
def test_what_was_seen_in_the_test_before(remark: str) -> None:
    note = CUT + "Palmaris was not repaired. " + remark
    assert each(note, "test") == {"thumb FPL": "passive", "index FDP": "passive", "ring FDS": "passive"}


@pytest.mark.parametrize(
    "remark",
    [
        "Fingers and thumb moved passively at the end: no gap in any repaired tendon, and all glided freely.",
        "The thumb and fingers were moved passively, no gap in any of the repairs, all glided freely.",
    ],
)
def test_fingers_and_thumb(remark: str) -> None:
    everybody = ("thumb FPL", "index FDP", "ring FDS")
    assert each(CUT + remark, "gap") == dict.fromkeys(everybody, "none")
    assert each(CUT + remark, "test") == dict.fromkeys(everybody, "passive")


def test_the_thumb_alone() -> None:
    assert each(CUT + "Thumb moved passively: no gap.", "test") == {"thumb FPL": "passive"}


@pytest.mark.parametrize(
    "remark",
    [
        "Physio from day 2 - passive flexion, active hold to be decided.",
        "The metacarpal was plated so that the tendons might be tensioned over a stable column.",
    ],
)
def test_what_is_to_come_or_meant(remark: str) -> None:
    assert each(CUT + "No gap seen. " + remark, "test") == {}


FOUR = (
    "Left hand. FDP of index, middle, ring and small fingers cut through and each repaired with a four-strand core. "
    "FDS of index and ring cut through and repaired with two strands. "
)
PROFUNDI = ["index FDP", "middle FDP", "ring FDP", "small FDP"]


@pytest.mark.parametrize(
    "text",
    [
        "Traction in the palm, all four, no gap.",
        "Passive extension (all four): no gap.",
        "Gentle pull, all four: no gap.",
        "Tested by traction - all four, no gap.",
    ],
)
def test_how_many_were_tested_between_commas(text: str) -> None:
    """'Traction in the palm, all four, no gap': of the six sewn the four profundi, not the finger told of before."""
    assert sorted(each(FOUR + text, "gap")) == PROFUNDI


def test_all_of_them_between_commas() -> None:
    assert len(each(FOUR + "The ring was slow to glide. No gap, all six.", "gap")) == len(PROFUNDI) + 2


@pytest.mark.parametrize("text", ["Index FDP: traction, all of it, no gap.", "Traction on the skin, all four corners."])
def test_all_that_counts_no_repairs(text: str) -> None:
    assert set(each(FOUR + text, "gap")) <= {"index FDP"}
