"""'FDP outer   6/0 Prolene', 'outside: none': a label for the peripheral suture; elsewhere the words name none."""

import pytest
from reader_sentences import each, told

GRID = """
             INDEX            MIDDLE
FDP          60% cut          divided
FDP core     4/0 Prolene      3/0 Prolene
FDP {}     6/0 Prolene      5/0 Prolene
"""


@pytest.mark.parametrize("label", ["outer", "outside"])
def test_a_row_of_outer_sutures(label: str) -> None:
    note = GRID.format(label)
    assert each(note, "size") == {"index FDP": "4-0", "middle FDP": "3-0"}
    assert each(note, "peripheral_size") == {"index FDP": "6-0", "middle FDP": "5-0"}


RING = "RING FINGER\nFDP: divided\n4-0 Ethilon modified Kessler\n"


@pytest.mark.parametrize("line", ["outer: none, tissue would not hold it", "outer .... none", "outside: none"])
def test_none_behind_the_label(line: str) -> None:
    assert each(RING + line, "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize("line", ["Outer dressing: none.", "The outer fibres held none.", "outer bandage: wool"])
def test_no_suture_is_named_by_other_outer_things(line: str) -> None:
    assert "peripheral" not in told(RING + line)["ring FDP"]
