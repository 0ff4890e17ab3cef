"""Grids whose rows are a finger by its numeral and a tendon, with bare shares, and the same numerals in the text."""

import pytest
from reader_sentences import each, told

_GRID = """Right hand.
 {} | {} | zone | cut  | done        | core           | epi
 -----+------+------+------+-------------+----------------+---------
 II   | FDP  | I    | 100  | sutured     | 4-0 PDS, 4 str | 6-0 nyl
 II   | FDS  | -    | 0    | -           | -              | -
 III  | FDP  | IIB  | 100  | sutured     | 3-0 PDS, 6 str | 6-0 nyl
 III  | FDS  | IIB  | 100  | left        | -              | -
 IV   | FDP  | IIC  | 45   | trimmed     | -              | -
 IV   | FDS  | IIC  | 20   | not treated | -              | -
"""


@pytest.mark.parametrize(("finger", "tendon"), [("fing", "tend"), ("finger", "tendon"), ("dig", "tendon")])
def test_rows_by_numeral(finger: str, tendon: str) -> None:
    note = _GRID.format(finger, tendon)
    assert each(note, "strands") == {"index FDP": 4, "middle FDP": 6}
    assert each(note, "treatment") == {
        "index FDP": "repaired",
        "middle FDP": "repaired",
        "middle FDS": "left",
        "ring FDP": "trimmed",
        "ring FDS": "left",
    }
    assert told(note, "extent", "extent_percent") == {
        "index FDP": {"extent": "complete"},
        "index FDS": {"extent": "intact"},
        "middle FDP": {"extent": "complete"},
        "middle FDS": {"extent": "complete"},
        "ring FDP": {"extent": "partial", "extent_percent": 45},
        "ring FDS": {"extent": "partial", "extent_percent": 20},
    }


def test_pulleys_below_numerals() -> None:
    note = _GRID.format("fing", "tend") + (
        "\n pulley | II      | III    | IV\n -------+---------+--------+------\n"
        " A2     | intact  | vented | intact\n A4     | removed | intact | intact\n"
    )
    assert each(note, "finding", group="pulleys") == {
        "index A2": "intact",
        "middle A2": "vented",
        "ring A2": "intact",
        "index A4": "excised",
        "middle A4": "intact",
        "ring A4": "intact",
    }


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Technique III: Lim-Tsai; II: cruciate.", {"middle FDP": "lim-tsai", "index FDP": "cruciate"}),
        ("III sewn with a Savage. II: Becker.", {"middle FDP": "savage", "index FDP": "becker"}),
    ],
)
def test_the_same_numerals_in_the_text(text: str, expected: dict[str, object]) -> None:
    assert each(_GRID.format("fing", "tend") + "\n" + text, "stitch") == expected


def test_a_zone_is_no_finger() -> None:
    assert each("Right ring finger. FDP completely divided in zone II; III was not reached.", "extent") == {
        "ring FDP": "complete"
    }
