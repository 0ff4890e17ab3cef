"""How long ago a sentence opens with, beside what was done to another finger then: it is no repair of today."""

import pytest
from reader_sentences import each, told

_WHENS = (
    "Twenty-two months earlier",
    "Three years earlier",
    "The year before last",
    "Some years back",
    "About 14 months previously",
    "Eight weeks before this injury",
)
_DEEDS = (
    "the same hand had undergone repair of the small finger profundus by a four-strand technique",
    "he had had a repair of the small finger profundus with four strands",
    "the profundus of the small finger was sutured by another surgeon with a four-strand repair",
    "this patient underwent four-strand repair of the small finger FDP",
    "she had injured the small finger and its profundus was mended with four strands",
)
_TODAY = "A2 was kept. The superficialis was unscathed. The stump was sutured with a Kessler of 3-0 Prolene."


@pytest.mark.parametrize("deed", _DEEDS)
@pytest.mark.parametrize("when", _WHENS)
def test_another_finger_long_ago(when: str, deed: str) -> None:
    note = (
        f"Avulsion of the profundus of the left ring finger today. {when} {deed}.\n\nThe sheath was entered. {_TODAY}"
    )
    assert set(told(note)) == {"ring FDP", "ring FDS"}
    assert each(note, "finding", "pulleys") == {"ring A2": "intact"}


@pytest.mark.parametrize(
    "words",
    [
        "Three weeks earlier he had cut his ring FDP in zone II, and we repaired it with four strands.",
        "Three weeks earlier he had cut his ring FDP with a knife; it was repaired today with four strands.",
        "Two weeks earlier he cut the ring finger. The FDP was repaired with four strands.",
    ],
)
def test_a_cut_of_weeks_ago_is_mended_now(words: str) -> None:
    assert each(words, "strands") == {"ring FDP": 4}
