"""'I took it out': the tendon told of right before, and no splinter or suture."""

import pytest
from reader_sentences import each

CUT = "Small finger. The FDS was cut and thin"


@pytest.mark.parametrize("words", ["; I took it out altogether.", ". I took it out.", ", so I took it out."])
def test_a_tendon_taken_out(words: str) -> None:
    assert each(CUT + words, "treatment") == {"small FDS": "excised"}


@pytest.mark.parametrize(
    "words",
    [
        "There was a wire in the wound. I took it out.",
        "A piece of glass lay at its bed. I took it out.",
    ],
)
def test_something_else_taken_out(words: str) -> None:
    assert each(f"{CUT}. {words}", "treatment") == {}


@pytest.mark.parametrize(
    "words",
    ["The superficialis stumps were stuck in scar and were removed.", "The FDS stumps were excised."],
)
def test_stumps_of_a_tendon_that_was_not_sewn(words: str) -> None:
    assert each("Small finger. FDP cut through. " + words, "treatment") == {"small FDS": "excised"}


@pytest.mark.parametrize(
    "words",
    ["The FDS stumps were resected by 2 mm.", "The FDP stumps were excised to good tendon."],
)
def test_stumps_cut_back(words: str) -> None:
    assert each("Small finger. FDP cut through. " + words, "treatment") == {}
