"""A remnant is not its pulley, a tendon rubbed against is not the one that ran, a donor makes a graft."""

import pytest
from reader_sentences import each

CUT = "Ring finger. FDP cut through and repaired with 3-0 Ethibond. "


@pytest.mark.parametrize(
    "words",
    [
        "A2 half torn. A2 remnant kept.",
        "The A2 remainder was preserved.",
        "A2 pulley remnants intact.",
        "A2 half there. The rest of it was kept.",
    ],
)
def test_what_is_left_of_a_pulley(words: str) -> None:
    assert each(CUT + words, "finding", group="pulleys").get("ring A2") != "intact"


@pytest.mark.parametrize(
    "words",
    ["A2 kept, the rest of the sheath opened.", "The remaining pulleys A2 and A4 were intact.", "A2 remained intact."],
)
def test_pulleys_that_remain(words: str) -> None:
    assert each(CUT + words, "finding", group="pulleys")["ring A2"] == "intact"


BOTH = "Index. FDP and FDS cut and repaired with 3-0 Ethibond. "


@pytest.mark.parametrize(
    "words",
    [
        "The profundus rubbed against the superficialis knot, I moved the knot and then it ran free.",
        "FDP at first caught against the FDS, but after turning the knot in it glided freely.",
    ],
)
def test_rubbed_against(words: str) -> None:
    assert each(BOTH + words, "glide") == {"index FDP": "free"}


def test_the_one_spoken_of_against_nothing() -> None:
    assert each(BOTH + "The superficialis rubbed against the edge of A2.", "glide") == {"index FDS": "catching"}


def test_woven_to_a_donor() -> None:
    note = (
        "Left little finger. I exchanged the rod for a tendon. The palmaris of the same forearm was taken through three"
        " small cuts. In the palm it was woven into the profundus by Pulvertaft's method, with 3-0 Ethibond.\n"
    )
    assert each(note, "treatment") == {"small FDP": "grafted"}
    note = "Left little finger. FDP cut. The palmaris longus was not taken. FDP joined by Pulvertaft's method with 3-0."
    assert each(note, "treatment") == {"small FDP": "repaired"}


@pytest.mark.parametrize(
    "taken",
    [
        "I took the palmaris longus from the same forearm and wove it in at both ends, held with 3-0 Ethibond.",
        "The palmaris longus of the same arm was removed and woven through both stumps, 3-0 Ethibond.",
        "We lifted the palmaris longus out of the wrist and passed it through each stump, sewn with 3-0 Ethibond.",
    ],
)
def test_taken_and_woven_in(taken: str) -> None:
    assert each("Ring finger: FDP ruptured. " + taken, "size") in ({"ring FDP": "3-0"}, {})
    assert "PL" not in each("Ring finger: FDP ruptured. " + taken, "treatment")


@pytest.mark.parametrize(
    "sewn",
    ["The palmaris longus was repaired with 3-0 Ethibond.", "The palmaris longus was not taken, but sewn."],
)
def test_sewn_and_not_taken(sewn: str) -> None:
    assert each("FDP of the ring cut. " + sewn, "treatment")["PL"] == "repaired"
