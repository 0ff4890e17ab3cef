"""Several questions in one row of a form, each with its boxes, and deeds that a form only asks about."""

import pytest
from reader_sentences import each, told

SEWN = "Ring finger. FDP cut through and repaired with a 4-strand cruciate of 3-0 Ethibond.\n"


def test_each_question_of_a_row_has_its_own_answer() -> None:
    note = SEWN + "Check: [x] passive [ ] active     Gap: [ ] Y [x] N     Glide: [x] free [ ] catches\n"
    assert told(note, "test", "gap", "glide") == {"ring FDP": {"test": "passive", "gap": "none", "glide": "free"}}
    note = SEWN + "Tested: [ ] passive [x] active     Gap: [x] Y [ ] N     Gliding: [ ] free [x] catches\n"
    assert told(note, "test", "gap", "glide") == {"ring FDP": {"test": "active", "gap": "seen", "glide": "catching"}}


@pytest.mark.parametrize("row", ["Gap: [ ] Y [ ] N     Glide: [ ] free [ ] catches\n", "Gap: ____     Glide: ____\n"])
def test_questions_nobody_answered(row: str) -> None:
    assert told(SEWN + row, "gap", "glide") == {}


@pytest.mark.parametrize(
    ("row", "treatment"),
    [
        (
            "FDS: [ ] intact [x] partial 50%  [ ] complete    Repair: [ ] Y [x] N   If N: [x] trimmed [ ] left",
            "trimmed",
        ),
        ("FDS: [ ] intact [x] half cut    Repair: [ ] yes [x] no   If no: [ ] trimmed [x] left", "left"),
        ("FDS repair: [ ] Yes [x] No", "left"),
        ("FDS repair: [x] Yes [ ] No", "repaired"),
        ("FDS repaired: no, too thin.", "left"),
        ("FDS: half cut, repair: N", "left"),
        ("FDS half cut.\nRepair: no", "left"),
        ("FDS repair: no gap, 4-0 Ethibond Kessler.", "repaired"),
    ],
)
def test_a_repair_that_is_asked_about(row: str, treatment: str) -> None:
    assert each("Ring finger. FDP cut through.\n" + row + "\n", "treatment").get("ring FDS") == treatment


def test_the_core_behind_a_tendon_that_was_not_sewn() -> None:
    note = (
        "DIGIT: INDEX\n"
        " FDP:  [ ] intact [ ] partial ___% [x] complete    Repair: [x] Y [ ] N\n"
        " FDS:  [ ] intact [x] partial 40%  [ ] complete    Repair: [ ] Y [x] N   If N: [x] trimmed [ ] left\n"
        " Core:  strands 4   configuration: cruciate   calibre 3-0   material: Ethibond\n"
    )
    assert told(note, "strands", "size") == {"index FDP": {"strands": 4, "size": "3-0"}}


@pytest.mark.parametrize(
    ("note", "expected"),
    [
        ("Ring: FDP cut through.\nZone: II        Sub-zone: B\n", "IIB"),
        ("Ring: FDP cut through.\nZone: II   Subzone: C\n", "IIC"),
        ("Ring: FDP cut through.\nZone: II        Sub-zone: ____\n", "II"),
        ("Ring: FDP cut through.\nZone: III        Sub-zone: n/a\n", "III"),
    ],
)
def test_a_part_of_a_zone(note: str, expected: str) -> None:
    assert each(note, "zone") == {"ring FDP": expected}


@pytest.mark.parametrize(
    "note", ["Middle finger. If not repaired the FDS is trimmed.", "FDS middle: if no room, trim."]
)
def test_a_condition_stays_one(note: str) -> None:
    assert each("FDP and FDS of the middle finger cut.\n" + note, "treatment") == {}
