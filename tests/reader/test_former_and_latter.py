"""'In the former it was a Becker and in the latter a Kessler': of two kinds of tendon, told behind their threads."""

import pytest
from reader_sentences import each, told

CUT = "Of the index finger profundus and superficialis were cut through, of the middle the profundus was cut through. "


@pytest.mark.parametrize(
    "text",
    [
        "Use was made of 3-0 Tevdek for the profundi and of 4-0 Tevdek for the superficialis; in the former it was a "
        "Becker and in the latter a plain Kessler.",
        "After plating of the index metacarpal we used 3-0 Ticron for the profundi and 4-0 Ticron for the "
        "superficialis; in the former this was a Becker, in the latter a Kessler.",
    ],
)
def test_of_two_kinds(text: str) -> None:
    assert told(CUT + text, "stitch", "size") == {
        "index FDP": {"stitch": "becker", "size": "3-0"},
        "index FDS": {"stitch": "kessler", "size": "4-0"},
        "middle FDP": {"stitch": "becker", "size": "3-0"},
    }


@pytest.mark.parametrize(
    "text",
    [
        "In the former a four-strand cruciate of 3-0 Ethibond was placed, in the latter a figure-of-eight of Prolene.",
        "For the former I chose a cruciate, for the latter a figure-of-eight.",
    ],
)
def test_of_two_tendons(text: str) -> None:
    note = "Right ring finger: FDP and FDS were completely divided. " + text
    assert each(note, "stitch") == {"ring FDP": "cruciate", "ring FDS": "figure-of-eight"}


def test_other_things_that_were_former() -> None:
    note = "Ring finger: FDP repaired with a cruciate, FDS with a Kessler. For the former splint a new one was made."
    assert each(note, "stitch") == {"ring FDP": "cruciate", "ring FDS": "kessler"}
