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
