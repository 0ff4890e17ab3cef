"""Boxes that stand behind what they tick: 'Gap: none [ ] seen [x]', in lines and in the columns of a grid."""

import pytest
from reader_sentences import told

LINES = """Ring FDP
Ends: clean {e} ragged {t}
Strands: 2 {e} 4 {t} 6 {e}
Gap: none {e} seen {t}
Glide: free {e} catching {t}
"""


@pytest.mark.parametrize(("empty", "ticked"), [("[ ]", "[x]"), ("\u2610", "\u2612"), ("( )", "(x)")])
def test_evenly_spaced(empty: str, ticked: str) -> None:
    found = told(LINES.format(e=empty, t=ticked), "ends", "strands", "gap", "glide")
    assert found == {"ring FDP": {"ends": "ragged", "strands": 4, "gap": "seen", "glide": "catching"}}


GRID = """                         FDP ring              FDS ring
7  Ends                  clean \u2612 ragged \u2610      clean \u2610 ragged \u2610
8  Treatment             repair \u2612              repair \u2612
9  Strands               2 \u2610  4 \u2610  6 \u2612         2 \u2612  4 \u2610  6 \u2610
14 Gap on active test    none \u2612  seen \u2610        none \u2610  seen \u2612
15 Glide                 free \u2612  catch \u2610       free \u2610  catch \u2612
"""


def test_in_a_grid() -> None:
    found = told(GRID, "ends", "strands", "gap", "glide")
    assert found["ring FDP"] == {"ends": "clean", "strands": 6, "gap": "none", "glide": "free"}
    assert found["ring FDS"] == {"strands": 2, "gap": "seen", "glide": "catching"}


@pytest.mark.parametrize("line", ["Gap: [ ] none [x] seen", "Gap: \u2610 none \u2612 seen"])
def test_boxes_before_options(line: str) -> None:
    assert told(f"Ring FDP repaired 4 strands.\n{line}", "gap") == {"ring FDP": {"gap": "seen"}}
