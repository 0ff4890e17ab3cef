"""Asides between a pulley and its verb: 'A1, against which the suture knocked, is incised'."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    ("told", "finding"),
    [
        ("The A1 pulley of the ring finger, against which the suture knocked, is incised.", "vented"),
        ("The A1 pulley, on which the suture caught, was vented.", "vented"),
        ("The A1 pulley, under which the tendon had caught, was vented.", "vented"),
        ("A1, on which the repair snagged, was trimmed.", "trimmed"),
        ("A1, which the repair would not pass, was released.", "released"),
        ("A1, through which the tendon was passed, was left intact.", "intact"),
        ("A1, which had been torn, was repaired with 5-0 PDS.", "repaired"),
    ],
)
def test_the_verb_is_of_the_pulley(told: str, finding: str) -> None:
    assert each(f"Ring FDP repaired. {told}", "finding", group="pulleys") == {"ring A1": finding}


def test_what_the_aside_says_is_no_state() -> None:
    note = "Ring FDP repaired. A1, on which the suture caught, was looked at again."
    assert each(note, "finding", group="pulleys") == {}
