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

from notereader.casebook.edits import Edit, EditRefused, apply_edit, fits, unpack
from notereader.casebook.models import pack_json, unpack_json
from notereader.casebook.store import beside, companions, make_private
from notereader.casebook.summary import fold, summary_of, without_text
from notereader.record import Address, Record, RecordRefused, load_record

# How far beyond the last known number rows are looked for when the end of a table cannot be found.
_LOOK_AHEAD = 20_000

Row = dict[str, Any]


@dataclass
class Gain:
    """What was taken over from a damaged file: which cases, and which of all cases may lack something."""

    cases: set[int] = field(default_factory=set)
    spoilt: set[int] = field(default_factory=set)


def salvage(damaged: Path, fresh: Path, copy: Path | None) -> Gain:
    """Take over into `fresh`, which holds the good copy's cases or none, all that `damaged` holds beyond them."""
    gain = Gain()
    scratch = beside(damaged, ".reading")
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
    for row in _rows(source, target, "casebook_edits", "id"):
        edits.setdefault(row["case_id"], []).append(row)
    lines = {row["id"]: row for row in _rows(source, target, "casebook_cases", "id")}
    records = {row["case_id"]: row for row in _rows(source, target, "casebook_records", "case_id")}
    for number in sorted({*lines, *edits, *records}):
        _take_over_case(_Remains(source, target, number, lines.get(number), edits.get(number, []), records), gain)
        _take_over_marks(source, target, number)
    # Only now, when all old lines of history have their numbers.
    for number in sorted(gain.cases & gain.spoilt):
        _log_mended(target, number)
    known = {row["id"] for row in _rows(target, target, "casebook_cases", "id")}
    gain.spoilt |= known - {*lines, *edits, *records}


def _rows(source: sqlite3.Connection, target: sqlite3.Connection, table: str, key: str) -> Iterator[Row]:
    """Yield every row of a table that can still be read, asking for each by number to pass over spoilt places."""
    for number in range(1, _last_number(source, target, table, key) + 1):
        row = _row(source, table, key, number)
        if row is not None:
            yield row


def _last_number(source: sqlite3.Connection, target: sqlite3.Connection, table: str, key: str) -> int:
    query = f"SELECT coalesce(max({key}), 0) FROM {table}"
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


class _Remains:
    """What is known of one case: from the damaged file (`line`, `edits`, `live`) and from the good copy."""

    def __init__(
        self,
        source: sqlite3.Connection,
        target: sqlite3.Connection,
        number: int,
        line: Row | None,
        edits: list[Row],
        records: dict[int, Row],
    ) -> None:
        self.number = number
        self.target = target
        self.line = line
        self.known = _row(target, "casebook_cases", "id", number)
        self.known_revision: int = -1 if self.known is None else self.known["revision"]
        newer = (row for row in edits if row["revision"] > self.known_revision)
        self.edits = sorted(newer, key=lambda row: row["revision"])
        self.live = _record(records.get(number))
        self.copied = _record(_row(target, "casebook_records", "case_id", number))
        self.note = _note(_row(target if self.known else source, "casebook_notes", "case_id", number))

    @property
    def revision(self) -> int:
        """The newest revision that anything tells of."""
        told = [row["revision"] for row in (self.line, *self.edits) if row is not None]
        return int(max([0, self.known_revision, *told]))

    @property
    def whole(self) -> bool:
        """True where the line of the case, its note and every edit since the copy can be read."""
        since = list(range(self.known_revision + 1, self.revision + 1))
        return self.line is not None and self.note is not None and [row["revision"] for row in self.edits] == since

    def record(self) -> tuple[Record, bool] | None:
        """Return the newest record, and whether it is certainly the newest; None where there is none."""
        if self.live is not None:
            return self.live, True
        return None if self.copied is None else _replayed(self.copied, self.edits)


def _take_over_case(remains: _Remains, gain: Gain) -> None:
    found = remains.record()
    if found is None:
        gain.spoilt.add(remains.number)
        return
    record, certain = found
    if record == remains.copied and not remains.edits and remains.revision == remains.known_revision:
        return
    _store_case(remains, record)
    gain.cases.add(remains.number)
    if not (remains.whole and certain):
        gain.spoilt.add(remains.number)


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


def _record(row: Row | None) -> Record | None:
    try:
        return None if row is None else load_record(unpack_json(row["data"]))
    except (zlib.error, ValueError, TypeError, RecordRefused):
        return None


def _note(row: Row | None) -> Row | None:
    try:
        if row is not None and row["text"] is not None:
            unpack_json(row["text"])
    except (zlib.error, ValueError, TypeError):
        return None
    return row


def _replayed(record: Record, edits: list[Row]) -> tuple[Record, bool]:
    """Do the edits again, passing over those that do not fit because another before them is spoilt."""
    certain = True
    for row in edits:
        try:
            redone = _redone(record, row)
        except (EditRefused, ValueError):
            redone = None
        record, certain = (redone, certain) if redone is not None else (record, False)
    return record, certain


def _redone(record: Record, row: Row) -> Record | None:
    """Return the record with one line of history done again, None where the line does not fit it."""
    if row["kind"] == "edited":
        place = Address.parse(row["address"])
        before, after = unpack(place, row["before"]), unpack(place, row["after"])
        edit = Edit(place, before, after, position=row["position"])
        return apply_edit(record, edit) if fits(record, edit) else None
    confirmed = row["kind"] == "confirmed"
    record.review.reviewer = row["who"] if confirmed else None
    record.review.confirmed_at = datetime.fromisoformat(row["at"]) if confirmed else None
    return record


def _store_case(remains: _Remains, record: Record) -> None:
    number, target = remains.number, remains.target
    old = remains.line or remains.known or {}
    title = old.get("title", record.note.name)
    revision = remains.revision
    _put(target, "casebook_notes", remains.note or {"case_id": number, "text": None, "search": fold(title)})
    _put(target, "casebook_records", {"case_id": number, "data": pack_json(without_text(record))})
    _put(
        target,
        "casebook_cases",
        {
            "id": number,
            "title": title,
            "state": _state(record, revision),
            **summary_of(record),
            "revision": revision,
            "last_edit": remains.edits[-1]["id"] if remains.edits else old.get("last_edit", 0),
            "changed_at": old.get("changed_at", _now()),
        },
    )
    for row in remains.edits:
        _put(target, "casebook_edits", row)


def _log_mended(target: sqlite3.Connection, number: int) -> None:
    """Let history say itself that something before this line may be missing."""
    target.execute("UPDATE casebook_cases SET revision = revision + 1 WHERE id = ?", (number,))
    target.execute(
        "INSERT INTO casebook_edits (case_id, revision, at, who, kind, address, note) "
        "SELECT id, revision, ?, '', 'mended', '', '' FROM casebook_cases WHERE id = ?",
        (_now(), number),
    )


def _now() -> str:
    return datetime.now(UTC).isoformat(timespec="microseconds")


def _state(record: Record, revision: int) -> str:
    if record.review.confirmed_at is not None and revision > 0:
        return "confirmed"
    return "in work" if revision > 0 else "imported"


def _put(target: sqlite3.Connection, table: str, row: Row) -> None:
    columns = ", ".join(row)
    marks = ", ".join(f":{name}" for name in row)
    target.execute(f"INSERT OR REPLACE INTO {table} ({columns}) VALUES ({marks})", row)
