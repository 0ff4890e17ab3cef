"""A consent told by what was talked about and a signature."""

import pytest
from reader_sentences import each

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


@pytest.mark.parametrize(
    "words",
    [
        "Consent obtained. Upper arm tourniquet 250 for 64 mins.",
        "Consented. Cefuroxime given.",
        "Informed consent. Arm prepped and draped.",
        "Consent taken. Risks of rupture explained.",
    ],
)
def test_the_operation_told_behind_a_consent(words: str) -> None:
    body = "FDP was through at the level of the joint. I took 2 mm off each side. A2 was preserved."
    note = f"Diagnosis: Laceration FDP right index, zone I.\n\nHistory: a hay knife.\n\n{words} {body}"
    assert each(note, "extent") == {"index FDP": "complete"}
    assert each(note, "finding", group="pulleys") == {"index A2": "intact"}


@pytest.mark.parametrize(
    "words",
    [
        "Consent: rupture and stiffness. The FDP could gap. A2 vented if needed.",
        "Consented. Knows that the A2 may be vented.",
    ],
)
def test_what_was_talked_of_is_not_the_operation(words: str) -> None:
    note = f"Diagnosis: Laceration FDP right index, zone I.\n\n{words}\n\nProcedure: FDP repaired."
    assert each(note, "finding", group="pulleys") == {}
    assert each(note, "gap") == {}
