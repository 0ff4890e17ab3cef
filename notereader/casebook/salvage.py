"""Reading what a damaged casebook file still holds, row by row, into a mended one.

One spoilt place costs no more than what stood there. Where a case's record is spoilt but its history is not, the
record is made again from the good copy and the edits since.
"""

import shutil
import sqlite3
import zlib
from collections.abc import Iterator
from contextlib import closing
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from notereader.casebook.edits import Edit, EditRefused, apply_edit, unpack
from notereader.casebook.models import pack_json, unpack_json
from notereader.casebook.store import companions, make_private
from notereader.casebook.summary import summary_of, without_text
from notereader.record import Address, Record, RecordRefused, load_record

# How far beyond the last known number rows are looked for when the end of a table cannot be found.
_LOOK_AHEAD = 20_000

Row = dict[str, Any]


@dataclass
class Gain:
    """What was taken over from a damaged file: which cases, how many edits, and which cases lack something."""

    cases: set[int] = field(default_factory=set)
    edits: int = 0
    spoilt: set[int] = field(default_factory=set)


def salvage(damaged: Path, fresh: Path, copy: Path | None) -> Gain:
    """Take over into `fresh`, which holds the good copy's cases or none, all that `damaged` holds beyond them."""
    gain = Gain()
    scratch = damaged.with_suffix(".reading")
    try:
        if _readable_copy(damaged, scratch, copy):
            with closing(sqlite3.connect(scratch)) as source, closing(sqlite3.connect(fresh)) as target:
                _take_over(source, target, gain)
                target.commit()
    finally:
        for leftover in (scratch, *companions(scratch)):
            leftover.unlink(missing_ok=True)
    return gain


def _readable_copy(damaged: Path, scratch: Path, copy: Path | None) -> bool:
    """Copy the damaged file and its log for reading; where its first page is spoilt, lend it that of the good copy."""
    if not damaged.exists() or damaged.stat().st_size == 0:
        return False
    for source, target in zip((damaged, *companions(damaged)), (scratch, *companions(scratch)), strict=True):
        target.unlink(missing_ok=True)
        if source.exists() and not source.name.endswith("-shm"):
            make_private(target)
            shutil.copyfile(source, target)
    if _has_tables(scratch):
        return True
    if copy is None:
        return False
    _lend_first_page(copy, scratch)
    return _has_tables(scratch)


def _has_tables(path: Path) -> bool:
    try:
        with closing(sqlite3.connect(path)) as connection:
            connection.execute("SELECT id FROM casebook_cases LIMIT 0").fetchall()
            return True
    except sqlite3.DatabaseError:
        return False


def _lend_first_page(copy: Path, scratch: Path) -> None:
    """Overwrite the first page, which holds the header and the list of tables; both are the same in a good copy."""
    with copy.open("rb") as stream:
        page_size = int.from_bytes(stream.read(18)[16:18], "big")
        stream.seek(0)
        page = bytearray(stream.read(65536 if page_size == 1 else page_size))
    # Bytes 18 and 19: the log is in use. Bytes 92-95 unlike 24-27: believe the file's own length, not the header's.
    page[18:20] = b"\2\2"
    page[92:96] = bytes(byte ^ 0xFF for byte in page[24:28])
    with scratch.open("r+b") as stream:
        stream.write(page)


def _take_over(source: sqlite3.Connection, target: sqlite3.Connection, gain: Gain) -> None:
    for connection in (source, target):
        connection.row_factory = sqlite3.Row
    edits: dict[int, list[Row]] = {}
    for row in _rows(source, target, "casebook_edits"):
        edits.setdefault(row["case_id"], []).append(row)
    cases = {row["id"]: row for row in _rows(source, target, "casebook_cases")}
    for number in sorted({*cases, *edits}):
        _take_over_case(source, target, number, cases.get(number), edits.get(number, []), gain)
        _take_over_marks(source, target, number)


def _rows(source: sqlite3.Connection, target: sqlite3.Connection, table: str) -> Iterator[Row]:
    """Yield every row of a table that can still be read, asking for each by number to pass over spoilt places."""
    for number in range(1, _last_number(source, target, table) + 1):
        row = _row(source, table, "id", number)
        if row is not None:
            yield row


def _last_number(source: sqlite3.Connection, target: sqlite3.Connection, table: str) -> int:
    query = f"SELECT coalesce(max(id), 0) FROM {table}"
    try:
        return int(source.execute(query).fetchone()[0])
    except sqlite3.DatabaseError:
        return int(target.execute(query).fetchone()[0]) + _LOOK_AHEAD


def _row(connection: sqlite3.Connection, table: str, key: str, number: int) -> Row | None:
    try:
        row = connection.execute(f"SELECT * FROM {table} WHERE {key} = ?", (number,)).fetchone()
        return None if row is None else dict(row)
    except (sqlite3.DatabaseError, UnicodeDecodeError):
        return None


def _take_over_case(
    source: sqlite3.Connection,
    target: sqlite3.Connection,
    number: int,
    line: Row | None,
    edits: list[Row],
    gain: Gain,
) -> None:
    known = _row(target, "casebook_cases", "id", number)
    known_revision = -1 if known is None else known["revision"]
    newer = sorted((row for row in edits if row["revision"] > known_revision), key=lambda row: row["revision"])
    if not newer and (line is None or line["revision"] <= known_revision):
        return
    note = _row(target if known else source, "casebook_notes", "case_id", number)
    if note is None:
        gain.spoilt.add(number)
        return
    found = _newest_record(source, target, number, line, newer)
    if found is None:
        gain.spoilt.add(number)
        return
    record, revision = found
    kept = [row for row in newer if row["revision"] <= revision]
    _store_case(target, known or line, number, note, record, revision, kept)
    gain.cases.add(number)
    gain.edits += len(kept)
    if len(kept) < revision - known_revision or len(kept) < len(newer):
        gain.spoilt.add(number)


def _take_over_marks(source: sqlite3.Connection, target: sqlite3.Connection, number: int) -> None:
    """Take over which facts were shown; where they cannot be read the facts are simply shown again."""
    if _row(target, "casebook_cases", "id", number) is None:
        return
    try:
        marks = source.execute("SELECT * FROM casebook_read WHERE case_id = ?", (number,)).fetchall()
    except sqlite3.DatabaseError:
        return
    for mark in marks:
        _put(target, "casebook_read", dict(mark))


def _newest_record(
    source: sqlite3.Connection, target: sqlite3.Connection, number: int, line: Row | None, newer: list[Row]
) -> tuple[Record, int] | None:
    """Return the record and its revision: as the damaged file has it, else the copy's with the edits since."""
    record = _record(_row(source, "casebook_records", "case_id", number))
    if record is not None and (line is not None or newer):
        return record, line["revision"] if line is not None else newer[-1]["revision"]
    record = _record(_row(target, "casebook_records", "case_id", number))
    known = _row(target, "casebook_cases", "id", number)
    return None if record is None or known is None else _replayed(record, known["revision"], newer)


def _record(row: Row | None) -> Record | None:
    if row is None:
        return None
    try:
        return load_record(unpack_json(row["data"]))
    except (zlib.error, ValueError, TypeError, RecordRefused):
        return None


def _replayed(record: Record, revision: int, newer: list[Row]) -> tuple[Record, int]:
    """Do the edits again as far as they follow on each other."""
    for row in newer:
        if row["revision"] != revision + 1:
            break
        try:
            record = _redone(record, row)
        except (EditRefused, ValueError):
            break
        revision += 1
    return record, revision


def _redone(record: Record, row: Row) -> Record:
    if row["kind"] == "edited":
        place = Address.parse(row["address"])
        return apply_edit(record, Edit(place, unpack(place, row["before"]), unpack(place, row["after"])))
    record.review.reviewer = row["who"] if row["kind"] == "confirmed" else None
    record.review.confirmed_at = datetime.fromisoformat(row["at"]) if row["kind"] == "confirmed" else None
    return record


def _store_case(
    target: sqlite3.Connection,
    known: Row | None,
    number: int,
    note: Row,
    record: Record,
    revision: int,
    kept: list[Row],
) -> None:
    last = kept[-1] if kept else None
    line = {
        "id": number,
        "title": known["title"] if known else record.note.name,
        "state": _state(record, revision),
        **summary_of(record),
        "revision": revision,
        "last_edit": last["id"] if last else (known["last_edit"] if known else 0),
        "changed_at": last["at"] if last else (known["changed_at"] if known else datetime.now(UTC).isoformat()),
    }
    _put(target, "casebook_cases", line)
    _put(target, "casebook_notes", note)
    _put(target, "casebook_records", {"case_id": number, "data": pack_json(without_text(record))})
    for row in kept:
        _put(target, "casebook_edits", row)


def _state(record: Record, revision: int) -> str:
    if record.review.confirmed_at is not None and revision > 0:
        return "confirmed"
    return "in work" if revision > 0 else "imported"


def _put(target: sqlite3.Connection, table: str, row: Row) -> None:
    columns = ", ".join(row)
    marks = ", ".join(f":{name}" for name in row)
    target.execute(f"INSERT OR REPLACE INTO {table} ({columns}) VALUES ({marks})", row)
