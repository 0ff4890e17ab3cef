"""Tendons told to be continuous, slips whole behind a cut, lists of what was likewise cut, and musings in between."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "words",
    [
        "The FDS was continuous.",
        "The superficialis remained continuous and worked well.",
        "The FDP was cut, FDS seen to be continuous.",
        "The FDS, which I would have expected to be cut too, was intact.",
        "The superficialis, of which one might have feared worse, was intact.",
        "The FDP was cut; both slips of the FDS were intact.",
        "The FDP was torn, and both slips of the FDS were continuous.",
        "The superficialis was frayed on its surface but had lost none of its substance.",
    ],
)
def test_a_tendon_told_whole(words: str) -> None:
    assert each("Ring finger. " + words, "extent").get("ring FDS") == "intact"


@pytest.mark.parametrize(
    "words",
    [
        "FDP: 3-0 cruciate, outer continuous.",
        "The FDP was continuous with a mass of scar.",
        "The FDP was cut and sewn. A 6-0 Prolene epitendinous suture was continuous.",
        "The FDP was cut with loss of substance.",
    ],
)
def test_a_suture_or_scar_that_is_continuous(words: str) -> None:
    assert "intact" not in each("Ring finger. " + words, "extent").values()


@pytest.mark.parametrize(
    "words", ["FDS cut, both slips.", "FDP cut, FDS both slips cut.", "FDS cut: both slips, whole."]
)
def test_slips_that_were_cut(words: str) -> None:
    assert each("Ring finger. " + words, "extent")["ring FDS"] == "complete"


def test_a_musing_that_is_no_aside_reaches_on() -> None:
    told = "The ring FDP was sutured with two strands; I should have used four, as is usual, and a cruciate."
    assert each(told, "strands") == {"ring FDP": 2}
    assert each(told, "stitch") == {}


@pytest.mark.parametrize(
    ("words", "cut"),
    [
        ("The FPL was cut through, the FCR too, and the profundi of the ring and small fingers.", 4),
        ("The ring FDP was divided, the small FDP likewise, and in the palm both slips of the ring FDS.", 3),
        ("The ring FDP was cut through, the small FDP too, and we repaired the FDS.", 2),
        ("The ring FDP was cut through, the small FDP likewise, and I saw the small FDS.", 2),
        ("The ring FDP was cut through, the small FDP likewise, but not the small FDS.", 2),
    ],
)
def test_what_ends_a_list_of_those_likewise_cut(words: str, cut: int) -> None:
    assert [*each(words, "extent").values()].count("complete") == cut


@pytest.mark.parametrize("words", ["required nothing", "called for nothing"])
def test_a_cut_that_asked_for_nothing(words: str) -> None:
    assert each(f"The partial cut of the FCU {words}.", "treatment") == {"FCU": "left"}


def test_a_cut_that_asked_for_something() -> None:
    assert "left" not in each("The partial cut of the FCU required a stitch.", "treatment").values()


@pytest.mark.parametrize("state", ["whole", "intact"])
def test_a_cut_in_one_finger_is_not_whole(state: str) -> None:
    told = f"The FDS was {state} in the ring and cut in the small finger."
    assert each(told, "extent") == {"ring FDS": "intact"}
    assert each(told.replace("FDS", "A2"), "finding", group="pulleys") == {"ring A2": "intact", "small A2": "injured"}


@pytest.mark.parametrize(
    "words",
    [
        "The superficialis, which I followed as far as the palm, was fine.",
        "The FDS, as one would expect, was continuous.",
    ],
)
def test_a_tendon_told_whole_behind_an_aside(words: str) -> None:
    assert each("Ring finger. " + words, "extent") == {"ring FDS": "intact"}


def test_an_aside_that_tells_a_cut() -> None:
    assert each("Ring finger. The FDS, which was cut, and which was sewn, fine.", "extent") == {}


@pytest.mark.parametrize(
    "words",
    [
        "The two ends of the profundus were lying 18 mm apart, soft and thinned.",
        "The profundus ends were 2 cm apart.",
        "The FDP stumps lay 25 mm apart.",
    ],
)
def test_ends_found_far_apart_are_of_a_tendon_cut_through(words: str) -> None:
    assert each("Ring finger. " + words, "extent") == {"ring FDP": "complete"}


@pytest.mark.parametrize(
    "words",
    [
        "In extension the ends of the FDP stood 2 mm apart.",
        "The ends of the nerve beside the FDP lay 2 cm apart.",
        "The ends of the FDP were not 10 mm apart.",
        "The FDP was whole, the two skin wounds 20 mm apart.",
    ],
)
def test_what_is_apart_otherwise(words: str) -> None:
    assert "complete" not in each("Ring finger. " + words, "extent").values()
