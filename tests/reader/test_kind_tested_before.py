"""'Each FDP was pulled in turn. No gaps.': of the kind that was tested; and 'four strands, same' behind a name."""

import pytest
from reader_sentences import each

SEWN = "Index and middle FDP repaired with 3-0 Prolene. Middle FDS repaired with 4-0 Prolene. "


@pytest.mark.parametrize(
    "words",
    [
        "Check (traction at wrist, each FDP in turn): index restricted. Middle runs free. No gaps.",
        "Each FDP was pulled in turn. No gaps.",
        "Each profundus was tested by traction at the wrist. No gap.",
    ],
)
def test_gaps_of_the_kind_tested(words: str) -> None:
    assert each(SEWN + words, "gap") == dict.fromkeys(("index FDP", "middle FDP"), "none")


def test_every_repair_of_fingers_that_were_moved() -> None:
    found = each(SEWN + "All three repairs were moved passively. No gaps.", "gap")
    assert found == dict.fromkeys(("index FDP", "middle FDP", "middle FDS"), "none")


INDEX = "Index FDP: four-strand locked cruciate, 3-0 Prolene. Epi 6-0 Prolene running.\n"


@pytest.mark.parametrize(
    "words", ["Middle FDP: 4 str, same.", "Middle FDP: 4 strands, same.", "Middle FDP: 4-strand, same."]
)
def test_same_behind_as_many_strands(words: str) -> None:
    assert each(INDEX + words, "stitch")["middle FDP"] == "locked cruciate"
    assert each(INDEX + words, "peripheral_size")["middle FDP"] == "6-0"


def test_other_count_is_not_the_same() -> None:
    assert set(each(INDEX + "Middle FDP: 2 strand, same.", "stitch")) == {"index FDP"}


BOTH = "Index FDP cut and sewn with 4-0. Ring FDP cut and sewn with 4-0. Ring FDS cut and sewn with 5-0. "


@pytest.mark.parametrize(
    "words",
    [
        "Traction on each repaired profundus; the index repair opened by 1 mm; the ring repair did not open.",
        "I pulled on both profundi; the index repair gapped by 1 mm; the ring repair did not gap.",
        "Traction on the FDPs at the wrist: index gap 1 mm, ring no gap.",
    ],
)
def test_a_repair_by_its_finger_is_of_the_kind_pulled_on(words: str) -> None:
    assert each(BOTH + words, "gap") == {"index FDP": "seen", "ring FDP": "none"}


def test_one_named_behind_the_test_is_that_one() -> None:
    words = "I pulled on both profundi; the index repair gapped by 1 mm; the ring FDS did not gap."
    assert each(BOTH + words, "gap") == {"index FDP": "seen", "ring FDS": "none"}
