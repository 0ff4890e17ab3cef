"""'FDP repaired on 4 March' in a note of a revision in April: what was done then is history."""

import pytest
from reader_sentences import each, told

CORE = "FDP re-sutured with a four-strand Adelaide of 3-0 Ethibond."


@pytest.mark.parametrize(
    ("before", "behind"),
    [
        (
            "FDP and FDS of the left ring finger sutured on 2 March 2031 (two-strand Kessler, 5-0 nylon). ",
            "Revision 20 March 2031. ",
        ),
        ("Left ring finger, FDP and FDS repaired 2/3/2031, two-strand Tajima, 5-0. ", "Re-exploration 20/3/2031. "),
        (
            "In the year 2029 a two-strand Kessler of 5-0 nylon was put into the FDP of the left ring finger. ",
            "Operated 2 March 2031. ",
        ),
    ],
)
def test_a_repair_of_a_day_before_the_revision_is_history(before: str, behind: str) -> None:
    shown = told(before + behind + "Ring finger: FDP ruptured. " + CORE, "strands", "size", "treatment")
    assert shown == {"ring FDP": {"strands": 4, "size": "3-0", "treatment": "repaired"}}


@pytest.mark.parametrize(
    "words",
    [
        "FDP of the left ring finger repaired on 2 March 2031 with a two-strand Kessler.",
        "Date: 2 March 2031. FDP of the left ring finger cut, repaired on 2 March 2031 with a two-strand Kessler.",
    ],
)
def test_a_repair_of_this_day_is_none(words: str) -> None:
    assert each(words, "strands") == {"ring FDP": 2}


@pytest.mark.parametrize(
    "words",
    [
        'The wording of the printed sheet, "eight-strand core", does not apply to this finger.',
        'Our template says "eight-strand core"; "eight-strand core" does not hold here.',
    ],
)
def test_a_quoted_wording_that_does_not_apply(words: str) -> None:
    note = f"Left ring finger. FDP cut through, sutured with 3-0 Ethibond. {words}"
    assert not each(note, "strands")
