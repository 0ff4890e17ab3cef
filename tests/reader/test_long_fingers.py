"""'LF' is the long finger where the note says so, and the little one elsewhere. Common practice, no source."""

import pytest
from reader_sentences import told


@pytest.mark.parametrize(
    ("words", "finger"),
    [
        ("R hand. IF + SF intact. FDP LF cut right through.", "middle"),
        ("Right long finger, zone II. LF FDP completely cut.", "middle"),
        ("Right little finger, zone II. LF FDP completely cut.", "small"),
        ("Right LF, zone II. FDP completely cut. The wound is 3 cm long.", "small"),
        ("Right MF normal. LF: FDP completely cut. SF wound superficial.", "small"),
    ],
)
def test_lf(words: str, finger: str) -> None:
    found = {place for place, facts in told(words, "extent").items() if facts["extent"] == "complete"}
    assert found == {f"{finger} FDP"}
