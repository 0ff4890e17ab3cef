"""What a note says could not be had: a suture that was out of reach, ends that would not meet without tension."""

import pytest
from reader_sentences import each

CUT = "Right ring finger. FDP cut in zone II. "


@pytest.mark.parametrize(
    "words",
    [
        "Direct suture of the FDP was out of the question.",
        "An end to end suture of the FDP was not possible.",
        "A primary suture of the FDP could not be done.",
        "The FDP could not be brought together.",
        "The ends of the FDP could not be put back together.",
    ],
)
def test_a_suture_that_was_out_of_reach(words: str) -> None:
    assert each(CUT + words, "treatment") == {}


@pytest.mark.parametrize("words", ["The FDP could not be sewn back.", "The FDP was not sewn together."])
def test_a_tendon_that_was_not_sewn(words: str) -> None:
    assert each(CUT + words, "treatment") == {"ring FDP": "left"}


@pytest.mark.parametrize(
    "words",
    [
        "End to end suture of the FDP with 3-0 Prolene; a thicker thread was out of the question.",
        "The ends of the FDP were brought together with 3-0 Prolene.",
    ],
)
def test_a_suture_that_was_made(words: str) -> None:
    assert each(CUT + words, "treatment") == {"ring FDP": "repaired"}


@pytest.mark.parametrize(
    "words",
    [
        "The FDP stump could not be brought up without real tension, so it was grafted.",
        "The ends of the FDP did not meet without tension until the wrist was flexed; FDP repaired with 3-0 Prolene.",
        "The FDP was too short to be sutured free of tension.",
        "FDP repaired with 3-0 Prolene. It could not be called tension free.",
    ],
)
def test_ends_that_would_not_meet_without_tension(words: str) -> None:
    assert each(CUT + words, "tension") == {}


@pytest.mark.parametrize(
    "words",
    [
        "With the wrist flexed the FDP could be repaired with 3-0 Prolene without tension.",
        "FDP repaired with 3-0 Prolene; it did not gap and was without tension.",
    ],
)
def test_ends_that_met_without_tension(words: str) -> None:
    assert each(CUT + words, "tension") == {"ring FDP": "none"}
