"""'The two slips' are both slips of the superficialis; 'nothing was done to' a cut one leaves it."""

import pytest
from reader_sentences import told

HEAD = "Left index finger, zone II. The FDP was completely divided. Both slips of the FDS were cut through. "
CORE = " The FDP was repaired with a two-strand core suture of 3-0 Prolene."


@pytest.mark.parametrize(
    "words",
    [
        "The two slips were sutured with one horizontal mattress of 5-0 Ethibond each.",
        "Both of its slips were repaired with a horizontal mattress of 5-0 Ethibond.",
    ],
)
def test_the_two_slips(words: str) -> None:
    facts = told(HEAD + words + CORE, "stitch", "size")
    assert facts == {
        "index FDS": {"stitch": "horizontal mattress", "size": "5-0"},
        "index FDP": {"size": "3-0"},
    }


@pytest.mark.parametrize(
    ("words", "entry"),
    [
        ("The radial slip of the FDS was 40% divided. Nothing was done to the radial slip.", "index FDS radial"),
        ("The FDS was 40% divided. We did nothing to the FDS.", "index FDS"),
        ("The superficialis was cut by a third. Nothing was done about it.", "index FDS"),
    ],
)
def test_nothing_was_done(words: str, entry: str) -> None:
    head = "Left index finger, zone II. The FDP was completely divided. "
    assert told(head + words + CORE, "treatment")[entry] == {"treatment": "left"}


def test_nothing_more_was_done_to_a_sewn_one() -> None:
    words = "The FDP was repaired with four strands. Nothing was done to the nerve. Nothing more was done to the FDP."
    assert told("Left index finger. The FDP was cut. " + words, "treatment") == {"index FDP": {"treatment": "repaired"}}


@pytest.mark.parametrize(
    "slips",
    [
        "FDS slips: each with a single mattress of 4-0 Ticron.",
        "FDS: both slips repaired, each with 4-0 Ticron.",
        "The two slips of the FDS were sewn, each with one stitch of 4-0 Ticron.",
    ],
)
def test_each_of_the_slips_is_not_each_tendon(slips: str) -> None:
    note = f"Index finger. FDP repaired with 3-0 Ticron. {slips} The tendon ran freely under A2 and there was no gap."
    assert told(note, "glide", "gap") == {"index FDP": {"glide": "free", "gap": "none"}}


def test_each_tendon_behind_slips_that_were_cut_out() -> None:
    note = "Index and ring fingers. FDS slips excised, FDP repaired in both, each with 3-0 PDS. Both ran freely."
    assert told(note, "glide") == {"index FDP": {"glide": "free"}, "ring FDP": {"glide": "free"}}
