"""Making the tables of a new casebook, and bringing older ones up to date."""

from collections.abc import Callable
from datetime import UTC, datetime

from sqlalchemy import Connection, inspect, select, text, update

from notereader.casebook.faults import CasebookFault
from notereader.casebook.models import SCHEMA_VERSION, About, Base
from notereader.casebook.store import Store

# Older version -> what brings the tables to the next one. Empty while version 1 is the first.
MIGRATIONS: dict[int, Callable[[Connection], None]] = {}

# History is only ever added to; the database itself refuses anything else.
_GUARDS = {
    "sqlite": [
        f"CREATE TRIGGER edits_no_{verb} BEFORE {verb} ON edits "
        "BEGIN SELECT RAISE(ABORT, 'history is only ever added to'); END"
        for verb in ("update", "delete")
    ],
    "postgresql": [
        "CREATE FUNCTION edits_only_added() RETURNS trigger LANGUAGE plpgsql AS "
        "$$ BEGIN RAISE EXCEPTION 'history is only ever added to'; END $$",
        "CREATE TRIGGER edits_guard BEFORE UPDATE OR DELETE ON edits "
        "FOR EACH STATEMENT EXECUTE FUNCTION edits_only_added()",
    ],
}

# An arbitrary number that all processes agree on, so that only one of them makes the tables of a new casebook.
_SETUP_LOCK = 0x6E6F7465


def schema_version(connection: Connection) -> int | None:
    """Return the version of the tables, or None where there are none yet."""
    if not inspect(connection).has_table(About.__tablename__):
        return None
    return connection.scalar(select(About.schema_version))


def prepare(store: Store) -> None:
    """Make the tables where there are none and migrate older ones, all or nothing.

    Raises CasebookFault for a casebook of a newer version.
    """
    with store.writing() as session:
        connection = session.connection()
        if connection.dialect.name == "postgresql":
            connection.execute(text("SELECT pg_advisory_xact_lock(:number)"), {"number": _SETUP_LOCK})
        version = schema_version(connection)
        if version is None:
            _make(connection)
        elif version > SCHEMA_VERSION:
            raise CasebookFault(
                f"{store.name} was written by a newer notereader (tables version {version}; this program knows "
                f"{SCHEMA_VERSION}). Update this program to open it. Nothing was changed."
            )
        else:
            _migrate(connection, version)


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
