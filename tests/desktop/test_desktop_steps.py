"""What each action means as changes of the record."""

from datetime import date

import pytest
from desktop_samples import sample_record, sample_text

from notereader.desktop import steps
from notereader.record import SURGEON, Address, Evidence, Fact, Record, Rival, ValueRefused, source_of

STRANDS = Address("repairs", "ring", "FDP", None, "strands")


@pytest.fixture
def record():
    return sample_record("02-terse-ring")


def only(step):
    (change,) = step.changes
    return change


def test_confirming_keeps_everything_but_the_status(record):
    before = record.fact(STRANDS)
    after = only(steps.confirm(record, STRANDS)).after
    assert after.status == "confirmed"
    assert after.model_copy(update={"status": "proposed"}) == before
    assert before.status == "proposed", "the record itself is never changed"


def test_confirming_a_settled_fact_changes_nothing(record):
    record.fact(STRANDS).status = "corrected"
    assert steps.confirm(record, STRANDS).changes == ()


def test_nothing_to_confirm_where_nothing_was_found(record):
    with pytest.raises(steps.StepRefused, match="Nothing was found"):
        steps.confirm(record, Address("repairs", "ring", "FDP", None, "bulk"))


def test_correcting(record):
    after = only(steps.correct(record, STRANDS, 6)).after
    assert (after.value, after.status) == (6, "corrected")
    assert after.evidence == record.fact(STRANDS).evidence


def test_correcting_with_words_makes_them_the_proof(record):
    text = sample_text("02-terse-ring")
    words = Evidence.at(text, 10, 20, source_of(text))
    after = only(steps.correct(record, STRANDS, 6, words)).after
    assert after.evidence == [words]
    assert after.basis == "stated"


def test_entering_the_proposed_value_is_confirming(record):
    assert only(steps.correct(record, STRANDS, 4)).after.status == "confirmed"


def test_an_impossible_value_is_refused_with_its_reason(record):
    with pytest.raises(ValueRefused, match="from 1 to 16"):
        steps.correct(record, STRANDS, 40)


def test_a_first_value_is_added(record):
    change = only(steps.correct(record, Address("repairs", "ring", "FDP", None, "bulk"), "none"))
    assert (change.after.value, change.after.status) == ("none", "added")


def test_a_first_fact_brings_its_entry(record):
    change = only(steps.correct(record, Address("pulleys", "ring", "A3", None, "finding"), "intact"))
    assert change.address == Address("pulleys", "ring", "A3")
    assert change.after["finding"].status == "added"


def test_taking_a_rival_makes_the_proposed_value_one():
    record = Record()
    record.put(STRANDS, Fact(value=2, rivals=[Rival(value=4), Rival(value=6)]))
    after = only(steps.take_rival(record, STRANDS, 1)).after
    assert (after.value, after.status) == (6, "corrected")
    assert [rival.value for rival in after.rivals] == [2, 4]
    assert only(steps.correct(record, STRANDS, 4)).after.rivals[0].value == 2, "typed in, a rival is a rival too"
    with pytest.raises(steps.StepRefused):
        steps.take_rival(record, STRANDS, 2)


def test_silence(record):
    after = only(steps.mark_silent(record, STRANDS)).after
    assert (after.value, after.basis, after.status, after.evidence) == (None, "silent", "corrected", [])
    change = only(steps.mark_silent(record, Address("pulleys", "ring", "A1", None, "finding")))
    assert change.after["finding"].status == "confirmed"


def test_withdrawing(record):
    after = only(steps.withdraw(record, STRANDS)).after
    assert after.status == "withdrawn"
    assert not after.live
    with pytest.raises(steps.StepRefused):
        steps.withdraw(record, Address("repairs", "ring", "FDP", None, "bulk"))


def test_confirming_what_was_shown_leaves_what_needs_thought(record):
    entry = STRANDS.entry()
    addresses = [entry.field_of(name) for name in record.facts_of(entry)]
    record.fact(STRANDS).rivals.append(Rival(value=2))
    step = steps.confirm_shown(record, addresses)
    confirmed = {change.address for change in step.changes}
    assert STRANDS not in confirmed
    assert entry.field_of("hold") not in confirmed, "implied, so always a reason to look twice"
    assert len(confirmed) == len(addresses) - 2


def test_moving_an_entry_to_another_digit(record):
    away, there = steps.move_entry(record, STRANDS, "middle").changes
    assert away == steps.Change(STRANDS.entry(), None)
    assert there.address == Address("repairs", "middle", "FDP")
    assert there.after == record.facts_of(STRANDS)
    with pytest.raises(steps.StepRefused, match="already stands"):
        steps.move_entry(record, STRANDS, "ring")
    record.put(Address("repairs", "middle", "FDP", None, "zone"), Fact(value="II"))
    with pytest.raises(steps.StepRefused, match="already entered"):
        steps.move_entry(record, STRANDS, "middle")


def test_withdrawing_an_entry_withdraws_every_live_fact(record):
    step = steps.withdraw_entry(record, STRANDS)
    assert len(step.changes) == len(record.facts_of(STRANDS))
    assert all(change.after.status == "withdrawn" for change in step.changes)


def test_an_answer_of_the_surgeon_stands_beside_what_the_note_says():
    record = sample_record("02-terse-ring")
    step = steps.answer(record, STRANDS, 6, date(2031, 8, 14))
    after = step.changes[0].after
    assert (after.value, after.status, after.said_by, after.said_on) == (6, "added", SURGEON, date(2031, 8, 14))
    assert [rival.value for rival in after.rivals] == [4]
    assert record.fact(STRANDS).value == 4, "the record itself changes only through the casebook"
    record.put(STRANDS, after)
    back = steps.take_rival(record, STRANDS, 0).changes[0].after
    assert (back.value, back.said_by, back.said_on, back.rivals) == (4, None, None, [])
    with pytest.raises(ValueRefused):
        steps.answer(record, STRANDS, "many", date(2031, 8, 14))
