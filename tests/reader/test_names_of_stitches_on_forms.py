"""'Core suture:  name: ____   strands: 4': the name of a stitch asked for heads no particulars of the patient."""

import pytest
from reader_sentences import told

HEAD = "DIGIT: ring\nTENDON: FDP\n"


@pytest.mark.parametrize(
    "line",
    [
        "Core suture:  name: ________   strands: 4   caliber: 3-0   material: Mersilene",
        "Stitch   name: ____   strands: 4   caliber: 3-0   material: Ethibond",
        "Repair technique:  type: ________   strands: 4   caliber: 3-0   material: Ticron",
    ],
)
def test_the_line_is_of_the_suture(line: str) -> None:
    core = {"strands": 4, "size": "3-0", "material": "braided polyester"}
    assert told(HEAD + line, "strands", "size", "material") == {"ring FDP": core}


def test_the_name_of_a_person() -> None:
    note = "Name: withheld    DIGIT: ring\nTENDON: FDP\nstrands: 4"
    assert told(note, "strands") == {"ring FDP": {"strands": 4}}
