"""What resources/audit.toml says: where fields apply, rules for signals, and the words of the report."""

from functools import cache
from typing import Literal

from pydantic import Field

from notereader.appraisal.figures import Table, load
from notereader.audit.pcharts import Rule

Scope = Literal["any", "sutured", "fixed", "partial", "needed", "named"]


class Applies(Table):
    """Where some fields of a group apply."""

    group: str
    fields: tuple[str, ...]
    always: bool = False
    scopes: tuple[Scope, ...] = ()
    where: dict[str, tuple[str, ...]] = Field(default_factory=dict)
    unless: tuple[str, ...] = ()


class Method(Table):
    """How figures of one kind are made."""

    title: str
    words: str
    source: str


class Caution(Table):
    """A caution that always stands on the report."""

    words: str
    source: str


class AuditTables(Table):
    """Everything in audit.toml."""

    source: str
    applies: tuple[Applies, ...]
    signal: tuple[Rule, ...]
    method: tuple[Method, ...]
    caution: tuple[Caution, ...]


@cache
def audit_tables() -> AuditTables:
    """Return what an audit counts and how its report words it."""
    return load("audit.toml", AuditTables)


@cache
def where_it_applies() -> dict[tuple[str, str], Applies]:
    """Return (group, field) -> where it applies."""
    return {(entry.group, field): entry for entry in audit_tables().applies for field in entry.fields}
