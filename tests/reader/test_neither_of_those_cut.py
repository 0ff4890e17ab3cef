"""Tendons neither of which was cut, one still whole, edges left with nothing to catch, and words for torn ends."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "words",
    [
        "The FDP and FDS of the index were seen at either opening. Neither had been cut and neither was slack.",
        "FDP and FDS of the index were inspected, neither was divided.",
        "FDP and FDS of the index were looked at. Neither had been hurt.",
    ],
)
def test_neither_of_the_two(words: str) -> None:
    assert each(f"Index finger. {words}", "extent") == {"index FDP": "intact", "index FDS": "intact"}


@pytest.mark.parametrize(
    "words",
    [
        "There was no FDS at all, neither cut nor intact.",
        "FDP and FDS of the index were seen. The digital nerves were looked at. Neither was cut.",
        "FDP and FDS of the index were seen. Neither could be tested.",
    ],
)
def test_neither_of_others(words: str) -> None:
    assert "intact" not in each(f"Index finger. {words}", "extent").values()


@pytest.mark.parametrize(
    "words",
    ["FDS had been left whole first time round and still is.", "FDS was intact at the first operation and still is."],
)
def test_still_whole(words: str) -> None:
    assert each(f"Small finger redo. FDP snapped. {words}", "extent")["small FDS"] == "intact"


def test_not_whole_and_still_so() -> None:
    note = "Small finger redo. FDP snapped. FDS was not whole at the first operation and still is."
    assert "small FDS" not in each(note, "extent")


@pytest.mark.parametrize(
    ("words", "value"),
    [
        ("evened with scissors, no suture.", "trimmed"),
        ("evened off with scissors.", "trimmed"),
    ],
)
def test_edges_dealt_with(words: str, value: str) -> None:
    assert each(f"Ring finger. FDP 20% cut. The edge was {words}", "treatment") == {"ring FDP": value}


@pytest.mark.parametrize("words", ["the margins of each torn like rope", "torn like a rope at both ends"])
def test_torn_like_rope(words: str) -> None:
    note = f"Ring finger. Both flexors cut through and {words}."
    assert each(note, "ends") == {"ring FDP": "ragged", "ring FDS": "ragged"}


def test_a_rope_that_did_it() -> None:
    assert each("Ring finger. FDP cut through by a rope. It was repaired.", "ends") == {}


@pytest.mark.parametrize("words", ["leaving bevelled, smooth surfaces", "leaving smooth surfaces"])
def test_smooth_surfaces(words: str) -> None:
    assert each(f"FDS to the index had been divided, all of it, {words}.", "ends") == {"index FDS": "clean"}


@pytest.mark.parametrize("words", ["a tag off the surface", "a sliver off its surface"])
def test_off_the_surface(words: str) -> None:
    assert each(f"FDS of the ring: {words}, tiny.", "extent") == {"ring FDS": "partial"}
