"""Fingers told by their rank beside a pulley, a nerve or a state, and 'FDP both'."""

import pytest
from reader_sentences import each

FORM = """Diagnosis: cut 4th and 5th digits, right hand.
FDP:        4th transected / 5th transected
FDS:        4th intact / 5th transected
Pulleys:    5th A2 lacerated
Nerve:      UDN 5th transected
Core:       FDP both - cruciate, 4-0 Ethibond
Pulley:     5th A2 repaired.  4th A2 vented
Gapping:    none on full passive extension
"""


def test_ranks_beside_a_state() -> None:
    assert each(FORM, "extent") == {
        "ring FDP": "complete",
        "small FDP": "complete",
        "ring FDS": "intact",
        "small FDS": "complete",
    }


def test_ranks_beside_pulleys_and_nerves() -> None:
    assert each(FORM, "finding", group="pulleys") == {"small A2": "repaired", "ring A2": "vented"}
    assert each(FORM, "extent", group="injuries") == {"small digital nerve ulnar": "complete"}


def test_core_of_both() -> None:
    assert each(FORM, "size") == {"ring FDP": "4-0", "small FDP": "4-0"}


def test_a_question_asked_once_is_answered_for_all() -> None:
    gaps = each(FORM, "gap")
    assert (gaps["ring FDP"], gaps["small FDP"]) == ("none", "none")


@pytest.mark.parametrize("words", ["The second A2 was seen.", "He came for the 4th time."])
def test_other_ranks(words: str) -> None:
    text = "Cut of the 3rd digit. FDP transected, repaired with 4-0 Ethibond. " + words
    assert set(each(text, "extent")) == {"middle FDP"}
    assert not each(text, "finding", group="pulleys")
