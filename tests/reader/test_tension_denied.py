"""'Tension on the repair ... was nil': denied by the verb's answer, wherever it was looked for."""

import pytest
from reader_sentences import each

SEWN = "Right ring finger, zone II. FDP cut through, repaired with a 4-strand cruciate of 3-0 Ethibond. "


@pytest.mark.parametrize(
    "words",
    [
        "Tension on the repair, tested by drawing the wrist back passively, was nil.",
        "Tension at the suture line was none.",
        "Tension with the wrist straight was absent, and there was no gap.",
    ],
)
def test_tension_that_was_nil(words: str) -> None:
    assert each(SEWN + words, "tension") == {"ring FDP": "none"}


@pytest.mark.parametrize(
    "words",
    [
        "Tension on the repair, with the finger straight, was slight.",
        "Some tension on the repair, blood loss was nil.",
        "There was tension on the repair and the blood loss was nil.",
        "Tension on the repair; the gap was nil.",
    ],
)
def test_what_else_was_nil_denies_no_tension(words: str) -> None:
    assert each(SEWN + words, "tension") == {"ring FDP": "present"}
