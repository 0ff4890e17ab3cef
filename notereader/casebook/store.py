"""The database beneath a casebook: connecting, transactions, and faults put into words."""

import os
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import platformdirs
from sqlalchemy import URL, Connection, Engine, create_engine, event, make_url
from sqlalchemy.exc import ArgumentError, DBAPIError, SQLAlchemyError
from sqlalchemy.orm import Session

from notereader.casebook.faults import CasebookFault

FILE_NAME = "casebook.db"

_WORDS = {
    sqlite3.SQLITE_BUSY: "is in use by another program. Wait a moment and try again; nothing was changed.",
    sqlite3.SQLITE_LOCKED: "is in use by another program. Wait a moment and try again; nothing was changed.",
    sqlite3.SQLITE_FULL: "cannot grow: the disk is full. Free some space and try again; what was saved before is safe.",
    sqlite3.SQLITE_READONLY: "is read-only. Allow writing to the file and its folder, then try again.",
    sqlite3.SQLITE_CANTOPEN: "cannot be opened or made. Check that its folder exists and that you may write there.",
    sqlite3.SQLITE_PERM: "cannot be opened. Check that you may write to the file and its folder.",
    sqlite3.SQLITE_IOERR: "cannot be read or written: the drive failed, is full or was removed. "
    "Check the drive, then start the program again.",
    sqlite3.SQLITE_CORRUPT: "is damaged. Close the program and start it again: it will be mended.",
    sqlite3.SQLITE_NOTADB: "is damaged, or is no casebook. Close the program and start it again: it will be mended.",
}


def default_path() -> Path:
    """Return where the casebook lies when nothing else is asked for: the platform's folder for a person's data."""
    return Path(platformdirs.user_data_dir("notereader", appauthor=False)) / FILE_NAME


def resolve(url: str | Path | None) -> tuple[URL, Path | None]:
    """Return the database URL and, for SQLite, the file. Raises CasebookFault where the URL cannot be understood."""
    if url is None or isinstance(url, Path) or "://" not in url:
        path = default_path() if url is None else Path(url).expanduser()
        return URL.create("sqlite", database=str(path)), path
    try:
        parsed = make_url(url)
    except ArgumentError:
        raise CasebookFault(
            "The casebook's address cannot be understood. Give a file, or a URL such as postgresql+psycopg://host/name."
        ) from None
    if parsed.get_backend_name() != "sqlite":
        return parsed, None
    if not parsed.database or parsed.database == ":memory:":
        raise CasebookFault("A casebook needs a file, for it must outlast the program. Give the path of a .db file.")
    return parsed, Path(parsed.database)


class Store:
    """An open database with short transactions: `reading()` sees one state, `writing()` is durable on leaving."""

    def __init__(self, url: URL, path: Path | None, wait_seconds: float) -> None:
        self.path = path
        self.name = f"The casebook {path}" if path else f"The casebook at {url.render_as_string(hide_password=True)}"
        with faults_in_words(self.name):
            self.engine = _sqlite_engine(url, wait_seconds) if path else _server_engine(url)
        self._writer = self.engine.execution_options(writing=True)

    @contextmanager
    def reading(self) -> Iterator[Session]:
        """Open a transaction that only reads."""
        with faults_in_words(self.name), Session(self.engine) as session, session.begin():
            yield session

    @contextmanager
    def writing(self) -> Iterator[Session]:
        """Open a transaction that writes; it is durable when the block is left, or gone when the block raises."""
        with faults_in_words(self.name), Session(self._writer) as session, session.begin():
            yield session

    def close(self) -> None:
        """Let go of the database."""
        self.engine.dispose()


@contextmanager
def faults_in_words(name: str) -> Iterator[None]:
    """Turn the database's and the system's faults into CasebookFault.

    The original is left out of the traceback, for its text may carry what was being saved.
    """
    try:
        yield
    except DBAPIError as fault:
        raise CasebookFault(f"{name} {_words_for(fault.orig)}") from None
    except SQLAlchemyError as fault:
        raise CasebookFault(f"{name} cannot be used ({type(fault).__name__}).") from None
    except sqlite3.Error as fault:
        raise CasebookFault(f"{name} {_words_for(fault)}") from None
    except ModuleNotFoundError as fault:
        raise CasebookFault(
            f"{name} needs the module '{fault.name}', which is not installed. "
            "Install notereader with its 'team' extra for PostgreSQL."
        ) from None
    except OSError as fault:
        raise CasebookFault(f"{name} cannot be used: {fault.strerror or type(fault).__name__}.") from None


def _words_for(fault: BaseException | None) -> str:
    code = getattr(fault, "sqlite_errorcode", None)
    if isinstance(fault, sqlite3.Error):
        return _WORDS.get(
            (code or 0) & 0xFF, f"cannot be used ({getattr(fault, 'sqlite_errorname', 'unknown fault')})."
        )
    return "cannot be reached, or refused the work. Check the network and the address, then try again."


def _sqlite_engine(url: URL, wait_seconds: float) -> Engine:
    assert url.database
    path = Path(url.database)
    path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    make_private(path)
    engine = create_engine(url, hide_parameters=True, connect_args={"timeout": wait_seconds})

    @event.listens_for(engine, "connect")
    def _prepare(connection: sqlite3.Connection, _record: object) -> None:
        # Transactions are begun by hand below: the driver would begin them only at the first write, too late to
        # keep what was read before from changing.
        connection.isolation_level = None
        for line in ("journal_mode=WAL", "synchronous=FULL", "foreign_keys=ON", "fullfsync=ON"):
            connection.execute(f"PRAGMA {line}").fetchall()

    @event.listens_for(engine, "begin")
    def _begin(connection: Connection) -> None:
        writing = connection.get_execution_options().get("writing")
        connection.exec_driver_sql("BEGIN IMMEDIATE" if writing else "BEGIN")

    return engine


def _server_engine(url: URL) -> Engine:
    options: dict[str, Any] = {"hide_parameters": True, "pool_pre_ping": True}
    return create_engine(url, **options)


def make_private(path: Path) -> None:
    """Make an empty file that only its owner can read, unless the file is there already."""
    try:
        os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_RDWR, 0o600))
    except FileExistsError:
        return
