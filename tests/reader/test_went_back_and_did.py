"""'... with 4-0, and then I went back and did a second one' keeps its thread; a thread that went back does not."""

import pytest
from reader_sentences import told

CUT = "Little finger. Profundus cut through. "


@pytest.mark.parametrize(
    ("words", "size"),
    [
        ("Modified Kessler with 4-0 Prolene, and then went back and did a second one, four strands.", "4-0"),
        ("Modified Kessler with 3-0 Prolene, then I went back and tied it again.", "3-0"),
        ("A 3-0 Prolene went back on the tray and I used 4-0 Ethibond.", "4-0"),
        ("We opened a 3-0 Prolene but it went back. Modified Kessler with 4-0.", "4-0"),
    ],
)
def test_went_back(words: str, size: str) -> None:
    assert told(CUT + words, "size") == {"small FDP": {"size": size}}


def test_a_knot_on_the_front_and_no_hitching() -> None:
    words = "Sewn with 4-0 Prolene, a modified Kessler, the knot sits on the front. It ran with no hitching."
    assert told(CUT + words, "knot", "glide") == {"small FDP": {"knot": "external", "glide": "free"}}
