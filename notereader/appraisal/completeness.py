"""What the note gives and does not give, against what a therapist needs and what published standards ask."""

from collections.abc import Iterable
from functools import cache

from notereader.appraisal.figures import Sourced, Status, Table, load
from notereader.appraisal.known import Case, Entry, Known
from notereader.appraisal.models import Completeness, NeedGroup, NeedItem, NeedState, StandardResult, Tally
from notereader.record import Address
from notereader.vocabulary import field_specs

# What was done to a tendon, sorted by what must then be known of it.
SUTURED = ("repaired",)
FIXED = ("reinserted", "grafted", "tenodesed")


class Need(Table):
    """Fields a therapist needs in one scope, each with its weight."""

    scope: str
    fields: dict[str, int]


class PulleySet(Table):
    """Pulleys whose state matters for some digits, each with its weight."""

    digits: tuple[str, ...]
    weights: dict[str, int]


class PulleyZones(Table):
    """Zones in which pulleys or the carpal tunnel bear on the tendon."""

    sheath: tuple[str, ...]
    tunnel: tuple[str, ...]
    source: str


class Nerves(Table):
    """One statement about the nerves of each digit."""

    structures: tuple[str, ...]
    weight: int
    label: str


class NeedTables(Table):
    """Everything in needs.toml."""

    source: str
    status: Status
    weights: dict[str, str]
    need: tuple[Need, ...]
    pulleys: tuple[PulleySet, ...]
    pulley_zones: PulleyZones
    nerves: Nerves


class Owed(Table):
    """One thing a standard asks, and where the record would show it."""

    label: str
    elements: tuple[str, ...] = ()
    facts: tuple[str, ...] = ()


class Standard(Sourced):
    """One published standard."""

    key: str
    name: str
    note: str
    absent_from_record: tuple[str, ...]
    items: tuple[Owed, ...]


class OwedTables(Table):
    """Everything in owed.toml."""

    standard: tuple[Standard, ...]


@cache
def need_tables() -> NeedTables:
    """Return what a therapist needs."""
    return load("needs.toml", NeedTables)


@cache
def owed_tables() -> OwedTables:
    """Return what published standards ask of a note."""
    return load("owed.toml", OwedTables)


def completeness_of(case: Case, disputed: frozenset[str] = frozenset()) -> Completeness:
    """Return both lists. `disputed` holds the addresses of facts that a named contradiction rests on."""
    items = [*_need_items(case, disputed)]
    tables = need_tables()
    groups = [
        NeedGroup(
            weight=weight,
            label=tables.weights[str(weight)],
            items=chosen,
            tally=tally(tables.weights[str(weight)], chosen),
        )
        for weight in sorted((int(key) for key in tables.weights), reverse=True)
        for chosen in [[item for item in items if item.weight == weight]]
    ]
    wheres = dict.fromkeys(item.where for item in items)
    parts = [tally(where, [item for item in items if item.where == where]) for where in wheres]
    owed = [_standard(case, standard, disputed) for standard in owed_tables().standard]
    return Completeness(needs=groups, parts=parts, owed=owed, source=tables.source)


def tally(label: str, items: Iterable[NeedItem]) -> Tally:
    """Count a list by state."""
    states = [item.state for item in items]
    return Tally(
        label=label,
        items=len(states),
        stated=states.count("stated"),
        implied=states.count("implied"),
        silent=states.count("silent"),
        contradictory=states.count("contradictory"),
    )


def scopes_of(repair: Entry) -> list[str]:
    """Return what must be known of a tendon after what was done to it; an unharmed one needs nothing more."""
    treatment, extent = repair.text("treatment"), repair.text("extent")
    if extent == "intact" and not treatment:
        return []
    scopes = ["any"]
    if treatment in SUTURED:
        scopes.append("sutured")
    elif treatment in FIXED:
        scopes.append("fixed")
    if extent == "partial":
        scopes.append("partial")
    return scopes


def needed_pulleys(case: Case, digit: str) -> dict[str, int]:
    """Return the pulleys whose state matters for a digit with their weights; none without a cut in the sheath."""
    tables = need_tables()
    zones = [e.text("zone") for e in case.repairs if e.place.digit == digit and scopes_of(e)]
    if not any(not zone or zone in tables.pulley_zones.sheath for zone in zones):
        return {}
    return next((dict(s.weights) for s in tables.pulleys if digit in s.digits), {})


def _need_items(case: Case, disputed: frozenset[str]) -> Iterable[NeedItem]:
    tables = need_tables()
    single = {"operation": case.operation, "aftercare": case.aftercare}
    for need in tables.need:
        if need.scope in single:
            yield from _fields(single[need.scope], need.fields, disputed)
    for repair in case.repairs:
        scopes = scopes_of(repair)
        for need in tables.need:
            if need.scope in scopes:
                yield from _fields(repair, need.fields, disputed)
    for digit in case.digits():
        yield from _pulley_items(case, digit, disputed)
        yield from _nerve_item(case, digit)
    if any(e.text("zone") in tables.pulley_zones.tunnel for e in case.repairs):
        retinaculum = case.pulley(None, "flexor retinaculum") or Entry(
            Address("pulleys", None, "flexor retinaculum"), {}
        )
        yield _item(retinaculum, "finding", 2, "flexor retinaculum", "Flexor retinaculum", disputed)


def _fields(entry: Entry, fields: dict[str, int], disputed: frozenset[str]) -> Iterable[NeedItem]:
    specs = field_specs()[entry.place.group]
    for field, weight in fields.items():
        yield _item(entry, field, weight, entry.place.entry_words(), specs[field].label, disputed)


def _pulley_items(case: Case, digit: str, disputed: frozenset[str]) -> Iterable[NeedItem]:
    for name, weight in needed_pulleys(case, digit).items():
        entry = case.pulley(digit, name) or Entry(Address("pulleys", digit, name), {})
        yield _item(entry, "finding", weight, f"{digit} pulleys", f"State of {name}", disputed)
        finding = entry.known("finding")
        settled_part = finding is not None and not finding.rivals and finding.value in ("vented", "trimmed")
        if settled_part and entry.known("extent_mm") is None:
            yield _item(entry, "extent_percent", 2, f"{digit} pulleys", f"How much of {name} was opened", disputed)


def _nerve_item(case: Case, digit: str) -> Iterable[NeedItem]:
    nerves = need_tables().nerves
    cut = [e for e in case.repairs if e.place.digit == digit and scopes_of(e)]
    if not cut:
        return
    found = [e for e in case.injuries if e.place.part in nerves.structures and e.place.digit in (digit, None)]
    known = next((k for e in found for k in e.live()), None)
    yield NeedItem(
        address=Address("injuries", digit, "digital nerve").text(),
        where=f"{digit} other structures",
        label=nerves.label,
        state="silent" if known is None else "stated",
        weight=nerves.weight,
        value="" if known is None else "; ".join(_injury_words(e) for e in found),
        confirmed=known is not None and known.settled,
    )


def _injury_words(entry: Entry) -> str:
    return f"{entry.place.entry_words()}: {', '.join(k.shown() for k in entry.live())}"


def _item(entry: Entry, field: str, weight: int, where: str, label: str, disputed: frozenset[str]) -> NeedItem:
    known = entry.known(field)
    address = entry.place.field_of(field).text()
    return NeedItem(
        address=address,
        where=where,
        label=label,
        state=state_of(known, address in disputed),
        weight=weight,
        value="" if known is None else known.shown(),
        confirmed=known.settled if known is not None else entry.silent(field),
        elsewhere="" if known is None else known.fact.said_by or "",
    )


def state_of(known: Known | None, disputed: bool) -> NeedState:
    """Return whether a fact is stated, implied, silent or contradictory."""
    if known is None:
        return "silent"
    if known.rivals or disputed:
        return "contradictory"
    return "implied" if known.implied else "stated"


def _standard(case: Case, standard: Standard, disputed: frozenset[str]) -> StandardResult:
    items = [_owed_item(case, owed, disputed) for owed in standard.items]
    return StandardResult(
        key=standard.key,
        name=standard.name,
        source=standard.source,
        status=standard.status,
        note=standard.note,
        items=items,
        tally=tally(standard.name, items),
        absent_from_record=list(standard.absent_from_record),
    )


def _owed_item(case: Case, owed: Owed, disputed: frozenset[str]) -> NeedItem:
    """Return whether the note itself shows the thing; what the surgeon answered later is not in the note."""
    places = [(case.elements, name) for name in owed.elements] + [(case.operation, name) for name in owed.facts]
    found = [k for entry, name in places if (k := entry.known(name)) is not None and not k.fact.said_by]
    known = found[0] if found else None
    entry, name = places[0]
    address = entry.place.field_of(name).text()
    return NeedItem(
        address=address,
        where="note",
        label=owed.label,
        state=state_of(known, known is not None and known.place.text() in disputed),
        weight=1,
        value="" if known is None else known.quote,
        confirmed=known is not None and known.settled,
    )
