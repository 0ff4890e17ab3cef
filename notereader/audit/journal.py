"""The journal of an audit: what was found of each note, written down as it is found.

It is a SQLite file in the audit's folder. A note that is written down is never read again, and never counted twice: its
name within the source is the key. A crash or the loss of power loses at most what was not yet saved, about a second.
"""

import json
import os
import sqlite3
import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from notereader.audit.criteria import criteria
from notereader.audit.faults import AuditFault
from notereader.audit.sources import NoteInput
from notereader.audit.states import Assessment

FILE_NAME = "journal.db"
_FORMAT = 1

_TABLES = """
CREATE TABLE about (name TEXT PRIMARY KEY, value TEXT NOT NULL);
CREATE TABLE notes (
    key TEXT PRIMARY KEY,
    place INTEGER NOT NULL,
    run INTEGER NOT NULL,
    stamp TEXT NOT NULL,
    name TEXT NOT NULL,
    link TEXT NOT NULL,
    columns TEXT NOT NULL,
    day TEXT NOT NULL,
    as_record INTEGER NOT NULL,
    refusal TEXT NOT NULL,
    warning TEXT NOT NULL,
    sha256 TEXT NOT NULL,
    found BLOB
);
CREATE INDEX notes_place ON notes (place);
CREATE INDEX notes_sha256 ON notes (sha256);
"""

# True of a note whose own record is there too, confirmed or not: the record counts instead.
_HAS_RECORD = (
    "n.as_record = 0 AND n.sha256 != '' AND EXISTS "
    "(SELECT 1 FROM notes r WHERE r.sha256 = n.sha256 AND r.as_record = 1)"
)


@dataclass(frozen=True, slots=True)
class Outcome:
    """What became of one input: an assessment, or the reason why there is none.

    `as_record` is True where the input was a record and was taken as it is. `stamp` tells what it was read with.
    """

    assessment: Assessment | None
    refusal: str = ""
    warning: str = ""
    as_record: bool = False
    stamp: str = ""


@dataclass(frozen=True, slots=True)
class NoteRow:
    """One note of the journal. `has_record` is True where its own record is there too and counts instead."""

    place: int
    key: str
    name: str
    link: str
    columns: dict[str, str]
    day: str
    as_record: bool
    refusal: str
    warning: str
    has_record: bool
    assessment: Assessment | None


class Journal:
    """The journal of one audit. Raises AuditFault where the folder or the file cannot be used."""

    def __init__(self, folder: Path) -> None:
        self.path = folder / FILE_NAME
        with _faults_of(self.path):
            folder.mkdir(mode=0o700, parents=True, exist_ok=True)
            # What the notes say is in it: only its owner may read it.
            os.close(os.open(self.path, os.O_CREAT | os.O_RDWR, 0o600))
            self._base = sqlite3.connect(self.path, timeout=1.0, isolation_level=None, check_same_thread=False)
            # Two audits at work in one folder would count for each other.
            for line in ("locking_mode=EXCLUSIVE", "journal_mode=WAL", "synchronous=FULL"):
                self._base.execute(f"PRAGMA {line}").fetchall()
            self._base.execute("BEGIN IMMEDIATE")
            # A crash may have left a file in which nothing was saved yet.
            self.is_new = not self._base.execute("SELECT 1 FROM sqlite_master WHERE name = 'about'").fetchone()
            if self.is_new:
                self._make()
            same = self.about("format") == _FORMAT and self.about("criteria") == _criteria_keys()
        if not same:
            raise AuditFault(
                f"The work in {folder} was begun by another version of this program. Begin afresh, or choose another "
                "folder."
            )

    def _make(self) -> None:
        for statement in filter(str.strip, _TABLES.split(";")):
            self._base.execute(statement)
        self.note("format", _FORMAT)
        self.note("criteria", _criteria_keys())
        self.note("run", 0)

    def note(self, name: str, value: Any) -> None:
        """Write down one thing about the audit as a whole."""
        self._base.execute("INSERT OR REPLACE INTO about VALUES (?, ?)", (name, json.dumps(value)))

    def about(self, name: str) -> Any:
        """Return what was written down about the audit as a whole, or None."""
        found = self._base.execute("SELECT value FROM about WHERE name = ?", (name,)).fetchone()
        return json.loads(found[0]) if found else None

    def begin_run(self) -> int:
        """Begin to go through the source; notes not met again by the end are no longer in it."""
        run = int(self.about("run")) + 1
        self.note("run", run)
        self.save()
        return run

    def end_run(self, run: int) -> None:
        """Drop the notes that the source no longer has."""
        self._base.execute("DELETE FROM notes WHERE run != ?", (run,))
        self.save()

    def known(self, item: NoteInput, place: int, run: int) -> bool:
        """Return whether an input is written down already, unchanged; its place and columns are brought up to date."""
        changed = self._base.execute(
            "UPDATE notes SET place = ?, run = ?, columns = ?, day = ? WHERE key = ? AND stamp = ?",
            (place, run, json.dumps(dict(item.columns)), item.day, item.key, item.stamp),
        )
        return changed.rowcount > 0

    def write(self, item: NoteInput, place: int, run: int, outcome: Outcome) -> None:
        """Write down what became of an input, instead of what stood there of an older state of it."""
        found = outcome.assessment
        row = (
            *(item.key, place, run, item.stamp, item.name, str(item.link or "")),
            *(json.dumps(dict(item.columns)), item.day, outcome.as_record, outcome.refusal, outcome.warning),
            *(found.sha256 if found else "", _packed(found) if found else None),
        )
        self._base.execute(f"INSERT OR REPLACE INTO notes VALUES ({', '.join('?' * len(row))})", row)

    def save(self) -> None:
        """Make everything written so far durable."""
        with _faults_of(self.path):
            self._base.execute("COMMIT")
            self._base.execute("BEGIN IMMEDIATE")

    def rows(self) -> Iterator[NoteRow]:
        """Yield every note in the order of the source, one at a time."""
        wanted = "place, key, name, link, columns, day, as_record, refusal, warning"
        for row in self._base.execute(f"SELECT {wanted}, {_HAS_RECORD}, found FROM notes n ORDER BY place"):
            place, key, name, link, columns, day, as_record, refusal, warning, has_record, found = row
            yield NoteRow(
                place=place,
                key=key,
                name=name,
                link=link,
                columns=json.loads(columns),
                day=day,
                as_record=bool(as_record),
                refusal=refusal,
                warning=warning,
                has_record=bool(has_record),
                assessment=_unpacked(found) if found else None,
            )

    def text_of(self, key: str) -> str | None:
        """Return the SHA-256 of a note's text, '' where it is not known, None where the note was refused or is none."""
        found = self._base.execute("SELECT sha256 FROM notes WHERE key = ? AND found IS NOT NULL", (key,)).fetchone()
        return found[0] if found else None

    def count(self) -> int:
        """Return how many notes are written down."""
        return int(self._base.execute("SELECT count(*) FROM notes").fetchone()[0])

    def copies(self) -> int:
        """Return how many counted notes have the same text as another counted before them."""
        wanted = f"SELECT count(*) - count(DISTINCT sha256) FROM notes n WHERE sha256 != '' AND NOT ({_HAS_RECORD})"
        return int(self._base.execute(wanted).fetchone()[0])

    def close(self) -> None:
        """Save and let go of the file."""
        with _faults_of(self.path):
            self._base.execute("COMMIT")
            self._base.close()


def discard(folder: Path) -> None:
    """Throw the journal of a folder away, unless an audit is at work on it. A sample to confirm is left alone."""
    path = folder / FILE_NAME
    if path.exists():
        with _faults_of(path):
            base = sqlite3.connect(path, timeout=0.2, isolation_level=None)
            try:
                base.execute("BEGIN IMMEDIATE")
            except sqlite3.DatabaseError as fault:
                if isinstance(fault, sqlite3.OperationalError) and "locked" in str(fault):
                    raise
                # A damaged journal is what people throw away.
            finally:
                base.close()
    for ending in ("", "-wal", "-shm"):
        path.with_name(path.name + ending).unlink(missing_ok=True)


@contextmanager
def _faults_of(path: Path) -> Iterator[None]:
    try:
        yield
    except sqlite3.OperationalError as fault:
        if "locked" in str(fault):
            raise AuditFault(
                f"Another audit is at work in {path.parent}. Wait until it is done, or choose another folder."
            ) from None
        raise AuditFault(f"The journal {path} cannot be used ({fault}). Check the disk, or begin afresh.") from None
    except sqlite3.DatabaseError as fault:
        raise AuditFault(f"The journal {path} is damaged ({fault}). Begin afresh.") from None
    except OSError as fault:
        raise AuditFault(
            f"The folder {path.parent} cannot be used ({fault.strerror or fault}). Choose another."
        ) from None


def _criteria_keys() -> list[str]:
    return [criterion.key for criterion in criteria()]


def _packed(found: Assessment) -> bytes:
    """Return an assessment as bytes; states as one letter string per criterion, in the order of the criteria."""
    data = found.to_json()
    data["states"] = "|".join(found.states.get(criterion.key, "") for criterion in criteria())
    return zlib.compress(json.dumps(data, ensure_ascii=False, separators=(",", ":")).encode("utf-8", "surrogatepass"))


def _unpacked(packed: bytes) -> Assessment:
    data = json.loads(zlib.decompress(packed).decode("utf-8", "surrogatepass"))
    letters = data["states"].split("|")
    data["states"] = {c.key: states for c, states in zip(criteria(), letters, strict=True) if states}
    return Assessment.from_json(data)
