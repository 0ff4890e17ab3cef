"""Counts dealt out over tendons named before, and told behind an aside on the finger."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "note",
    [
        "Core sutures: index FDP 3-0 Ethibond; ring FDP 4-0 Prolene. Strands: 4 and 2 respectively.",
        "Index FDP repaired with 3-0 Ethibond, ring FDP with 4-0 Prolene. Four and two strands respectively.",
        "Index and ring FDP divided and repaired. Number of strands 4 and 2, respectively.",
    ],
)
def test_in_the_order_of_the_sentence_before(note: str) -> None:
    assert each(note, "strands") == {"index FDP": 4, "ring FDP": 2}


def test_as_many_as_were_sewn() -> None:
    note = "Index, ring and small FDP divided and repaired. Strands: 4 and 2 respectively."
    assert 4 not in each(note, "strands").values()
    assert each("Index FDP divided and repaired. Strands: 4 and no more.", "strands") == {"index FDP": 4}


@pytest.mark.parametrize(
    "note",
    [
        "The ring, with ends sharp and clean, took six strands; the small, whose ends were ragged, two.",
        "The ring, with clean ends, got six strands; the small finger, with its ends ragged, two.",
        "The ring finger was given six strands; the small finger, whose ends were ragged, two. The ring's were clean.",
    ],
)
def test_behind_an_aside(note: str) -> None:
    facts = told("Small and ring FDP divided. " + note, "strands", "ends")
    assert {name: f["strands"] for name, f in facts.items()} == {"ring FDP": 6, "small FDP": 2}
    assert facts["small FDP"]["ends"] == "ragged"


def test_no_count_behind_an_aside() -> None:
    note = "Small and ring FDP divided. The ring got six strands; the small, which was thin, two days later."
    assert each(note, "strands") == {"ring FDP": 6}
