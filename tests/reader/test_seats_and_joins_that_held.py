"""Other words for a repair that held: a tendon that did not lift, junctions of which none parted."""

import pytest
from reader_sentences import each, told

BONE = "Middle finger. FDP off the bone, reinserted with an anchor and 3-0 Ethibond. "
TWO = "Left thumb and index. The FPL and the index profundus were sewn with 3-0 Ethibond, four strands. "
ONE = "Middle finger. FDP completely cut, four strands of 3-0 Prolene. "


@pytest.mark.parametrize(
    "text",
    [
        "Passive extension: no lift-off of the tendon.",
        "When I straightened the joint the tendon did not lift from the bone.",
        "I asked her to make a fist and nothing parted.",
    ],
)
def test_no_lifting(text: str) -> None:
    assert each(BONE + text, "gap") == {"middle FDP": "none"}


@pytest.mark.parametrize(
    "text",
    [
        "On passive motion neither junction opened.",
        "On passive extension there was no gap at any of the junctions.",
        "On traction none of the junctures parted.",
    ],
)
def test_junctions(text: str) -> None:
    assert each(TWO + text, "gap") == {"thumb FPL": "none", "index FDP": "none"}


@pytest.mark.parametrize("text", ["Gap on pull        N", "Gap test: passive ext -> 0", "Gap at check     nil"])
def test_answers_at_the_end_of_the_line(text: str) -> None:
    assert each(ONE + "\n" + text + "\n", "gap") == {"middle FDP": "none"}


@pytest.mark.parametrize("text", ["No heavy lifting for ten weeks.", "The nail did not lift off."])
def test_what_lifts_is_something_else(text: str) -> None:
    assert each(ONE + text, "gap") == {}


@pytest.mark.parametrize(
    "text",
    [
        "Passive: no gap, no hang-ups.",
        "No gap. The tendon slides without stop.",
        "Passive range: smooth.",
        "On passive motion all was smooth.",
    ],
)
def test_more_words_for_free(text: str) -> None:
    assert each(ONE + text, "glide") == {"middle FDP": "free"}


def test_of_the_one_tendon_that_was_sewn() -> None:
    text = (
        "Index and middle fingers. Index FDP fully cut and sewn with four strands of 3-0. Middle FDP cut by 40 %, left."
        " A1 opened. Passive ROM: no gap."
    )
    assert told(text, "gap", "test") == {"index FDP": {"gap": "none", "test": "passive"}}
