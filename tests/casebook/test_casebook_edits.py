from pathlib import Path

import pytest

from notereader.casebook import Casebook, ChangedElsewhere, Edit, NotAllConfirmed
from notereader.record import Address, Evidence, Fact, Note, Record, source_of

TEXT = "Ring finger, zone II. FDP repaired with a four-strand core of 4-0 braided polyester. A2 was vented."
STRANDS = Address("repairs", "ring", "FDP", None, "strands")
SIZE = Address("repairs", "ring", "FDP", None, "size")


def quoted(value: object, words: str) -> Fact:
    start = TEXT.index(words)
    return Fact(value=value, evidence=[Evidence.at(TEXT, start, start + len(words), source_of(TEXT))])


def draft() -> Record:
    record = Record(note=Note.of(TEXT, "ring.txt"))
    record.put(STRANDS, quoted(4, "four-strand"))
    record.put(SIZE, quoted("4-0", "4-0"))
    record.put(Address("pulleys", "ring", "A2", None, "finding"), quoted("vented", "vented"))
    return record


def confirmed(fact: Fact | None) -> Fact:
    assert fact is not None
    return fact.model_copy(update={"status": "confirmed"})


@pytest.fixture
def book(tmp_path: Path):
    book = Casebook(tmp_path / "book.db")
    yield book
    book.close()


def test_an_edit_is_there_after_reopening(tmp_path: Path) -> None:
    book = Casebook(tmp_path / "book.db")
    number = book.add(draft(), title="Second list")
    case = book.open(number)
    case.apply(Edit(STRANDS, case.record.fact(STRANDS), confirmed(case.record.fact(STRANDS))), who="ward")
    book.close()

    again = Casebook(tmp_path / "book.db").open(number)
    assert again.record.fact(STRANDS).status == "confirmed"
    assert again.record == case.record
    assert (again.state, again.revision) == ("in work", 1)
    assert [(line.kind, line.who) for line in again.history()] == [("imported", ""), ("edited", "ward")]


def test_edits_of_different_facts_merge_and_of_the_same_fact_are_offered(book: Casebook) -> None:
    number = book.add(draft())
    mine, theirs = book.open(number), book.open(number)
    theirs.apply(Edit(SIZE, theirs.record.fact(SIZE), confirmed(theirs.record.fact(SIZE))), who="other")
    mine.apply(Edit(STRANDS, mine.record.fact(STRANDS), confirmed(mine.record.fact(STRANDS))), who="me")
    assert mine.record.fact(SIZE).status == "confirmed"
    assert mine.revision == 2

    with pytest.raises(ChangedElsewhere) as caught:
        theirs.apply(Edit(STRANDS, theirs.record.fact(STRANDS), None), who="other")
    assert caught.value.record.fact(STRANDS).status == "confirmed"
    assert (caught.value.who, caught.value.revision) == ("me", 2)
    assert theirs.refresh()
    assert theirs.record == mine.record


def test_a_case_is_confirmed_only_when_every_fact_was_decided(book: Casebook) -> None:
    case = book.open(book.add(draft()))
    with pytest.raises(NotAllConfirmed):
        case.confirm("ward")
    case.apply_all([Edit(place, fact, confirmed(fact)) for place, fact in case.record.walk()], who="ward")
    case.confirm("ward")
    assert book.cases()[0].state == "confirmed"
    assert case.record.review.reviewer == "ward"
    case.apply(Edit(STRANDS, case.record.fact(STRANDS), None), who="ward")
    assert case.record.review.reviewer is None
    assert book.cases(state="confirmed") == []
