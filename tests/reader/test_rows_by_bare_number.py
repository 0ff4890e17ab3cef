"""Lists led by dots whose rows are named below by no more than a number, and cells that repeat the one above."""

import pytest
from reader_sentences import each, told

LIST = """Right wrist, glass, zone V

STRUCTURES
 1. palmaris longus ............ divided
 2. FCR ........................ divided
 3. FDS middle ................. divided
 4. FDS index .................. three quarters
 5. FDS small .................. whole
 6. FPL ........................ half
 7. FCU, ulnar nerve, ulnar artery . whole

REPAIRS (by number)
"""


def test_shares_and_states_behind_dots() -> None:
    assert each(LIST, "extent_percent") == {"index FDS": 75, "thumb FPL": 50}
    assert each(LIST, "extent") == {
        "PL": "complete",
        "FCR": "complete",
        "middle FDS": "complete",
        "index FDS": "partial",
        "small FDS": "intact",
        "thumb FPL": "partial",
        "FCU": "intact",
    }
    assert each(LIST, "extent", group="injuries") == {"ulnar nerve": "intact", "ulnar artery": "intact"}


@pytest.mark.parametrize(
    ("repairs", "strands"),
    [
        ("Numbers 2 and 3 each got a four-strand core in 3-0. For 4 I took two strands.", (4, 4, 2)),
        ("2 and 3 were given a six-strand core of 3-0; 4 a two-strand core.", (6, 6, 2)),
        ("Nos. 2 to 3 received four strands of 3-0; number 4 had two strands.", (4, 4, 2)),
    ],
)
def test_rows_named_by_their_number(repairs: str, strands: tuple[int, int, int]) -> None:
    assert each(LIST + repairs, "strands") == dict(zip(("FCR", "middle FDS", "index FDS"), strands, strict=True))


def test_what_was_left_and_discarded_by_number() -> None:
    found = each(LIST + "Number 1 was trimmed back into the forearm and discarded. 6 was left alone.", "treatment")
    assert found == {"PL": "excised", "thumb FPL": "left"}


@pytest.mark.parametrize(
    "aside", ["Number 2 was sewn. Splint for 4 weeks.", "Number 2 was sewn. 4 mm of skin was lost."]
)
def test_a_count_is_no_row(aside: str) -> None:
    assert set(told(LIST + aside, "treatment", "trimmed_mm", "strands")) == {"FCR"}


GRID = """Left forearm, zone V.

no.	structure	state	core	strands	epitendon
1	FDS index	cut through	3-0 Mersilene	4	5-0 nylon running
2	FDS long	"	"	"	"
3	FDS small	cut 60 %	4-0 Mersilene	2	-
4	FCR	cut through	2-0 Mersilene	"	none

"""


def test_a_sign_repeats_the_cell_above() -> None:
    assert each(GRID, "strands") == {"index FDS": 4, "middle FDS": 4, "small FDS": 2, "FCR": 2}
    assert each(GRID, "size") == {"index FDS": "3-0", "middle FDS": "3-0", "small FDS": "4-0", "FCR": "2-0"}
    assert each(GRID, "peripheral_size") == {"index FDS": "5-0", "middle FDS": "5-0"}
    assert each(GRID, "extent_percent") == {"small FDS": 60}


def test_a_sign_with_nothing_above_tells_nothing() -> None:
    note = (
        'Wrist.\n\nno.\tstructure\tstate\tcore\tstrands\n1\tFDS index\tcut\t3-0 nylon\t"\n2\tFCR\tcut\t2-0 nylon\t4\n'
    )
    assert each(note, "strands") == {"FCR": 4}


def test_each_stitch_by_the_number_of_its_row() -> None:
    found = each(
        GRID + "Nos. 1 and 2 received a Becker with locked margins; 4 a crossing cruciate; 3 a Kessler.", "stitch"
    )
    assert found == {"index FDS": "becker", "middle FDS": "becker", "FCR": "cruciate", "small FDS": "kessler"}
