"""'Ulnar slip removed, the other sewn': the other slip of the same tendon; and one stitch for each slip."""

import pytest
from reader_sentences import each, told

CUT = "Ring finger. FDP and FDS cut through. "


@pytest.mark.parametrize(
    "words",
    [
        "FDS: one slip removed (U), the other 4-0 Tsuge.",
        "FDS: one slip (ulnar) excised, the other 4-0 Tsuge.",
        "The ulnar slip of the FDS was removed, the other repaired with a 4-0 Tsuge.",
        "FDS: ulnar slip excised, other slip 4-0 Tsuge.",
    ],
)
def test_the_other_slip(words: str) -> None:
    found = told(CUT + words, "treatment", "size")
    assert found["ring FDS radial"] == {"treatment": "repaired", "size": "4-0"}
    assert found["ring FDS ulnar"] == {"treatment": "excised"}
    assert found.keys() == {"ring FDS radial", "ring FDS ulnar"}


@pytest.mark.parametrize(
    "words",
    [
        "The radial slip of the FDS was sewn with 4-0 PDS, the other tendon ran freely.",
        "The radial slip of the FDS was repaired with 4-0 PDS from one side to the other.",
        "The radial slip of the FDS was sewn with 4-0 PDS, in the other hand nothing was done.",
        "The radial slip of the FDS was sewn with 4-0 PDS, the other nerve was whole.",
    ],
)
def test_another_thing_than_the_slip(words: str) -> None:
    assert "ring FDS ulnar" not in told(CUT + words, "treatment", "size")


def test_a_grid_whose_cell_goes_on_below() -> None:
    note = (
        "            | INDEX      | MIDDLE\n"
        "FDP         | intact     | cut through\n"
        "FDS         | intact     | cut through\n"
        "FDS done    | -          | one slip removed (R),\n"
        "            |            | the other 4-0 Tsuge\n"
    )
    assert each(note, "treatment") == {"middle FDS radial": "excised", "middle FDS ulnar": "repaired"}


@pytest.mark.parametrize(
    ("words", "strands"),
    [
        ("FDS: 2x Tsuge, loop 4-0 (one per slip).", 2),
        ("FDS: two Tsuge sutures of 4-0 loop, one in each slip.", 2),
        ("FDS: 2x Tsuge 4-0, one on each side.", 4),
    ],
)
def test_one_stitch_for_each_slip(words: str, strands: int) -> None:
    assert each(CUT + words, "strands")["ring FDS"] == strands


def test_another_use_of_a_thread() -> None:
    note = CUT + "FDP core 4-0 Ethibond. Prolene 6-0 was used for the FDS and for the epitendinous suture."
    assert each(note, "peripheral") == {"ring FDP": "present"}


def test_a_thread_for_a_tendon_and_for_the_outside() -> None:
    note = CUT + "FDP core 4-0 Ethibond, running 6-0 PDS. PDS was used for the FDS and for the circumferential stitch."
    assert each(note, "peripheral") == {"ring FDP": "present"}
