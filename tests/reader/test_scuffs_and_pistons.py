"""Plain words for a graze, a smoothed edge, torn ends, a run and a pull on the tendon."""

import pytest
from reader_sentences import each, told

_CUT = "Middle finger. FDP cut through and repaired with four strands. "


@pytest.mark.parametrize(
    "words", ["had a scuff mark only, not a cut", "showed a scuff only", "had no more than a scuff"]
)
def test_a_scuff_is_no_cut(words: str) -> None:
    assert each(f"Middle finger. FDS {words}. FDP cut through.", "extent")["middle FDS"] == "intact"


@pytest.mark.parametrize("words", ["had a scuff mark only", ": no more than a scuff"])
def test_a_scuffed_nerve_is_bruised(words: str) -> None:
    note = f"Ring finger. FDP cut through. The radial digital nerve {words}."
    assert each(note, "extent", group="injuries") == {"ring digital nerve radial": "contused"}


@pytest.mark.parametrize("words", ["The skin over P1 had a scuff only.", "The A2 pulley had a scuff only."])
def test_a_scuff_of_something_else(words: str) -> None:
    assert told(f"Middle finger. {words}", "extent") == {}


@pytest.mark.parametrize(
    "words", ["I feathered the edge with a blade.", "The edge was feathered.", "Its edges were feathered, no suture."]
)
def test_a_feathered_edge_is_trimmed(words: str) -> None:
    assert each(f"Middle finger. FDP 25 % cut. {words}", "treatment") == {"middle FDP": "trimmed"}


def test_an_edge_that_was_not_feathered() -> None:
    assert told("Middle finger. FDP 25 % cut. We thought of it but the edge was not feathered.", "treatment") == {}


@pytest.mark.parametrize("words", ["The tendon ends were furred.", "Both ends were fuzzy."])
def test_furred_ends_are_ragged(words: str) -> None:
    assert each(f"Middle finger. FDP cut through. {words}", "ends") == {"middle FDP": "ragged"}


@pytest.mark.parametrize("words", ["It goes in and out like a piston.", "The repair ran like a piston."])
def test_a_run_like_a_piston_is_free(words: str) -> None:
    assert each(_CUT + words, "glide") == {"middle FDP": "free"}


@pytest.mark.parametrize("words", ["It does not run like a piston.", "I had hoped it would run like a piston."])
def test_no_run_like_a_piston(words: str) -> None:
    assert each(_CUT + words, "glide").get("middle FDP") != "free"


@pytest.mark.parametrize(
    "words",
    [
        "Checked by drawing the tendon up above the wrist with a hook; no gap.",
        "I drew the tendon up at the wrist, no gap.",
    ],
)
def test_drawing_the_tendon_up_is_traction(words: str) -> None:
    assert each(_CUT + words, "test") == {"middle FDP": "traction"}


def test_a_tendon_drawn_up_before_it_is_sewn_is_no_test() -> None:
    assert told("Middle finger. FDP cut through. By drawing the tendon up we brought the end to light.", "test") == {}
