"""What is counted: every field of the record, what a therapist needs, and what published standards ask of a note."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from notereader.appraisal.completeness import need_tables, owed_tables
from notereader.vocabulary import field_specs

FIELDS = "fields"
NEEDS = "needs"

GROUP_WORDS = {
    "operation": "Operation",
    "repairs": "Tendons",
    "pulleys": "Pulleys",
    "injuries": "Other structures",
    "aftercare": "Aftercare",
    "elements": "Parts of the note",
}


@dataclass(frozen=True, slots=True)
class Criterion:
    """One thing a note states or not. `kind` is 'fields', 'needs' or the key of a standard; `weight` is 1 to 3."""

    key: str
    kind: str
    group: str
    label: str
    weight: int


@dataclass(frozen=True, slots=True)
class CriteriaList:
    """A list of criteria with its title and where it comes from."""

    kind: str
    title: str
    source: str


@cache
def criteria() -> tuple[Criterion, ...]:
    """Return every criterion: needs (what changes the work most first), fields, then each standard."""
    needs = sorted(_needs(), key=lambda criterion: -criterion.weight)
    return (*needs, *_fields(), *_owed())


@cache
def criteria_lists() -> tuple[CriteriaList, ...]:
    """Return the lists, in the order of the criteria."""
    return (
        CriteriaList(NEEDS, "What a therapist needs", need_tables().source),
        CriteriaList(FIELDS, "Every field of the record", "the record's own fields"),
        *(CriteriaList(s.key, s.name, s.source) for s in owed_tables().standard),
    )


def field_key(group: str, field: str) -> str:
    """Return the key of a field of the record."""
    return f"{FIELDS}/{group}.{field}"


def need_key(group: str, part: str | None, field: str) -> str:
    """Return the key of a need; pulleys are told apart by name, tendons and nerves are not."""
    if group == "injuries":
        return f"{NEEDS}/nerves"
    return f"{NEEDS}/pulleys.{part}.{field}" if group == "pulleys" else f"{NEEDS}/{group}.{field}"


def owed_key(standard: str, label: str) -> str:
    """Return the key of what a standard asks."""
    return f"{standard}/{label}"


def _fields() -> Iterator[Criterion]:
    for group, specs in field_specs().items():
        for name, spec in specs.items():
            yield Criterion(field_key(group, name), FIELDS, group, spec.label, spec.weight)


def _needs() -> Iterator[Criterion]:
    tables = need_tables()
    weights: dict[tuple[str, str], int] = {}
    for need in tables.need:
        group = need.scope if need.scope in ("operation", "aftercare") else "repairs"
        for field, weight in need.fields.items():
            weights[group, field] = max(weight, weights.get((group, field), 0))
    for (group, field), weight in weights.items():
        yield Criterion(need_key(group, None, field), NEEDS, group, field_specs()[group][field].label, weight)
    yield from _pulley_needs()
    yield Criterion(need_key("injuries", None, ""), NEEDS, "injuries", "Nerves of the finger", tables.nerves.weight)


def _pulley_needs() -> Iterator[Criterion]:
    weights: dict[str, int] = {}
    for pulleys in need_tables().pulleys:
        for name, weight in pulleys.weights.items():
            weights[name] = max(weight, weights.get(name, 0))
    for name, weight in weights.items():
        yield Criterion(need_key("pulleys", name, "finding"), NEEDS, "pulleys", f"State of {name}", weight)
        opened = need_key("pulleys", name, "extent_percent")
        yield Criterion(opened, NEEDS, "pulleys", f"How much of {name} was opened", 2)
    name = "flexor retinaculum"
    yield Criterion(need_key("pulleys", name, "finding"), NEEDS, "pulleys", "State of the flexor retinaculum", 2)


def _owed() -> Iterator[Criterion]:
    for standard in owed_tables().standard:
        for item in standard.items:
            label = item.label[:1].upper() + item.label[1:]
            yield Criterion(owed_key(standard.key, item.label), standard.key, "elements", label, 1)
