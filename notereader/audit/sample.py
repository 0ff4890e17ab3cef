"""A random sample of the notes that were read, for a person to confirm, and what the comparison says of the reader.

A note's rank is the SHA-256 of the seed and its name, and the sample is the notes of the lowest ranks: the same seed
draws the same notes, in any order of the source, and a larger sample contains the smaller one.
"""

import hashlib
from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from heapq import nsmallest
from pathlib import Path

from notereader.audit.correction import Confusion, Corrected, corrected
from notereader.audit.criteria import criteria, field_key
from notereader.audit.faults import AuditFault
from notereader.audit.journal import Journal, NoteRow
from notereader.audit.rates import Rate
from notereader.audit.sources import NoteInput, Source
from notereader.audit.states import STATED, Assessment, assess, is_confirmed, note_state
from notereader.audit.tally import NoteCounts, group_value
from notereader.audit.work import record_of
from notereader.casebook import Casebook, CasebookFault
from notereader.intake import IntakeRefused
from notereader.record import Address, Record, RecordRefused

FILE_NAME = "sample.db"


def draw(journal: Journal, size: int, seed: int, column: str = "") -> list[str]:
    """Return the keys of a random sample of the notes that nobody confirmed, in the order in which they were drawn.

    With a column the sample is stratified: each value of the column gives a share of the sample that is proportional to
    its notes, and at least one where the size allows it.
    """
    strata = Counter(_stratum(row, column) for row in _drawable(journal))
    sizes = allocate(strata, size)
    drawn: list[tuple[str, str]] = []
    for stratum, wanted in sizes.items():
        ranked = ((_rank(seed, r.key), r.key) for r in _drawable(journal) if _stratum(r, column) == stratum)
        drawn += nsmallest(wanted, ranked)
    return [key for _, key in sorted(drawn)]


def allocate(strata: Counter[str], size: int) -> dict[str, int]:
    """Return how many to draw from each stratum: proportional by largest remainder, at least one where size allows."""
    total = strata.total()
    size = min(size, total)
    least = 1 if size >= len(strata) else 0
    quota = {name: size * of / total for name, of in sorted(strata.items())} if total else {}
    given = {name: max(least, int(share)) for name, share in quota.items()}
    while sum(given.values()) != size:
        step = 1 if sum(given.values()) < size else -1
        open_to = [n for n in given if (given[n] < strata[n] if step > 0 else given[n] > least)]
        change = max(open_to, key=lambda name: (step * (quota[name] - given[name]), name))
        given[change] += step
    return given


def _drawable(journal: Journal) -> Iterator[NoteRow]:
    for row in journal.rows():
        if row.assessment is not None and not row.assessment.confirmed and not row.has_record:
            yield row


def _stratum(row: NoteRow, column: str) -> str:
    return group_value(row, column) if column else ""


def _rank(seed: int, key: str) -> str:
    return hashlib.sha256(f"{seed}\0{key}".encode()).hexdigest()


def hand_out(source: Source, keys: Iterable[str], path: Path) -> dict[str, int]:
    """Put notes into a casebook file for a person to confirm; return its cases: SHA-256 of the text -> number.

    Cases that are there already, with whatever a person has entered in them, stay as they are. Raises AuditFault.
    """
    wanted = set(keys)
    try:
        book = Casebook(path)
    except CasebookFault as fault:
        raise AuditFault(str(fault)) from None
    try:
        there = {book.open(line.id).record.note.sha256: line.id for line in book.cases(limit=1_000_000)}
        for item in source.inputs():
            if item.key in wanted:
                record = _read_again(item)
                if record.note.sha256 not in there:
                    there[record.note.sha256] = book.add(record, title=item.name)
        return there
    except CasebookFault as fault:
        raise AuditFault(str(fault)) from None
    finally:
        book.close()


def _read_again(item: NoteInput) -> Record:
    try:
        return record_of(item)[0]
    except (IntakeRefused, RecordRefused) as refused:
        raise AuditFault(f"{item.name} could be read before and cannot now: {refused}") from None


@dataclass(slots=True)
class ReaderError:
    """What the confirmed notes say of the reader for one criterion.

    `only_reader` and `only_person` count notes in which only one of the two found that the criterion applies; they are
    not part of `notes`. `values` compares what is said where both say something: how often the same, of how many.
    """

    key: str
    notes: Confusion = field(default_factory=Confusion)
    only_reader: int = 0
    only_person: int = 0
    same_values: int = 0
    values: int = 0

    def correct(self, as_read: NoteCounts) -> Corrected | None:
        """Return the share of all notes as read that state it, corrected; None where the sample cannot tell."""
        return corrected(as_read.count(self.key, STATED), as_read.of(self.key), self.notes)

    def sensitivity(self) -> Rate:
        """Share of the notes that state it in which the reader found so."""
        return self.notes.sensitivity()

    def specificity(self) -> Rate:
        """Share of the notes that do not in which the reader found so."""
        return self.notes.specificity()


@dataclass(slots=True)
class Comparison:
    """Reader against person on the confirmed notes that the audit read too.

    `open` counts records that nobody has confirmed yet, `unknown` confirmed ones whose note is not in the audit, and
    `not_drawn` those that are, but were not drawn at random.
    """

    compared: int = 0
    open: int = 0
    unknown: int = 0
    not_drawn: int = 0
    tendons_missed: int = 0
    tendons_invented: int = 0
    rows: dict[str, ReaderError] = field(default_factory=dict)

    def add(self, read: Assessment, confirmed: Assessment) -> None:
        """Compare one note."""
        self.compared += 1
        for criterion in criteria():
            row = self.rows.setdefault(criterion.key, ReaderError(criterion.key))
            ours, theirs = read.states.get(criterion.key), confirmed.states.get(criterion.key)
            if ours and theirs:
                row.notes = row.notes.plus(note_state(theirs) == STATED, note_state(ours) == STATED)
            else:
                row.only_reader += ours is not None
                row.only_person += theirs is not None
        self._compare_values(read, confirmed)
        ours_tendons, theirs_tendons = _tendons(read), _tendons(confirmed)
        self.tendons_missed += len(theirs_tendons - ours_tendons)
        self.tendons_invented += len(ours_tendons - theirs_tendons)

    def _compare_values(self, read: Assessment, confirmed: Assessment) -> None:
        for address, value in confirmed.values.items():
            if address in read.values:
                place = Address.parse(address)
                row = self.rows[field_key(place.group, place.field)]
                row.values += 1
                row.same_values += read.values[address] == value


def compare(journal: Journal, confirmed: Iterable[Record], drawn: Iterable[str]) -> Comparison:
    """Compare what the audit read with what a person confirmed, note by note; notes are matched by their text."""
    found = Comparison()
    truth: dict[str, Assessment] = {}
    for record in confirmed:
        if is_confirmed(record):
            truth[record.note.sha256] = assess(record)
        else:
            found.open += 1
    at_random = set(drawn)
    for row in _drawable(journal):
        assert row.assessment is not None
        person = truth.pop(row.assessment.sha256, None)
        if person is not None:
            found.add(row.assessment, person)
            found.not_drawn += row.key not in at_random
    found.unknown = len(truth)
    return found


def _tendons(found: Assessment) -> set[str]:
    places = map(Address.parse, found.values)
    return {place.entry().text() for place in places if place.group == "repairs"}
