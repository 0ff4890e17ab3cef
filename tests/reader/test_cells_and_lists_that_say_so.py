"""Cells that say a tendon was cut, left or trimmed whatever their title asks, and tests of the tendons listed."""

import pytest
from reader_sentences import each, told

GRID = """Digit  | Tendon | Found                 | Core                    | Edge stitch
-------+--------+-----------------------+-------------------------+---------------------
Ring   | FDP    | all cut, clean        | Adelaide 3-0 Ethibond   | 6-0 nylon, cross-st.
Ring   | FDS    | divided, ragged       | {fate}      | -
Small  | FDP    | 30% cut               | {other}          | none
"""


@pytest.mark.parametrize(
    ("fate", "other"), [("not repaired, left", "none, trimmed"), ("left unsutured", "trimmed only")]
)
def test_a_fate_under_another_title(fate: str, other: str) -> None:
    note = GRID.format(fate=fate, other=other)
    treatments = each(note, "treatment")
    assert treatments == {"ring FDP": "repaired", "ring FDS": "left", "small FDP": "trimmed"}
    assert each(note, "extent") == {"ring FDP": "complete", "ring FDS": "complete", "small FDP": "partial"}
    assert each(note, "peripheral_pattern") == {"ring FDP": "cross-stitch"}


SEWN = "Ring FDP, small FDP and middle FDS cut through and sewn with 3-0 Ethibond.\n"


@pytest.mark.parametrize(
    "test",
    [
        "Table test (pulling on each tendon in the wound): ring FDP and small FDP, no gap, both free.",
        "Pulled on each repair in turn: small FDP and ring FDP, no gap, both free.",
    ],
)
def test_only_those_listed_were_tested(test: str) -> None:
    results = {"gap": "none", "glide": "free", "test": "traction"}
    assert told(SEWN + test, "gap", "glide", "test") == {"ring FDP": results, "small FDP": results}


def test_one_result_first_is_no_list_of_those_tested() -> None:
    note = SEWN + "Pulled on each repair: ring FDP gaps about 1 mm, accepted. Others no gap."
    assert set(each(note, "test").values()) == {"traction"}
    assert len(each(note, "test")) == 3


@pytest.mark.parametrize(
    "aside", ["as it had been said to be the first time", "as is said to be the rule", "as in the first operation"]
)
def test_an_aside_with_as(aside: str) -> None:
    note = f"Middle FDP ruptured, sewn again with 3-0. FDS was intact, {aside}, and I did not disturb it."
    assert each(note, "extent")["middle FDS"] == "intact"


@pytest.mark.parametrize("sound", ["er,", "um,", "erm,"])
def test_the_sounds_of_a_speaker_who_thinks(sound: str) -> None:
    note = (
        f"Ring FDP, {sound} cut right through, ends, {sound} ragged. Repaired with, {sound} four strands of 3-0 Ticron."
    )
    assert told(note, "extent", "ends", "strands", "size") == {
        "ring FDP": {"extent": "complete", "ends": "ragged", "strands": 4, "size": "3-0"}
    }


def test_the_emergency_room_is_no_such_sound() -> None:
    assert each("Seen in the ER, FDP of the ring cut through. Repaired with 3-0.", "extent") == {"ring FDP": "complete"}


@pytest.mark.parametrize("depth", ["the depth of the wound", "the floor of the wound"])
def test_how_far_a_tendon_was_followed(depth: str) -> None:
    assert each(f"Left small finger. FDP was traced through {depth} and was intact.", "extent") == {
        "small FDP": "intact"
    }


@pytest.mark.parametrize("cell", ["all cut, ragged, 2 mm off, sewn", "cut through, ragged, 2 mm off"])
def test_a_length_off_in_a_cell(cell: str) -> None:
    rows = [("FINGER", "FDP", "FDS"), ("ring", cell, "intact"), ("small", "intact", "intact"), ("index", "intact", "-")]
    note = "\n".join(f"{a:8} | {b:32} | {c}" for a, b, c in rows)
    assert each(note, "trimmed_mm") == {"ring FDP": 2}
