"""What a template offers in brackets and nobody took up is no finding; what stands in other brackets is."""

import pytest
from reader_sentences import told

SEWN = "The FDP of the left middle finger was repaired with a modified Kessler of 4-0 Ethibond. "


@pytest.mark.parametrize(
    "note",
    [
        "[OPTION: six-strand Savage for active motion.]",
        "[Optional text: six strands were placed. The knot was buried.]",
        "(Alternative: Savage, six strands.)",
    ],
)
def test_an_option_in_brackets_is_no_finding(note: str) -> None:
    assert told(SEWN + note, "stitch", "strands", "knot") == {
        "middle FDP": {"stitch": "modified kessler", "strands": 2}
    }


def test_an_option_told_to_be_taken_is_one() -> None:
    assert told(SEWN + "[Option taken: knot buried.]", "knot") == {"middle FDP": {"knot": "buried"}}


def test_what_stands_in_other_brackets_is_read() -> None:
    assert told(SEWN + "[The knot was buried.]", "knot") == {"middle FDP": {"knot": "buried"}}
