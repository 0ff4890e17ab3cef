"""Fingers that the thumb only comes to, things that are small or little, and whose catching was ended."""

import pytest
from reader_sentences import each, told

GRAFT = "Thumb FPL was grafted. "


@pytest.mark.parametrize(
    "words",
    [
        "Its tension was set so that tip meets index. It ran under the A1 pulley, which was not touched.",
        "The thumb pad met the middle finger and A1 was not touched.",
        "The tip of the thumb came to the index pulp. A1 was not touched.",
        "The thumb was opposed to the ring finger. A1 was not touched.",
    ],
)
def test_a_finger_that_the_thumb_meets(words: str) -> None:
    assert each(GRAFT + words, "finding", group="pulleys") == {"thumb A1": "intact"}


def test_a_finger_of_its_own() -> None:
    note = "FPL of the thumb repaired. The index was opened too. A1 of the index was not touched."
    assert each(note, "finding", group="pulleys") == {"index A1": "intact"}


def test_a_wound_that_reaches_a_finger() -> None:
    note = "The wound at the thumb tip reached the index. Index FDP cut completely."
    assert each(note, "extent") == {"index FDP": "complete"}


@pytest.mark.parametrize("words", ["little tag off the surface, tiny", "small nick", "small flap, 20%"])
def test_how_small_a_thing_is(words: str) -> None:
    assert set(told(f"FDS to ring - {words}.", "extent")) <= {"ring FDS"}


def test_little_is_a_finger_beside_a_tendon() -> None:
    assert each("FDS to ring - cut completely. FDS to little - not injured.", "extent")["small FDS"] == "intact"


@pytest.mark.parametrize(
    "words",
    [
        "The FDP caught at A3. A tag of the FDS repair was trimmed and the catch disappeared; it then ran freely.",
        "The FDP snagged. I took down a knot on the FDS and the snagging was gone, with smooth gliding.",
        "The FDP caught on A2. I shaved a fold of the FDS suture line and the catching was gone, the motion free.",
    ],
)
def test_the_one_that_caught(words: str) -> None:
    assert each(f"Ring FDP and FDS repaired. {words}", "glide") == {"ring FDP": "free"}


def test_each_its_own_run() -> None:
    note = "Ring FDP and FDS repaired. The FDP caught at A3. The FDS glided freely."
    assert each(note, "glide") == {"ring FDP": "catching", "ring FDS": "free"}
