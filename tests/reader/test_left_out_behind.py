"""'No gap in any repair, FCU excepted': a name that the words behind it take out of what is said of all."""

import pytest
from reader_sentences import each

CUT = "FPL, FCU and index FDP repaired. "


@pytest.mark.parametrize(
    "tested",
    [
        "Traction on each repaired tendon proximally, FCU excepted, moved the corresponding finger without gapping.",
        "All repairs, the FCU excluded, were pulled and none gapped.",
        "Passive motion showed no gap in any repair, FCU excepted.",
        "With the FCU left out, each repair was pulled and none gapped.",
    ],
)
def test_no_gap_in_all_but_one(tested: str) -> None:
    assert each(CUT + tested, "gap") == {"thumb FPL": "none", "index FDP": "none"}


def test_a_finger_left_out() -> None:
    note = "Ring and middle FDP repaired. The FDP repairs, ring excepted, glided freely."
    assert each(note, "glide") == {"middle FDP": "free"}


@pytest.mark.parametrize(
    "sewn",
    [
        "Index and ring FDP cut and repaired. Held apart, the FDP ends were clean.",
        "Index and ring FDP cut and repaired. The FDP ends were clean; the stumps lay apart.",
    ],
)
def test_words_that_leave_nobody_out(sewn: str) -> None:
    assert each(sewn, "ends") == {"index FDP": "clean", "ring FDP": "clean"}
