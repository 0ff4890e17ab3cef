"""Fingers named by numbers behind 'digits' or 'rays' as behind 'fingers': 'digits 2, 3 and 5 slid freely'."""

import pytest
from reader_sentences import each

_BODY = "Left hand. FDP of index, middle, ring and small complete; each sewn with a cruciate of 4-0 Ethibond.\n\n"
_NAMES = (
    ("digits 2, 3 and 5", "digit 4"),
    ("fingers 2, 3, and 5", "finger 4"),
    ("digits II, III and V", "digit IV"),
    ("digits 2/3/5", "digit 4"),
    ("rays 2, 3 and 5", "ray 4"),
    ("digits 2, 3, 5", "digit 4"),
)
_TOLD = (
    ("{} slid freely; {} still caught at A2.", "glide", "free", "catching"),
    ("c. After suture: {} glided freely, while {} caught at A2.", "glide", "free", "catching"),
    ("No gap in {}; 1 mm in {}.", "gap", "none", "seen"),
    ("{}: no gap. {}: gap 1 mm.", "gap", "none", "seen"),
)


@pytest.mark.parametrize(("several", "one"), _NAMES)
def test_several_and_one(several: str, one: str) -> None:
    missed = []
    for words, field, most, last in _TOLD:
        wanted = dict.fromkeys(("index FDP", "middle FDP", "small FDP"), most) | {"ring FDP": last}
        note = _BODY + words.format(several, one)
        if each(note, field) != wanted:
            missed.append(note)
    assert not missed


@pytest.mark.parametrize("words", ["The digits 5 mm apart. ", "Three rays 2 cm long. ", "Hand: digits 3, 4, 5.\n"])
def test_lengths_and_answers_name_no_finger(words: str) -> None:
    note = words + "The tendon was completely divided."
    assert not {"small FDP", "index FDP"} & set(each(note, "extent"))
