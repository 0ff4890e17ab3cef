"""A cut neither sewn nor trimmed, a length that only places a cut, what is told of the fingers of several tendons."""

import pytest
from reader_sentences import each, told


@pytest.mark.parametrize(
    "words",
    [
        "The nick in the superficialis was neither sutured nor trimmed.",
        "FDS 30 % cut, neither trimmed nor repaired.",
        "The partial cut of the FDS was neither repaired nor excised.",
    ],
)
def test_neither_of_two_deeds(words: str) -> None:
    note = "Ring finger. FDP cut through and repaired with 3-0 Ethibond. " + words
    assert each(note, "treatment") == {"ring FDP": "repaired", "ring FDS": "left"}


@pytest.mark.parametrize(
    "words",
    [
        "The radial digital nerve was neither repaired nor grafted.",
        "A3 was neither repaired nor excised.",
        "Neither the FDP nor the FDS gapped.",
    ],
)
def test_neither_of_something_else(words: str) -> None:
    note = "Ring finger. FDP and FDS cut through, both repaired with 3-0 Ethibond. " + words
    assert each(note, "treatment") == {"ring FDP": "repaired", "ring FDS": "repaired"}


@pytest.mark.parametrize(
    "words",
    [
        "The FDS was severed some 12 mm distal to the edge of A1.",
        "The FDS was cut through 15 mm proximal to the wrist crease, the FDP beside it.",
    ],
)
def test_how_far_off_a_cut_lay(words: str) -> None:
    note = "Middle finger. FDP cut through. " + words + " FDP: four strands 3-0, FDS: 4-0 Kessler."
    assert each(note, "purchase_mm") == {}


@pytest.mark.parametrize("words", ["biting 10 mm proximal and distal to the cut", "taking 10 mm of each end"])
def test_length_of_tendon_taken(words: str) -> None:
    note = f"Middle finger. FDP cut through and sewn with a four-strand cruciate of 3-0 Ticron, {words}."
    assert each(note, "purchase_mm") == {"middle FDP": (10, 10)}


SEWN = (
    "Index and ring fingers. FDP of both cut through and sewn with 3-0 Ethibond. The radial slip of the index FDS was"
    " cut through and sewn with 4-0 Prolene. "
)


@pytest.mark.parametrize(
    "words",
    [
        "I pulled in the palm and the two fingers touched it, without diastasis.",
        "Both fingers went down to the palm and back, no gap.",
    ],
)
def test_said_of_fingers(words: str) -> None:
    assert each(SEWN + words, "gap") == {"index FDP": "none", "ring FDP": "none"}


def test_said_of_all_tendons() -> None:
    assert len(told(SEWN + "No gap in any of the three repairs.", "gap")) == len(("FDP", "FDP", "FDS"))
