"""Letters written a day or more after the operation: the day told of operating, and not the day of the letter."""

import pytest
from reader_sentences import told

_HEADS = (
    "Wexcombe Hand Clinic\n8th September 2034\n\nDear Dr Ardenne,\n\n",
    "Aldmere, 8 September 2034\n\nDear colleague,\n\n",
    "Dear Dr Ardenne,\n\n8 September 2034\n\n",
)
_TOLD = (
    ("I took him to theatre on the 7th of September and repaired the FPL of the left thumb.", "2034-09-07"),
    ("We operated yesterday, under plexus anaesthesia. The FDP of the ring finger was repaired.", "2034-09-07"),
    ("I operated on him yesterday. The FDP of the ring finger was repaired.", "2034-09-07"),
    ("Yesterday I repaired the FDP of his ring finger.", "2034-09-07"),
    ("He came to theatre on 7 September. The FDP of the ring finger was repaired.", "2034-09-07"),
    ("His operation was done on the 7th of September. The FDP of the ring finger was repaired.", "2034-09-07"),
    ("Three days ago I repaired the FDP of his ring finger.", "2034-09-05"),
    ("The day before yesterday I operated on him and repaired the FDP of the ring finger.", "2034-09-06"),
    ("I operated on your patient today. The FDP of the ring finger was repaired.", "2034-09-08"),
    ("I saw him yesterday in the clinic. The FDP of the ring finger was repaired this morning.", "2034-09-08"),
)


@pytest.mark.parametrize("head", _HEADS)
def test_the_day_told_in_a_letter(head: str) -> None:
    missed = []
    for words, day in _TOLD:
        note = f"{head}{words}\n\nYours sincerely,\nA. Quillfeather"
        if str(told(note, "date", group="operation").get("", {}).get("date")) != day:
            missed.append(note)
    assert not missed


def test_yesterday_in_a_note_that_is_no_letter() -> None:
    note = "Op note 8 September 2034\nI repaired yesterday's second case first. FDP ring repaired with four strands."
    assert str(told(note, "date", group="operation")[""]["date"]) == "2034-09-08"
