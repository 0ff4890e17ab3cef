"""Copies: dates move together, positions hold, and no quote keeps what was blanked."""

import re
from datetime import date, timedelta
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sharing_notes import hand_written, made

from notereader.cli import main
from notereader.reader import read
from notereader.record import Evidence, Note, Record, RecordRefused, Remark, dump_record, load_record
from notereader.sharing import (
    CleanCopy,
    Find,
    by_hand,
    everywhere,
    find_identifiers,
    find_in_record,
    random_shift,
    share_record,
)
from notereader.sharing.known import is_known

NOTES = [*hand_written("h"), *hand_written("k"), *hand_written("m"), *made(12)]


def quotes(record: Record) -> list[Evidence]:
    found = [e for _, fact in record.walk() for e in [*fact.evidence, *(e for r in fact.rivals for e in r.evidence)]]
    return found + [e for remark in record.remarks for e in remark.evidence]


@pytest.mark.parametrize("note", NOTES, ids=lambda note: note.name)
def test_a_shared_record_proves_its_facts_in_its_own_text_and_quotes_no_identifier(note) -> None:
    record = read(note.text, f"{note.name}.txt")
    finds = find_in_record(record)
    copy = share_record(record, finds, -100)
    text = copy.note.text
    assert text is not None
    assert load_record(dump_record(copy)) == copy
    assert len(quotes(copy)) == len(quotes(record))
    for quote in quotes(copy):
        start, end = quote.span
        selector = quote.selector[1]
        assert quote.exact == text[start:end]
        assert selector.prefix == text[max(0, start - len(selector.prefix)) : start]
        assert selector.suffix == text[end : end + len(selector.suffix)]
    # A person called like a stitch is hidden; the stitch of that name stays.
    hidden = {find.words for find in finds if find.kind != "date" and len(find.words) > 3 and not is_known(find.words)}
    for quote in quotes(copy):
        selector = quote.selector[1]
        for part in (selector.exact, selector.prefix, selector.suffix):
            assert not [words for words in hidden if words in part]


@pytest.mark.parametrize("note", NOTES, ids=lambda note: note.name)
def test_the_facts_stay_the_same_but_for_their_dates(note) -> None:
    record = read(note.text, note.name)
    copy = share_record(record, find_in_record(record), -100)
    for (place, old), (same, new) in zip(record.walk(), copy.walk(), strict=True):
        assert place == same
        if place.field in ("date", "injury_date"):
            assert date.fromisoformat(new.value) == date.fromisoformat(old.value) - timedelta(days=100)
        else:
            assert new.value == old.value


DATED = """Operated 14 March 2031 (Friday). Injured 12/03/2031. Born May 2nd, 1988. Review 2031-04-04 and 03-APR-31.
Seen 3rd April. Therapy on Monday 17 March 2031."""


@pytest.mark.parametrize("days", [-30, -400, 1, 365])
def test_dates_move_by_one_number_of_days_and_keep_their_form(days: int) -> None:
    copy = CleanCopy(DATED, find_identifiers(DATED), days).text
    move = timedelta(days=days)

    def moved(year: int, month: int, day: int) -> date:
        return date(year, month, day) + move

    operated, injured, born = moved(2031, 3, 14), moved(2031, 3, 12), moved(1988, 5, 2)
    assert f"Operated {operated.day} {operated:%B %Y} ({operated:%A})" in copy
    assert f"Injured {injured:%d/%m/%Y}" in copy
    assert re.search(rf"Born {born:%B} {born.day}(st|nd|rd|th), {born.year}\.", copy)
    assert f"Review {moved(2031, 4, 4).isoformat()}" in copy
    assert f"and {moved(2031, 4, 3):%d-%b-%y}".upper() in copy.upper()
    assert f"on {moved(2031, 3, 17):%A} {moved(2031, 3, 17).day} " in copy
    # Without a year a day outside the year that is meant would be another one.
    third = moved(2031, 4, 3)
    assert ("Seen [date]." in copy) == (third.year != 2031)


@pytest.mark.parametrize("written", ["03/04/2031", "March 2031", "since June", "at Christmas", "19.xi.2031"])
def test_a_date_whose_day_cannot_be_told_is_blanked(written: str) -> None:
    text = f"Seen {written} by us."
    assert "[date]" in CleanCopy(text, find_identifiers(text), -50).text


def test_a_known_date_tells_the_order_of_day_and_month() -> None:
    text = "Operated 03/04/2031."
    finds = find_identifiers(text, [date(2031, 4, 3)])
    assert CleanCopy(text, finds, -1).text == "Operated 02/04/2031."


def test_a_date_of_birth_of_more_than_89_years_is_blanked_with_its_year() -> None:
    text = "Born 4 March 1938. Operated 14 May 2031."
    assert "1938" not in CleanCopy(text, find_identifiers(text), -40).text


def test_the_shift_is_random_and_back_by_a_month_to_two_years() -> None:
    shifts = {random_shift() for _ in range(300)}
    assert len(shifts) > 100
    assert all(-730 <= days <= -30 for days in shifts)


@given(st.text(max_size=60), st.data())
def test_positions_follow_any_changes(text: str, data: st.DataObject) -> None:
    cuts = sorted(data.draw(st.sets(st.integers(0, len(text)), max_size=8)))
    finds = [Find(a, b, "name", text[a:b], "") for a, b in zip(cuts[::2], cuts[1::2], strict=False)]
    copy = CleanCopy(text, finds, 0)
    start, end = sorted((data.draw(st.integers(0, len(text))), data.draw(st.integers(0, len(text)))))
    low, high = copy.span(start, end)
    assert 0 <= low <= high <= len(copy.text)
    if not copy.touches(start, end):
        assert copy.text[low:high] == text[start:end]
    for find in finds:
        assert copy.text[slice(*copy.span(find.start, find.end))] == "[name]"


def test_names_of_note_and_people_are_blanked_and_times_move() -> None:
    record = read("Operated 14 March 2031. FDP of the ring finger repaired with four strands.", "doe-jane.txt")
    record.review.reviewer = "T. Reviewer"
    _, fact = next(record.walk())
    fact.said_by, fact.said_on, fact.status = "Dr Okonjo", date(2031, 3, 20), "confirmed"
    copy = share_record(record, find_in_record(record), -60)
    _, fact = next(copy.walk())
    out = dump_record(copy)
    for words in ("doe-jane", "T. Reviewer", "Okonjo", "2031-03"):
        assert words not in out
    assert fact.said_on == date(2031, 3, 20) - timedelta(days=60)
    assert fact.status == "confirmed"


def test_reasons_and_remarks_are_cleaned_too() -> None:
    text = "Surgeon: Okonjo. FDP of the ring finger was repaired."
    record = read(text, "x")
    place, fact = next(record.walk())
    fact.look_twice = ["'Okonjo' is little more than a guess"]
    record.remarks.append(Remark(text="written by Okonjo", evidence=[]))
    copy = share_record(record, find_in_record(record), -60)
    assert copy.fact(place).look_twice == ["'[name]' is little more than a guess"]
    assert copy.remarks[-1].text == "written by [name]"


def test_a_date_that_is_kept_keeps_its_fact() -> None:
    record = read("Operated 14 March 2031. FDP of the ring finger was repaired.", "x")
    copy = share_record(record, [], -60)
    assert copy.operation["date"].value == "2031-03-14"


def test_a_record_without_its_text_is_refused() -> None:
    with pytest.raises(RecordRefused, match="without the text"):
        find_in_record(Record(note=Note(name="x")))


def test_words_added_by_hand_swallow_what_they_touch() -> None:
    text = "The lighthouse keeper of Skerrow Point came."
    finds = find_identifiers(text)
    start = text.index("lighthouse")
    added = by_hand(text, start, text.index(" came"), finds)
    assert [find.words for find in added] == ["lighthouse keeper of Skerrow Point"]
    both = everywhere("Keeper here,  the keeper\nthere, the keepers", "the keeper", [])
    assert [find.words for find in both] == ["the keeper", "the keeper"]


# The command


@pytest.fixture
def note(tmp_path: Path) -> Path:
    path = tmp_path / "okonjo.txt"
    path.write_text(
        "Date: 14 March 2031\nSurgeon: Okonjo\nFDP of the ring finger repaired, 4-0, Kessler.\n", encoding="utf-8"
    )
    return path


def test_without_a_look_only_the_list_is_shown(note: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["share", str(note), "--out", str(tmp_path / "copy.txt")]) == 0
    said = capsys.readouterr()
    assert '"Okonjo"  becomes [name]' in said.out
    assert '"14 March 2031"  moved with all dates' in said.out
    assert "No such search is complete" in said.out
    assert "Nothing was written" in said.err
    assert list(tmp_path.iterdir()) == [note]


def test_after_a_look_the_copy_is_written(note: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    copy = tmp_path / "copy.txt"
    assert main(["share", str(note), "--out", str(copy), "--looked", "--blank", "ring finger"]) == 0
    text = copy.read_text(encoding="utf-8")
    assert "Surgeon: [name]\nFDP of the [removed] repaired, 4-0, Kessler." in text
    assert "14 March 2031" not in text
    assert "No such search is complete" in capsys.readouterr().err
    assert main(["share", str(note), "--out", str(copy), "--looked"]) == 1
    assert copy.read_text(encoding="utf-8") == text


def test_a_find_can_be_kept(note: Path, tmp_path: Path) -> None:
    copy = tmp_path / "copy.txt"
    assert main(["share", str(note), "--out", str(copy), "--looked", "--keep", "2"]) == 0
    assert "Surgeon: Okonjo" in copy.read_text(encoding="utf-8")
    assert main(["share", str(note), "--keep", "9"]) == 2
    assert main(["share", str(note), "--looked"]) == 2


def test_a_date_kept_beside_moved_ones_is_warned_of(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "note.txt"
    path.write_text("Operated 14 March 2031, injured 12 March 2031.", encoding="utf-8")
    assert main(["share", str(path), "--keep", "1"]) == 0
    assert "Keep all dates or none" in capsys.readouterr().err
    assert main(["share", str(path), "--keep", "1", "--keep", "2"]) == 0
    assert "Keep all dates or none" not in capsys.readouterr().err


def test_a_record_becomes_a_record(note: Path, tmp_path: Path) -> None:
    main(["read", str(note), "--out", str(tmp_path)])
    copy = tmp_path / "copy.json"
    assert main(["share", str(tmp_path / "okonjo.json"), "--out", str(copy), "--looked"]) == 0
    shared = load_record(copy.read_bytes())
    assert shared.note.name == "shared note"
    assert "konjo" not in copy.read_text(encoding="utf-8")


def test_each_copy_has_its_own_shift(note: Path, tmp_path: Path) -> None:
    main(["read", str(note), "--out", str(tmp_path)])
    days = set()
    for n in range(6):
        copy = tmp_path / f"copy-{n}.json"
        assert main(["share", str(tmp_path / "okonjo.json"), "--out", str(copy), "--looked"]) == 0
        days.add(load_record(copy.read_bytes()).operation["date"].value)
    assert len(days) > 1
