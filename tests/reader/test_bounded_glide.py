"""A glide that is free under a condition only is not told as free; a catch noted at every pass is told."""

import pytest
from reader_sentences import each, told

SEWN = "The ring FDP was completely divided and was repaired with four strands. "


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("It glides freely as long as the wrist is bent.", "glide"),
        ("It is free so long as the wrist is bent, no gap.", "glide"),
        ("It glides freely, but only with the wrist bent.", "glide"),
        ("It ran freely only while the finger was bent.", "glide"),
        ("It glides freely when the wrist is bent, otherwise it drags.", "glide"),
        ("Free glide provided the wrist stays bent; straight, it drags.", "glide"),
        ("There is no gap, but only in flexion.", "gap"),
        ("No gap as long as the wrist is bent.", "gap"),
    ],
)
def test_a_state_that_is_bounded_is_not_told(text: str, field: str) -> None:
    assert each(SEWN + text, field).get("ring FDP") not in ("free", "none")


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("It glided freely only when A4 had been vented.", "glide", "free"),
        ("It ran freely, only the skin was tight.", "glide", "free"),
        ("No gap, glides freely; only one pulley was opened.", "gap", "none"),
        ("It glides freely. He may move it as long as the splint is worn.", "glide", "free"),
    ],
)
def test_a_bound_of_another_thing_leaves_it_free(text: str, field: str, value: str) -> None:
    assert each(SEWN + text, field) == {"ring FDP": value}


def test_what_stands_behind_the_bound_is_told() -> None:
    text = "Free glide as long as the joint stays bent; with it straight the excursion is restricted."
    assert each(SEWN + text, "glide") == {"ring FDP": "restricted"}


@pytest.mark.parametrize(
    "text",
    [
        "It caught at every pass.",
        "Even with A4 vented it still catches each time.",
        "With two stitches in the skin I moved the finger and felt it catch.",
        "One could see it catching.",
        "After the sheath flap was sewn back it caught.",
    ],
)
def test_a_catch_that_the_surgeon_notes_is_told(text: str) -> None:
    assert each(SEWN + text, "glide") == {"ring FDP": "catching"}


@pytest.mark.parametrize("text", ["He felt it catch last winter.", "The flap of the tendon caught on the needle."])
def test_a_catch_of_something_else_is_not(text: str) -> None:
    assert told(SEWN + text, "glide") == {}


@pytest.mark.parametrize(
    "text", ["The ends were as ragged as one would expect.", "Its ends: ragged, as you would expect."]
)
def test_as_expected_is_as_found(text: str) -> None:
    assert each(SEWN + text, "ends") == {"ring FDP": "ragged"}
