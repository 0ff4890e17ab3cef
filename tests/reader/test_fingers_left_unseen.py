"""A neighbour of which a note only says that it was not looked at takes nothing that follows."""

import pytest
from reader_sentences import each

START = "Left small finger. FDP three quarters cut in zone II, repaired with 4-0 PDS. "
BEHIND = " Radial digital nerve: intact. Ulnar digital nerve contused."


@pytest.mark.parametrize(
    "words",
    [
        "FDP and FDS of the neighbouring ring finger not explored.",
        "The flexors of the middle finger were never exposed.",
        "The FDS of the ring was not looked at.",
    ],
)
def test_what_follows_is_of_the_finger_before(words: str) -> None:
    found = each(START + words + BEHIND, "extent", group="injuries")
    assert found == {"small digital nerve radial": "intact", "small digital nerve ulnar": "contused"}


def test_a_finger_worked_on_takes_what_follows() -> None:
    note = "Left ring and small fingers. " + START + "Ring: FDS not explored, FDP cut." + BEHIND
    found = each(note, "extent", group="injuries")
    assert found == {"ring digital nerve radial": "intact", "ring digital nerve ulnar": "contused"}
