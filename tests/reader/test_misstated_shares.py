"""A share of a cut that an addendum puts right, naming the share and no tendon."""

import pytest
from reader_sentences import each

NOTE = "Ring finger. FDP 55% cut, FDS 30% cut. FDP repaired with a cruciate of 4-0 Ticron.\n\nADDENDUM\n"


@pytest.mark.parametrize(
    "text",
    [
        "I wrote 55 per cent. The drawing and the photograph say 70.",
        "The cut was given as 55 %; it should read 70 %.",
        "In the note stands 55 percent. On the photograph it was 70.",
    ],
)
def test_the_share_put_right(text: str) -> None:
    assert each(NOTE + text, "extent_percent") == {"ring FDP": 70, "ring FDS": 30}


@pytest.mark.parametrize(
    "text",
    [
        "I wrote 55 per cent and stand by it. The ward has 70 beds.",
        "I wrote 45 per cent in another case; it was 70.",
    ],
)
def test_no_share_is_put_right(text: str) -> None:
    assert each(NOTE + text, "extent_percent")["ring FDP"] == 55
