"""The facts of many records as one SQLite file for analysts: tables that any statistics program opens."""

import os
import sqlite3
import tempfile
from collections.abc import Iterable, Sequence
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path

from notereader.appraisal.cautions import all_cautions
from notereader.exchange.files import ExportFault
from notereader.exchange.table import COLUMNS, Cell, dictionary_rows, fact_row
from notereader.record import Record

# Written into the file itself, so that only a file made here is ever replaced. The letters 'ntrd'.
_MARK = 0x6E747264

_CASE_COLUMNS = {
    "case_number": "number of the case in the casebook, or of the record in the order given",
    "title": "name of the case",
    "state": "imported, in work or confirmed; empty for a record that came as a file",
    "note_sha256": "SHA-256 of the note's text; tells notes apart",
    "characters": "length of the note in Unicode code points",
    "facts": "how many facts the record holds",
    "facts_open": "how many of them were only proposed by the program",
    "reviewer": "who confirmed the whole record; empty where nobody did",
    "confirmed_at": "when, as an ISO time",
    "reader_version": "version of the program that proposed the facts",
}

# Figures stay figures in these columns; the others hold text.
_FIGURES = {"low": "REAL", "high": "REAL", "start": "INTEGER", "end": "INTEGER"}
_COUNTS = ("case_number", "characters", "facts", "facts_open")


@dataclass(frozen=True, slots=True)
class CaseOut:
    """A record on its way into the database: its number and, where it comes from a casebook, its title and state."""

    number: int
    record: Record
    title: str = ""
    state: str = ""


def write_database(cases: Iterable[CaseOut], path: Path, *, words: bool = True) -> int:
    """Write the cases into a new SQLite file, whole or not at all, readable by its owner only; return their number.

    Tables: cases, facts (the columns of the CSV table), columns (what each column and field means), cautions. The
    notes' texts are not in it; with words=False neither are the words quoted from them. A file that was not made
    here is never replaced. Raises ExportFault.
    """
    target = path.resolve()
    if target.exists() and not _made_here(target):
        raise ExportFault(f"{path} holds something else and was left as it is. Give another place.")
    part = None
    try:
        handle, name = tempfile.mkstemp(dir=target.parent, prefix=f".{target.name[:40]}.", suffix=".part")
        os.close(handle)
        part = Path(name)
        with closing(sqlite3.connect(part)) as database:
            count = _fill(database, cases, words)
        os.replace(part, target)
        part = None
        return count
    except (OSError, sqlite3.Error) as fault:
        reason = getattr(fault, "strerror", None) or type(fault).__name__
        raise ExportFault(
            f"{path} could not be written: {reason}. Check that the folder exists, that you may write there and that "
            "the disk has room. Nothing there was changed."
        ) from None
    finally:
        if part is not None:
            part.unlink(missing_ok=True)


def _made_here(path: Path) -> bool:
    try:
        with closing(sqlite3.connect(f"{path.as_uri()}?mode=ro", uri=True)) as database:
            return bool(database.execute("PRAGMA application_id").fetchone()[0] == _MARK)
    except sqlite3.Error:
        return False


def _fill(database: sqlite3.Connection, cases: Iterable[CaseOut], words: bool) -> int:
    database.execute(f"PRAGMA application_id = {_MARK}")
    _make(database, "cases", [(name, "INTEGER" if name in _COUNTS else "TEXT") for name in _CASE_COLUMNS])
    facts = [("case_number", "INTEGER"), *((name, _FIGURES.get(name, "TEXT")) for name in COLUMNS)]
    _make(database, "facts", facts)
    _make(database, "columns", [(name, "TEXT") for name in ("kind", "name", "meaning", "allowed", "unit")])
    _make(database, "cautions", [("number", "INTEGER"), ("text", "TEXT")])
    count = 0
    for case in cases:
        _put(database, "cases", [_case_row(case)])
        rows = (fact_row(case.record, place, fact, words) for place, fact in case.record.walk())
        _put(database, "facts", [[case.number, *row] for row in rows])
        count += 1
    _put(database, "columns", [["column", f"cases.{name}", words, "", ""] for name, words in _CASE_COLUMNS.items()])
    _put(database, "columns", dictionary_rows())
    _put(database, "cautions", [[number, text] for number, text in enumerate(all_cautions(), 1)])
    database.execute("CREATE INDEX facts_case ON facts (case_number)")
    database.execute("CREATE INDEX facts_field ON facts (field)")
    database.commit()
    return count


def _make(database: sqlite3.Connection, table: str, columns: Sequence[tuple[str, str]]) -> None:
    described = ", ".join(f'"{name}" {kind}' for name, kind in columns)
    database.execute(f"CREATE TABLE {table} ({described})")


def _put(database: sqlite3.Connection, table: str, rows: Iterable[Sequence[Cell]]) -> None:
    for row in rows:
        marks = ", ".join("?" for _ in row)
        database.execute(f"INSERT INTO {table} VALUES ({marks})", [_storable(cell) for cell in row])


def _storable(cell: Cell) -> Cell:
    """Return a cell without unpaired surrogates, which SQLite refuses."""
    return cell.encode("utf-8", "replace").decode("utf-8") if isinstance(cell, str) else cell


def _case_row(case: CaseOut) -> list[Cell]:
    record, review = case.record, case.record.review
    facts = [fact for _, fact in record.walk()]
    return [
        case.number,
        case.title or record.note.name,
        case.state,
        record.note.sha256,
        record.note.characters,
        len(facts),
        sum(fact.status == "proposed" for fact in facts),
        review.reviewer,
        review.confirmed_at.isoformat() if review.confirmed_at else None,
        review.reader_version,
    ]
