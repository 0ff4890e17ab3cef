"""A detail told of 'the Adelaide' or 'the Becker' below is of the tendon that was sewn so."""

import pytest
from reader_sentences import told

NOTE = "Middle FDP: {}, 3-0 Ticron. Ring FDP: modified Kessler, 4-0 Ticron. "


@pytest.mark.parametrize(
    ("stitch", "text", "found"),
    [
        ("Adelaide", "The locks of the Adelaide measured 3 mm.", {"hold": "locking", "lock_mm": (3, 3)}),
        ("Becker", "The Becker had locks of 2 mm.", {"hold": "locking", "lock_mm": (2, 2)}),
        ("cruciate", "The knots of the cruciate were buried.", {"knot": "buried"}),
    ],
)
def test_of_the_tendon_sewn_so(stitch: str, text: str, found: dict[str, object]) -> None:
    assert told(NOTE.format(stitch) + text, "hold", "lock_mm", "knot") == {"middle FDP": found}


def test_a_stitch_of_a_finger_named() -> None:
    text = "The small finger FDP got the cruciate of 4-0 Ticron."
    assert told(NOTE.format("cruciate") + text, "stitch")["small FDP"] == {"stitch": "cruciate"}
