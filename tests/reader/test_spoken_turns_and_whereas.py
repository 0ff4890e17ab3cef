"""Dictation without stops that turns to a finger, and clauses behind 'whereas' with a suture of their own."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "words",
    [
        "without an epitendinous suture, whereas the small FDS was closed with three simple sutures of 4-0 nylon",
        "no epitendinous was added, while the small FDS was closed with two simple sutures of 4-0 nylon",
    ],
)
def test_a_suture_behind_whereas_is_no_peripheral(words: str) -> None:
    note = (
        f"Right wrist. FCR completely divided, FDS small half cut. FCR repaired with a modified Kessler, 2-0, {words}."
    )
    shown = told(note, "peripheral", "size", "treatment")["small FDS"]
    assert shown == {"size": "4-0", "treatment": "repaired"}


@pytest.mark.parametrize(
    "words", ["I did not put the FCU under tension to test it.", "We did not bring it under tension."]
)
def test_a_tension_that_was_not_tried(words: str) -> None:
    assert each(f"Right wrist. FCU divided, repaired with 3-0 Ethibond. {words}", "tension") == {}


SPOKEN = (
    "right hand middle and ring fingers he fell on a glass right so middle first fdp cut right across in zone two "
    "then ring the fdp was cut right across as well and the fds there was not cut it was fine "
)


def test_a_superficialis_there() -> None:
    shown = each(SPOKEN, "extent")
    assert shown == {"middle FDP": "complete", "ring FDP": "complete", "ring FDS": "intact"}


def test_a_gap_there_is_a_statement_of_its_own() -> None:
    note = "left index finger i repaired the fdp with four strands then i pulled on the fdp there was no gap"
    assert each(note, "gap") == {"index FDP": "none"}
