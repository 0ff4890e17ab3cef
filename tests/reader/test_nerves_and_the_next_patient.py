"""Nerves of a web and of a cut that still holds; the anaesthetic of somebody else."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "words",
    [
        "Common digital nerve of the 2nd webspace was contused and left alone.",
        "Common digital nerve to the second interspace bruised but in continuity, left alone.",
    ],
)
def test_a_nerve_of_a_web(words: str) -> None:
    found = told(f"Left middle finger. {words}", "extent", "treatment", group="injuries")
    assert found == {"common digital nerve": {"extent": "contused", "treatment": "left"}}


@pytest.mark.parametrize(
    "words",
    [
        "Ulnar digital nerve partly cut, fascicles still bridging - repaired with 9-0.",
        "Ulnar digital nerve half cut, some fibres bridging it; repaired with 9-0.",
    ],
)
def test_fascicles_that_bridge_are_no_conduit(words: str) -> None:
    found = told(f"Left thumb. {words}", "extent", "treatment", group="injuries")
    assert found == {"thumb digital nerve ulnar": {"extent": "partial", "treatment": "repaired"}}


def test_a_conduit_that_bridges() -> None:
    note = "Left thumb. Ulnar digital nerve cut through, a conduit bridging the 8 mm between its ends."
    assert each(note, "treatment", group="injuries") == {"thumb digital nerve ulnar": "conduit"}


@pytest.mark.parametrize("words", ["it was inspected and left alone", "they were seen and left alone"])
def test_inspected_and_left_alone(words: str) -> None:
    note = f"Right ring. The radial digital nerve had been nicked for a fifth of its width; {words}."
    assert each(note, "treatment", group="injuries") == {"ring digital nerve radial": "left"}


@pytest.mark.parametrize(
    ("words", "given"),
    [
        ("Dictating while the next one gets put to sleep, ours had a block only, no sedation.", "regional"),
        ("I dictate this as the next patient is given a general anaesthetic. Block alone.", "regional"),
        ("She was operated on the next day under general anaesthesia.", "general"),
    ],
)
def test_the_anaesthetic_of_the_next_patient(words: str, given: str) -> None:
    assert each(f"Left middle finger, FDP. {words}", "anaesthesia", group="operation") == {"": given}
