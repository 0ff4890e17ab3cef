"""What somebody is asked to do, what closes both fingers, and a peripheral suture taken over with the core."""

import pytest
from reader_sentences import each, told

SEWN = "Left index. FDP cut, repaired with 4-0. "


@pytest.mark.parametrize("words", ["I asked him to put in a Yoshizu and he did", "She was asked to hold the retractor"])
def test_asked_for_a_deed(words: str) -> None:
    found = each(f"{SEWN}{words}. Then passively straightened, no gap.", "test")
    assert found == {"index FDP": "passive"}


@pytest.mark.parametrize(
    "words", ["I asked her to try to touch the palm", "The patient was asked to move it", "I asked him to make a fist"]
)
def test_asked_for_a_movement(words: str) -> None:
    assert each(f"{SEWN}{words}: no gap.", "test") == {"index FDP": "active"}


@pytest.mark.parametrize("words", ["Pulled via the wrist", "I pulled through the wrist wound"])
def test_pulled_via_the_wrist(words: str) -> None:
    assert each(f"{SEWN}{words}, the tip bends fully, no gap.", "test") == {"index FDP": "traction"}


BOTH = "Left index and ring. FDP of both cut and repaired. "


@pytest.mark.parametrize("words", ["5-0 nylon to both. Paraffin gauze.", "4-0 nylon for each. Jelonet, crepe."])
def test_the_skin_of_both(words: str) -> None:
    assert told(BOTH + words, "size", "material") == {}


def test_the_core_of_both() -> None:
    found = each(BOTH + "4-0 nylon to both, cruciate, four strands. Paraffin gauze.", "size")
    assert found == {"index FDP": "4-0", "ring FDP": "4-0"}


TWO = "Left index and small. Index: FDP repaired with a cruciate, 3-0 Ethibond, epitendinous 6-0 nylon, running. "


@pytest.mark.parametrize(
    "words", ["FDP core as index (epitendinous too).", "FDP core as for the index, peripheral suture also."]
)
def test_the_rim_as_well(words: str) -> None:
    found = told(f"{TWO}Small: {words}", "size", "peripheral", "peripheral_size")
    assert found["small FDP"] == {"size": "3-0", "peripheral": "present", "peripheral_size": "6-0"}


@pytest.mark.parametrize(
    ("words", "rim"),
    [
        ("FDP core as index; no epitendinous.", {"peripheral": "absent"}),
        ("FDP core as index, epitendinous 5-0 PDS.", {"peripheral": "present", "peripheral_size": "5-0"}),
    ],
)
def test_a_rim_of_its_own(words: str, rim: dict[str, str]) -> None:
    assert told(f"{TWO}Small: {words}", "peripheral", "peripheral_size")["small FDP"] == rim
