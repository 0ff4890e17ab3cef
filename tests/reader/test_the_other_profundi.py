"""Tendons of a wrist told whole by their kind, and fingers whose tendons are told whole beside a single one."""

import pytest
from reader_sentences import each

FOUND = "Zone V, left wrist. FCR divided. FDP of the index 40% cut. "
REST = dict.fromkeys(("middle FDP", "ring FDP", "small FDP"), "intact")


@pytest.mark.parametrize(
    "words",
    [
        "The other profundi were intact.",
        "The other profundi and the median nerve were intact.",
        "Other three FDP intact.",
        "The FDPs were otherwise inspected one by one and found without damage.",
        "FDP's: no damage.",
        "All the profundus tendons beside it were in continuity.",
        "The rest of the profundi were intact.",
        "The rest of the FDP tendons and the median nerve were intact.",
        "The remainder of the profundi unhurt.",
    ],
)
def test_all_of_a_kind_but_the_one_that_was_cut(words: str) -> None:
    found = each(FOUND + words, "extent")
    assert found == {"FCR": "complete", "index FDP": "partial", **REST}


@pytest.mark.parametrize("words", ["The rest of the FDP was intact.", "The rest of the profundus had held."])
def test_the_rest_of_one_tendon_is_no_other(words: str) -> None:
    assert each(FOUND + words, "extent") == {"FCR": "complete", "index FDP": "partial"}


@pytest.mark.parametrize(
    "words",
    [
        "The sublimis to ring and small and the other profundi were fine.",
        "The rest of the profundi and the ring and small sublimis were intact.",
        "The remaining profundi and the ring and small FDS were intact.",
    ],
)
def test_of_one_kind_those_named_and_of_the_other_the_rest(words: str) -> None:
    found = each(FOUND + words, "extent")
    assert found == {"FCR": "complete", "index FDP": "partial", **REST, "ring FDS": "intact", "small FDS": "intact"}


def test_neighbours_of_one_finger_are_not_spoken_for() -> None:
    assert each("Index finger, zone II. FDP 40% cut. FDPs intact.", "extent").keys() <= {"index FDP"}


@pytest.mark.parametrize(
    "words",
    [
        "Middle FDP, ring and small finger tendons intact.",
        "The ring flexors, the small finger flexors and the middle FDP had escaped.",
    ],
)
def test_fingers_whose_tendons_are_told_beside_one(words: str) -> None:
    found = each("Zone V. FCR divided. Index FDP and FDS divided. " + words, "extent")
    both = {f"{finger} {tendon}": "intact" for finger in ("ring", "small") for tendon in ("FDP", "FDS")}
    assert {entry: value for entry, value in found.items() if value == "intact"} == {**both, "middle FDP": "intact"}


@pytest.mark.parametrize("words", ["The long flexor was completely divided.", "I found the long flexor cut through."])
def test_the_long_flexor_is_that_of_the_thumb_spoken_of(words: str) -> None:
    assert each(f"Thumb, zone II. {words} A ring finger graft was discussed.", "extent") == {"thumb FPL": "complete"}


def test_the_long_flexor_behind_words_on_a_finger_is_not_that_of_the_thumb() -> None:
    assert "thumb FPL" not in each("Thumb: skin only. Ring finger: the long flexor was completely divided.", "extent")


@pytest.mark.parametrize("label", ["cut?", "cut %"])
def test_nothing_of_it_in_a_cell(label: str) -> None:
    rows = "FDP          100%      sewn\nFDS          0         -\n"
    note = f"Small finger, zone II\n\ntendon       {label}      done\n{rows}"
    assert each(note, "extent") == {"small FDP": "complete", "small FDS": "intact"}
