"""'The sutures glide well': of all that was sewn in the finger; of nothing where one caught or the skin is meant."""

import pytest
from reader_sentences import each

_HEAD = "Index finger. FDP and FDS cut through. FDP sutured with 4-0, four strand cruciate. "
_BOTH = {"index FDP": "free", "index FDS": "free"}


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("FDS sutured with 5-0. In the passive movement the sutures glide good through the sheath.", _BOTH),
        ("FDS sutured with 5-0. The sutures run freely under A2.", _BOTH),
        ("FDS was excised. The sutures glide without catching.", {"index FDP": "free"}),
        ("FDS sutured with 5-0. The sutures come out at two weeks.", {}),
    ],
)
def test_glide(words: str, expected: dict[str, object]) -> None:
    assert each(_HEAD + words, "glide") == expected


def test_one_that_caught() -> None:
    words = "FDS sutured with 5-0. The sutures glide but catch at A4."
    assert "free" not in each(_HEAD + words, "glide").values()


@pytest.mark.parametrize("words", ["FDS working normally preop. A4 intact.", "Tip numb pre-op. A4 intact."])
def test_sentence_ended_by_preop(words: str) -> None:
    assert each(_HEAD + words, "finding", group="pulleys") == {"index A4": "intact"}
