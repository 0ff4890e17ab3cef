"""Cuts that were not sewn, told without a word for leaving them."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "sentence",
    [
        "FDP was repaired, FDS was not.",
        "FDP was repaired, FDS deliberately was not.",
        "FDP repaired: FDS intentionally not.",
        "Only FDP was repaired; FDS left as it lay, on purpose.",
    ],
)
def test_what_was_not_like_the_other_was_left(sentence: str) -> None:
    """'FDP was repaired, FDS was not': the repair is what the second is denied."""
    assert told(f"Left index. FDP and FDS cut through. {sentence}", "treatment") == {
        "index FDP": {"treatment": "repaired"},
        "index FDS": {"treatment": "left"},
    }


def test_another_state_denied_leaves_nothing() -> None:
    assert told("Ring. FDP and FDS cut through. FDP was clean, FDS was not.", "treatment") == {}


@pytest.mark.parametrize("sentence", ["Neither was sutured.", "Neither was repaired nor did either need it."])
def test_neither_of_two_cuts_was_sewn(sentence: str) -> None:
    assert told(f"Long finger. FDP shows a 20% cut, FDS a 10% one. {sentence}", "treatment") == {
        "middle FDP": {"treatment": "left"},
        "middle FDS": {"treatment": "left"},
    }


@pytest.mark.parametrize(
    "sentence",
    [
        "The FDP has a 20% nick which does not need a stitch and did not get one.",
        "The FDP has a 20% nick; it was not given a suture.",
        "The FDP has a 20% nick that got no stitch.",
    ],
)
def test_a_nick_that_got_no_stitch_was_left(sentence: str) -> None:
    assert told(f"Index. {sentence}", "treatment") == {"index FDP": {"treatment": "left"}}


@pytest.mark.parametrize(
    "sentence",
    [
        "FDP 40% cut. It needed no core suture, a running 6-0 was placed.",
        "FDP 40% cut. It did not need a repair of the core, a running 6-0 was placed.",
    ],
)
def test_a_core_that_was_not_needed_leaves_nothing(sentence: str) -> None:
    assert told(f"Ring. {sentence}", "treatment") != {"ring FDP": {"treatment": "left"}}


@pytest.mark.parametrize("head", ["Small finger, left, FDP severed.", "Small finger FDP, left, severed."])
def test_the_left_hand_between_a_finger_and_its_tendon_leaves_nothing(head: str) -> None:
    """'Small finger, left, FDP severed. Repaired with 3-0': the hand, and no cut that was left."""
    assert told(f"{head} Repaired with 3-0.", "treatment") == {"small FDP": {"treatment": "repaired"}}


@pytest.mark.parametrize("words", ["FDS 40% cut, left.", "FDS, 40 % cut, left."])
def test_a_cut_that_was_left_behind_commas_stays_left(words: str) -> None:
    assert told(f"Ring. FDP repaired. {words}", "treatment")["ring FDS"] == {"treatment": "left"}


@pytest.mark.parametrize("words", ["FDS left, FDP repaired.", "FDS left and FDP repaired.", "FDP repaired, FDS left."])
def test_left_before_the_next_tendon_is_what_was_done_to_the_first(words: str) -> None:
    """'FDS left, FDP repaired': never the two repaired."""
    assert told(f"Ring finger. {words}", "treatment") == {
        "ring FDP": {"treatment": "repaired"},
        "ring FDS": {"treatment": "left"},
    }
