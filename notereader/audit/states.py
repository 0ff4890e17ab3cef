"""What one record states, implies, is silent on or contradicts, criterion by criterion."""

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import asdict, dataclass
from functools import cache
from typing import Any

from notereader.appraisal.checks import run_checks
from notereader.appraisal.completeness import completeness_of, need_tables, scopes_of, state_of
from notereader.appraisal.known import SETTLED, Case, Entry
from notereader.appraisal.models import Completeness, NeedItem
from notereader.audit.criteria import field_key, need_key, owed_key
from notereader.audit.tables import Applies, where_it_applies
from notereader.record import Address, Fact, Record, show_value
from notereader.vocabulary import field_specs

# One letter for each place; the worse comes first where a note has several.
CONTRADICTORY, SILENT, IMPLIED, STATED = "c", "-", "i", "s"
WORST_FIRST = (CONTRADICTORY, SILENT, IMPLIED, STATED)
STATE_WORDS = {STATED: "stated", IMPLIED: "implied", SILENT: "silent", CONTRADICTORY: "contradictory"}
_LETTERS = {word: letter for letter, word in STATE_WORDS.items()}

NOT_STATED = "not stated"
SEVERAL = "several"


@cache
def note_state(places: str) -> str:
    """Return the state of a whole note from the letters of its places: it states a thing only where all places do."""
    return next(letter for letter in WORST_FIRST if letter in places)


@dataclass(frozen=True, slots=True)
class Assessment:
    """What the audit keeps of one note.

    `states` has one letter for each place a criterion applies to; a criterion that does not apply is missing. `values`
    holds what is said at each address, `words` the words that say it (empty unless asked for). `confirmed` is True
    where a person decided on every fact.
    """

    sha256: str
    confirmed: bool
    states: dict[str, str]
    values: dict[str, str]
    words: dict[str, str]
    checks: tuple[str, ...]
    operation_date: str
    stitch: str

    def to_json(self) -> dict[str, Any]:
        """Return this as JSON data."""
        return asdict(self)

    @classmethod
    def from_json(cls, data: dict[str, Any]) -> "Assessment":
        """Read what to_json() gave."""
        return cls(**{**data, "checks": tuple(data["checks"])})


def assess(record: Record, with_words: bool = False) -> Assessment:
    """Return what the audit keeps of a record; with_words=True keeps the words of the note that prove each fact."""
    case, facts = Case.of(record), dict(record.walk())
    found = run_checks(case)
    disputed = frozenset(p.address for hit in found if hit.kind == "contradiction" for p in hit.pieces)
    completeness = completeness_of(case, disputed)
    states: dict[str, list[str]] = defaultdict(list)
    for place, letter in _needs(facts, completeness):
        states[need_key(place.group, place.part, place.field)].append(letter)
        if (place.group, place.field) == ("pulleys", "finding"):
            states[field_key("pulleys", "finding")].append(letter)
    for key, letter in (*_owed(completeness), *_fields(case, disputed)):
        states[key].append(letter)
    noted = [(place, fact) for place, fact in facts.items() if fact.live and not fact.said_by]
    return Assessment(
        sha256=record.note.sha256,
        confirmed=is_confirmed(record),
        states={key: "".join(letters) for key, letters in states.items()},
        values={place.text(): show_value(fact.value) for place, fact in noted},
        words={place.text(): " … ".join(e.exact for e in fact.evidence) for place, fact in noted} if with_words else {},
        checks=tuple(dict.fromkeys(hit.check for hit in found)),
        operation_date=case.operation.text("date"),
        stitch=_stitch(case),
    )


def is_confirmed(record: Record) -> bool:
    """Return whether a person decided on every fact of a record."""
    statuses = [fact.status for _, fact in record.walk()]
    if record.review.confirmed_at is not None:
        return "proposed" not in statuses
    return bool(statuses) and "proposed" not in statuses


def _stitch(case: Case) -> str:
    named = dict.fromkeys(entry.text("stitch") for entry in case.repairs if entry.text("stitch"))
    if not named:
        return NOT_STATED
    return next(iter(named)) if len(named) == 1 else SEVERAL


def _needs(facts: dict[Address, Fact], completeness: Completeness) -> Iterator[tuple[Address, str]]:
    for group in completeness.needs:
        for item in group.items:
            place = Address.parse(item.address)
            yield place, _nerves(facts, place.digit) if place.group == "injuries" else _need(facts.get(place), item)


def _need(fact: Fact | None, item: NeedItem) -> str:
    if item.elsewhere:
        return SILENT
    return CONTRADICTORY if fact is not None and _two_values(fact) else _LETTERS[item.state]


def _two_values(fact: Fact) -> bool:
    """Return whether the note says two things, even where a person has since decided which one holds."""
    return fact.live and fact.status in SETTLED and any(rival.value != fact.value for rival in fact.rivals)


def _nerves(facts: dict[Address, Fact], digit: str | None) -> str:
    """Return whether the note itself speaks of the nerves of a digit."""
    nerves = need_tables().nerves.structures
    told = any(
        place.group == "injuries" and place.part in nerves and place.digit in (digit, None)
        for place, fact in facts.items()
        if fact.live and not fact.said_by
    )
    return STATED if told else SILENT


def _owed(completeness: Completeness) -> Iterator[tuple[str, str]]:
    for standard in completeness.owed:
        for item in standard.items:
            yield owed_key(standard.key, item.label), _LETTERS[item.state]


def _fields(case: Case, disputed: frozenset[str]) -> Iterator[tuple[str, str]]:
    for entry in case.entries():
        group = entry.place.group
        scopes = _scopes(entry)
        for name in field_specs()[group]:
            if _applies(where_it_applies()[group, name], entry, scopes):
                yield field_key(group, name), _letter(entry, name, disputed)


def _scopes(entry: Entry) -> frozenset[str]:
    """Return what holds of an entry; which pulleys are needed follows from the tendons and is told by the needs."""
    if entry.place.group == "repairs":
        return frozenset(scopes_of(entry))
    return frozenset(["named"] if entry.place.group == "injuries" else [])


def _applies(rule: Applies, entry: Entry, scopes: frozenset[str]) -> bool:
    if rule.scopes and not scopes.intersection(rule.scopes):
        return False
    if any(entry.known(other) is not None for other in rule.unless):
        return False
    return all(entry.text(other) in values for other, values in rule.where.items())


def _letter(entry: Entry, name: str, disputed: frozenset[str]) -> str:
    known = entry.known(name)
    if known is None or known.fact.said_by:
        return SILENT
    if _two_values(known.fact):
        return CONTRADICTORY
    return _LETTERS[state_of(known, known.place.text() in disputed)]
