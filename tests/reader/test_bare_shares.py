"""A bare 100 behind a tendon is a share of its cut; 'all' does not take in a tendon that was only scored."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize("words", ["FDP gone 100.", "FDP 100.", "FDP: 100, ends clean.", "FDP cut through 100."])
def test_a_hundred_is_the_whole(words: str) -> None:
    assert each("Right middle finger, zone III. " + words, "extent") == {"middle FDP": "complete"}


@pytest.mark.parametrize("words", ["FDP 100, FDS 40.", "FDP cut 100, FDS cut 40."])
def test_smaller_ones_beside_it(words: str) -> None:
    found = told("Right middle finger. " + words, "extent", "extent_percent")
    assert found == {"middle FDP": {"extent": "complete"}, "middle FDS": {"extent": "partial", "extent_percent": 40}}


@pytest.mark.parametrize("words", ["FDP 40.", "FDP. 100 mg of lidocaine.", "FDP 3-0, 4 strands."])
def test_other_figures_are_no_share(words: str) -> None:
    assert each("Right middle finger. " + words, "extent") == {}


GRAZED = "Middle: FDP 100%, FDS 100%. Ring: FDP 100%, FDS scored 10%. "
SEWN = {"middle FDP", "middle FDS", "ring FDP"}


@pytest.mark.parametrize(
    "words", ["Both fingers: four-strand Adelaide.", "All repairs: four strands.", "All three: Kirchmayr, 4 strands."]
)
def test_all_without_the_scored_one(words: str) -> None:
    assert each(GRAZED + words, "strands") == dict.fromkeys(SEWN, 4)


def test_a_scored_one_that_was_sewn() -> None:
    words = "All repairs: four strands. The ring FDS was sewn with 5-0."
    assert each(GRAZED + words, "treatment")["ring FDS"] == "repaired"
