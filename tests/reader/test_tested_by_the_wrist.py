"""Repairs tested by moving the wrist, and words of movement that tell of no test."""

import pytest
from reader_sentences import each

SEWN = "Ring finger. FDP completely divided and repaired with a four-strand cruciate of 3-0 Prolene. "


@pytest.mark.parametrize(
    "words",
    [
        "On moving the wrist up and back, the profundus slid beneath its pulleys and no gap could be seen.",
        "With the wrist carried from full flexion to extension, the repair did not gap.",
        "With the wrist dropped back the tip came down, and the join slipped through A4 without catching.",
        "Tenodesis gave a full curl, and the tendon ran without catching.",
        "On wrist tenodesis the tip bent and straightened, no gap.",
        "On pulling the finger through its passive range there was no catching.",
        "Pulling the finger through its range, no gap was seen.",
        "I let the wrist flex and extend on the table and saw no gap.",
    ],
)
def test_the_wrist_moves_the_finger(words: str) -> None:
    assert each(SEWN + words, "test") == {"ring FDP": "passive"}


@pytest.mark.parametrize(
    "words",
    [
        "It came together without gapping, with the wrist flexed a little.",
        "No gap was seen with the DIP flexed.",
        "Dorsal slab with the wrist in 20 degrees of flexion. No gap.",
        "Tension was set by tenodesis of the wrist so that the fingertip lay right.",
    ],
)
def test_how_the_wrist_lay_is_no_test(words: str) -> None:
    assert each(SEWN + words, "test") == {}


@pytest.mark.parametrize(
    "words",
    [
        "A1 was split so the repair doesn't jam there on full fist. Gave the repair a firm tug, no gap.",
        "A3 was opened so that it would not catch when making a fist. Tugged on the repair: no gap.",
    ],
)
def test_what_is_to_be_spared_is_no_test(words: str) -> None:
    assert each(SEWN + words, "test") == {"ring FDP": "traction"}


@pytest.mark.parametrize(
    ("words", "value"),
    [
        ("The patient bent it with the wrist back. No gap.", "active"),
        ("Pulling on the tendon at the wrist, no gap.", "traction"),
    ],
)
def test_who_bends_or_pulls_beside_the_wrist_decides(words: str, value: str) -> None:
    assert each(SEWN + words, "test") == {"ring FDP": value}
