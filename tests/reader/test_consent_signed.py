"""A consent told by what was talked about and a signature."""

import pytest

from notereader.reader import read


@pytest.mark.parametrize(
    "words",
    [
        "Knows about late rupture and cold intolerance, signed.",
        "Agreed + signed.",
        "Informed, signature is there.",
        "Talked: rupture, adhesions, a tenolysis. Signed.",
    ],
)
def test_a_consent_told_by_its_signature(words: str) -> None:
    record = read(f"Ring finger. {words} FDP divided in zone II and repaired with 3-0 Ethibond. No gap. Skin closed.")
    assert "consent" in record.elements


@pytest.mark.parametrize("words", ["Typed and signed by the registrar.", "Signed electronically."])
def test_a_note_signed_is_no_consent(words: str) -> None:
    assert "consent" not in read(f"Ring FDP divided and repaired with 3-0 Ethibond. No gap. {words}").elements
