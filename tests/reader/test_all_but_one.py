"""What leaves one finger out promises nothing of it: 'all ends but the middle', 'not both', 'save for'."""

import pytest
from reader_sentences import told

HEAD = "Middle and ring fingers, zone II. FDP of both fingers was cut through. "


@pytest.mark.parametrize(
    ("words", "field", "place"),
    [
        ("All ends but the middle were clean.", "ends", "ring FDP"),
        ("The ends were clean save those of the middle finger.", "ends", "ring FDP"),
        ("Both had four strands, except the middle.", "strands", "ring FDP"),
    ],
)
def test_only_of_the_other(words: str, field: str, place: str) -> None:
    assert list(told(HEAD + words, field)) == [place]


def test_save_for_one() -> None:
    found = told(HEAD + "Both superficialis tendons were intact save for the middle.", "extent")
    assert found["ring FDS"] == {"extent": "intact"}
    assert "middle FDS" not in found


@pytest.mark.parametrize("words", ["Not both A2 pulleys were intact.", "Not all A2 pulleys were left closed."])
def test_not_all_says_of_none_which(words: str) -> None:
    assert told(HEAD + words, group="pulleys") == {}


@pytest.mark.parametrize("words", ["Not all repairs glided freely.", "Both were to get four strands."])
def test_not_all_and_what_was_to_be(words: str) -> None:
    assert told(HEAD + words, "glide", "strands") == {}


def test_all_were_but_a_new_clause() -> None:
    found = told(HEAD + "All ends were clean but the middle finger had a skin flap.", "ends")
    assert found["ring FDP"] == {"ends": "clean"}
