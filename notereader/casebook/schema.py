"""Making the tables of a new casebook, and bringing older ones up to date."""

from collections.abc import Callable
from datetime import UTC, datetime

from sqlalchemy import Connection, inspect, select, text, update

from notereader.casebook.backup import copy_database
from notereader.casebook.faults import CasebookFault
from notereader.casebook.models import SCHEMA_VERSION, About, Base
from notereader.casebook.store import Store, faults_in_words

# Older version -> what brings the tables to the next one. Empty while version 1 is the first.
MIGRATIONS: dict[int, Callable[[Connection], None]] = {}

# History is only ever added to; the database itself refuses anything else.
_GUARDS = {
    "sqlite": [
        f"CREATE TRIGGER casebook_edits_no_{verb} BEFORE {verb} ON casebook_edits "
        "BEGIN SELECT RAISE(ABORT, 'history is only ever added to'); END"
        for verb in ("update", "delete")
    ],
    "postgresql": [
        "CREATE FUNCTION casebook_edits_only_added() RETURNS trigger LANGUAGE plpgsql AS "
        "$$ BEGIN RAISE EXCEPTION 'history is only ever added to'; END $$",
        "CREATE TRIGGER casebook_edits_guard BEFORE UPDATE OR DELETE ON casebook_edits "
        "FOR EACH STATEMENT EXECUTE FUNCTION casebook_edits_only_added()",
    ],
}

# An arbitrary number that all processes agree on, so that only one of them makes the tables of a new casebook.
_SETUP_LOCK = 0x6E6F7465


def prepare(store: Store) -> None:
    """Make the tables where there are none and migrate older ones, all or nothing.

    A copy of an older casebook file is kept beside it as NAME-version-N.db. Raises CasebookFault for a casebook of a
    newer version and for the database of another program.
    """
    with store.reading() as session:
        version = _version(session.connection(), store)
    if version == SCHEMA_VERSION:
        return
    if version is not None and store.path is not None:
        with faults_in_words(store.name):
            copy_database(store.path, store.path.with_name(f"{store.path.stem}-version-{version}.db"))
    with store.writing() as session:
        connection = session.connection()
        if connection.dialect.name == "postgresql":
            connection.execute(text("SELECT pg_advisory_xact_lock(:number)"), {"number": _SETUP_LOCK})
        # Another process may have been quicker.
        version = _version(connection, store)
        if version is None:
            _make(connection)
        else:
            _migrate(connection, version)


def _version(connection: Connection, store: Store) -> int | None:
    """Return the version of the tables, or None where there are none yet."""
    tables = inspect(connection)
    if not tables.has_table(About.__tablename__):
        if store.path is not None and tables.get_table_names():
            raise CasebookFault(f"{store.path} is the database of another program. Choose another file.")
        return None
    version = connection.scalar(select(About.schema_version))
    if version is not None and version > SCHEMA_VERSION:
        raise CasebookFault(
            f"{store.name} was written by a newer notereader (tables version {version}; this program knows "
            f"{SCHEMA_VERSION}). Update this program to open it. Nothing was changed."
        )
    return version


def _make(connection: Connection) -> None:
    Base.metadata.create_all(connection)
    for line in _GUARDS.get(connection.dialect.name, []):
        connection.execute(text(line))
    about = {"id": 1, "schema_version": SCHEMA_VERSION, "created_at": datetime.now(UTC)}
    connection.execute(About.__table__.insert().values(**about))  # type: ignore[attr-defined]


def _migrate(connection: Connection, version: int) -> None:
    for older in range(version, SCHEMA_VERSION):
        MIGRATIONS[older](connection)
    if version != SCHEMA_VERSION:
        connection.execute(update(About).values(schema_version=SCHEMA_VERSION))
