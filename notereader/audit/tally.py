"""Counting the notes of a journal, by criterion, by group, by period.

What is held grows with criteria, groups and periods, not with notes.
"""

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import cache
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from notereader.audit.criteria import Criterion, criteria
from notereader.audit.faults import AuditFault
from notereader.audit.journal import NoteRow
from notereader.audit.rates import ClusterSums, Rate, rate
from notereader.audit.sources.base import MONTH, STANDING, STITCH
from notereader.audit.states import WORST_FIRST, Assessment, note_state

Period = Literal["month", "quarter", "year"]

NO_VALUE = "(none)"
NO_DATE = "no date"

# More values than this in a column are names or numbers of single notes, not groups.
MOST_GROUPS = 200

Whole = NDArray[np.int64]


@cache
def _rows() -> dict[str, int]:
    return {criterion.key: at for at, criterion in enumerate(criteria())}


def _zeros(*more: int) -> Whole:
    return np.zeros((len(criteria()), *more), dtype=np.int64)


@dataclass(slots=True)
class NoteCounts:
    """How many notes are in each state, for every criterion."""

    table: Whole = field(default_factory=lambda: _zeros(len(WORST_FIRST)))

    def of(self, key: str) -> int:
        """Return the number of notes to which a criterion applies."""
        return int(self.table[_rows()[key]].sum())

    def count(self, key: str, letter: str) -> int:
        """Return the number of notes in a state."""
        return int(self.table[_rows()[key], WORST_FIRST.index(letter)])

    def rate(self, key: str, letter: str) -> Rate:
        """Return the share of notes in a state."""
        return rate(self.count(key, letter), self.of(key))


@dataclass(slots=True)
class PlaceCounts:
    """How many places are in each state, for every criterion, with the sums over notes that their intervals need."""

    notes: Whole = field(default_factory=_zeros)
    places: Whole = field(default_factory=_zeros)
    places_squared: Whole = field(default_factory=_zeros)
    hits: Whole = field(default_factory=lambda: _zeros(len(WORST_FIRST)))
    hits_squared: Whole = field(default_factory=lambda: _zeros(len(WORST_FIRST)))
    product: Whole = field(default_factory=lambda: _zeros(len(WORST_FIRST)))

    def add(self, rows: Whole, hits: Whole) -> None:
        """Count one note: the criteria that apply, and for each the places in each state."""
        places = hits.sum(axis=1)
        self.notes[rows] += 1
        self.places[rows] += places
        self.places_squared[rows] += places**2
        self.hits[rows] += hits
        self.hits_squared[rows] += hits**2
        self.product[rows] += hits * places[:, None]

    def rate(self, key: str, letter: str) -> Rate:
        """Return the share of places in a state."""
        row, state = _rows()[key], WORST_FIRST.index(letter)
        counted = (self.notes[row], self.places[row], self.hits[row, state], self.places_squared[row])
        return ClusterSums(*map(int, (*counted, self.hits_squared[row, state], self.product[row, state]))).rate()


@dataclass(slots=True)
class Tally:
    """Everything counted in one pass over a journal."""

    groups: tuple[str, ...]
    period: Period
    found: int = 0
    counted: int = 0
    confirmed: int = 0
    without_tendon: int = 0
    refused: int = 0
    with_record: int = 0
    dateless: int = 0
    whole: NoteCounts = field(default_factory=NoteCounts)
    places: PlaceCounts = field(default_factory=PlaceCounts)
    as_read: NoteCounts = field(default_factory=NoteCounts)
    by_group: dict[str, dict[str, NoteCounts]] = field(default_factory=dict)
    by_period: dict[str, NoteCounts] = field(default_factory=dict)
    group_sizes: dict[str, Counter[str]] = field(default_factory=dict)
    checks: Counter[str] = field(default_factory=Counter)

    def add(self, row: NoteRow) -> None:
        """Count one note of the journal. Raises AuditFault where a column has too many values to group by."""
        self.found += 1
        found = row.assessment
        if found is None:
            self.refused += 1
            return
        if row.has_record:
            self.with_record += 1
            return
        self.counted += 1
        self.confirmed += found.confirmed
        self.without_tendon += "fields/repairs.treatment" not in found.states
        self.checks.update(found.checks)
        rows, states = _states(found)
        hits = [_hits(letters) for letters in found.states.values()]
        self.places.add(rows, np.array(hits, dtype=np.int64).reshape(-1, len(WORST_FIRST)))
        label = period_of(day_of(row), self.period)
        self.dateless += not label
        counts = [self.whole, *self._groups_of(row)]
        counts += [] if found.confirmed else [self.as_read]
        counts += [self.by_period.setdefault(label, NoteCounts())] if label else []
        for each in counts:
            each.table[rows, states] += 1

    def _groups_of(self, row: NoteRow) -> list[NoteCounts]:
        counts = []
        for column in self.groups:
            value = group_value(row, column)
            groups = self.by_group.setdefault(column, {})
            if value not in groups and len(groups) == MOST_GROUPS:
                raise AuditFault(
                    f"The column '{column}' has more than {MOST_GROUPS} different values, too many to group by. "
                    "Choose another column; the notes need not be read again."
                )
            self.group_sizes.setdefault(column, Counter())[value] += 1
            counts.append(groups.setdefault(value, NoteCounts()))
        return counts


def tally(rows: Iterable[NoteRow], groups: Sequence[str] = (), period: Period = "month") -> Tally:
    """Count the notes of a journal."""
    counted = Tally(tuple(groups), period)
    for row in rows:
        counted.add(row)
    return counted


def _states(found: Assessment) -> tuple[Whole, Whole]:
    """Return the criteria that apply to a note and the state of the note in each, as numbers."""
    rows = [_rows()[key] for key in found.states]
    states = [WORST_FIRST.index(note_state(letters)) for letters in found.states.values()]
    return np.array(rows, dtype=np.int64), np.array(states, dtype=np.int64)


@cache
def _hits(letters: str) -> tuple[int, ...]:
    return tuple(letters.count(letter) for letter in WORST_FIRST)


def day_of(row: NoteRow) -> str:
    """Return the ISO date of the operation: the source's, else the note's own, else ''."""
    return row.day or (row.assessment.operation_date if row.assessment else "")


def period_of(day: str, period: Period) -> str:
    """Return the period of an ISO date, such as '2031-08', '2031 Q3' or '2031', and '' without a date."""
    if not day:
        return ""
    if period == "year":
        return day[:4]
    return day[:7] if period == "month" else f"{day[:4]} Q{(int(day[5:7]) + 2) // 3}"


def group_value(row: NoteRow, column: str) -> str:
    """Return what a note has in a column, of its source or of what the record says."""
    found = row.assessment
    if column in row.columns:
        return row.columns[column] or NO_VALUE
    if column == MONTH:
        return period_of(day_of(row), "month") or NO_DATE
    if column == STITCH and found:
        return found.stitch
    if column == STANDING and found:
        return "by a person" if found.confirmed else "as read"
    return NO_VALUE


def most_missing(counts: NoteCounts, kind: str, most: int = 15) -> list[Criterion]:
    """Return the criteria of a list that most notes neither state nor imply, the most missing first."""
    lacking = {}
    for criterion in criteria():
        of = counts.of(criterion.key)
        if criterion.kind == kind and of:
            given = counts.count(criterion.key, "s") + counts.count(criterion.key, "i")
            lacking[criterion] = 1 - given / of
    ranked = sorted(lacking, key=lambda criterion: (-lacking[criterion], -criterion.weight))
    return [criterion for criterion in ranked if lacking[criterion] > 0][:most]
