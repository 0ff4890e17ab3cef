"""The day of the injury told by the day of the operation, or in words that look like another time or place."""

import pytest
from reader_sentences import told


def injury_date(note: str) -> object:
    return told(note, "injury_date", group="operation").get("", {}).get("injury_date")


@pytest.mark.parametrize(
    ("sentence", "expected"),
    [
        ("Indication: she put her hand through a window yesterday.", "2032-05-09"),
        ("Indication: circular saw accident this morning.", "2032-05-10"),
        ("History: hockey player. On 8 May 2032 another player's skate blade ran across the hand.", "2032-05-08"),
        ("History: as you will remember, a jar had shattered in his hand on 7 May 2032.", "2032-05-07"),
        ("Indication: cabinet maker, hand slipped into the blade earlier today.", "2032-05-10"),
        ("History: a saw injury earlier on this afternoon.", "2032-05-10"),
        # Not told, or not of this injury.
        ("History: glass wound. Consent signed today, including stiffness and nerve injury.", None),
        ("History: knife injury repaired elsewhere, seen earlier, and again today.", None),
        ("Indication: flexor tendon laceration. She was seen yesterday.", None),
        ("Previous operation: repaired at another hospital on 3 May 2032 after a knife wound.", None),
    ],
)
def test_the_day_of_the_injury(sentence: str, expected: str | None) -> None:
    assert injury_date(f"Date of operation: 10 May 2032\n{sentence}\nFindings: FDP cut, ring finger.") == expected


@pytest.mark.parametrize(
    ("words", "day"),
    [
        ("Grabbed a mandoline blade two days before surgery.", "2031-02-17"),
        ("He closed his hand on a falling pane the evening prior to surgery.", "2031-02-18"),
        ("Cut by a knife one day before surgery.", "2031-02-18"),
    ],
)
def test_days_before_surgery(words: str, day: str) -> None:
    note = f"DATE OF PROCEDURE: 19 February 2031\n{words}\nRing FDP cut through.\n"
    assert str(injury_date(note)) == day


def test_seen_two_days_before_surgery() -> None:
    note = "DATE OF PROCEDURE: 19 February 2031\nHe was seen in the clinic two days before surgery.\nRing FDP cut.\n"
    assert injury_date(note) is None


def test_a_story_below_a_long_list_of_diagnoses() -> None:
    head = "Date of operation: 10 May 2032\nPostoperative diagnoses\n"
    listed = "".join(f"{n}. Laceration of the superficialis, index finger.\n" for n in range(1, 12))
    note = f"{head}{listed}Indications: his hand slipped into the blade earlier today.\nFindings: FDP cut."
    assert injury_date(note) == "2032-05-10"
