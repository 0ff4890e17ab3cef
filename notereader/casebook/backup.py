"""Daily copies of the casebook file: made in the background, checked, and the oldest dropped."""

import logging
import os
import re
import sqlite3
import threading
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from datetime import date
from pathlib import Path

from notereader.casebook.faults import CasebookFault
from notereader.casebook.store import beside, damage_mark, faults_in_words, make_private

KEEP = 7

_log = logging.getLogger(__name__)


class Backups:
    """The folder of copies beside a casebook file.

    Copies are numbered, so that a clock that was set wrong neither hides the newest nor drops a good one.
    """

    def __init__(self, path: Path, keep: int = KEEP) -> None:
        self.path = path
        self._base = path.name.removesuffix(".db")
        self.folder = path.parent / f"{self._base}-copies"
        self._keep = keep

    def newest_first(self) -> list[Path]:
        """Return the copies there are."""
        if not self.folder.is_dir():
            return []
        return sorted(filter(self._number, self.folder.iterdir()), key=self._number, reverse=True)

    def due(self, today: date) -> bool:
        """Return True where no copy was made today."""
        return not any(copy.stem.endswith(today.isoformat()) for copy in self.newest_first())

    def make(self, today: date) -> Path | None:
        """Make today's copy unless there is one or nothing was edited since the last.

        Return its path, or None where none was needed. Raises CasebookFault where it cannot be made or where the
        casebook proves to be damaged; the good copies stay then.
        """
        with faults_in_words(f"The daily copy of the casebook in {self.folder}"), exclusive(self.path):
            copies = self.newest_first()
            if not self.due(today) or _last_edit(self.path) == (_last_edit(copies[0]) if copies else 0):
                return None
            self.folder.mkdir(mode=0o700, exist_ok=True)
            number = self._number(copies[0]) + 1 if copies else 1
            made = self.folder / f"{self._base}-{number:06d}-{today.isoformat()}.db"
            self._copy(made)
            for old in self.newest_first()[self._keep :]:
                old.unlink()
            return made

    def _number(self, copy: Path) -> int:
        """Return the number in a copy's name, 0 for any other file."""
        found = re.fullmatch(rf"{re.escape(self._base)}-(\d+)-\d{{4}}-\d\d-\d\d\.db", copy.name)
        return int(found[1]) if found else 0

    def _copy(self, made: Path) -> None:
        part = made.with_suffix(".part")
        part.unlink(missing_ok=True)
        copy_database(self.path, part)
        fault = first_damage(part)
        if fault:
            part.unlink()
            damage_mark(self.path).touch(mode=0o600)
            raise CasebookFault(
                f"The casebook {self.path} is damaged ({fault}). Close the program in every window and start it "
                "again: it will be mended from the last good copy and from what can still be read."
            )
        os.replace(part, made)


class DailyBackup:
    """Makes the day's copy in a thread of its own, at opening and whenever a new day has begun."""

    def __init__(self, backups: Backups, tell: Callable[[str], None]) -> None:
        self._backups = backups
        self._tell = tell
        self._day: date | None = None
        self._thread: threading.Thread | None = None

    def remind(self) -> None:
        """Start the copy where a day has begun that has none yet; returns at once."""
        today = date.today()
        if today == self._day or (self._thread is not None and self._thread.is_alive()):
            return
        self._day = today
        self._thread = threading.Thread(target=self._make, args=(today,), name="casebook copy", daemon=True)
        self._thread.start()

    def finish(self, seconds: float = 30.0) -> None:
        """Wait for a copy under way."""
        if self._thread is not None:
            self._thread.join(seconds)

    def _make(self, today: date) -> None:
        try:
            self._backups.make(today)
        except CasebookFault as fault:
            _log.warning("No daily copy of the casebook was made: %s", fault)
            self._tell(str(fault))


def copy_database(source: Path, target: Path) -> None:
    """Copy a database as it stands at this moment, readable by its owner only, while others go on writing to it."""
    make_private(target)
    with closing(sqlite3.connect(source)) as origin, closing(sqlite3.connect(target)) as copy:
        origin.backup(copy)
        # One file without a log beside it, so that a copy can be moved as it is.
        copy.execute("PRAGMA journal_mode=DELETE").fetchall()


def first_damage(path: Path, wait_seconds: float = 5.0) -> str:
    """Return what is wrong with a database file, or an empty text where it is whole."""
    try:
        with closing(
            sqlite3.connect(f"{path.absolute().as_uri()}?mode=ro", timeout=wait_seconds, uri=True)
        ) as connection:
            answer = connection.execute("PRAGMA quick_check(1)").fetchone()[0]
            return "" if answer == "ok" else str(answer)
    except sqlite3.DatabaseError as fault:
        if isinstance(fault, sqlite3.OperationalError):
            raise
        return str(fault)


def _last_edit(path: Path) -> int:
    """Return the number of the last edit in a casebook file, 0 where there is none, -1 where it cannot be read."""
    with closing(sqlite3.connect(path)) as connection:
        try:
            return int(connection.execute("SELECT coalesce(max(id), 0) FROM casebook_edits").fetchone()[0])
        except sqlite3.DatabaseError:
            return -1


@contextmanager
def exclusive(path: Path, wait_seconds: float = 60.0) -> Iterator[None]:
    """Let only one process at a time copy or mend this casebook.

    The lock is a database of its own beside it, for the system lets go of that by itself when a process is killed, on
    every platform.
    """
    lock = beside(path, ".lock")
    make_private(lock)
    with closing(sqlite3.connect(lock, timeout=wait_seconds, isolation_level=None)) as connection:
        connection.execute("BEGIN EXCLUSIVE")
        yield
