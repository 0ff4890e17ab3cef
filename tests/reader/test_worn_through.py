"""A tendon that a plate or a bone has worn through: cut in two without a knife."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "words",
    [
        "The FPL had worn right through on the edge of the plate",
        "The FPL was rubbed through by a screw at the wrist",
        "The FPL had chafed clean through",
        "At the wrist the FPL had attritionally ruptured",
    ],
)
def test_a_tendon_worn_through(words: str) -> None:
    note = f"Left thumb. {words} and both its ends were frayed."
    assert told(note, "extent", "ends") == {"thumb FPL": {"extent": "complete", "ends": "ragged"}}


@pytest.mark.parametrize("words", ["was worn but not through", "was rubbed thin", "had worn the plate smooth"])
def test_a_tendon_only_worn(words: str) -> None:
    assert each(f"Left thumb. The FPL {words}.", "extent") == {}
