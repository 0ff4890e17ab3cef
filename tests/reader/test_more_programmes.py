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
