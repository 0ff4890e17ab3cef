"""Two readers of the same notes, fact by fact: two people, a person and a key, or a person and the program."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from pathlib import PurePath

from notereader.audit.agreement import Measure, Pair, figures_over_notes, kappa, over_notes, percent_agreement
from notereader.audit.criteria import field_key
from notereader.record import Address, Fact, Record, show_value
from notereader.vocabulary import field_specs

SILENT = ""

# Groups with one entry in each note: their pairs are independent, and the large-sample interval holds.
_ONE_PER_NOTE = ("operation", "aftercare", "elements")
_FIGURES = ("whole", "number")


@dataclass(frozen=True, slots=True)
class Disagreement:
    """One place where two readers differ, with the words of the note behind what each says.

    `text` is the SHA-256 of the note's text, '' where it is not known.
    """

    note: str
    place: str
    first: str
    second: str
    first_words: str
    second_words: str
    text: str


@dataclass(frozen=True, slots=True)
class FieldAgreement:
    """How well two readers agree on one field of the record.

    `places` of `notes` are compared, silence counting as a value. `figures` is alpha by distance over the places where
    both give a figure, None for fields of words. `interval` says what the intervals rest on.
    """

    key: str
    notes: int
    places: int
    percent: float | None
    kappa: Measure
    alpha: Measure
    figures: Measure | None
    interval: str


@dataclass(slots=True)
class Agreement:
    """The comparison of two readers: notes that both read, notes of only one, and every field.

    `numbers` numbers the notes that both read, for a report without names.
    """

    shared: int = 0
    only_first: int = 0
    only_second: int = 0
    fields: list[FieldAgreement] = field(default_factory=list)
    disagreements: list[Disagreement] = field(default_factory=list)
    numbers: dict[str, int] = field(default_factory=dict)


def agree(first: Iterable[Record], second: Iterable[Record], seed: int) -> Agreement:
    """Compare two readers of the same notes; notes are matched by their text, or by name where a text is missing."""
    found = Agreement()
    others = _Index(second)
    pairs: dict[tuple[str, str], list[list[Pair]]] = {}
    for record in first:
        other = others.take(record)
        if other is None:
            found.only_first += 1
            continue
        found.shared += 1
        found.numbers.setdefault(record.note.name, found.shared)
        of_note: dict[tuple[str, str], list[Pair]] = {}
        for place, mine, theirs in _compared(record, other):
            pair = (_said(mine), _said(theirs))
            of_note.setdefault((place.group, place.field), []).append(pair)
            if pair[0] != pair[1]:
                found.disagreements.append(_disagreement(record, place, mine, theirs))
        for key, here in of_note.items():
            pairs.setdefault(key, []).append(here)
    found.only_second = others.left
    every = [(group, name) for group, specs in field_specs().items() for name in specs]
    found.fields = [_field(*key, pairs[key], seed) for key in every if key in pairs]
    return found


class _Index:
    """Records that wait for their counterpart."""

    def __init__(self, records: Iterable[Record]) -> None:
        self._by_text: dict[str, list[Record]] = {}
        self._by_name: dict[str, list[Record]] = {}
        for record in records:
            if record.note.sha256:
                self._by_text.setdefault(record.note.sha256, []).append(record)
            else:
                self._by_name.setdefault(stem_of(record.note.name), []).append(record)

    def take(self, record: Record) -> Record | None:
        """Take out the counterpart of a record: the same text, or the same name where a text is not known."""
        if record.note.sha256:
            found = self._by_text.get(record.note.sha256) or self._by_name.get(stem_of(record.note.name))
        else:
            same = (
                held
                for held in self._by_text.values()
                if held and stem_of(held[0].note.name) == stem_of(record.note.name)
            )
            found = self._by_name.get(stem_of(record.note.name)) or next(same, None)
        return found.pop(0) if found else None

    @property
    def left(self) -> int:
        """How many still wait."""
        return sum(len(held) for index in (self._by_text, self._by_name) for held in index.values())


def stem_of(name: str) -> str:
    """Return the name of a note without its folder and ending, for matching."""
    return PurePath(name).stem.casefold()


def _compared(record: Record, other: Record) -> Iterator[tuple[Address, Fact | None, Fact | None]]:
    """Yield every field of every entry that either of two records has, with the facts of both."""
    mine, theirs = _live(record), _live(other)
    entries = dict.fromkeys(place.entry() for place in (*_single(), *mine, *theirs))
    for entry in entries:
        for name in field_specs()[entry.group]:
            place = entry.field_of(name)
            yield place, mine.get(place), theirs.get(place)


def _single() -> Iterator[Address]:
    return (Address(group) for group in _ONE_PER_NOTE)


def _live(record: Record) -> dict[Address, Fact]:
    return {place: fact for place, fact in record.walk() if fact.live and not fact.said_by}


def _said(fact: Fact | None) -> str:
    return SILENT if fact is None else show_value(fact.value)


def _disagreement(record: Record, place: Address, mine: Fact | None, theirs: Fact | None) -> Disagreement:
    said = (_said(mine), _said(theirs), _words(mine), _words(theirs))
    return Disagreement(record.note.name, place.words(), *said, record.note.sha256)


def _words(fact: Fact | None) -> str:
    return " … ".join(evidence.exact for evidence in fact.evidence) if fact else ""


def _field(group: str, name: str, notes: list[list[Pair]], seed: int) -> FieldAgreement:
    flat = [pair for pairs in notes for pair in pairs]
    kappa_drawn, alpha_drawn = over_notes(notes, seed)
    independent = group in _ONE_PER_NOTE
    figures = None
    if field_specs()[group][name].kind in _FIGURES:
        figures = figures_over_notes([_figures(pairs) for pairs in notes], seed)
    return FieldAgreement(
        key=field_key(group, name),
        notes=len(notes),
        places=len(flat),
        percent=percent_agreement(flat),
        kappa=kappa(flat) if independent else kappa_drawn,
        alpha=alpha_drawn,
        figures=figures,
        interval="kappa: large sample; alpha: notes drawn anew" if independent else "notes drawn anew",
    )


def _figures(pairs: list[Pair]) -> list[tuple[float, float]]:
    """Return the figures of the places where both readers give one."""
    return [(float(str(a)), float(str(b))) for a, b in pairs if SILENT not in (a, b)]
