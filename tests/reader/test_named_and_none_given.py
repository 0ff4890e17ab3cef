"""A peripheral suture that is named only to say that none was given, and a tendon that lies flat in its bed."""

import pytest
from reader_sentences import each

SEWN = "Ring FDP cut and repaired with a four-strand Kessler of 3-0 Prolene. "


@pytest.mark.parametrize(
    "words",
    [
        "An epitendinous suture, which in fresh cuts I hold to be obligatory, has no place here and none was added.",
        "A circumferential suture was thought of but none was used.",
    ],
)
def test_none_was_given(words: str) -> None:
    assert each(SEWN + words, "peripheral") == {"ring FDP": "absent"}


@pytest.mark.parametrize(
    "words",
    [
        "An epitendinous suture of 6-0 nylon was placed, and of the drains none was used.",
        "A running epitendinous suture was placed on the profundus and none was used on the superficialis.",
    ],
)
def test_one_was_given(words: str) -> None:
    assert each(SEWN + words, "peripheral")["ring FDP"] == "present"


@pytest.mark.parametrize(
    ("words", "bulk"),
    [
        ("On the table the button held and the tendon lies flat and glides free.", {}),
        ("On the table the tendon lies flat in its bed.", {}),
        ("The repair lies flat and glides free.", {"ring FDP": "none"}),
        ("The repair has no lump and glides free.", {"ring FDP": "none"}),
    ],
)
def test_a_tendon_that_lies_flat(words: str, bulk: dict[str, str]) -> None:
    assert each(SEWN + words, "bulk") == bulk
