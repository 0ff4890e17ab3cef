"""What is denied of all, or told of all, save of one finger."""

import pytest
from reader_sentences import each, told

CUT = "Both the index and the small finger FDPs had been cut through and were repaired."


@pytest.mark.parametrize(
    "sentence",
    [
        "Stretched at the end there was no gap, save in the small finger where 1 mm opened and was left.",
        "There was no gap, except in the small finger, where 1 mm opened.",
        "No gap apart from 1 mm in the small finger.",
    ],
)
def test_the_finger_left_out_of_no_gap_gapped(sentence: str) -> None:
    """'No gap, save in the small finger': the small one gapped, and is never shown without a gap."""
    assert each(f"{CUT} {sentence}", "gap") == {"index FDP": "none", "small FDP": "seen"}


@pytest.mark.parametrize(
    ("sentence", "field", "value"),
    [
        ("No gap other than in the small finger.", "gap", None),
        ("No gap, barring the small finger.", "gap", None),
        ("Glide free, barring the small, which catches on A2.", "glide", "catching"),
        ("Glide was free, excepting the small finger, where it caught.", "glide", "catching"),
        ("No tension, barring the small finger.", "tension", None),
        ("Ends clean save in the small finger.", "ends", None),
    ],
)
def test_a_good_state_is_not_that_of_the_finger_left_out(sentence: str, field: str, value: str | None) -> None:
    found = each(f"{CUT} {sentence}", field)
    assert found.pop("small FDP", None) == value
    assert set(found) == {"index FDP"}


def test_a_length_of_its_own_stays_that_of_the_finger_left_out() -> None:
    note = f"{CUT} Both four strands, 3-0 Prolene. All 10 mm from cut edge bar small finger 7."
    assert each(note, "purchase_mm")["small FDP"] == (7.0, 7.0)


def test_one_pair_of_ends_is_that_of_nobody() -> None:
    """'One pair of ends was clean, that in the ring; the other ragged': which is which is no safe reading."""
    note = "Two profundus tendons were completely divided and repaired, ring and small. "
    assert told(note + "One pair of ends was clean, that in the ring; the other was ragged.", "ends") == {}
    assert told(note + "One set of stumps was clean.", "ends") == {}
    assert each(note + "The ends were clean.", "ends") == {"ring FDP": "clean", "small FDP": "clean"}


@pytest.mark.parametrize(
    "sentence",
    [
        "Neither A2 nor A4 could be kept whole: each was vented over part of its length.",
        "Neither A2 nor A4 remained intact - both vented.",
        "A2 and A4 not intact (vented).",
        "A2 no longer intact (vented, distal part). A4 not kept whole: vented.",
    ],
)
def test_a_denied_good_state_denies_no_opening_behind_it(sentence: str) -> None:
    """'A2 not intact (vented)': what is denied is the good state, and the pulley was vented."""
    found = each(f"Left ring, FDP severed and repaired. {sentence}", "finding", "pulleys")
    assert found == {"ring A2": "vented", "ring A4": "vented"}


@pytest.mark.parametrize("sentence", ["It was possible to keep neither A2 nor A4 whole.", "I saved neither A2 nor A4."])
def test_neither_pulley_kept_is_intact(sentence: str) -> None:
    assert each(f"Left ring, FDP severed and repaired. {sentence}", "finding", "pulleys") == {}


@pytest.mark.parametrize("sentence", ["Neither A2 nor A4 was opened.", "A2 and A4 kept whole, not vented."])
def test_a_denied_opening_leaves_a_pulley_intact(sentence: str) -> None:
    found = each(f"Left ring, FDP severed and repaired. {sentence}", "finding", "pulleys")
    assert found == {"ring A2": "intact", "ring A4": "intact"}
