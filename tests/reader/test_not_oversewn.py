"""Repairs with nothing sewn round them, tension that was needed, ends likened to another finger's, edges left so."""

import pytest
from reader_sentences import each

SEWN = "Ring FDP repaired with 4 strands of 3-0. "


@pytest.mark.parametrize(
    "words", ["The repair was not oversewn.", "We did not oversew anything.", "Nothing was oversewn round the repair."]
)
def test_nothing_oversewn(words: str) -> None:
    assert each(SEWN + words, "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize("words", ["The stump of FDS was not oversewn.", "The radial artery was not oversewn."])
def test_something_else_not_oversewn(words: str) -> None:
    assert each(SEWN + words, "peripheral") == {}


@pytest.mark.parametrize("words", ["interlocking epitendinous run", "locked epitendinous run"])
def test_a_run_that_locks(words: str) -> None:
    assert each(f"{SEWN}It was finished by a 6-0 Prolene {words}.", "peripheral_pattern") == {
        "ring FDP": "running locking"
    }


@pytest.mark.parametrize(
    "words",
    [
        "Ends would not meet without tension, wrist at 30 flex.",
        "The ends could not be brought together without tension.",
    ],
)
def test_tension_was_needed(words: str) -> None:
    assert each(SEWN + words, "tension") == {"ring FDP": "present"}


@pytest.mark.parametrize(
    "words",
    ["The ends would not meet without tension, so a graft was used.", "The skin would not close without tension."],
)
def test_tension_of_something_else(words: str) -> None:
    assert each(f"Ring FDP cut. {words}", "tension") == {}


def test_no_tension_needed() -> None:
    assert each(SEWN + "The ends met without tension.", "tension") == {"ring FDP": "none"}


@pytest.mark.parametrize("words", ["Ends same as the thumb", "Ends as for the thumb", "Ends same as thumb"])
def test_ends_as_those_of_another(words: str) -> None:
    note = f"THUMB FPL cut through. Ends ragged.\nINDEX FDP cut through. {words}."
    assert each(note, "ends") == {"thumb FPL": "ragged", "index FDP": "ragged"}


def test_a_core_like_that_of_the_thumb_tells_no_ends() -> None:
    note = "THUMB FPL cut through. Ends ragged.\nINDEX FDP cut through. Core same as the thumb."
    assert "index FDP" not in each(note, "ends")


@pytest.mark.parametrize(
    "words",
    ["FDP edges laid flat, nothing to catch, so left.", "FDP edges smooth with nothing to trim, so left."],
)
def test_edges_left_as_they_were(words: str) -> None:
    assert each(f"Middle finger. FDP 40 per cent cut. {words}", "treatment") == {"middle FDP": "left"}


def test_how_little_was_left() -> None:
    assert each("Middle finger. FDP 40 per cent cut. Nothing of the sheath was left.", "treatment") == {}
