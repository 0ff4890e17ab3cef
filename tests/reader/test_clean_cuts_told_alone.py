"""How the ends were, told in a sentence or a clause of its own behind what was cut."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "text",
    [
        "Left index finger. FDP and FDS fully cut in zone II. Tidy cut.",
        "Left index finger. Profundus and superficialis were completely divided. All cuts were clean.",
        "Left index finger. FDP and FDS were severed, sharply and at one level.",
        "Left index finger. FDP and FDS were completely cut, both tendons clean-ended.",
        "Left index finger. FDP and FDS were transected clean.",
    ],
)
def test_clean_cuts(text: str) -> None:
    assert each(text, "ends") == {"index FDP": "clean", "index FDS": "clean"}


@pytest.mark.parametrize(
    "text",
    [
        "Left index finger. FDP and FDS were chewed through in zone II.",
        "Left index finger. FDP and FDS completely cut, edges torn.",
    ],
)
def test_ragged_cuts(text: str) -> None:
    assert each(text, "ends") == {"index FDP": "ragged", "index FDS": "ragged"}


@pytest.mark.parametrize(
    "text",
    [
        "Left index finger. FDP cut right through, FDS too. The wound was clean.",
        "Left index finger. The radial digital nerve was completely divided. Clean cut. FDP fully divided.",
        "Left index finger. FDP was cut clean through, FDS too.",
        "Left index finger. FDP intact. Clean.",
    ],
)
def test_what_is_clean_of_something_else(text: str) -> None:
    assert each(text, "ends") == {}
