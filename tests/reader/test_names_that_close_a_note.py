"""'Dr K Mokgethwa, MO Hand unit' on the last line signs a note; 'Dr Mokgethwa to review tomorrow' does not."""

import pytest
from reader_sentences import told

NOTE = (
    "OPERATION NOTE\nSurgeon: Dr K Mokgethwa   Assist: Dr Vosburg (intern)\nIndex FDP completely divided.\n"
    "Procedure\nFDP repaired with 3-0 Ethibond.\nPost op\nClinic 2 weeks for stitches.\n\n"
)


def signs(line: str) -> bool:
    return "signature" in told(NOTE + line, group="elements").get("", {})


@pytest.mark.parametrize(
    "line",
    [
        "Dr K Mokgethwa, MO Hand unit",
        "K Mokgethwa (bleep 4471)   d/w Mr Oxlade on phone",
        "Dr. Mokgethwa, senior physician",
        "Dr A Ni Chonaill, SHO to Mr Delahunt",
        "Garrett Amsel, M.D.  (dictated 11/12/2032, transcribed 11/13/2032)",
        "K Mokgethwa / dictated, not controlled",
        "Dr Vosburg (MCR on file) for Dr Mokgethwa",
    ],
)
def test_a_name_that_opens_the_last_line(line: str) -> None:
    assert signs(line)


@pytest.mark.parametrize(
    "line",
    [
        "Dr Mokgethwa to review tomorrow",
        "cc Dr Hallsworthy, GP",
        "Wound clinic, 2 weeks",
        "Not for early active as discussed, S weak.",
        "Wrist neutral, MO to check",
    ],
)
def test_a_last_line_that_signs_nothing(line: str) -> None:
    assert not signs(line)
