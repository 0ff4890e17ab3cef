"""Signs of a misreading: what they are found in, what they add up to, and how they are told."""

import re
from pathlib import Path

import pytest
from reader_sentences import fact_of, record_of

import notereader.reader
from notereader.reader import read
from notereader.reader.drafting.signs import Signs
from notereader.reader.drafting.weighing import weigh
from notereader.reader.page import page_of
from notereader.reader.pipeline import language
from notereader.reader.reasons import Reason
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


@pytest.mark.parametrize(
    ("words", "entry", "sign", "borne"),
    [
        ("Ring FDP sewn with 4-0 nylon.", "ring FDP", "no_strands", True),
        ("A core of 3-0 Ethibond brought the small FDP together.", "small FDP", "no_strands", True),
        ("Ring FDP sewn with a four-strand core of 4-0 nylon.", "ring FDP", "no_strands", False),
        ("Small FDP: Kessler, 4-0 nylon.", "small FDP", "no_peripheral", True),
        ("The ring FDP was sewn with a cruciate of 4-0 nylon.", "ring FDP", "no_peripheral", True),
        (
            "Ring FDP: Kessler, 4-0 nylon, and a running 6-0 Prolene epitendinous suture.",
            "ring FDP",
            "no_peripheral",
            False,
        ),
    ],
)
def test_what_an_entry_lacks(words: str, entry: str, sign: str, borne: bool) -> None:
    assert (sign in signs(HAND + words, entry, "size", "repairs")) is borne


@pytest.mark.parametrize(
    ("words", "borne"),
    [
        ("Ring A2 vented over its distal third.", True),
        ("The distal half of A2 of the ring finger was opened.", True),
        ("Ring A2 intact.", False),
    ],
)
def test_the_part_told_of_a_pulley_is_a_sign_at_its_finding(words: str, borne: bool) -> None:
    assert ("part=distal" in signs(HAND + words, "ring A2", "finding", "pulleys")) is borne


@pytest.mark.parametrize(
    ("note", "sign"),
    [
        ("Right ring and small fingers. Ring FDP cut through and repaired. Small FDP cut through.", "extent=complete"),
        ("Left index and ring fingers. Ring FDP half cut, repaired. Index FDP divided and sewn.", "extent=partial"),
    ],
)
def test_how_far_a_tendon_was_cut_is_a_sign_at_its_other_facts(note: str, sign: str) -> None:
    assert sign in signs(note, "ring FDP", "treatment", "repairs")
    assert sign not in signs(note, "ring FDP", "extent", "repairs")


@pytest.mark.parametrize(
    ("words", "sign"),
    [
        ("Ring FDP core of 3-0 nylon. Small FDP core of 4-0 nylon.", "like_none_of_its_kind"),
        ("The ring FDP took 4-0 Ethibond, the small FDP 3-0 Ethibond.", "like_none_of_its_kind"),
        ("Ring FDP core of 4-0 nylon. Small FDP core of 4-0 nylon.", "like_all_of_its_kind"),
    ],
)
def test_what_was_read_of_the_same_tendon_of_other_fingers(words: str, sign: str) -> None:
    borne = signs(HAND + words, "ring FDP", "size", "repairs")
    assert {name for name in borne if name.endswith("of_its_kind")} == {sign}


def test_of_the_only_tendon_nothing_is_read_otherwise() -> None:
    borne = signs("Ring FDP cut through and repaired with 4-0 nylon.", "ring FDP", "size", "repairs")
    assert not any(name.startswith("like_") for name in borne)


@pytest.mark.parametrize(
    "words",
    [
        "The skin took 5-0 nylon, the nail bed 6-0 Vicryl, the vein 8-0 nylon, the drain silk, the pad 4-0 Prolene. "
        "The other skin took 5-0 Prolene, the fascia 3-0 PDS, the subcutis 4-0 Vicryl.",
        "Skin: 5-0 nylon. Fat: 4-0 Vicryl. Fascia: 3-0 PDS. Vein: 8-0 nylon. Nail: 6-0 Vicryl. Drain: 3-0 silk. "
        "Graft bed: 5-0 Monocryl. Web: 4-0 Prolene.",
    ],
)
def test_much_of_a_note_was_not_taken(words: str) -> None:
    plain = HAND + "Small A2 intact. "
    assert "nearly_all_taken" in signs(plain, "small A2", "finding", "pulleys")
    assert signs(plain + words, "small A2", "finding", "pulleys") & {"much_untaken", "very_much_untaken"}


# --- reasons that rules give themselves

SOUND = "Right ring finger, zone II. FDP completely divided. FDP repaired with a four-strand core of 4-0 Ethibond."
DOUBTFUL = (
    "Right ring and small fingers. Ring FDP cut and repaired. Small FDP cut and repaired. If it had seemed wise the "
    "FDS would have had 4-0 nylon [x] beside the nerve, not 3-0 Prolene. Wrist. PL cut and sewn, 3-0 Prolene, two "
    "strands."
)


def weighed(note: str, entry: str, field: str, *given: Reason) -> list[str]:
    """Return the reasons to look twice at a fact of a note to which rules gave some reasons."""
    record, nlp = read(note), language()
    facts = [fact for place, fact in record.walk() if (place.part, place.field) == (entry, field)]
    for _, fact in record.walk():
        fact.look_twice.clear()
    with nlp.memory_zone():
        weigh(record, page_of(nlp(note)), {id(facts[0]): given})
    return facts[0].look_twice


@pytest.mark.parametrize("kind", ["by_reference", "hold_of_name"])
def test_a_weighed_reason_is_told_first_where_the_sum_is_high(kind: str) -> None:
    assert weighed(DOUBTFUL, "PL", "size", Reason(kind, ("kessler",)))[0] == Reason(kind, ("kessler",)).told


@pytest.mark.parametrize("kind", ["by_reference", "splint_described"])
def test_a_weighed_reason_is_not_told_where_the_sum_is_low(kind: str) -> None:
    assert not weighed(SOUND, "FDP", "material", Reason(kind))


@pytest.mark.parametrize(
    ("reason", "told"),
    [
        (Reason("also_says", ("3-0",)), "the note also says 3-0"),
        (Reason("usual_count", ("kessler", "2")), "kessler usually has 2 strands"),
    ],
)
def test_a_contradiction_is_told_whatever_the_sum(reason: Reason, told: str) -> None:
    assert weighed(SOUND, "FDP", "zone", reason)[0] == told


def test_every_kind_of_reason_that_a_rule_gives_is_in_the_table_and_no_other() -> None:
    reader = Path(notereader.reader.__file__).parent
    said = "".join(path.read_text(encoding="utf-8") for path in sorted(reader.rglob("*.py")))
    assert {kind for kind in doubt_table().reasons if f'"{kind}"' in said} == doubt_table().reasons.keys()
    assert set(re.findall(r'\bReason\(\s*"(\w+)"', said)) <= doubt_table().reasons.keys()


def test_no_sign_is_kept_that_weighs_nothing() -> None:
    table = doubt_table()
    weighty = {name for kind in table.kinds.values() for name in kind.signs}
    assert all(sign.weight or name in weighty for name, sign in table.signs.items())
