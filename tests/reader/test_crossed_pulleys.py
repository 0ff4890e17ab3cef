"""Every state of a pulley crossed with the ways to deal two of them out over pulleys and fingers."""

import itertools

import pytest
from reader_sentences import Shown, each, told

_ONE = "Right ring finger, zone 2. FDP completely divided and repaired with a four-strand cruciate of 3-0 Prolene. "
_THREE = "Left hand. FDP of the index, middle and ring fingers completely divided and each repaired with a Kirchmayr. "
_FINGERS = ("index", "middle", "ring")
_STATES = {
    "vented": "vented",
    "opened": "vented",
    "preserved": "intact",
    "fully released": "released",
    "excised": "excised",
    "found torn": "injured",
    "repaired with 5-0 Prolene": "repaired",
    "reconstructed with palmaris": "reconstructed",
}
_PAIRS = [(a, b) for a, b in itertools.permutations(_STATES, 2) if _STATES[a] != _STATES[b]]


def _all(fingers: tuple[str, ...], pulley: str, state: str) -> dict[str, object]:
    return {f"{finger} {pulley}": _STATES[state] for finger in fingers}


@pytest.mark.parametrize(("a", "b"), _PAIRS)
def test_each_statement_has_its_own_fingers(a: str, b: str) -> None:
    both, ring = ("index", "middle"), ("ring",)
    notes = {
        f"A4 was {a} in all three fingers, A2 {b} in the ring alone.": _all(_FINGERS, "A4", a) | _all(ring, "A2", b),
        f"A2 was {a} in each of the three fingers; A4 was {b} in the first two.": _all(_FINGERS, "A2", a)
        | _all(both, "A4", b),
        f"Of the pulleys A2 was {a} and A4 {b} in the index, and A3 {a} in the ring.": _all(("index",), "A2", a)
        | _all(("index",), "A4", b)
        | _all(ring, "A3", a),
        f"A2 was {a} except in the ring finger, where it was {b}.": _all(both, "A2", a) | _all(ring, "A2", b),
        f"In each finger A2 was {a} and A4 was {b}.": _all(_FINGERS, "A2", a) | _all(_FINGERS, "A4", b),
        f"A2 was {a} in the index. The same in the middle. In the ring it was {b}.": _all(both, "A2", a)
        | _all(ring, "A2", b),
    }
    found = {note: each(_THREE + note, "finding", group="pulleys") for note in notes}
    assert found == notes


@pytest.mark.parametrize(("a", "b"), [pair for pair in _PAIRS if "fully released" not in pair])
def test_states_in_the_order_of_the_pulleys(a: str, b: str) -> None:
    note = f"A2 and A4 were {a} and {b} respectively."
    assert each(_ONE + note, "finding", group="pulleys") == {"ring A2": _STATES[a], "ring A4": _STATES[b]}


def test_states_that_do_not_fit_the_number_of_pulleys() -> None:
    assert not told(_ONE + "A2, A3 and A4 were vented and preserved respectively.", group="pulleys")


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("All but 3 mm of A2 was released.", {"finding": "vented"}),
        ("A2 was divided save for its distal 3 mm.", {"finding": "vented"}),
        ("All but the distal third of A2 was released.", {"finding": "vented"}),
        ("A2 was divided except for its proximal third.", {"finding": "vented"}),
        ("All but 40% of A2 was opened.", {"finding": "vented"}),
        (
            "A2 was preserved save for its distal 3 mm, which was opened.",
            {"finding": "vented", "extent_mm": 3, "part": "distal"},
        ),
        ("The distal third of A2 was opened.", {"finding": "vented", "extent_percent": 33, "part": "distal"}),
    ],
)
def test_what_a_deed_left_is_not_what_was_opened(note: str, expected: dict[str, object]) -> None:
    assert told(_ONE + note, group="pulleys") == {"ring A2": expected}


def test_all_but_a_part_kept_is_no_whole_pulley() -> None:
    assert not told(_ONE + "All but the distal 3 mm of A2 was preserved.", group="pulleys")


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("A4 was first intact, but the repair caught and it was then excised.", "excised"),
        ("A4 was preserved at first. The repair snagged, and A4 was excised.", "excised"),
        ("A4 was intact, but the FDS slip caught and it was then excised.", "intact"),
    ],
)
def test_cut_out_as_the_repair_caught(note: str, expected: str) -> None:
    assert each(_ONE + note, "finding", group="pulleys") == {"ring A4": expected}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Index: A2 vented 4 mm, A4 intact. Middle: ditto.", {"finding": "vented", "extent_mm": 4}),
        ("In the index A2 was vented. In the middle, likewise.", {"finding": "vented"}),
        ("A2 was vented in the index. Likewise the middle.", {"finding": "vented"}),
        ("A2 was vented in the index. The same repair was done in the middle.", None),
        ("A2 was vented in the index and ring. The same finger had a cut nerve.", None),
    ],
)
def test_the_same_in_another_finger(note: str, expected: dict[str, object] | None) -> None:
    found: Shown = told(_THREE + note, group="pulleys")
    assert found.get("middle A2") == expected


def test_a_finger_of_its_own_heading() -> None:
    note = _THREE + "\nINDEX\nPulleys: A2 excised, A4 found torn\nMIDDLE\nPulleys: A2 found torn, A4 excised"
    expected = {"index A2": "excised", "index A4": "injured", "middle A2": "injured", "middle A4": "excised"}
    assert each(note, "finding", group="pulleys") == expected
