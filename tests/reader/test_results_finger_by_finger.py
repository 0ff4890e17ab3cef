"""Results told finger by finger in one sentence, however they are parted; each finger has its own."""

import pytest
from reader_sentences import told

_SEWN = (
    "Left hand. Index, middle and ring FDP completely divided, each repaired with a 4-strand cruciate of 3-0 Ethibond. "
)
_NO_GAP_BUT_RING = {"index FDP": "none", "middle FDP": "none", "ring FDP": "seen"}
_FREE_BUT_MIDDLE = {"index FDP": "free", "middle FDP": "restricted", "ring FDP": "free"}


@pytest.mark.parametrize(
    "note",
    ["Gap: index 0, middle 0, ring 1 mm", "Gap IF 0; MF 0; RF 1 mm", "Gap IF nil, MF nil, RF 1 mm."],
)
def test_gaps_parted_by_marks(note: str) -> None:
    assert {name: facts["gap"] for name, facts in told(_SEWN + note, "gap").items()} == _NO_GAP_BUT_RING


@pytest.mark.parametrize(
    "note",
    [
        "Free glide in index and ring, middle restricted.",
        "Free glide in the index and ring; middle restricted.",
        "Free glide in index and ring, restricted in middle.",
    ],
)
def test_another_result_behind_a_comma(note: str) -> None:
    assert {name: facts["glide"] for name, facts in told(_SEWN + note, "glide").items()} == _FREE_BUT_MIDDLE


def test_a_list_of_fingers_keeps_its_one_result() -> None:
    found = told(_SEWN + "Free glide in index, middle and ring.", "glide")
    assert {name: facts["glide"] for name, facts in found.items()} == dict.fromkeys(_NO_GAP_BUT_RING, "free")


@pytest.mark.parametrize("field", ["gap", "bulk", "tension"])
@pytest.mark.parametrize("answer", ["none", "nil"])
def test_an_answer_in_one_finger(field: str, answer: str) -> None:
    found = told(_SEWN + f"{field.capitalize()} {answer} in the index.", field)
    assert found == {"index FDP": {field: "none"}}
