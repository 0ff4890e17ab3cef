"""'No suture' said again of what was left is no word on the tendon a dictation goes on to."""

import pytest
from reader_sentences import told

FIFTY = "index finger the profundus was cut the superficialis was about fifty per cent cut and i left that alone "


@pytest.mark.parametrize(
    "note",
    [
        FIFTY + "no suture the ends of the profundus were nice and clean",
        "Ring finger. The FDS was nicked and I left it alone. No repair the FDP ends were ragged.",
    ],
)
def test_what_was_left_is_the_tendon_named_before(note: str) -> None:
    found = told(note, "treatment")
    assert {entry.split()[1] for entry in found} == {"FDS"}
    assert all(fields == {"treatment": "left"} for fields in found.values())


def test_no_suture_of_a_tendon_is_told_of_it() -> None:
    note = "Ring finger. The FDP was cut 20 %. No suture of the FDP was needed."
    assert told(note, "treatment") == {"ring FDP": {"treatment": "left"}}


@pytest.mark.parametrize(
    "words",
    [
        "The FDP was split over less than 20 per cent of its substance, which was disregarded.",
        "The 20 % nick in the profundus was disregarded.",
        "The FDP was frayed by 20 % and disregarded.",
        "A split of the FDP of 20 % was ignored.",
    ],
)
def test_a_cut_disregarded(words: str) -> None:
    assert told("Middle finger, zone III. " + words, "treatment") == {"middle FDP": {"treatment": "left"}}


def test_a_letter_disregarded_is_no_tendon() -> None:
    note = "Middle finger. FDP cut, repaired with 3-0 nylon. The casualty letter was disregarded."
    assert told(note, "treatment") == {"middle FDP": {"treatment": "repaired"}}
