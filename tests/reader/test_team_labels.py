"""Who operated, helped and gave the anaesthetic, told by short labels at the head of a note."""

import pytest

from notereader.reader import read

REST = "\nFDP repair left ring finger.\n\nFDP cut through in zone II. Four-strand repair of 3-0 Ethibond.\n"


@pytest.mark.parametrize(
    ("line", "elements"),
    [
        ("Reg: Vanterpool", ["surgeon"]),
        ("LEAD SURG   VANTERPOOL, R         GRADE  CONS", ["surgeon"]),
        ("Surg HALVERSTOCK", ["surgeon"]),
        ("op: Jannerat / ass: none / anaesth: Lohmeyer-Witt", ["surgeon", "assistant", "anaesthetist"]),
        ("Quillane (op) / Derwin (asst) / Obale (anaes)", ["surgeon", "assistant", "anaesthetist"]),
        ("Eikeland (attg) + Sato-Brandt (res)", ["surgeon", "assistant"]),
        ("Surgeon: Mr Lisle\nRegistrar: Dr Ngaio Pettigrove", ["surgeon", "assistant"]),
        ("Operated on the second of September 2032 by Professor Haugstad.", ["surgeon"]),
    ],
)
def test_a_name_beside_a_label_is_of_the_team(line: str, elements: list[str]) -> None:
    found = read(f"OP NOTE 12 Nov 2032\n{line}{REST}").elements
    assert [name for name in elements if name not in found] == []


@pytest.mark.parametrize(
    "line",
    [
        "Op: exploration and repair",
        "Anaes: General",
        "BRIEF OP NOTE (resident)",
        "Operator: SpR Wintergale                 Assistant: ______________",
    ],
)
def test_what_is_no_name_beside_a_label_is_nobody(line: str) -> None:
    found = read(f"HAND UNIT 12 Nov 2032\n{line}{REST}").elements
    assert not {"assistant", "anaesthetist"} & found.keys()
