"""'Hx' and 'Dx' that head a line without a mark, assistants told elsewhere, and short words of a theatre list."""

import pytest
from reader_sentences import told


def _elements(words: str) -> set[str]:
    return set(told(words, group="elements").get("", {}))


@pytest.mark.parametrize(
    ("words", "element"),
    [
        ("Surgeon: Mr W\nHx 17F - fell on rocks, clicking.\nFDP cut.", "indication"),
        ("Dx partial flexor injury R little finger\nFDP of small finger cut through.", "diagnosis"),
        ("SURGEON Miss C     ASSISTANTS Mr B, Dr N\nFDP cut.", "assistant"),
        ("Done by: SpR (G.L.), consultant in the next theatre\nFDP cut.", "surgeon"),
        ("Cefuroxime stat. Tourn 230mmHg, 39 mins.", "tourniquet"),
        ("Oral and written information, he agrees to operation.", "consent"),
        ("Surgeon Mr P, anaes on call team.", "anaesthetist"),
        ("22 yr old student. FDP not working, tip sensate.", "indication"),
        ("TQ down, pink. 5-0 Vic Rapide. Jelonet.", "closure"),
    ],
)
def test_shown(words: str, element: str) -> None:
    assert element in _elements(words)


@pytest.mark.parametrize("words", ["Chief surgeon and assistants: as per register", "With assistants as per list."])
def test_no_assistant(words: str) -> None:
    assert "assistant" not in _elements(words)


@pytest.mark.parametrize("words", ["Anaesth type ...... GENERAL", "Type of anaesth: General"])
def test_anaesthetic(words: str) -> None:
    assert told(words, "anaesthesia", group="operation")[""] == {"anaesthesia": "general"}
