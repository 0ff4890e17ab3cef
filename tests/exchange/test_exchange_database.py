"""The database for analysts: every fact, its meaning, its cautions, and nothing else written over."""

import csv
import io
import sqlite3
import stat
import sys
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest
from exchange_helpers import HARMFUL, TEXT, confirmed, example, poisoned

from notereader.appraisal import all_cautions
from notereader.casebook import Casebook
from notereader.cli import main
from notereader.exchange import CaseOut, ExportFault, facts_csv, write_database, write_record
from notereader.vocabulary import field_specs


def asked(path: Path, question: str) -> list[tuple[Any, ...]]:
    with closing(sqlite3.connect(path)) as database:
        return database.execute(question).fetchall()


def cases(*records: Any) -> list[CaseOut]:
    return [CaseOut(number, record) for number, record in enumerate(records, 1)]


def test_every_fact_stands_in_it_as_in_the_table(tmp_path: Path) -> None:
    path = tmp_path / "facts.sqlite"
    assert write_database(cases(example(), confirmed()), path) == 2
    csv_rows = [*csv.DictReader(io.StringIO(facts_csv([example(), confirmed()]).removeprefix("\ufeff"), newline=""))]
    names = ("address", "value", "basis", "status", "words", "unit", "rivals", "caution")
    found = asked(path, f"SELECT {', '.join(names)} FROM facts ORDER BY rowid")
    # A spreadsheet's apostrophe before a sign is no part of a database.
    wanted = [tuple(row[name].removeprefix("'") for name in names) for row in csv_rows]
    assert [tuple("" if cell is None else str(cell) for cell in row) for row in found] == wanted


def test_figures_are_figures(tmp_path: Path) -> None:
    path = tmp_path / "facts.sqlite"
    write_database(cases(example()), path)
    assert asked(path, "SELECT low, high, unit FROM facts WHERE field = 'purchase_mm'") == [(8.0, 10.0, "mm")]
    assert asked(path, "SELECT avg(low) FROM facts WHERE field = 'wrist_flexion_deg'") == [(-10.0,)]
    assert asked(path, "SELECT facts, facts_open FROM cases") == [(11, 2)]


def test_every_column_and_field_is_explained_and_the_cautions_travel(tmp_path: Path) -> None:
    path = tmp_path / "facts.sqlite"
    write_database(cases(example()), path)
    explained = {name for (name,) in asked(path, "SELECT name FROM columns")}
    for table, prefix in (("facts", ""), ("cases", "cases.")):
        columns = {prefix + row[1] for row in asked(path, f"PRAGMA table_info({table})")}
        assert columns - {"case_number"} <= explained
    assert {f"{spec.group}.{spec.name}" for specs in field_specs().values() for spec in specs.values()} <= explained
    assert [text for (text,) in asked(path, "SELECT text FROM cautions ORDER BY number")] == all_cautions()
    assert asked(path, "SELECT count(*) FROM facts WHERE \"group\" IN ('repairs', 'pulleys') AND caution = ''") == [
        (0,)
    ]


def test_the_notes_text_is_not_in_it_and_quoted_words_only_where_wanted(tmp_path: Path) -> None:
    write_database(cases(example()), tmp_path / "with.sqlite")
    write_database(cases(example()), tmp_path / "without.sqlite", words=False)
    quoted, plain = ((tmp_path / name).read_bytes() for name in ("with.sqlite", "without.sqlite"))
    assert TEXT.encode() not in quoted
    assert b"six-strand" in quoted
    for words in (b"six-strand", b"No gapping", b"thicker than most"):
        assert words not in plain


@pytest.mark.parametrize("harm", [*HARMFUL, "'); DROP TABLE facts; --", "\ud800 alone"])
def test_a_harmful_text_stays_text(tmp_path: Path, harm: str) -> None:
    path = tmp_path / "facts.sqlite"
    write_database([CaseOut(1, poisoned(harm), harm)], path)
    assert asked(path, "SELECT count(*) FROM facts") == [(2,)]


@pytest.mark.skipif(sys.platform == "win32", reason="a person's folders are closed to others there by default")
def test_it_is_readable_by_its_owner_only_and_alone(tmp_path: Path) -> None:
    path = tmp_path / "facts.sqlite"
    for _ in range(2):
        write_database(cases(example()), path)
    assert stat.S_IMODE(path.stat().st_mode) == 0o600
    assert [place.name for place in tmp_path.iterdir()] == ["facts.sqlite"]


def test_no_other_file_is_ever_replaced(tmp_path: Path) -> None:
    book = Casebook(tmp_path / "casebook.db")
    book.add(confirmed())
    book.close()
    (tmp_path / "text.txt").write_text("mine")
    for name in ("casebook.db", "text.txt"):
        before = (tmp_path / name).read_bytes()
        with pytest.raises(ExportFault, match="left as it is"):
            write_database(cases(example()), tmp_path / name)
        assert (tmp_path / name).read_bytes() == before


def test_a_broken_off_export_leaves_the_old_one_whole(tmp_path: Path) -> None:
    path = tmp_path / "facts.sqlite"
    write_database(cases(example()), path)
    before = path.read_bytes()

    def breaking() -> Any:
        yield from cases(confirmed())
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        write_database(breaking(), path)
    assert path.read_bytes() == before
    assert [place.name for place in tmp_path.iterdir()] == ["facts.sqlite"]
    with pytest.raises(ExportFault, match="could not be written"):
        write_database(cases(example()), tmp_path / "none" / "facts.sqlite")


@pytest.fixture
def book(tmp_path: Path) -> Path:
    path = tmp_path / "book" / "casebook.db"
    opened = Casebook(path)
    opened.add(example(), title="First")
    opened.add(confirmed(), title="Second")
    opened.close()
    return path


def test_a_casebook_becomes_a_database(book: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    out = tmp_path / "all.sqlite"
    assert main(["export", "--casebook", str(book), "--sqlite", "--out", str(out)]) == 0
    assert "holds 2 cases" in capsys.readouterr().err
    assert asked(out, "SELECT case_number, title, state FROM cases") == [
        (1, "First", "imported"),
        (2, "Second", "imported"),
    ]
    assert asked(out, "SELECT count(*) FROM facts GROUP BY case_number") == [(11,), (11,)]


def test_a_casebook_becomes_a_table(book: Path, tmp_path: Path) -> None:
    assert main(["export", "--casebook", str(book), "--csv", "--out", str(tmp_path / "all.csv")]) == 0
    assert len((tmp_path / "all.csv").read_text(encoding="utf-8").splitlines()) == 23
    assert (tmp_path / "all-columns.csv").exists()


def test_a_casebook_that_is_not_there_is_not_made(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    missing = tmp_path / "none.db"
    assert main(["export", "--casebook", str(missing), "--sqlite", "--out", str(tmp_path / "x.sqlite")]) == 1
    assert "There is no casebook at" in capsys.readouterr().err
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    ("options", "says"),
    [
        ([], "Say what to export"),
        (["one.json", "--casebook"], "only one of them"),
        (["--casebook", "book.db", "--html"], "add --csv or --sqlite"),
        (["one.json", "--sqlite"], "--out FILE"),
    ],
)
def test_a_wrong_call_says_what_is_missing(options: list[str], says: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["export", *options]) == 2
    assert says in capsys.readouterr().err


@pytest.mark.parametrize("form", ["--text", "--html", "--json", "--fhir", "--csv"])
def test_no_export_is_written_over_a_casebook(
    form: str, book: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    write_record(example(), tmp_path / "one.json")
    before = book.read_bytes()
    assert main(["export", str(tmp_path / "one.json"), form, "--out", str(book)]) == 1
    assert "perhaps a casebook" in capsys.readouterr().err
    assert book.read_bytes() == before
