"""More words and headings for the programme of motion ordered."""

import pytest
from reader_sentences import record_of

CUT = "Ring FDP cut through and repaired with 3-0.\n"


def _programme(words: str) -> list[object]:
    return [fact.value for place, fact in record_of(CUT + words + "\n").walk() if place.field == "programme"]


@pytest.mark.parametrize(
    ("words", "programme"),
    [
        ("Postoperative treatment: passive mobilisation from the third day.", "early passive"),
        ("After-care: Kleinert traction from 2nd day. Slab 5 wks.", "early passive"),
        ("Hand therapy day three or four please, active regime, splint six weeks.", "early active"),
        ("OT D4: active hold protocol. 6/52.", "place and hold"),
        ("Above-elbow plaster for four weeks. No exercises, he is six.", "immobilisation"),
        ("The plaster will be kept 4 weeks, without mobilisation, because of the age.", "immobilisation"),
    ],
)
def test_programme_ordered(words: str, programme: str) -> None:
    assert _programme(words) == [programme]


@pytest.mark.parametrize(
    "words",
    ["On the table the finger was taken through passive stretching.", "The FDP was exposed without mobilisation."],
)
def test_no_programme(words: str) -> None:
    assert _programme(words) == []


@pytest.mark.parametrize(
    ("words", "programme"),
    [
        (
            "Aftercare: early active motion was considered, but the attending decided against it; early passive "
            "programme from day 3.",
            "early passive",
        ),
        ("Post: immob? NO. early active? NO (gap). -> early passive d4", "early passive"),
        (
            "Plan: place and hold was proposed by the therapist and turned down; immobilisation for 3 weeks.",
            "immobilisation",
        ),
    ],
)
def test_a_programme_turned_down(words: str, programme: str) -> None:
    assert _programme(words) == [programme]


@pytest.mark.parametrize(
    "words",
    [
        "Plan: a passive regime was turned down; early active motion from day 4.",
        "Plan: early active motion from day 4, a passive programme having been weighed and rejected.",
    ],
)
def test_what_is_turned_down_is_not_the_other_programme(words: str) -> None:
    assert _programme(words) == ["early active"]
