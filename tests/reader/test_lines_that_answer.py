"""Forms printed line by line: a label on a line of its own, and what answers it on the next."""

import pytest
from reader_sentences import each, told

CLOSED = """Laterality :
   Left
FINDINGS
Middle FDP :
   {middle}
Ring FDP :
   Looked at along 4 cm; whole
Ring FDS :
   {share}
Tendon ends :
   All clean

Length of purchase :
   Middle FDP 10 mm; others not recorded
Core suture :
   3-0 Ticron. Middle FDP: four-strand Strickland. Ring FDS: modified Kessler, two strands.
"""


@pytest.mark.parametrize("share", ["Cut over two thirds of its breadth", "67% cut"])
def test_what_stands_further_in_is_of_its_label(share: str) -> None:
    note = CLOSED.format(middle="Fully cut", share=share)
    assert each(note, "extent") == {"middle FDP": "complete", "ring FDP": "intact", "ring FDS": "partial"}
    assert each(note, "extent_percent") == {"ring FDS": 67}
    assert each(note, "purchase_mm") == {"middle FDP": (10, 10)}


def test_a_label_that_answers_itself_is_none() -> None:
    note = CLOSED.format(middle="Intact", share="Intact")
    assert each(note, "extent") == {"middle FDP": "intact", "ring FDP": "intact", "ring FDS": "intact"}


BARE = """Digit
Ring finger
Structure: FDP
Division
Complete
Ends
{ends}
Core technique
Lim-Tsai
Strand count

Purchase (mm)
10 to 12
Knot position
Outside the repair
Epitendinous technique
Running locking
Epitendinous suture
6-0 Prolene

Pulleys
A1
Untouched
A3
Vented
A4
Incised by the knife, then repaired with 6-0 Prolene
A5

Gap seen
{gap}
Gliding
Free
Bulk

"""


@pytest.mark.parametrize(("ends", "found"), [("Clean", "clean"), ("Frayed", "ragged")])
def test_bare_labels(ends: str, found: str) -> None:
    note = BARE.format(ends=ends, gap="No")
    facts = told(note, "ends", "knot", "purchase_mm", "peripheral_pattern", "gap", "glide")
    assert facts["ring FDP"] == {
        "ends": found,
        "knot": "external",
        "purchase_mm": (10, 12),
        "peripheral_pattern": "running locking",
        "gap": "none",
        "glide": "free",
    }
    pulleys = each(note, "finding", group="pulleys")
    assert pulleys == {"ring A1": "intact", "ring A3": "vented", "ring A4": "repaired"}


def test_a_gap_that_was_seen() -> None:
    assert each(BARE.format(ends="Clean", gap="Yes"), "gap") == {"ring FDP": "seen"}


def test_a_label_left_blank_tells_nothing() -> None:
    note = BARE.format(ends="Clean", gap="No")
    assert told(note, "strands", "bulk")["ring FDP"] == {"strands": 6}  # of the named stitch; no bulk


def test_few_short_lines_are_no_form() -> None:
    note = "Ring finger, FDP cut through.\nA2\nA3 vented.\nGap\nnone seen."
    assert "ring A2" not in each(note, "finding", group="pulleys")
