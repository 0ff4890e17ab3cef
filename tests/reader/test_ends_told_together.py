"""'The ends were ragged' behind several cut tendons is said of all of them, unless the ends have an owner."""

import pytest
from reader_sentences import each


@pytest.mark.parametrize(
    "remark",
    [
        "The blade had gone through both the FDP and the FDS. The ends were ragged and I took 3 mm off the profundus.",
        "Both tendons had been divided completely. The edges were ragged and 2 mm of the profundus was cut away.",
    ],
)
def test_what_is_done_to_one_behind(remark: str) -> None:
    assert each("Ring finger, zone 2. " + remark, "ends") == {"ring FDP": "ragged", "ring FDS": "ragged"}


def test_several_fingers_of_one_paragraph() -> None:
    note = (
        "The index FDP was cut through completely. The middle FDS was cut through completely. All this was zone III. "
        "The stumps were clean and smooth."
    )
    assert each(note, "ends") == {"index FDP": "clean", "middle FDS": "clean"}


@pytest.mark.parametrize(
    "note",
    [
        "Ring finger. FDS cut through. The FDP was cut through and its ends were ragged.",
        "Ring finger.\n1. FDS: cut through.\n2. FDP: cut through. Ragged ends.",
        "Ring finger. FDS cut through completely. FDP cut through completely, the ends of the FDP were ragged.",
    ],
)
def test_ends_with_an_owner(note: str) -> None:
    assert each(note, "ends") == {"ring FDP": "ragged"}
