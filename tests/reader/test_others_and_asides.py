"""'The others are not', 'neither given', an aside on an earlier operation, and a zone behind a finger's heading."""

import pytest
from reader_sentences import each

WRIST = "Left wrist. FCU, FDS ring and FDS small cut, all three repaired with 4-0. "


@pytest.mark.parametrize(
    "words", ["FCU join feels thick, the others not.", "The FCU repair is bulky, the others are not."]
)
def test_the_others_at_the_wrist(words: str) -> None:
    assert each(WRIST + words, "bulk") == {"FCU": "present", "ring FDS": "none", "small FDS": "none"}


def test_the_others_of_a_finger_are_the_deep_ones() -> None:
    start = "Left index and ring. FDP and FDS of both cut and repaired with 4-0. "
    found = each(start + "The index FDP repair is bulky, the others are not.", "bulk")
    assert found == {"index FDP": "present", "ring FDP": "none"}


@pytest.mark.parametrize("words", ["Neither given an edge stitch.", "Neither of them given a peripheral suture."])
def test_neither_given(words: str) -> None:
    start = "Left index and middle. Index FDS: modified Kessler, 4-0 Ethibond. Middle FDS: modified Kessler 4-0. "
    assert each(start + words, "peripheral") == {"index FDS": "absent", "middle FDS": "absent"}


@pytest.mark.parametrize(
    "words",
    [
        "A2 was intact, A3 had been removed at the first operation and was not rebuilt, while A4 was vented.",
        "A2 was intact, the A3 had been excised at the previous operation, and A4 was vented by 3 mm.",
    ],
)
def test_a_pulley_lost_at_an_earlier_operation_is_an_aside(words: str) -> None:
    found = each(f"Left ring finger. FDP ruptured. {words}", "finding", group="pulleys")
    assert found == {"ring A2": "intact", "ring A4": "vented"}


def test_all_of_it_at_an_earlier_operation() -> None:
    words = "A2 had been vented, A3 had been removed at the first operation."
    assert each(f"Left ring finger. FDP ruptured. {words}", "finding", group="pulleys") == {}


@pytest.mark.parametrize("head", ["Middle (zone III).", "Middle finger (zone III):"])
def test_a_zone_behind_a_heading(head: str) -> None:
    note = f"Left middle and index.\nIndex. FDP divided, 3-0 Ethibond cruciate.\n\n{head} FDP cut through. FDS intact."
    assert each(note, "zone") == {"middle FDP": "III"}


@pytest.mark.parametrize("words", ["X-ray 2 weeks.", "X ray 3 weeks after."])
def test_an_x_ray_is_no_finger(words: str) -> None:
    found = each(f"Left small finger. FDP repaired. {words} Radial digital nerve cut.", "extent", group="injuries")
    assert found == {"small digital nerve radial": "complete"}


@pytest.mark.parametrize(
    ("words", "finding"),
    [
        ("the A2 I left alone, it is intact, closed four oh nylon", "intact"),
        ("A2 intact, closed with 5-0 nylon", "intact"),
        ("A2 was opened, then closed with 5-0 PDS", "repaired"),
    ],
)
def test_closed_behind_an_intact_pulley_is_the_skin(words: str, finding: str) -> None:
    assert each(f"Left ring. FDP repaired, {words}.", "finding", group="pulleys") == {"ring A2": finding}
