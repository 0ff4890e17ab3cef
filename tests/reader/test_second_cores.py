"""Cores told one after the other: the sum of their strands, and the name of a stitch put in twice."""

import pytest
from reader_sentences import told

HEAD = "Right ring finger, zone II. The FDP was completely divided. The FDS was intact.\n"


@pytest.mark.parametrize(
    ("words", "stitch"),
    [
        ("a modified Kessler of 3-0 Ethibond, and a second one at right angles to it", "double modified kessler"),
        ("a modified Kessler in 3-0 Ethibond, a double one, so that four strands cross", "double modified kessler"),
        ("a Tsuge of 4-0 looped nylon, repeated once, four strands in all", "double tsuge"),
        ("a modified Kessler of 3-0 Prolene, two strands, then a second modified Kessler of 4-0 Prolene at right "
         "angles, so four strands", "double modified kessler"),
    ],
)  # fmt: skip
def test_a_stitch_put_in_twice(words: str, stitch: str) -> None:
    facts = told(f"{HEAD}It was repaired with {words}. The A2 pulley was intact.", "stitch", "strands")
    assert facts == {"ring FDP": {"stitch": stitch, "strands": 4}}


@pytest.mark.parametrize(
    "words",
    [
        "a modified Kessler of 3-0 Ethibond, and a second one was not thought necessary",
        "a modified Kessler of 3-0 Ethibond. A second one was used for the A4 pulley",
        "a modified Kessler of 3-0 Ethibond, two strands, the second one being cut out again",
    ],
)
def test_one_stitch_stays_one(words: str) -> None:
    facts = told(f"{HEAD}It was repaired with {words}. The A2 pulley was intact.", "stitch", "strands")
    assert facts == {"ring FDP": {"stitch": "modified kessler", "strands": 2}}


@pytest.mark.parametrize(
    "words",
    [
        "core was a modified Kessler with 3-0 Prolene two strands and then a horizontal mattress so that makes four "
        "strands in total",
        "a Kessler, two strands, was followed by another two-strand core, giving four strands",
        "Kirchmayr with 4-0 Ticron and a second Kirchmayr turned 90 degrees, so that four threads bridge",
    ],
)
def test_strands_summed_up(words: str) -> None:
    assert told(f"{HEAD}It was repaired: {words}.", "strands") == {"ring FDP": {"strands": 4}}


def test_a_sum_that_was_only_wished_for() -> None:
    words = "a modified Kessler with 3-0 Prolene, two strands. I would have put in a second, so as to have four strands"
    assert told(f"{HEAD}It was repaired with {words}.", "strands") == {"ring FDP": {"strands": 2}}
