"""Forms whose answers stand in brackets behind their labels, and boxes with a share or an open answer behind them."""

from reader_sentences import told

FORM = """Digit(s): [ ] Index  [x] Long  [ ] Ring
TENDON 1
  Tendon: [FDP]    Zone: [2]
  Laceration: (x) Complete ( ) Partial  ___ %
  Core strands: [6]    Technique: [          ]
  Core suture: [3-0 Supramid looped]
  Purchase: [10] mm
  Epitendinous: (x) Yes ( ) No   Suture: [6-0 nylon]   Pattern: [          ]
TENDON 2
  Tendon: [FDS]    Zone: [2]
  Laceration: ( ) Complete (x) Partial  [30] %
  Core strands: [   ]    Technique: [          ]
  Epitendinous: ( ) Yes (x) No
  Comment: [debrided flap only]
"""


def test_answers_in_brackets() -> None:
    shown = told(FORM)
    assert shown["middle FDP"] == {
        "zone": "II",
        "extent": "complete",
        "strands": 6,
        "size": "3-0",
        "material": "nylon",
        "looped": True,
        "purchase_mm": (10, 10),
        "peripheral": "present",
        "peripheral_size": "6-0",
        "peripheral_material": "nylon",
        "treatment": "repaired",
    }
    assert shown["middle FDS"] == {"zone": "II", "extent": "partial", "extent_percent": 30, "treatment": "trimmed"}


def test_a_no_in_one_block_is_not_the_other_tendons() -> None:
    swapped = FORM.replace("(x) Yes ( ) No   Suture: [6-0 nylon]   Pattern: [          ]", "( ) Yes (x) No")
    assert told(swapped, "peripheral") == {"middle FDP": {"peripheral": "absent"}}
