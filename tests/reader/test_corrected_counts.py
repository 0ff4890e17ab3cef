"""Strand counts and sizes that a note puts right, and remarks on another patient's."""

import pytest
from reader_sentences import told

SEWN = "Ring finger. FDP completely divided and repaired with a six-strand core of 3-0 nylon.\n\nADDENDUM\n"


@pytest.mark.parametrize(
    "words",
    [
        "Strands should read four and not six.",
        "I wrote six strands; it was four.",
        "Not six strands but four.",
        "For six strands read four.",
        "The core was four strands, not six. The six-strand case was the patient before.",
        "It had four strands. Six strands were put into the previous patient.",
    ],
)
def test_the_count_put_right(words: str) -> None:
    assert told(SEWN + words, "strands") == {"ring FDP": {"strands": 4}}


@pytest.mark.parametrize("words", ["It had six strands in the end.", "Six strands were placed, not seen on the film."])
def test_a_count_repeated(words: str) -> None:
    assert told(SEWN + words, "strands") == {"ring FDP": {"strands": 6}}


@pytest.mark.parametrize(
    "words", ["The core stitch was 3-0 Prolene, not 2-0.", "Correction: the suture was 3-0, not 2-0."]
)
def test_the_size_of_a_pull_out_put_right(words: str) -> None:
    note = (
        "Ring finger. FDP avulsed. A 2-0 Prolene was drawn through the bone as a pull-out over a button.\n\nADDENDUM\n"
    )
    assert told(note + words, "size") == {"ring FDP": {"size": "3-0"}}


@pytest.mark.parametrize(
    "words", ["Reattached to bone with 2-0 Prolene.", "It was reinserted into the bone with 3-0 nylon."]
)
def test_sewn_to_bone_without_a_name(words: str) -> None:
    assert told(f"Ring finger. FDP avulsed. {words}", "treatment") == {"ring FDP": {"treatment": "reinserted"}}
