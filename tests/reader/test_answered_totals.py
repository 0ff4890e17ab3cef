"""'FCU ....... total': a bare 'total' behind a name that a line tells nothing else of."""

from reader_sentences import each, told

DOTS = """Wrist, zone V.
 FCR ......... total
 FDS D2, D3 .. total, ends far apart
 FDP D2 ...... partial, 40 %
 median nerve  total
"""


def test_dotted_lines() -> None:
    assert each(DOTS, "extent") == {
        "index FDP": "partial",
        "index FDS": "complete",
        "middle FDS": "complete",
        "FCR": "complete",
    }
    assert each(DOTS, "extent", group="injuries") == {"median nerve": "complete"}


def test_labelled_lines() -> None:
    words = "Ring finger.\nFDP: total\nFDS: total\nulnar digital nerve: whole\n"
    assert each(words, "extent") == {"ring FDP": "complete", "ring FDS": "complete"}


def test_one_line_alone_says_nothing() -> None:
    assert not each("Ring finger.\nFDP: total\n", "extent")


def test_a_total_of_something_else() -> None:
    words = "Ring finger. FDP repaired.\nStrands: total 4\nTourniquet time ..... total\nLidocaine ..... total\n"
    assert "extent" not in told(words).get("ring FDP", {})
