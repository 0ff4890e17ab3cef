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
