"""A good state that held until something ended it, not of all, or was only looked for, is not told."""

import pytest
from reader_sentences import each

SEWN = "The ring FDP was completely divided and was repaired with four strands. "


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("There was no gap except under load.", "gap"),
        ("No gap was seen on traction, except on forced extension.", "gap"),
        ("There was no gap until the last pull.", "gap"),
        ("No gap was visible till the wrist came up.", "gap"),
        ("There was no gap in most.", "gap"),
        ("For the most part no gap.", "gap"),
        ("There was no gap before the knot gave.", "gap"),
        ("It glided freely before it tore.", "glide"),
        ("The repair ran smoothly till the last 20 degrees.", "glide"),
        ("It glided freely except when the FDS was pulled too.", "glide"),
        ("The repair mostly glided freely.", "glide"),
        ("No tension at the repair except in full extension.", "tension"),
    ],
)
def test_a_state_that_did_not_hold_throughout_is_not_told(text: str, field: str) -> None:
    assert each(SEWN + text, field).get("ring FDP") not in ("free", "none")


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("No gap was looked for.", "gap"),
        ("No catching was sought.", "glide"),
        ("No gap was checked for.", "gap"),
        ("Free glide was lost.", "glide"),
        ("The smooth glide was gone after closure.", "glide"),
        ("Free gliding was absent.", "glide"),
    ],
)
def test_a_state_sought_or_lost_is_not_told(text: str, field: str) -> None:
    assert each(SEWN + text, field) == {}


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("There was no gap until the end of the test.", "gap", "none"),
        ("There was no gap before closure.", "gap", "none"),
        ("There was no gap, and the splint stays on until week 6.", "gap", "none"),
        ("No gap was looked for and none was seen.", "gap", "none"),
        ("It ran smoothly, except that the skin was tight.", "glide", "free"),
        ("Free glide was not lost.", "glide", "free"),
        ("Free glide was lost and then regained once A4 had been vented.", "glide", "free"),
        ("It glided freely. Most of A2 was kept until the end.", "glide", "free"),
    ],
)
def test_a_state_that_held_is_told(text: str, field: str, value: str) -> None:
    assert each(SEWN + text, field) == {"ring FDP": value}


@pytest.mark.parametrize(
    "text",
    [
        "A2 was intact before it tore.",
        "A2 was in part intact.",
        "The A2 pulley was intact in part.",
        "A2 was whole until it split on passing the tendon.",
    ],
)
def test_a_pulley_whole_for_a_time_or_in_part_is_not_intact(text: str) -> None:
    assert each(SEWN + text, "finding", group="pulleys").get("ring A2") != "intact"


@pytest.mark.parametrize("text", ["A2 was intact before the repair.", "A2 remained intact to the end."])
def test_a_pulley_whole_at_the_end_is(text: str) -> None:
    assert each(SEWN + text, "finding", group="pulleys") == {"ring A2": "intact"}
