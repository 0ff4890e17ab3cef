"""What a record knows, seen the careful way: withdrawn facts ignored, silence kept as silence, doubts carried along."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from notereader.record import Address, Fact, Record, Value, show_value
from notereader.vocabulary import FieldSpec, field_specs

Standing = Literal["confirmed", "proposed"]

# Statuses that only a person can give; such a fact is settled, its rivals have been weighed.
SETTLED = ("confirmed", "corrected", "added")


@dataclass(frozen=True, slots=True)
class Known:
    """One live fact with what weakens it.

    `rivals` are the other values the note states, empty once a person has settled the fact.
    """

    place: Address
    fact: Fact
    value: Value
    rivals: tuple[Value, ...]

    @property
    def settled(self) -> bool:
        """True where a person confirmed, corrected or added the fact."""
        return self.fact.status in SETTLED

    @property
    def standing(self) -> Standing:
        """How the fact is marked wherever it is shown."""
        return "confirmed" if self.settled else "proposed"

    @property
    def implied(self) -> bool:
        """True where the value follows from another fact and is not itself stated."""
        return self.fact.basis == "implied"

    @property
    def second_look(self) -> bool:
        """True where the reader gave a reason to look twice and nobody has yet."""
        return bool(self.fact.look_twice) and not self.settled

    @property
    def candidates(self) -> tuple[Value, ...]:
        """Return every value still in question, the fact's own first."""
        return (self.value, *self.rivals)

    @property
    def quote(self) -> str:
        """The words of the note that prove it, '' where it comes from elsewhere."""
        return next((e.exact for e in self.fact.evidence if e.exact), "")

    def shown(self) -> str:
        """Say the value in plain words with its unit."""
        return show_value(self.value, spec_of(self.place).unit)


def spec_of(place: Address) -> FieldSpec:
    """Return the definition of the field an address points at."""
    return field_specs()[place.group][place.field]


@dataclass(frozen=True, slots=True)
class Entry:
    """One entry of the record (a tendon, a pulley, the aftercare ...) with access to its live facts."""

    place: Address
    facts: dict[str, Fact]

    def known(self, field: str) -> Known | None:
        """Return the live fact of a field, or None where it is missing, silent or withdrawn."""
        fact = self.facts.get(field)
        if fact is None or not fact.live or fact.value is None:
            return None
        rivals: tuple[Value, ...] = ()
        if fact.status not in SETTLED:
            rivals = tuple(rival.value for rival in fact.rivals if rival.value != fact.value)
        return Known(self.place.field_of(field), fact, fact.value, rivals)

    def value(self, field: str) -> Value | None:
        """Return the live value of a field, or None."""
        known = self.known(field)
        return None if known is None else known.value

    def number(self, field: str) -> float | None:
        """Return the live value of a field as a number, or None where it is not one."""
        value = self.value(field)
        return float(value) if isinstance(value, int | float) and not isinstance(value, bool) else None

    def text(self, field: str) -> str:
        """Return the live value of a field where it is a word, else ''."""
        value = self.value(field)
        return value if isinstance(value, str) else ""

    def silent(self, field: str) -> bool:
        """True where a person or reader recorded that the note says nothing."""
        fact = self.facts.get(field)
        return fact is not None and fact.basis == "silent" and fact.status != "withdrawn"

    def live(self) -> Iterator[Known]:
        """Yield every live fact of the entry."""
        for field in self.facts:
            known = self.known(field)
            if known is not None:
                yield known


@dataclass(frozen=True, slots=True)
class Case:
    """A record laid out for appraisal. Entries in which every fact was withdrawn are left out."""

    operation: Entry
    aftercare: Entry
    elements: Entry
    repairs: tuple[Entry, ...]
    pulleys: tuple[Entry, ...]
    injuries: tuple[Entry, ...]

    @classmethod
    def of(cls, record: Record) -> "Case":
        """Lay out a record; nothing is copied or changed."""
        entries = [Entry(place, facts) for place, facts in record.entries()]

        def some(group: str) -> tuple[Entry, ...]:
            return tuple(e for e in entries if e.place.group == group and any(True for _ in e.live()))

        single = {e.place.group: e for e in entries if e.place.part is None}
        return cls(
            operation=single["operation"],
            aftercare=single["aftercare"],
            elements=single["elements"],
            repairs=some("repairs"),
            pulleys=some("pulleys"),
            injuries=some("injuries"),
        )

    def entries(self) -> tuple[Entry, ...]:
        """Return every entry, in the order of the record."""
        return (self.operation, *self.repairs, *self.pulleys, *self.injuries, self.aftercare, self.elements)

    def digits(self) -> list[str]:
        """Return the digits with a tendon in the record, in the order of the record."""
        return list(dict.fromkeys(e.place.digit for e in self.repairs if e.place.digit))

    def pulley(self, digit: str | None, name: str) -> Entry | None:
        """Return the entry of one pulley, or None where the record has none."""
        return next((e for e in self.pulleys if e.place.digit == digit and e.place.part == name), None)
