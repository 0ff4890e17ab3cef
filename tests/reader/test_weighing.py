"""Signs of a misreading: what they are found in, what they add up to, and how they are told."""

import pytest
from reader_sentences import fact_of, record_of

from notereader.reader.drafting.signs import Signs
from notereader.reader.page import page_of
from notereader.reader.pipeline import language
from notereader.vocabulary.doubts import doubt_table
from notereader.vocabulary.fields import field_specs

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
    assert all(sign.reason for sign in doubt_table().signs.values() if sign.weight >= 0.3)


def test_every_field_that_is_weighed_is_of_one_kind() -> None:
    kept = [name for kind in doubt_table().kinds.values() for name in kind.fields]
    weighed = [f"{group}.{name}" for group, fields in field_specs().items() if group != "elements" for name in fields]
    assert sorted(kept) == sorted(weighed)


def test_a_sign_of_a_kind_is_a_sign() -> None:
    table = doubt_table()
    assert all(kind.signs.keys() <= table.signs.keys() for kind in table.kinds.values())


HAND = "Right ring and small fingers. Ring FDP cut through and repaired. Small FDP cut through and repaired. "


def signs(note: str, entry: str, field: str, group: str = "injuries") -> set[str]:
    """Return the names of the signs that a proposed fact of a note bears."""
    record, nlp = record_of(note), language()
    with nlp.memory_zone():
        found = Signs(page_of(nlp(note)), record)
        for place, fact in record.walk():
            name = " ".join(part for part in (place.digit, place.part, place.side) if part)
            if (place.group, name, place.field) == (group, entry, field):
                return {sign for sign, _ in found.of(place, fact)}
    raise AssertionError(f"nothing is proposed for {entry} {field}")


@pytest.mark.parametrize(
    ("words", "sign"),
    [
        ("In the ring finger the ulnar digital nerve was cut.", "own_finger_before"),
        ("The ulnar digital nerve of the ring finger was cut.", "own_finger_behind"),
    ],
)
def test_its_own_finger_named_near(words: str, sign: str) -> None:
    borne = signs(HAND + words, "ring digital nerve ulnar", "extent")
    assert sign in borne
    assert "other_finger_before" not in borne


def test_another_finger_named_before() -> None:
    note = HAND + "Both tendons ran freely through the sheath."
    assert "other_finger_before" in signs(note, "ring FDP", "glide", "repairs")
    assert "own_finger_before" in signs(note, "small FDP", "glide", "repairs")


def test_another_finger_named_behind() -> None:
    note = "Right ring and small fingers. FDP cut through in both; ring A2 intact, small A2 divided. "
    assert "other_finger_behind" in signs(note, "ring A2", "finding", "pulleys")
    assert "other_finger_behind" not in signs(note, "small A2", "finding", "pulleys")


def test_the_same_words_taken_for_two() -> None:
    note = HAND + "Both digital nerves of the ring finger were cut. A2 of the ring finger was intact."
    assert "of_two" in signs(note, "ring digital nerve ulnar", "extent")
    assert "of_two" not in signs(note, "ring A2", "finding", "pulleys")
