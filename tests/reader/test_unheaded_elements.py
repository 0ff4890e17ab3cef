"""An operation that no heading of the note shows is to be looked at twice: the words taken for it may be none."""

import pytest

from notereader.reader import read

REASON = "no heading of the note shows it: these words were taken for it"


@pytest.mark.parametrize(
    "body",
    ["The profundus was repaired with a four-strand cruciate of 4-0 Prolene.", "FDP sewn, Adelaide, 3-0 Ethibond."],
)
def test_an_operation_told_in_the_body_alone_is_doubted(body: str) -> None:
    note = f"Left ring finger. FDP completely divided in zone II. {body}\n"
    assert REASON in read(note).elements["procedure"].look_twice


@pytest.mark.parametrize("heading", ["PROCEDURE: FDP repair, left ring finger.", "Operation performed: FDP repair."])
def test_one_that_a_heading_shows_is_not(heading: str) -> None:
    note = f"{heading}\n\nLeft ring finger. FDP completely divided in zone II. Four-strand cruciate of 4-0 Prolene.\n"
    assert read(note).elements["procedure"].look_twice == []


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("implants", "A 1.3 mm bone anchor was used for the insertion."),
        ("indication", "He could not bend the tip of the finger after a knife had slipped."),
    ],
)
def test_implants_and_indications_told_in_the_body_alone_are_doubted(name: str, words: str) -> None:
    note = f"Left ring finger. {words} FDP completely divided in zone I and put back to bone.\n"
    assert REASON in read(note).elements[name].look_twice


def test_other_parts_found_by_their_words_are_not() -> None:
    note = "Left ring finger. FDP completely divided. Skin was closed with 4-0 nylon. Blood loss was minimal.\n"
    assert all(not read(note).elements[name].look_twice for name in ("closure", "blood_loss"))
