"""Tendons that are joined one after the other in one sentence: 'the profundus and then the superficialis'."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("note", "tendons"),
    [
        (
            "The ring profundus and then the middle and ring superficialis tendons were each joined with 3-0 Ethibond.",
            {"ring FDP", "middle FDS", "ring FDS"},
        ),
        (
            "The index profundus and finally the small profundus were repaired with 3-0 Ethibond.",
            {"index FDP", "small FDP"},
        ),
        ("We repaired the index FDP and then the FDS with 3-0 Ethibond.", {"index FDP", "index FDS"}),
    ],
)
def test_tendons_sewn_in_turn_share_the_suture(note: str, tendons: set[str]) -> None:
    assert told(note, "size") == {tendon: {"size": "3-0"} for tendon in tendons}


def test_one_told_cut_before_the_other_is_not_whole() -> None:
    assert told("Index FDP cut and then FDS intact.", "extent") == {"index FDS": {"extent": "intact"}}


@pytest.mark.parametrize(
    ("note", "tendons"),
    [
        ("The saw severed both tendons of the index entirely and the profundus of the middle finger.", 3),
        ("It had divided the index FDP completely and the small FDP.", 2),
    ],
)
def test_an_adverb_does_not_part_what_was_cut(note: str, tendons: int) -> None:
    assert list(told(note, "extent").values()) == [{"extent": "complete"}] * tendons


def test_another_share_told_behind_parts_them() -> None:
    found = told("The blade had cut the ring FDP completely and the ring FDS partially.", "extent")
    assert found == {"ring FDP": {"extent": "complete"}, "ring FDS": {"extent": "partial"}}
