"""'Addendum: the suture was 4-0 Supramid': of the tendon, though the skin was sewn last above it."""

import pytest
from reader_sentences import told

NOTE = "FDP ring was repaired with a 3-0 Ticron Savage. Skin closed with 5-0 nylon.\n\nADDENDUM\n"


@pytest.mark.parametrize(
    "text",
    [
        "I correct the note. The suture was 4-0 Prolene. We asked for 3-0 and it was not in the room.",
        "The thread used was a 4-0 Prolene.",
    ],
)
def test_the_suture_is_the_core(text: str) -> None:
    assert told(NOTE + text, "size", "material")["ring FDP"] == {"size": "4-0", "material": "polypropylene"}


@pytest.mark.parametrize(
    "text", ["The skin suture was 4-0 Prolene.", "The skin was closed again. The suture was 4-0 Prolene."]
)
def test_a_suture_of_the_skin(text: str) -> None:
    assert told(NOTE + text, "size", "material")["ring FDP"] == {"size": "3-0", "material": "braided polyester"}
