"""The database beneath a casebook: connecting, transactions, and faults put into words."""

import os
import sqlite3
import zlib
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import platformdirs
from sqlalchemy import URL, Connection, Engine, create_engine, event, make_url
from sqlalchemy.exc import ArgumentError, DBAPIError, SQLAlchemyError
from sqlalchemy.orm import Session

from notereader.casebook.faults import CasebookFault, DamagedCasebook

FILE_NAME = "casebook.db"

_BUSY = "is in use by another program. Wait a moment and try again; nothing was changed."
_DAMAGED = "is damaged. Close the program in every window and start it again: it will be mended."
_WORDS = {
    sqlite3.SQLITE_BUSY: _BUSY,
    sqlite3.SQLITE_LOCKED: _BUSY,
    sqlite3.SQLITE_FULL: "cannot grow: the disk is full. Free some space and try again; what was saved before is safe.",
    sqlite3.SQLITE_READONLY: "is read-only. Allow writing to the file and its folder, then try again.",
    sqlite3.SQLITE_CANTOPEN: "cannot be opened or made. Check that its folder exists and that you may write there.",
    sqlite3.SQLITE_PERM: "cannot be opened. Check that you may write to the file and its folder.",
    sqlite3.SQLITE_IOERR: "cannot be read or written: the drive failed, is full or was removed. "
    "Check the drive, then start the program again.",
    sqlite3.SQLITE_CORRUPT: _DAMAGED,
    sqlite3.SQLITE_NOTADB: _DAMAGED,
}


def default_path() -> Path:
    """Return where the casebook lies when nothing else is asked for: the platform's folder for a person's data."""
    return Path(platformdirs.user_data_dir("notereader", appauthor=False)) / FILE_NAME


def resolve(url: str | Path | None) -> tuple[URL, Path | None]:
    """Return the database URL and, for SQLite, the file. Raises CasebookFault where the URL cannot be understood."""
    if url is None or isinstance(url, Path) or "://" not in url:
        return _file_url(default_path() if url is None else Path(url).expanduser())
    try:
        parsed = make_url(url)
    except ArgumentError:
        raise CasebookFault(
            "The casebook's address cannot be understood. Give a file, or a URL such as postgresql://host/name."
        ) from None
    if parsed.drivername == "postgresql":
        # The driver that the 'team' extra installs, whatever the library's own default is.
        return parsed.set(drivername="postgresql+psycopg"), None
    if parsed.get_backend_name() != "sqlite":
        return parsed, None
    if not parsed.database or parsed.database == ":memory:":
        raise CasebookFault("A casebook needs a file, for it must outlast the program. Give the path of a .db file.")
    return _file_url(Path(parsed.database))


def _file_url(path: Path) -> tuple[URL, Path]:
    with faults_in_words(f"The casebook {path}"):
        # A link is followed, for mending replaces the file and copies lie beside it.
        path = path.resolve() if path.is_symlink() else path.absolute()
    return URL.create("sqlite", database=str(path)), path


def beside(path: Path, ending: str) -> Path:
    """Return the path of a file beside the casebook that belongs to it."""
    return path.with_name(path.name + ending)


def companions(path: Path) -> list[Path]:
    """Return SQLite's own files beside a database: its log and the log's index."""
    return [beside(path, ending) for ending in ("-wal", "-shm")]


def damage_mark(path: Path) -> Path:
    """Return the empty file whose presence says that the casebook must be mended at the next start."""
    return beside(path, ".damaged")


def make_private(path: Path) -> None:
    """Make an empty file that only its owner can read, unless the file is there already."""
    try:
        os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_RDWR, 0o600))
    except FileExistsError:
        return


class Store:
    """An open database with short transactions: `reading()` sees one state, `writing()` is durable on leaving.

    `on_saved` is called after each transaction that wrote.
    """

    def __init__(self, url: URL, path: Path | None, wait_seconds: float) -> None:
        self.path = path
        self.name = f"The casebook {path}" if path else f"The casebook at {url.render_as_string(hide_password=True)}"
        self.on_saved: Callable[[], None] = lambda: None
        with faults_in_words(self.name):
            self._engine = _sqlite_engine(url, path, wait_seconds) if path else _server_engine(url)
            self._identity = _identity(path)

    @contextmanager
    def reading(self) -> Iterator[Session]:
        """Open a transaction that only reads."""
        with self._guarded(), Session(self._engine) as session, session.begin():
            yield session

    @contextmanager
    def writing(self) -> Iterator[Session]:
        """Open a transaction that writes; it is durable when the block is left, or gone when the block raises."""
        writer = self._engine.execution_options(writing=True)
        with self._guarded(), Session(writer) as session, session.begin():
            yield session
        self.on_saved()

    def close(self) -> None:
        """Let go of the database."""
        self._engine.dispose()

    @contextmanager
    def _guarded(self) -> Iterator[None]:
        with faults_in_words(self.name):
            if _identity(self.path) != self._identity:
                # The system would let us go on writing into a file that no longer has a name.
                raise CasebookFault(
                    f"{self.name} was moved, replaced or deleted while it was open. Nothing was saved. "
                    "Close the program in every window and start it again."
                )
            try:
                with faults_in_words(self.name):
                    yield
            except DamagedCasebook:
                if self.path is not None:
                    damage_mark(self.path).touch(mode=0o600)
                raise


def _identity(path: Path | None) -> tuple[int, int] | None:
    if path is None:
        return None
    try:
        found = path.stat()
    except FileNotFoundError:
        return None
    return found.st_dev, found.st_ino


@contextmanager
def faults_in_words(name: str) -> Iterator[None]:
    """Turn the database's and the system's faults into CasebookFault.

    The original is left out of the traceback, for its text may carry what was being saved.
    """
    try:
        yield
    except DBAPIError as fault:
        raise _in_words(name, fault.orig) from None
    except SQLAlchemyError as fault:
        raise CasebookFault(f"{name} cannot be used ({type(fault).__name__}).") from None
    except (sqlite3.Error, zlib.error) as fault:
        raise _in_words(name, fault) from None
    except ModuleNotFoundError as fault:
        raise CasebookFault(
            f"{name} needs the module '{fault.name}', which is not installed. "
            "Install notereader with its 'team' extra for PostgreSQL."
        ) from None
    except OSError as fault:
        raise CasebookFault(
            f"{name} cannot be used: {fault.strerror or type(fault).__name__}. "
            "Check that the drive is there, has room, and that you may write to it."
        ) from None


def _in_words(name: str, fault: BaseException | None) -> CasebookFault:
    if isinstance(fault, zlib.error):
        return DamagedCasebook(f"{name} {_DAMAGED}")
    if not isinstance(fault, sqlite3.Error):
        return CasebookFault(
            f"{name} cannot be reached, or refused the work. Check the network and the address, then try again."
        )
    # Codes above 255 are finer kinds of the same fault.
    words = _WORDS.get(getattr(fault, "sqlite_errorcode", 0) & 0xFF)
    known = words or f"cannot be used ({getattr(fault, 'sqlite_errorname', 'unknown fault')})."
    return (DamagedCasebook if words == _DAMAGED else CasebookFault)(f"{name} {known}")


def _sqlite_engine(url: URL, path: Path, wait_seconds: float) -> Engine:
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
    return create_engine(url, hide_parameters=True, pool_pre_ping=True)
