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


@pytest.mark.parametrize(
    "words",
    [
        "The profundus was divided and the end was sitting under the A3 pulley, swollen and rather frayed.",
        "The profundus had come off completely, and its stump was found lying in the palm, thickened and ragged.",
    ],
)
def test_how_an_end_was_behind_where_it_was(words: str) -> None:
    assert each("Ring finger. " + words, "ends") == {"ring FDP": "ragged"}


def test_a_pulley_behind_the_comma_is_no_end() -> None:
    words = "Ring finger. The profundus was divided. The end lay beneath the A2 pulley as always, A2 frayed."
    assert each(words, "ends") == {}


@pytest.mark.parametrize("words", ["the cut is even and sharp", "the cut was smooth", "the division sharp and tidy"])
def test_an_even_cut(words: str) -> None:
    note = f"FCU 70% cut, {words}. FCU repaired with a 3-0 Ethibond Kessler."
    assert each(note, "ends") == {"FCU": "clean"}
    assert each(note, "mechanism", group="operation") == {}


def test_an_even_cut_of_the_skin() -> None:
    assert each("The skin cut was smooth. Ring FDP intact.", "ends") == {}
