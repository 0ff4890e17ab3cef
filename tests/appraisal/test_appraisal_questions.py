"""Questions for the surgeon, the letter, and answers entered back."""

from datetime import date
from typing import Any

import pytest
from appraisal_making import GOOD_REPAIR, proposed, quoted, record_of, repair_record, rivals, span

from notereader.appraisal import Question, appraise, question_letter
from notereader.appraisal.questions import question_tables
from notereader.record import SURGEON, Address, Fact, Record, ValueRefused, dump_record, enter_answer, load_record
from notereader.vocabulary import field_specs

STRANDS = Address("repairs", "ring", "FDP", None, "strands")


def questions(record: Record) -> list[Question]:
    return appraise(record).questions


def keys(record: Record) -> list[str]:
    return [q.key for q in questions(record)]


def test_what_is_stated_is_not_asked() -> None:
    assert "repairs.strands" not in keys(repair_record())
    assert "repairs.strands" in keys(repair_record(strands=None, stitch=None))


def test_an_inference_is_asked_and_called_one() -> None:
    question = next(
        q for q in questions(repair_record(strands=proposed(4, basis="implied"))) if q.key == "repairs.strands"
    )
    assert "inference" in question.says


def test_order_falls_with_effect() -> None:
    effects = [q.effect for q in questions(repair_record(strands=None, stitch=None, size=None, gap=None, lock_mm=None))]
    assert effects == sorted(effects, reverse=True)
    assert all(0 < effect <= 1 for effect in effects)


def test_the_spread_orders_the_unknowns_of_the_suture() -> None:
    asked = keys(repair_record(strands=None, stitch=None, size=None, hold=None, lock_mm=None))
    assert asked.index("repairs.strands") < asked.index("repairs.size") < asked.index("repairs.lock_mm")


def test_effects_of_the_suture_are_the_shares_of_the_spread() -> None:
    appraisal = appraise(repair_record(size=None))
    question = next(q for q in appraisal.questions if q.key == "repairs.size")
    strength = appraisal.tendons[0].strength
    assert strength is not None
    share = next(f.share for f in strength.factors if f.field == "size")
    # The bend of the tendon adds no spread at 0 degrees, so both are shares of the same whole.
    assert question.effect == pytest.approx(share, abs=0.001)


def test_one_question_for_several_tendons() -> None:
    bare = {k: v for k, v in GOOD_REPAIR.items() if k != "gap"}
    record = record_of({"repairs/ring/FDP/-": bare, "repairs/small/FDP/-": bare})
    asked = [q for q in questions(record) if q.key == "repairs.gap"]
    assert len(asked) == 1
    assert asked[0].where == "ring FDP, small FDP"
    assert len(asked[0].places) == 2


def test_a_contradiction_is_asked_with_both_statements() -> None:
    text = "Core 4-0 nylon. Header: 3-0."
    torn = rivals("4-0", "3-0")
    torn.evidence, torn.rivals[0].evidence = quoted(text, "4-0 nylon"), quoted(text, "3-0")
    question = next(q for q in questions(repair_record(size=torn)) if q.key == "repairs.size")
    assert "4-0 nylon" in question.says and "3-0" in question.says
    assert question.effect >= question_tables().disputed_least


def test_places_of_questions_are_fields_that_answers_can_fill() -> None:
    record = record_of({"repairs/ring/FDP/-": dict(treatment="repaired"), "pulleys/ring/A2/-": dict(finding="vented")})
    for question in questions(record):
        for line in question.places:
            place = Address.parse(line)
            if place.group != "injuries":
                assert place.field in field_specs()[place.group]


def test_every_reason_is_half_a_sentence() -> None:
    for row in question_tables().question:
        assert not row.reason.endswith(".") and row.reason[0].islower()
        assert len(row.reason.split()) <= 14
        assert row.text.endswith("?")


def test_the_letter_asks_the_most_telling_first_and_says_what_the_note_says() -> None:
    asked = questions(repair_record(strands=None, stitch=None, gap=None))
    letter = question_letter(asked)
    assert letter.index(asked[0].text) < letter.index(asked[1].text)
    assert "The note does not say." in letter
    assert "I ask because" in letter


def test_the_letter_is_short_unless_asked_for_all() -> None:
    asked = questions(record_of({"repairs/ring/FDP/-": dict(treatment="repaired")}))
    assert len(asked) > question_tables().in_letter
    assert question_letter(asked).count("Answer:") == question_tables().in_letter
    assert question_letter(asked, most=99).count("Answer:") == len(asked)


def test_the_letter_leaves_identifiers_blank() -> None:
    record = repair_record(gap=None)
    record.note.name = "secret-name.txt"
    for name, value in dict(date="2031-03-02", injury_date="2031-03-05").items():
        record.put(Address("operation", field=name), Fact(value=value, status="confirmed"))
    letter = question_letter(questions(record), most=99)
    assert "2031" not in letter and "secret-name" not in letter
    for blank in ("Patient: ____", "Date of birth: ____", "Record number: ____", "Date of operation: ____"):
        assert blank in letter


def test_a_letter_without_questions_says_so() -> None:
    assert "no open questions" in question_letter([])


def test_an_answer_is_added_with_its_source_and_date() -> None:
    record = repair_record(strands=None, stitch=None)
    enter_answer(record, STRANDS, 6, date(2031, 3, 9))
    found = record.fact(STRANDS)
    assert found is not None
    assert (found.value, found.status, found.said_by, found.said_on) == (6, "added", SURGEON, date(2031, 3, 9))
    assert "repairs.strands" not in keys(record)
    strength = appraise(record).tendons[0].strength
    assert strength is not None
    assert next(f.value for f in strength.factors if f.field == "strands") == "6"


def test_an_answer_loses_nothing_the_note_said() -> None:
    text = "four strands"
    record = repair_record(strands=proposed(4, evidence=quoted(text, "four strands")))
    enter_answer(record, STRANDS, 6, date(2031, 3, 9))
    found = record.fact(STRANDS)
    assert found is not None
    assert [(r.value, r.evidence[0].exact) for r in found.rivals] == [(4, "four strands")]


def test_an_answer_that_agrees_keeps_the_words_of_the_note() -> None:
    torn = rivals(4, 6)
    torn.rivals[0].evidence = quoted("six strands", "six")
    record = repair_record(strands=torn, stitch=None)
    enter_answer(record, STRANDS, 6, date(2031, 3, 9))
    found = record.fact(STRANDS)
    assert found is not None
    assert [e.exact for e in found.evidence] == ["six"]
    assert [r.value for r in found.rivals] == [4]


def test_a_record_with_an_answer_survives_saving() -> None:
    record = repair_record(purchase_mm=None)
    place = STRANDS.entry().field_of("purchase_mm")
    enter_answer(record, place, span(8, 10), date(2031, 3, 9))
    again = load_record(dump_record(record))
    assert again.fact(place) == record.fact(place)


@pytest.mark.parametrize(("place", "value"), [(STRANDS, "many"), (STRANDS, 0), (STRANDS.entry().field_of("size"), "4")])
def test_an_impossible_answer_is_refused_and_changes_nothing(place: Address, value: Any) -> None:
    record = repair_record()
    before = dump_record(record)
    with pytest.raises(ValueRefused):
        enter_answer(record, place, value, date(2031, 3, 9))
    assert dump_record(record) == before


def test_an_answer_without_a_field_is_refused() -> None:
    with pytest.raises(ValueError, match="names no field"):
        enter_answer(Record(), Address("injuries", "ring", "digital nerve"), "repaired", date(2031, 3, 9))
