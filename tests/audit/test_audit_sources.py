"""Folders, tables, casebooks and records as sources of notes."""

from datetime import date, datetime
from pathlib import Path
from typing import Any

import pytest
from audit_making import PLAIN, audited, folder_of, rows_of, table_of, table_source, truth_of
from demo_notes import demo_notes
from openpyxl import Workbook

from notereader.audit.audit import Settings
from notereader.audit.faults import AuditFault
from notereader.audit.sources import CasebookSource, Columns, open_source
from notereader.casebook import Casebook


def texts(path: Path, **columns: Any) -> list[object]:
    return [item.content for item in table_source(path, **columns).inputs()]


def test_a_folder_is_gone_through_by_name_and_hidden_files_stay_out(tmp_path: Path) -> None:
    for name in ("b/2.txt", "a.txt", "b/1.txt", ".hidden.txt", ".git/x.txt", "b/Thumbs.db"):
        (tmp_path / name).parent.mkdir(exist_ok=True)
        (tmp_path / name).write_text("note")
    source = open_source(tmp_path)
    assert [item.key for item in source.inputs()] == ["a.txt", "b/1.txt", "b/2.txt"]
    assert source.count() == 3
    assert [dict(item.columns)["folder"] for item in source.inputs()] == ["(no folder)", "b", "b"]


def test_the_report_within_the_folder_is_no_note(tmp_path: Path) -> None:
    folder_of(tmp_path, demo_notes(2))
    out = tmp_path / "report"
    for resume in (False, True):
        found = audited(open_source(tmp_path), out, resume=resume, parts=["page", "tables"])
        assert (found.results.tally.found, found.results.tally.counted) == (2, 2)


def test_a_table_keeps_line_breaks_quotes_and_columns(tmp_path: Path) -> None:
    path = tmp_path / "notes.csv"
    path.write_text('Surgeon,Text\nS1,"line one\nsays ""two"", three"\n\nS2,four\n')
    source = open_source(path)
    items = list(source.inputs())
    assert [item.content for item in items] == ['line one\nsays "two", three', "four"]
    assert [dict(item.columns)["Surgeon"] for item in items] == ["S1", "S2"]
    assert "Text" not in dict(items[0].columns)


@pytest.mark.parametrize("mark", [",", ";", "\t", "|"])
def test_any_usual_mark_between_columns(tmp_path: Path, mark: str) -> None:
    path = tmp_path / "notes.csv"
    path.write_text(f'site{mark}"note, text; x"{mark}y\nnorth{mark}hello{mark}\n')
    assert texts(path, text="note, text; x") == ["hello"]


@pytest.mark.parametrize("codec", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_any_usual_encoding(tmp_path: Path, codec: str) -> None:
    path = tmp_path / "notes.csv"
    path.write_bytes("site,text\nnord,Naht 5 µm über A2\n".encode(codec))
    assert texts(path) == ["Naht 5 µm über A2"]


def test_a_byte_in_another_encoding_does_not_spoil_the_rest(tmp_path: Path) -> None:
    path = tmp_path / "notes.csv"
    path.write_bytes("text\nNaht über A2\n".encode() + b"5 \xb5m\n")
    assert texts(path) == ["Naht über A2", "5 µm"]


def test_a_long_note_fits_in_a_cell(tmp_path: Path) -> None:
    path = tmp_path / "notes.csv"
    path.write_text("text\n" + "word " * 60_000 + "\n")
    assert len(str(texts(path)[0])) > 290_000


def test_a_missing_column_is_named_with_those_that_are_there(tmp_path: Path) -> None:
    path = tmp_path / "notes.csv"
    path.write_text("who,what\na,b\n")
    with pytest.raises(AuditFault, match=r"holds the text.*who, what"):
        open_source(path)
    with pytest.raises(AuditFault, match=r"no column 'site'.*who, what"):
        open_source(path, Columns(text="what", day="site"))


def test_an_unknown_column_to_group_by_is_refused_before_any_work(tmp_path: Path) -> None:
    path = table_of(tmp_path / "notes.csv", demo_notes(2))
    with pytest.raises(AuditFault, match=r"no column 'ward'.*site, surgeon, operated"):
        audited(open_source(path), tmp_path / "out", Settings(groups=("ward",)))
    assert not (tmp_path / "out").exists()


def test_files_named_in_a_table(tmp_path: Path) -> None:
    note = demo_notes(1)[0]
    folder_of(tmp_path, [note])
    (tmp_path / "list.csv").write_text(f"file,surgeon\n{note.site}/{note.name},S9\nnone.txt,S8\n")
    settings = Settings(groups=("surgeon",), day=PLAIN.day)
    found = audited(table_source(tmp_path / "list.csv", file="file"), tmp_path / "out", settings, parts=["tables"])
    assert (found.results.tally.counted, found.results.tally.refused) == (1, 1)
    assert found.results.tally.group_sizes["surgeon"] == {"S9": 1}
    assert "no such file" in rows_of(tmp_path / "out" / "notes.csv")[1]["said"]


def workbook(path: Path, rows: list[list[object]], sheet: str = "list") -> Path:
    book = Workbook()
    page = book.active
    assert page is not None
    page.title = sheet
    for row in rows:
        page.append(row)
    book.save(path)
    return path


def test_a_workbook_with_dates_and_numbers(tmp_path: Path) -> None:
    rows: list[list[object]] = [["text", "operated", "ward"], ["one", datetime(2031, 3, 4), 7], [None, None, None]]
    path = workbook(tmp_path / "notes.xlsx", [*rows, ["two", date(2031, 4, 5), 8.5]])
    items = list(table_source(path, day="operated").inputs())
    assert [item.content for item in items] == ["one", "two"]
    assert [item.day for item in items] == ["2031-03-04", "2031-04-05"]
    assert [dict(item.columns)["ward"] for item in items] == ["7", "8.5"]


def test_a_sheet_that_is_not_there(tmp_path: Path) -> None:
    path = workbook(tmp_path / "notes.xlsx", [["text"], ["one"]], sheet="March")
    assert texts(path, sheet="March") == ["one"]
    with pytest.raises(AuditFault, match=r"no sheet .April.*March"):
        texts(path, sheet="April")


@pytest.mark.parametrize("content", [b"", b"PK\x03\x04 torn", b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1 old"])
def test_a_workbook_that_cannot_be_read_is_refused_in_words(tmp_path: Path, content: bytes) -> None:
    (tmp_path / "notes.xlsx").write_bytes(content)
    with pytest.raises(AuditFault, match=r"no Excel workbook that can be read"):
        open_source(tmp_path / "notes.xlsx")


def test_a_cell_that_the_spreadsheet_cut_off_is_told(tmp_path: Path) -> None:
    path = workbook(tmp_path / "notes.xlsx", [["text"], ["FDP repaired. " * 3000]])
    book_text = str(texts(path)[0])
    assert len(book_text) == 32_767
    audited(open_source(path), tmp_path / "out", parts=["tables"])
    assert "cut the note off" in rows_of(tmp_path / "out" / "notes.csv")[0]["said"]


@pytest.mark.parametrize(
    ("cell", "day_first", "day"),
    [
        ("2031-03-04", None, "2031-03-04"),
        ("2031-03-04 10:15", None, "2031-03-04"),
        ("04.03.2031", None, "2031-03-04"),
        ("14/03/2031", None, "2031-03-14"),
        ("03/14/2031", None, "2031-03-14"),
        ("03/04/2031", None, ""),
        ("03/04/2031", True, "2031-04-03"),
        ("03/04/2031", False, "2031-03-04"),
        ("31/02/2031", True, ""),
        ("in spring", None, ""),
    ],
)
def test_dates_are_read_only_where_their_order_is_known(
    tmp_path: Path, cell: str, day_first: bool | None, day: str
) -> None:
    (tmp_path / "notes.csv").write_text(f"text,operated\nnote,{cell}\n")
    items = table_source(tmp_path / "notes.csv", day="operated", day_first=day_first).inputs()
    assert next(iter(items)).day == day


def test_a_casebook_is_taken_as_it_is(tmp_path: Path) -> None:
    notes = demo_notes(3)
    book = Casebook(tmp_path / "book.db")
    for note in notes:
        book.add(note.truth)
    book.close()
    found = audited(
        open_source(tmp_path / "book.db"), tmp_path / "out", Settings(groups=("state",), day=PLAIN.day), parts=[]
    )
    assert (found.results.tally.counted, found.results.tally.confirmed) == (3, 3)
    assert found.results.tally.group_sizes["state"] == {"imported": 3}


def test_a_casebook_that_cannot_be_reached_is_refused_in_words() -> None:
    with pytest.raises(AuditFault, match="The casebook"):
        CasebookSource("nonsense://")


def test_a_confirmed_record_counts_instead_of_its_note(tmp_path: Path) -> None:
    notes = demo_notes(4)
    for note in notes:
        (tmp_path / note.name).write_text(note.text)
    truth_of(tmp_path, notes[:2])
    found = audited(open_source(tmp_path), tmp_path / "out", parts=["tables"])
    tally = found.results.tally
    assert (tally.found, tally.counted, tally.confirmed, tally.with_record) == (6, 4, 2, 2)


def test_notes_with_the_same_text_are_counted_and_told(tmp_path: Path) -> None:
    text = demo_notes(1)[0].text
    for name in ("a.txt", "b.txt", "c.txt"):
        (tmp_path / name).write_text(text)
    found = audited(open_source(tmp_path), tmp_path / "out", parts=["tables"])
    assert (found.results.tally.counted, found.results.copies) == (3, 2)


def test_what_is_no_note_is_left_out_with_the_reason(tmp_path: Path) -> None:
    folder_of(tmp_path, demo_notes(1))
    (tmp_path / "empty.txt").write_text("")
    (tmp_path / "book.zip").write_bytes(b"PK\x03\x04 nothing")
    (tmp_path / "other.json").write_text('{"a": 1}')
    found = audited(open_source(tmp_path), tmp_path / "out", parts=["tables"])
    assert (found.results.tally.counted, found.results.tally.refused) == (1, 3)
    said = {row["note"]: row["said"] for row in rows_of(tmp_path / "out" / "notes.csv")}
    assert "empty" in said["empty.txt"]
    assert "no notereader record" in said["other.json"]
    assert all(row for row in said.values() if row)


def test_a_place_that_is_no_source_is_refused(tmp_path: Path) -> None:
    (tmp_path / "one.txt").write_text("note")
    with pytest.raises(AuditFault, match="no source of many notes"):
        open_source(tmp_path / "one.txt")
    with pytest.raises(AuditFault, match="no file or folder"):
        open_source(tmp_path / "none")
