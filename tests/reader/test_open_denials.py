"""Braces that offer a word and its denial, or only how something went: the statement around them was not made."""

import pytest
from reader_sentences import told

REPAIRED = "The FDP of the ring finger was repaired with a 4-strand Becker of 3-0 Ethibond. "


@pytest.mark.parametrize(
    "left_open",
    [
        "A running {6-0/5-0} Prolene epitendinous suture was {placed/not placed}.",
        "An epitendinous suture of 6-0 nylon [was / was not] added.",
        "The repair {did|didn't} glide freely.",
        "There was {a gap/no gap} on passive extension.",
        "The repair glided {freely/with catching}.",
        "The tendon glides {well|poorly} beneath A2.",
        "The repair <was/was not> bulky.",
    ],
)
def test_what_is_offered_with_its_denial_was_not_said(left_open: str) -> None:
    told_of = told(REPAIRED + left_open, "peripheral", "peripheral_pattern", "glide", "gap", "bulk", "test")
    assert told_of == {}


def test_a_pulley_and_a_nerve_offered_both_ways_are_not_told() -> None:
    note = REPAIRED + "The A2 pulley [was / wasn't] vented. The ulnar digital nerve {was/was not} intact."
    assert told(note, group="pulleys") == {}
    assert told(note, group="injuries") == {}


def test_the_share_of_a_cut_offered_both_ways_is_not_told() -> None:
    assert told("The FDP of the ring finger was {completely/partially} divided.") == {}


@pytest.mark.parametrize(
    ("note", "field", "value"),
    [
        ("A {6-0/5-0} running epitendinous suture was placed.", "peripheral", "present"),
        ("An epitendinous suture {was/was not} offered. The repair glided freely.", "glide", "free"),
        ("The knots were buried. No gap (tested twice / not measured) was seen.", "gap", "none"),
        ("Epitendinous suture [placed / not placed] -> placed.", "peripheral", "present"),
        ("A 6-0 Prolene epitendinous suture was {placed / not placed}: placed.", "peripheral", "present"),
    ],
)
def test_what_stands_beside_other_choices_is_read(note: str, field: str, value: str) -> None:
    assert told(REPAIRED + note, field) == {"ring FDP": {field: value}}
