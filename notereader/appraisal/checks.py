"""Named checks: their words and limits from checks.toml, their hits turned into contradictions with evidence."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from functools import cache
from typing import Literal

from notereader.appraisal.figures import Table, load
from notereader.appraisal.known import Case, Known, spec_of
from notereader.appraisal.models import Contradiction, Piece
from notereader.record import show_value


class CheckWords(Table):
    """The words of one check."""

    kind: Literal["contradiction", "implausible"]
    title: str
    words: str
    source: str


class Limits(Table):
    """The figures the checks compare with."""

    core_finest: str
    core_thickest: str
    peripheral_thickest: str
    purchase_longest_mm: float
    purchase_shortest_mm: float
    lock_widest_mm: float
    trimmed_longest_mm: float
    late_days: int
    motion_late_days: int
    splint_longest_weeks: int
    immobilised_start_days: int
    partial_percent: float
    wrist_flexed_most: float
    wrist_extended_most: float
    ip_flexed_most: float
    digit_words: tuple[str, ...]


class CheckTables(Table):
    """Everything in checks.toml."""

    limits: Limits
    strand_counts: dict[str, tuple[int, ...]]
    check: dict[str, CheckWords]


@cache
def check_tables() -> CheckTables:
    """Return the words and limits of the checks."""
    return load("checks.toml", CheckTables)


@dataclass(frozen=True, slots=True)
class Hit:
    """What a check found: the facts behind it and the words that fill its sentence."""

    facts: tuple[Known, ...]
    fill: dict[str, str] = field(default_factory=dict)


Check = Callable[[Case], Iterator[Hit]]

_CHECKS: dict[str, Check] = {}


def check(name: str) -> Callable[[Check], Check]:
    """Register a function as the check of that name; its words must stand in checks.toml."""

    def register(function: Check) -> Check:
        _CHECKS[name] = function
        return function

    return register


def registered() -> dict[str, Check]:
    """Return name -> check, in the order in which they were written."""
    return dict(_CHECKS)


def run_checks(case: Case) -> list[Contradiction]:
    """Run every check; contradictions come before what is only implausible, each in the order of the checks."""
    found = [_contradiction(name, hit) for name, function in registered().items() for hit in function(case)]
    return sorted(found, key=lambda c: c.kind != "contradiction")


def piece_of(known: Known) -> Piece:
    """Return a fact as a piece of evidence."""
    return Piece(
        address=known.place.text(),
        words=known.place.words(),
        value=known.shown(),
        quote=known.quote,
        standing=known.standing,
    )


def _contradiction(name: str, hit: Hit) -> Contradiction:
    words = check_tables().check[name]
    pieces = [piece_of(known) for known in hit.facts]
    for known in hit.facts:
        pieces += [_rival_piece(known, i) for i in range(len(known.rivals))]
    return Contradiction(
        check=name,
        kind=words.kind,
        title=words.title,
        words=words.words.format(**hit.fill),
        pieces=pieces,
        source=words.source,
    )


def _rival_piece(known: Known, index: int) -> Piece:

    value = known.rivals[index]
    rival = next(r for r in known.fact.rivals if r.value == value)
    quote = next((e.exact for e in rival.evidence if e.exact), "")
    return Piece(
        address=known.place.text(),
        words=known.place.words(),
        value=show_value(value, spec_of(known.place).unit),
        quote=quote,
        standing=known.standing,
    )
