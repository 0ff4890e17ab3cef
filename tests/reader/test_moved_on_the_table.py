"""More ways of telling that a joint was moved for the patient, and that a tendon was pulled."""

import pytest
from reader_sentences import each

NOTE = "Left middle finger. FDP completely cut, sewn with four strands of 3-0 Prolene. "


@pytest.mark.parametrize(
    "text",
    [
        "Fingers brought fully straight on the table with no gap.",
        "When the tip was stretched straight no gap was seen.",
        "On extending the finger at the end there was no gap.",
        "The wrist being bent back and forth, the tip followed, no gap.",
        "Tested in theatre, passive only: no gap.",
    ],
)
def test_moved_by_the_surgeon(text: str) -> None:
    assert each(NOTE + text, "test") == {"middle FDP": "passive"}


def test_pulled() -> None:
    assert each(NOTE + "By traction in the wound it ran freely.", "test") == {"middle FDP": "traction"}


@pytest.mark.parametrize(
    "text",
    [
        "The finger was approached by extending the wound. No gap.",
        "On extending the incision the A2 was seen. No gap.",
        "Therapy: passive only for two weeks.",
    ],
)
def test_what_is_no_test(text: str) -> None:
    assert each(NOTE + text, "test") == {}
