"""A gap or a tension that is denied but for a rest of it was there."""

import pytest
from reader_sentences import each, told

SEWN = "The FDP of the ring and the small finger were completely divided and were repaired. "
RING = "The FDP of the ring finger was completely divided and was repaired. "


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("Apart from a 1 mm gap on the deep side there was no gap.", "gap", "seen"),
        ("Save for a slight gap dorsally, no gap was seen.", "gap", "seen"),
        ("There was no gap other than a millimetre at the deep edge.", "gap", "seen"),
        ("No tension except in the last 20 degrees of extension.", "tension", "present"),
        ("Tension-free but for the last 20 degrees.", "tension", "present"),
        ("Not bulky except for a slight step at the knot of the repair.", "bulk", "present"),
    ],
)
def test_what_is_left_of_a_denied_state(text: str, field: str, value: str) -> None:
    assert each(RING + text, field) == {"ring FDP": value}


@pytest.mark.parametrize("text", ["Apart from some swelling there was no gap.", "No gap, apart from all else."])
def test_what_is_excepted_from_other_things(text: str) -> None:
    assert each(RING + text, "gap") == {"ring FDP": "none"}


def test_a_finger_left_out_is_told_apart() -> None:
    assert told(f"{SEWN}No repair gapped except the ring.", "gap")["small FDP"] == {"gap": "none"}


@pytest.mark.parametrize("text", ["The join is less bulky than usual.", "Less bulky than I feared, the repair."])
def test_less_bulky_than_something_is_not_bulky(text: str) -> None:
    assert told(RING + text, "bulk") == {}


@pytest.mark.parametrize("text", ["One core suture was slack.", "A slack loop of the core was drawn tight again."])
def test_a_slack_suture_tells_nothing_of_tension(text: str) -> None:
    assert told(RING + text, "tension") == {}


def test_a_slack_repair_is_without_tension() -> None:
    assert each(f"{RING}The repair lay slack.", "tension") == {"ring FDP": "none"}


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("Glide was free enough, if one overlooks a definite catch at the oblique pulley.", "glide", "catching"),
        ("Glide free if one disregards a hitch at A2.", "glide", "catching"),
        ("Smooth running, not counting a snag at A2.", "glide", "catching"),
        ("No gap to speak of, if one ignores the 1 mm on extension.", "gap", "seen"),
    ],
)
def test_what_one_is_asked_to_overlook(text: str, field: str, value: str) -> None:
    assert each(RING + text, field) == {"ring FDP": value}


@pytest.mark.parametrize("text", ["It would run freely if one opened A2.", "Free glide if one bends the wrist."])
def test_a_condition_is_still_one(text: str) -> None:
    assert told(RING + text, "glide") == {}
