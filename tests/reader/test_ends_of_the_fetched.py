"""'The profundus was brought out from under A2. The ends were clean': the ends of the tendon just got hold of."""

import pytest
from reader_sentences import each

CUT = "Small finger. The profundus was transected. The radial slip of the superficialis was transected as well. "


@pytest.mark.parametrize(
    "words",
    [
        "The profundus was brought out from under A2 with a catheter. The ends were clean.",
        "I fetched the profundus through the A1 window. The stumps were sharp.",
        "The FDP was milked down from the palm. Its ends were clean.",
    ],
)
def test_of_the_one_that_was_fetched(words: str) -> None:
    assert each(CUT + words, "ends") == {"small FDP": "clean"}


@pytest.mark.parametrize(
    "words",
    [
        "The tendons were brought out from under A2. The ends were clean.",
        "The hand was washed. The ends were clean.",
        "The profundus was brought out from under A2. The ends of both tendons were clean.",
    ],
)
def test_of_all_that_were_cut(words: str) -> None:
    assert set(each(CUT + words, "ends")) >= {"small FDP", "small FDS radial"}
