"""What a joint did is no gap of a repair, and a thread that runs and locks is no lock of the core."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    "text",
    [
        "With a straight pull on the pulp the joint did not open.",
        "On traction the DIP joint did not gap.",
        "When I pulled on it the DIP joint stayed closed.",
    ],
)
def test_a_joint_that_held_tells_of_no_gap(text: str) -> None:
    assert told(f"Right small finger. FDP reinserted with an anchor. {text}", "gap") == {}


@pytest.mark.parametrize(
    "text",
    ["On traction it did not open.", "On extension of the DIP joint no gap.", "The repair did not open on pulling."],
)
def test_a_repair_that_held_does(text: str) -> None:
    assert told(f"Right small finger. FDP repaired. {text}", "gap") == {"small FDP": {"gap": "none"}}


@pytest.mark.parametrize(
    "thread",
    ["a 6-0 nylon that runs and locks", "a 6-0 nylon which locks as it runs", "a 6-0 nylon that runs round and locks"],
)
def test_the_outer_thread_locks_and_not_the_core(thread: str) -> None:
    found = told(
        f"Ring finger. FDP repaired with four strands of 3-0 Ethibond and {thread}.", "hold", "peripheral_pattern"
    )
    assert found == {"ring FDP": {"peripheral_pattern": "running locking"}}


def test_a_core_that_locks_still_does() -> None:
    assert told("Ring finger. FDP: four strands of 3-0 Ethibond that lock.", "hold") == {
        "ring FDP": {"hold": "locking"}
    }
