"""Ends that were 'left as found' are no tendon that was left."""

import pytest
from reader_sentences import each

NOTE = "The FDP of the middle and ring fingers was cut and repaired with a modified Kessler of 4-0 Ticron. "


@pytest.mark.parametrize(
    "text",
    [
        "The middle profundus ends were clean, those of the ring were left as found.",
        "The ends of the ring FDP were left as they were.",
        "The stumps of the ring FDP were left alone.",
    ],
)
def test_ends_left_as_they_were(text: str) -> None:
    assert each(NOTE + text, "treatment") == {"middle FDP": "repaired", "ring FDP": "repaired"}


def test_a_tendon_left() -> None:
    note = "FDP of the ring repaired with 4-0 nylon, that of the small was left as found."
    assert each(note, "treatment") == {"ring FDP": "repaired", "small FDP": "left"}
