from pathlib import Path

import pytest
from casebook_helpers import A2, A4, GLIDE, SIZE, STRANDS, confirming, correcting, draft

from notereader.casebook import (
    Casebook,
    CasebookFault,
    ChangedElsewhere,
    Edit,
    EditRefused,
    NotAllConfirmed,
    OpenCase,
)
from notereader.record import Address, Fact, Record, RecordRefused, Review


def test_an_edit_is_there_after_reopening(path: Path) -> None:
    book = Casebook(path)
    number = book.add(draft(), title="Second list")
    case = book.open(number)
    case.apply(confirming(case, STRANDS), who="ward")
    book.close()

    again = Casebook(path).open(number)
    assert again.record.fact(STRANDS).status == "confirmed"
    assert again.record == case.record
    assert (again.state, again.revision) == ("in work", 1)


def test_a_new_case_is_exactly_the_record_given(book: Casebook) -> None:
    record = draft()
    case = book.open(book.add(record))
    assert case.record == record
    assert (case.state, case.revision, case.read) == ("imported", 0, set())


def test_history_says_who_changed_what_from_what_to_what(book: Casebook) -> None:
    case = book.open(book.add(draft()))
    case.apply(correcting(case, STRANDS, 6), who="Ward 3")
    imported, edited = case.history()
    assert (imported.kind, imported.address, imported.words) == ("imported", None, "imported")
    assert (edited.who, edited.address, edited.before.value, edited.after.value) == ("Ward 3", STRANDS, 4, 6)
    assert edited.words == "ring FDP: core strands: 4 (proposed) → 6 (corrected)"
    assert imported.when <= edited.when


def test_an_edit_and_its_inverse_leave_the_record_as_it_was(book: Casebook) -> None:
    case = book.open(book.add(draft()))
    before = case.record
    edit = correcting(case, SIZE, "3-0")
    case.apply(edit)
    case.apply(edit.inverse())
    assert case.record == before
    assert [line.kind for line in case.history()] == ["imported", "edited", "edited"]


def test_a_dropped_pulley_comes_back_with_its_facts_to_its_place(book: Casebook) -> None:
    case = book.open(book.add(draft()))
    before = case.record
    drop = Edit.dropping(case.record, A2)
    case.apply(drop)
    assert [pulley.pulley for pulley in case.record.pulleys] == ["A4"]
    case.apply(drop.inverse())
    assert case.record == before


def test_a_missed_pulley_is_added_with_its_first_fact(book: Casebook) -> None:
    case = book.open(book.add(draft()))
    fact = Fact(value="excised", status="added")
    case.apply(Edit(Address("pulleys", "ring", "A3"), None, {"finding": fact}))
    assert case.record.fact(Address("pulleys", "ring", "A3", None, "finding")) == fact


@pytest.mark.parametrize(
    ("edit", "reason"),
    [
        (Edit(STRANDS, None, Fact(value=4)), None),
        (Edit(Address("pulleys", "ring", "A3", None, "finding"), None, Fact(value="intact")), "no such entry"),
        (Edit(Address("operation", field="mechanism"), None, Fact(value="lightning")), "not possible"),
        (Edit(Address("operation"), {}, None), "other window|only tendons"),
        (Edit(Address("pulleys", "ring", "Z9"), None, {}), "cannot be changed"),
    ],
)
def test_an_impossible_edit_is_refused_and_nothing_is_saved(book: Casebook, edit: Edit, reason: str | None) -> None:
    case = book.open(book.add(draft()))
    before = case.record
    with pytest.raises((EditRefused, ChangedElsewhere), match=reason):
        case.apply(edit)
    assert (case.revision, case.record) == (0, before)
    assert book.open(case.id).record == before


def moved(fact: Fact) -> Fact:
    """Return a copy of a fact whose evidence begins a character too late for its quote."""
    proof = fact.evidence[0]
    place, quote = proof.selector
    late = proof.model_copy(update={"selector": [place.model_copy(update={"start": place.start + 1}), quote]})
    return fact.model_copy(update={"evidence": [late, *fact.evidence[1:]]})


def test_evidence_that_is_not_in_the_note_is_never_saved(book: Casebook) -> None:
    case = book.open(book.add(draft()))
    fact = moved(case.record.fact(STRANDS))
    with pytest.raises(EditRefused, match="do not stand"):
        case.apply(Edit(STRANDS, case.record.fact(STRANDS), fact))
    assert book.open(case.id).record == draft()


def test_a_record_whose_evidence_is_not_in_the_note_is_not_taken_in(book: Casebook) -> None:
    record = draft()
    record.fact(STRANDS).evidence = moved(record.fact(STRANDS)).evidence
    with pytest.raises(RecordRefused, match="do not stand"):
        book.add(record)
    assert book.cases() == []


def test_several_edits_are_saved_all_or_none(book: Casebook) -> None:
    case = book.open(book.add(draft()))
    good = confirming(case, STRANDS)
    with pytest.raises(EditRefused):
        case.apply_all([good, correcting(case, SIZE, "nothing")])
    assert book.open(case.id).record == draft()
    book.open(case.id).apply(correcting(case, SIZE, "3-0"), who="other")
    with pytest.raises(ChangedElsewhere) as caught:
        case.apply_all([good, confirming(case, SIZE)], who="ward")
    assert (caught.value.who, caught.value.revision) == ("other", 1)
    assert caught.value.record.fact(STRANDS).status == "proposed"
    case.refresh()
    case.apply_all([good, confirming(case, SIZE)], who="ward")
    assert (case.revision, len(case.history())) == (3, 4)


def test_edits_of_different_facts_in_two_windows_merge(book: Casebook) -> None:
    number = book.add(draft())
    mine, theirs = book.open(number), book.open(number)
    theirs.apply(confirming(theirs, SIZE), who="other")
    mine.apply(confirming(mine, STRANDS), who="me")
    assert mine.record.fact(SIZE).status == "confirmed"
    assert mine.record.fact(STRANDS).status == "confirmed"
    assert mine.revision == 2
    assert theirs.refresh()
    assert theirs.record == mine.record
    assert not theirs.refresh()


def test_the_same_fact_changed_in_two_windows_is_offered_and_never_overwritten(book: Casebook) -> None:
    number = book.add(draft())
    mine, theirs = book.open(number), book.open(number)
    theirs.apply(correcting(theirs, STRANDS, 2), who="other")
    theirs.apply(confirming(theirs, SIZE), who="somebody else")
    mine_edit = correcting(mine, STRANDS, 6)
    with pytest.raises(ChangedElsewhere) as caught:
        mine.apply(mine_edit, who="me")
    found = caught.value
    assert (found.who, found.revision, found.edit) == ("other", 2, mine_edit)
    assert found.record.fact(STRANDS).value == 2
    assert mine.record.fact(STRANDS).value == 4
    assert book.open(number).record.fact(STRANDS).value == 2

    mine.refresh()
    mine.apply(correcting(mine, STRANDS, 6), who="me")
    assert [line.after.value for line in mine.history() if line.address == STRANDS] == [2, 6]


def test_a_fact_of_an_entry_that_another_window_dropped_is_offered(book: Casebook) -> None:
    number = book.add(draft())
    mine, theirs = book.open(number), book.open(number)
    theirs.apply(Edit.dropping(theirs.record, A4), who="other")
    for edit in (confirming(mine, A4.field_of("finding")), Edit(A4.field_of("part"), None, Fact(value="distal"))):
        with pytest.raises(ChangedElsewhere) as caught:
            mine.apply(edit)
        assert caught.value.who == "other"


def test_an_entry_in_which_another_window_changed_a_fact_is_not_dropped(book: Casebook) -> None:
    number = book.add(draft())
    mine, theirs = book.open(number), book.open(number)
    theirs.apply(confirming(theirs, A4.field_of("finding")), who="other")
    theirs.apply(confirming(theirs, STRANDS), who="somebody else")
    with pytest.raises(ChangedElsewhere) as caught:
        mine.apply(Edit.dropping(mine.record, A4))
    assert caught.value.who == "other"


def test_shown_facts_are_remembered_and_shared(book: Casebook) -> None:
    number = book.add(draft())
    mine, theirs = book.open(number), book.open(number)
    mine.mark_read([STRANDS.text(), SIZE.text()])
    mine.mark_read([SIZE.text()])
    theirs.mark_read([SIZE.text(), GLIDE.text()])
    assert mine.refresh()
    assert mine.read == theirs.read == {STRANDS.text(), SIZE.text(), GLIDE.text()}
    assert mine.state == "imported"


def confirm_all(case: OpenCase) -> None:
    case.apply_all([confirming(case, place) for place, _ in case.record.walk()], who="ward")


def test_a_case_is_confirmed_only_when_every_fact_was_decided(book: Casebook) -> None:
    case = book.open(book.add(draft()))
    with pytest.raises(NotAllConfirmed, match="core strands") as caught:
        case.confirm("ward")
    assert STRANDS in caught.value.open_facts
    confirm_all(case)
    with pytest.raises(CasebookFault, match="name"):
        case.confirm("  ")
    case.confirm("ward")
    assert (case.state, book.cases()[0].state) == ("confirmed", "confirmed")
    assert case.record.review.reviewer == "ward"
    assert case.record.review.confirmed_at == case.history()[-1].when
    assert book.open(case.id).record == case.record


def test_a_confirmation_does_not_outlive_a_later_edit(book: Casebook) -> None:
    case = book.open(book.add(draft()))
    confirm_all(case)
    case.confirm("ward")
    case.apply(correcting(case, STRANDS, 6), who="ward")
    assert (case.record.review.reviewer, case.record.review.confirmed_at) == (None, None)
    assert case.state == "in work"
    assert [line.kind for line in case.history()][-3:] == ["confirmed", "edited", "reopened"]


def test_a_confirmation_that_came_with_an_imported_record_does_not_outlive_an_edit(book: Casebook) -> None:
    record = draft()
    record.review = Review(reviewer="a colleague")
    case = book.open(book.add(record))
    assert case.record.review.reviewer == "a colleague"
    case.apply(confirming(case, STRANDS))
    assert case.record.review.reviewer is None


def test_what_changed_elsewhere_is_not_confirmed_unseen(book: Casebook) -> None:
    number = book.add(draft())
    mine, theirs = book.open(number), book.open(number)
    confirm_all(mine)
    theirs.refresh()
    mine.apply(correcting(mine, STRANDS, 2), who="me")
    with pytest.raises(ChangedElsewhere, match="me"):
        theirs.confirm("other")


def test_a_record_without_its_text_is_kept_too(book: Casebook) -> None:
    record = draft()
    record.note.text = None
    case = book.open(book.add(record))
    assert case.record == record
    case.apply(confirming(case, STRANDS))
    assert book.open(case.id).record == case.record


def test_an_empty_record_can_be_confirmed(book: Casebook) -> None:
    case = book.open(book.add(Record(), title="nothing found"))
    case.confirm("ward")
    assert case.state == "confirmed"


def test_a_case_that_is_not_there_is_said_so(book: Casebook) -> None:
    with pytest.raises(CasebookFault, match="no case number 99"):
        book.open(99)
