"""Pulleys named by one word, by a finger behind them or as a place that a stump had reached."""

import pytest
from reader_sentences import Shown, told


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Left thumb, FPL completely divided. Oblique looked at: intact.",
            {"thumb oblique": {"finding": "intact"}},
        ),
        (
            "Left thumb, FPL completely divided. Oblique preserved, A1 released.",
            {"thumb oblique": {"finding": "intact"}, "thumb A1": {"finding": "released"}},
        ),
        (
            "Left thumb, FPL completely divided.\nOblique [x] intact\n",
            {"thumb oblique": {"finding": "intact"}},
        ),
    ],
)
def test_the_oblique_pulley_by_its_own_sentence(note: str, expected: Shown) -> None:
    assert told(note, "finding", group="pulleys") == expected


@pytest.mark.parametrize(
    "note",
    [
        "Left thumb, FPL completely divided. Oblique laceration, opened further proximally.",
        "Left thumb, FPL completely divided. Oblique incision, extended and opened widely.",
    ],
)
def test_oblique_things_that_are_no_pulley(note: str) -> None:
    assert told(note, "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    "note",
    [
        (
            "Left ring finger, FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond. The "
            "proximal end had gone back under A2."
        ),
        "Left thumb, FPL completely divided. The proximal stump was gone as far as the A1 pulley.",
        (
            "Left ring finger, FDP completely divided, sewn with a four-strand cruciate of 3-0 Ethibond. The stump"
            " had gone past A1 into the palm."
        ),
    ],
)
def test_a_stump_gone_back_to_a_pulley(note: str) -> None:
    assert told(note, "finding", group="pulleys") == {}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        (
            "Middle and small fingers. FDP of both completely divided. A4 of small had been torn.",
            {"small A4": {"finding": "injured"}},
        ),
        (
            "Ring and little fingers. FDP of both completely divided. The A4 of the little was excised.",
            {"small A4": {"finding": "excised"}},
        ),
    ],
)
def test_a_short_name_behind_its_pulley(note: str, expected: Shown) -> None:
    assert told(note, "finding", group="pulleys") == expected
