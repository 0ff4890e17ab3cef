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
