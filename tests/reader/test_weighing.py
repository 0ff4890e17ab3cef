"""Signs of a misreading: what they are found in, what they add up to, and how they are told."""

import pytest
from reader_sentences import fact_of, record_of

from notereader.vocabulary.doubts import doubt_table

CUT = "Right hand. Ring FDP cut through in zone II. Ring FDS cut through. "


def reasons(note: str, entry: str, field: str) -> list[str]:
    return list(fact_of(note, entry, field).look_twice)


@pytest.mark.parametrize(
    ("note", "entry", "field", "word"),
    [
        (
            "Right ring and small fingers. Ring FDP cut and repaired. Small FDP cut and repaired. In the end the core "
            "that would have been wanted was put in, 4-0 nylon, four strands, with a lot of patience and two pairs of "
            "hands, after which the table was turned and the light was moved.",
            "small FDP",
            "size",
            "'would'",
        ),
        (
            "Wrist. PL cut and repaired with 3-0 Prolene, two strands. FCR intact.",
            "PL",
            "size",
            "palmaris longus is mostly a graft",
        ),
    ],
)
def test_signs_are_told_in_plain_words(note: str, entry: str, field: str, word: str) -> None:
    assert any(word in reason for reason in reasons(note, entry, field))


def test_one_sign_alone_is_not_enough() -> None:
    note = "Right ring finger. FDP cut through. FDP repaired with a four-strand core of 4-0 nylon, not 3-0."
    assert not reasons(note, "ring FDP", "treatment")


def test_no_fact_gets_more_than_three_of_them() -> None:
    own = {sign.reason for sign in doubt_table().signs.values() if sign.reason and "WORD" not in sign.reason}
    note = (
        "Left hand, index, middle and ring. PL cut. PL, FCR and FCU: if it seemed wise the first of them, not the "
        "second, might have been repaired with 3-0 Prolene [x] beside the median nerve and 4-0 Ethibond, never more."
    )
    for _, fact in record_of(note).walk():
        assert len(own & set(fact.look_twice)) <= 3


def test_the_elements_of_a_note_are_not_weighed() -> None:
    note = CUT + "Under general anaesthesia. Might have had antibiotics if any were there. Tourniquet on."
    assert not any(fact.look_twice for place, fact in record_of(note).walk() if place.group == "elements")


def test_every_weighty_sign_has_a_reason() -> None:
    assert all(bool(sign.reason) == (sign.weight > 0) for sign in doubt_table().signs.values())
