"""Gaps answered behind how they were looked for, ends that did not lift off, and rows that nobody filled in."""

import pytest
from reader_sentences import each, told

SEWN = "Ring finger, zone 2. FDP cut through and sewn with a four-strand cruciate. "
TWO = "Index and middle fingers, zone 2. FDP of both cut through and sewn with a four-strand cruciate. "


@pytest.mark.parametrize(
    "remark",
    [
        "Gap on passive stretch: nil.",
        "Gap check by passive motion - none.",
        "Passive extension: no lift-off of the tendon from bone.",
        "The patient bent it, neither junction slipped or opened up.",
        "The patient bent it and I could not see any separation at the join.",
        "She made a fist. Nothing parted at the bone.",
    ],
)
def test_no_gap(remark: str) -> None:
    assert each(SEWN + remark, "gap") == {"ring FDP": "none"}


@pytest.mark.parametrize("remark", ["Passively extended; neither parted.", "On passive extension neither separated."])
def test_neither_of_two(remark: str) -> None:
    assert each(TWO + remark, "gap") == {"index FDP": "none", "middle FDP": "none"}


@pytest.mark.parametrize(
    "remark",
    ["Can move from tomorrow but no lifting 4 weeks.", "Gap on passive stretch: 2 mm.", "Gap test not performed."],
)
def test_no_word_of_a_gap_that_is_not_there(remark: str) -> None:
    assert each(SEWN + remark, "gap").get("ring FDP") != "none"


@pytest.mark.parametrize(
    "blank",
    ["FPL         ___         ___        ___          ___", "FPL         ______      ______     ______       ______"],
)
def test_a_row_nobody_filled_in(blank: str) -> None:
    note = (
        "Digit: small\nZone: II\n\nTENDONS\n"
        "            cut?        strands    suture       technique\n"
        "FDP         100%        4          3-0 Ticron   Adelaide\n"
        "FDS rad     100%        -          -            slip excised\n"
        "FDS uln     0           -          -            -\n"
        f"{blank}\n\nIntra-op check:  passive  [x]    active  [ ]    Gap: no     Glide: free\n"
    )
    assert told(note, "gap", "glide", "test") == {"small FDP": {"gap": "none", "glide": "free", "test": "passive"}}


@pytest.mark.parametrize("words", ["ends thin", "the ends were thin and strung out"])
def test_thin_ends(words: str) -> None:
    assert each(f"Ring finger. FDP cut through in zone 2, {words}.", "ends") == {"ring FDP": "attenuated"}


@pytest.mark.parametrize("words", ["No outer suture on either slip.", "No epitenon on either slip."])
def test_no_outer_suture_on_the_slips(words: str) -> None:
    note = (
        "Ring finger. FDP and FDS cut through. FDP: four-strand cruciate, 3-0. FDS: each slip a mattress of 5-0. "
        + words
    )
    assert each(note, "peripheral") == {"ring FDS": "absent"}


@pytest.mark.parametrize("nerve", ["The radial digital nerve of the ring was half cut.", "Ring nerve cut."])
def test_both_behind_a_nerve(nerve: str) -> None:
    note = f"Middle: FDP cut. Ring: FDP cut. {nerve} Both got a Strickland, four strands of 3-0 FiberWire."
    assert each(note, "strands") == {"middle FDP": 4, "ring FDP": 4}


@pytest.mark.parametrize(("word", "extent"), [("full", "complete"), ("none", "intact")])
def test_how_far_in_one_word(word: str, extent: str) -> None:
    assert each(f"Finger: RF    Tendon: FDP    Zone: II    Cut: {word}", "extent") == {"ring FDP": extent}
