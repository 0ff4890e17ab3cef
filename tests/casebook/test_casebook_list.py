from datetime import date
from pathlib import Path

import pytest
from casebook_helpers import STRANDS, confirming, draft

from notereader.casebook import Casebook
from notereader.casebook import casebook as casebook_module
from notereader.record import Address, Fact, Note, Record


def note(text: str, name: str = "") -> Record:
    return Record(note=Note.of(text, name))


def test_a_line_shows_what_the_record_says(book: Casebook) -> None:
    record = draft()
    record.put(Address("operation", field="date"), Fact(value="2031-03-14", status="added"))
    record.put(Address("injuries", "thumb", "digital nerve", "ulnar", "extent"), Fact(value="intact"))
    number = book.add(record)
    (line,) = book.cases()
    assert (line.id, line.title, line.state) == (number, "ring.txt", "imported")
    assert (line.operation_date, line.digits, line.tendons) == (date(2031, 3, 14), ("ring", "thumb"), ("FDP",))
    assert line.facts_open == 10
    case = book.open(number)
    case.apply(confirming(case, STRANDS))
    assert [(line.state, line.facts_open) for line in book.cases()] == [("in work", 9)]


def test_a_withdrawn_date_is_not_listed(book: Casebook) -> None:
    record = Record()
    record.put(Address("operation", field="date"), Fact(value="2031-03-14", status="withdrawn"))
    book.add(record)
    assert book.cases()[0].operation_date is None


def test_the_last_changed_case_stands_first(book: Casebook) -> None:
    first, second = book.add(draft(), title="one"), book.add(draft(), title="two")
    assert [line.id for line in book.cases()] == [second, first]
    case = book.open(first)
    case.apply(confirming(case, STRANDS))
    assert [line.id for line in book.cases()] == [first, second]
    assert [line.id for line in book.cases(limit=1, offset=1)] == [second]
    assert [line.id for line in book.cases(state="in work")] == [first]


@pytest.mark.parametrize(
    ("search", "found"),
    [
        ("", {"gloves", "straße", "percent"}),
        ("SAW", {"gloves"}),
        ("palm saw", {"gloves"}),
        ("saw finger", set()),
        ("GLOVES", {"gloves"}),
        ("STRASSE", {"straße"}),
        ("größe", {"straße"}),
        ("50%", {"percent"}),
        ("5_%", set()),
        ("'; DROP TABLE casebook_cases; --", set()),
        ("\\", set()),
        ("/", set()),
        ("\0", {"gloves", "straße", "percent"}),
        ("x" * 100_000, set()),
        ("% " * 60_000, {"percent"}),
    ],
)
def test_search_takes_every_word_in_title_or_text(book: Casebook, search: str, found: set[str]) -> None:
    book.add(note("A saw went through the palm."), title="gloves")
    book.add(note("Die GRÖSSE war gering. größe"), title="straße")
    book.add(note("cut 50% through"), title="percent")
    assert {line.title for line in book.cases(search)} == found


def test_characters_that_databases_refuse_are_kept_in_the_text(book: Casebook) -> None:
    text = "tab\t nul\0 bell\a emoji🙂 combining e\u0301 right-to-left \u202e end"
    number = book.add(note(text, "odd\0name"), title="odd\0 title")
    assert book.open(number).record.note.text == text
    assert [line.id for line in book.cases("emoji🙂")] == [number]


def test_a_clock_that_goes_backwards_changes_no_order(book: Casebook, monkeypatch: pytest.MonkeyPatch) -> None:
    from datetime import UTC, datetime

    class Backwards(datetime):
        hours = 20

        @classmethod
        def now(cls, tz=None):
            cls.hours -= 1
            return datetime(2031, 3, 14, cls.hours, tzinfo=UTC)

    from notereader.casebook import case as case_module

    monkeypatch.setattr(casebook_module, "datetime", Backwards)
    monkeypatch.setattr(case_module, "datetime", Backwards)
    first, second = book.add(draft(), title="one"), book.add(draft(), title="two")
    case = book.open(first)
    places = [place for place, _ in case.record.walk()]
    for place in places:
        case.apply(confirming(case, place))
    assert [line.id for line in book.cases()] == [first, second]
    history = case.history()
    assert [line.address for line in history[1:]] == places
    assert history[0].when > history[-1].when
    case.confirm("ward")
    assert book.open(first).record == case.record


def test_a_path_is_taken_as_text_too(tmp_path: Path) -> None:
    place = tmp_path / "Fälle der Woche" / "book.db"
    Casebook(str(place)).add(draft())
    assert len(Casebook(f"sqlite:///{place}").cases()) == 1


def test_a_change_of_the_working_folder_changes_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    book = Casebook("book.db")
    (tmp_path / "other").mkdir()
    monkeypatch.chdir(tmp_path / "other")
    case = book.open(book.add(draft()))
    case.apply(confirming(case, STRANDS))
    case.apply_all([])
    assert [line.state for line in book.cases()] == ["in work"]
    book.close()
    assert [place.name for place in tmp_path.glob("*.db")] == ["book.db"]
