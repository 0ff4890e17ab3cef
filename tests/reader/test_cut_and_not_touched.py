"""'A quarter torn, not touched': a cut that was left; 'untouched' alone tells of a tendon that is whole."""

import pytest
from reader_sentences import told

RING = "MIDDLE FINGER\nFDS: 90 % cut, removed\nRING FINGER\n"


@pytest.mark.parametrize(
    ("words", "share"),
    [
        ("FDS: 1/4 torn, not touched", 25),
        ("FDS: 30 % torn, untouched", 30),
        ("The FDS was a third cut and was left untouched.", 33),
        ("FDS cut through a fifth of its width; it was not touched.", 20),
    ],
)
def test_a_cut_that_was_not_touched_was_left(words: str, share: int) -> None:
    shown = told(RING + words, "extent", "extent_percent", "treatment")["ring FDS"]
    assert shown == {"extent": "partial", "extent_percent": share, "treatment": "left"}


@pytest.mark.parametrize(
    "words", ["FDS: not touched", "FDP half cut, FDS untouched.", "FDP cut, but the FDS untouched"]
)
def test_another_tendon_not_touched_is_whole(words: str) -> None:
    assert told(RING + words, "extent", "treatment")["ring FDS"] == {"extent": "intact"}
