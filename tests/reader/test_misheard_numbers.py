"""Numbers of strands and sizes that a dictation writes as words that sound alike."""

import pytest
from reader_sentences import told

HEAD = "Left index finger. FDP cut through. It was repaired "


@pytest.mark.parametrize(
    ("words", "facts"),
    [
        ("with a for strand core of for oh Ethibond.", {"strands": 4, "size": "4-0"}),
        ("with a fore strand core of three oh Ethibond.", {"strands": 4, "size": "3-0"}),
        ("with a too strand core of tree oh Ethibond.", {"strands": 2, "size": "3-0"}),
        ("with a six stand core of three oh Ethibond.", {"strands": 6, "size": "3-0"}),
        ("with a for stand repair of 3-0 Ethibond.", {"strands": 4, "size": "3-0"}),
    ],
)
def test_heard(words: str, facts: dict[str, object]) -> None:
    assert told(HEAD + words, "strands", "size") == {"index FDP": facts}


@pytest.mark.parametrize(
    "words",
    ["by suturing it to strands of scar.", "and kept for strands to be added.", "on a stand core side up."],
)
def test_the_words_themselves(words: str) -> None:
    assert told(HEAD + words, "strands", "size") == {}
