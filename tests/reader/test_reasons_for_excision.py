"""Why a tendon was cut out, told behind a dash or in brackets with a 'not', and what denies that it was."""

import pytest
from reader_sentences import each

_HEAD = "Left index finger. FDP and FDS transected. FDP repaired with a cruciate of 3-0. "


@pytest.mark.parametrize(
    "words",
    [
        "Index FDS excised - not enough room.",
        "FDS resected (not enough space under the pulley).",
        "FDS excised - not repairable.",
    ],
)
def test_reason(words: str) -> None:
    assert each(_HEAD + words, "treatment") == {"index FDP": "repaired", "index FDS": "excised"}


@pytest.mark.parametrize(
    "words", ["FDS excised - not needed.", "FDS excised - no.", "FDS tenodesed - not enough length."]
)
def test_denied(words: str) -> None:
    assert each(_HEAD + words, "treatment") == {"index FDP": "repaired"}
