"""The tables of a casebook."""

import json
import zlib
from datetime import UTC, datetime
from typing import Any

from sqlalchemy import Dialect, ForeignKey, Integer, LargeBinary, String, Text, TypeDecorator, UniqueConstraint
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column

SCHEMA_VERSION = 1


class Moment(TypeDecorator[datetime]):
    """A point in time, kept as ISO text in UTC so that every database keeps it alike."""

    impl = String(32)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> str | None:
        """Write an aware time as UTC."""
        return None if value is None else value.astimezone(UTC).isoformat(timespec="microseconds")

    def process_result_value(self, value: Any | None, dialect: Dialect) -> datetime | None:
        """Read it back as an aware time."""
        return None if value is None else datetime.fromisoformat(value)


def pack_json(value: Any) -> bytes:
    """Return any JSON data as compressed bytes.

    Compression makes a record about a tenth as long, its checksum shows damage, and bytes can hold characters (NUL,
    lone surrogates) that a text column of some databases refuses.
    """
    return zlib.compress(json.dumps(value, separators=(",", ":")).encode("ascii"))


def unpack_json(packed: bytes) -> Any:
    """Read what pack_json() wrote; raises zlib.error where it is damaged."""
    return json.loads(zlib.decompress(packed))


class Packed(TypeDecorator[Any]):
    """JSON data, compressed."""

    impl = LargeBinary
    cache_ok = True

    def process_bind_param(self, value: Any | None, dialect: Dialect) -> bytes | None:
        """Write any JSON data."""
        return None if value is None else pack_json(value)

    def process_result_value(self, value: Any | None, dialect: Dialect) -> Any | None:
        """Read it back; raises zlib.error where it is damaged."""
        return None if value is None else unpack_json(value)


class Base(DeclarativeBase):
    """Common base of the tables."""


class About(Base):
    """One row: which version of the tables this casebook has."""

    __tablename__ = "casebook_about"

    id: Mapped[int] = mapped_column(Integer, primary_key=True)
    schema_version: Mapped[int] = mapped_column(Integer)
    created_at: Mapped[datetime] = mapped_column(Moment)


class Case(Base):
    """What the list of cases shows; the rest of a case lies in tables of its own so that the list stays quick.

    `last_edit` orders the list by what was changed last without trusting the clock.
    """

    __tablename__ = "casebook_cases"

    id: Mapped[int] = mapped_column(Integer, primary_key=True, autoincrement=True)
    title: Mapped[str] = mapped_column(Text)
    state: Mapped[str] = mapped_column(String(16), index=True)
    operation_date: Mapped[str | None] = mapped_column(String(10))
    digits: Mapped[str] = mapped_column(Text)
    tendons: Mapped[str] = mapped_column(Text)
    facts_open: Mapped[int] = mapped_column(Integer)
    revision: Mapped[int] = mapped_column(Integer)
    last_edit: Mapped[int] = mapped_column(Integer, index=True)
    changed_at: Mapped[datetime] = mapped_column(Moment)


class CaseNote(Base):
    """The note's text as it came, and title and text folded for searching."""

    __tablename__ = "casebook_notes"

    case_id: Mapped[int] = mapped_column(ForeignKey("casebook_cases.id"), primary_key=True)
    text: Mapped[Any | None] = mapped_column(Packed)
    search: Mapped[str] = mapped_column(Text)


class CaseRecord(Base):
    """The record as it stands, without the note's text."""

    __tablename__ = "casebook_records"

    case_id: Mapped[int] = mapped_column(ForeignKey("casebook_cases.id"), primary_key=True)
    data: Mapped[Any] = mapped_column(Packed)


class EditRow(Base):
    """One line of history; lines are only ever added.

    `before` and `after` are JSON, `position` is where an entry that was added or dropped stood in its group.
    """

    __tablename__ = "casebook_edits"
    __table_args__ = (UniqueConstraint("case_id", "revision"),)

    id: Mapped[int] = mapped_column(Integer, primary_key=True, autoincrement=True)
    case_id: Mapped[int] = mapped_column(ForeignKey("casebook_cases.id"))
    revision: Mapped[int] = mapped_column(Integer)
    at: Mapped[datetime] = mapped_column(Moment)
    who: Mapped[str] = mapped_column(Text)
    kind: Mapped[str] = mapped_column(String(16))
    address: Mapped[str] = mapped_column(Text)
    before: Mapped[str | None] = mapped_column(Text)
    after: Mapped[str | None] = mapped_column(Text)
    position: Mapped[int | None] = mapped_column(Integer)
    note: Mapped[str] = mapped_column(Text)


class ReadMark(Base):
    """A fact that was shown to the person."""

    __tablename__ = "casebook_read"

    case_id: Mapped[int] = mapped_column(ForeignKey("casebook_cases.id"), primary_key=True)
    address: Mapped[str] = mapped_column(String(160), primary_key=True)
