"""'Both slid nicely', 'both slide free' behind two fingers; and a nick that was not repaired is a nick."""

import pytest
from reader_sentences import each

TWO = "Index and middle fingers. FDP of both cut through and sewn with 3-0 Ethibond. "


@pytest.mark.parametrize("words", ["Both slid very nicely.", "Both slide freely."])
def test_both_of_two(words: str) -> None:
    assert each(TWO + words, "glide") == {"index FDP": "free", "middle FDP": "free"}


def test_both_fingers_named_before() -> None:
    note = TWO + "FDS of the index sewn with 4-0.\nPull on FDP in palm: IF gap 0, MF gap 0, both slide free."
    assert each(note, "glide") == {"index FDP": "free", "middle FDP": "free"}


def test_both_of_one_finger() -> None:
    note = "Index finger. FDP and FDS cut through, FDP sewn with 3-0, FDS sewn with 4-0. Both slid freely."
    assert each(note, "glide") == {"index FDP": "free", "index FDS": "free"}


@pytest.mark.parametrize("words", ["FDS nick not repaired.", "FDS just a nick not worth a stitch."])
def test_a_nick_not_repaired(words: str) -> None:
    assert each("Middle. FDP divided. " + words, "extent")["middle FDS"] == "partial"


@pytest.mark.parametrize("words", ["FDS nick not found.", "No FDS nick.", "FDS without a nick."])
def test_no_nick(words: str) -> None:
    assert each("Middle. FDP divided. " + words, "extent").get("middle FDS") != "partial"
