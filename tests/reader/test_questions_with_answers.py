"""Notes told as questions and answers, sides of slips in short, and what was only announced."""

import pytest
from reader_sentences import each, told

THUMB = "Thumb FPL repaired with 4-0.\n"


@pytest.mark.parametrize(
    ("note", "peripheral", "gap"),
    [
        ("Q: Peripheral suture?   A: no.\nQ: Gap?   A: none.", "absent", "none"),
        ("Q. Epitendinous suture? A. yes.\nQ. Gap? A. yes.", "present", "seen"),
        ("Peripheral?\n   Ans: none\nGap?\n   Ans: seen", "absent", "seen"),
    ],
)
def test_a_question_and_its_answer(note: str, peripheral: str, gap: str) -> None:
    assert each(THUMB + note, "peripheral") == {"thumb FPL": peripheral}
    assert each(THUMB + note, "gap") == {"thumb FPL": gap}


@pytest.mark.parametrize(
    "note",
    [
        "middle FDS rad.: cut through, repaired with 4-0 Ethibond.\nmiddle FDS uln.: intact.",
        "| Tendon | Cut | Done |\n| middle FDS rad. | cut through | repaired |\n| middle FDS uln | intact | - |",
    ],
)
def test_the_side_of_a_slip_in_short(note: str) -> None:
    assert each(note, "extent") == {"middle FDS radial": "complete", "middle FDS ulnar": "intact"}
    assert each(note, "treatment") == {"middle FDS radial": "repaired"}


@pytest.mark.parametrize(
    "note",
    [
        "Ring FDP: Kessler-Tajima with PDS 4-0, four strands it had been announced but finally only two.",
        "Ring FDP repaired with 4-0. Six strands were announced.",
    ],
)
def test_strands_that_were_only_announced(note: str) -> None:
    assert told(note, "strands").get("ring FDP", {}).get("strands") in (None, 2)


@pytest.mark.parametrize("heading", ["What went before", "What was done before"])
def test_what_stands_under_the_story_of_before(heading: str) -> None:
    before = "in March the index FDP was repaired with six strands."
    note = f"{heading}: {before}\nOperation: the index FDP was repaired with 4-0."
    assert told(note, "strands") == {}
    assert each(note, "size") == {"index FDP": "4-0"}
