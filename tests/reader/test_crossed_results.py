"""Two results crossed over fingers and tendons: 'no gap in the index and some tension in the middle'."""

import itertools

import pytest
from reader_sentences import told

_FIELDS = ("gap", "gap_mm", "glide", "tension", "bulk")
_INDEX_MIDDLE = (
    "Left hand, zone 2. FDP of the index and the middle finger completely divided and each repaired with a four-strand "
    "cruciate of 3-0 Prolene. "
)
_BOTH_TENDONS = (
    "Right ring finger, zone 2. FDP and FDS completely divided. FDP repaired with a four-strand cruciate of 3-0 "
    "Prolene, FDS with horizontal mattress sutures of 4-0 Prolene. "
)
_FOUR = (
    "Left hand, zone 2. FDP and FDS of the index and middle fingers completely divided and all four repaired with a "
    "four-strand cruciate of 3-0 Prolene. "
)
_RESULTS: dict[str, dict[str, object]] = {
    "no gap": {"gap": "none"},
    "a gap of 1 mm": {"gap": "seen", "gap_mm": 1},
    "free glide": {"glide": "free"},
    "catching at A4": {"glide": "catching"},
    "some tension": {"tension": "present"},
    "no tension": {"tension": "none"},
    "some bulk": {"bulk": "present"},
    "no bulk": {"bulk": "none"},
}
_PAIRS = list(itertools.permutations(_RESULTS, 2))


@pytest.mark.parametrize(("a", "b"), _PAIRS)
def test_results_of_two_fingers(a: str, b: str) -> None:
    expected = {"index FDP": _RESULTS[a], "middle FDP": _RESULTS[b]}
    for note in (f"There was {a} in the index and {b} in the middle.", f"Index: {a}. Middle: {b}."):
        assert told(_INDEX_MIDDLE + note, *_FIELDS) == expected, note


@pytest.mark.parametrize(("a", "b"), _PAIRS)
def test_results_of_two_tendons(a: str, b: str) -> None:
    expected = {"ring FDP": _RESULTS[a], "ring FDS": _RESULTS[b]}
    for note in (
        f"FDP: {a}. FDS: {b}.",
        f"There was {a} at the FDP repair and {b} at the FDS repair.",
        f"{a.capitalize()} (FDP), {b} (FDS).",
        f"The FDP showed {a}, the FDS {b}.",
    ):
        assert told(_BOTH_TENDONS + note, *_FIELDS) == expected, note


@pytest.mark.parametrize(
    ("note", "field", "denied"),
    [
        ("There was no gap and some tension.", "tension", "present"),
        ("The deep tendon had no gap and the superficial some tension.", "tension", "present"),
        ("Without catching, slight bulk.", "bulk", "present"),
        ("There was no gap and no tension.", "tension", "none"),
        ("There was no gap or tension.", "tension", "none"),
    ],
)
def test_what_is_there_is_not_denied(note: str, field: str, denied: str) -> None:
    assert {facts[field] for facts in told(_BOTH_TENDONS + note, field).values()} == {denied}


@pytest.mark.parametrize(
    "note",
    [
        "There was no gap save at the index FDS, where 1 mm was seen.",
        "No repair gapped except the index FDS, which opened 1 mm.",
        "The index FDS gapped 1 mm; the other three did not.",
    ],
)
def test_one_tendon_left_out(note: str) -> None:
    none = {name: {"gap": "none"} for name in ("index FDP", "middle FDP", "middle FDS")}
    assert told(_FOUR + note, "gap", "gap_mm") == {**none, "index FDS": {"gap": "seen", "gap_mm": 1}}


@pytest.mark.parametrize(
    "note",
    [
        "Apart from a 1 mm gap at the index FDS, none of the repairs gapped.",
        "Except at the index FDS there was no gap.",
        "No gap in any repair except that of the index FDS.",
    ],
)
def test_no_gap_is_told_of_the_one_left_out(note: str) -> None:
    found = told(_FOUR + note, "gap")
    assert found.get("index FDS", {}).get("gap") != "none"
    assert found["middle FDP"] == {"gap": "none"}


def test_catching_of_the_one_left_out() -> None:
    found = told(_FOUR + "Apart from catching at the index FDS, all repairs ran freely.", "glide")
    assert found == {name: {"glide": "free"} for name in ("index FDP", "middle FDP", "middle FDS")}


def test_what_was_seen_where_a_finger_is_left_out() -> None:
    found = told(_FOUR + "None gapped, save in the middle finger where a 2 mm gap was seen.", "gap", "gap_mm")
    assert found["middle FDP"] == {"gap": "seen", "gap_mm": 2}
    assert found["index FDP"] == {"gap": "none"}


def test_a_length_of_something_else_is_no_gap() -> None:
    note = "No gap except in the index finger, where the purchase was only 5 mm."
    assert not any("gap_mm" in facts for facts in told(_FOUR + note, "gap_mm").values())
