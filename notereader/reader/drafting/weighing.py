"""Which proposed facts are to be looked at twice: the signs of a misreading are added up, and the heaviest are told."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from notereader.reader.drafting.signs import Signs
from notereader.reader.page import Page
from notereader.reader.reasons import Reason
from notereader.record import Address, Fact, Record
from notereader.vocabulary.doubts import DoubtTable, doubt_table, filled
from notereader.vocabulary.fields import field_specs

_AT_MOST = 3  # weighed reasons told of one fact: more are not read

Found = list[tuple[str, str]]  # signs, each with the word of the note that shows it


def weigh(record: Record, page: Page, given: Mapping[int, Sequence[Reason]]) -> None:
    """Give each fact of a draft its reasons to look twice: those told always, and those that weigh enough together.

    `given` holds, by the id of a fact, the reasons that the rules gave themselves.
    """
    table, signs = doubt_table(), Signs(page, record)
    for place, fact in signs.facts:
        own = given.get(id(fact), ())
        fact.look_twice.extend([reason.told for reason in own if table.reasons[reason.kind].always])
        if place.group != "elements" and fact.value is not None:  # an element is a stretch of the note, never misread
            fact.look_twice.extend(_Doubt(table, place, fact, own, signs.of(place, fact)).reasons())


@dataclass(frozen=True, slots=True)
class _Doubt:
    """What speaks for and against one fact."""

    table: DoubtTable
    place: Address
    fact: Fact
    given: Sequence[Reason]
    found: Found

    def reasons(self) -> list[str]:
        """Return the weighed reasons of a fact whose sum is above `enough`: those that a rule gave, then its signs."""
        table, name = self.table, f"{self.place.group}.{self.place.field}"
        weights = table.weights[name]
        value, part = f"{name}={self.fact.value}", self.place.part
        of_part = table.parts.get(f"{name} {part}", 0.0) + table.parts.get(f"{value} {part}", 0.0) if part else 0.0
        before = table.fields.get(name, 0.0) + table.values.get(value, 0.0) + of_part
        borne = sum([weights.get(sign, 0.0) for sign, _ in self.found])
        borne += sum({reason.kind: table.reasons[reason.kind].weight for reason in self.given}.values())
        if table.start + before + borne <= table.enough:
            return []
        told = [r.told for r in self.given if not table.reasons[r.kind].always]
        told += self._heaviest(weights, before, self._often_misread(of_part))
        return told[:_AT_MOST] or [self._often_misread(of_part)]

    def _heaviest(self, weights: dict[str, float], before: float, often_misread: str) -> list[str]:
        """Return the reasons of the signs found, the heaviest first; among them that the field is often misread."""
        table = self.table
        told = [(weights[sign], filled(table.signs[sign].reason, word)) for sign, word in self.found if sign in weights]
        if before >= table.often:
            told.append((before, often_misread))
        return [reason for weight, reason in sorted(told, key=lambda each: -each[0]) if weight > 0 and reason]

    def _often_misread(self, part: float) -> str:
        """'this is misread more often than other facts: material', '... zone of the FDS' where that part is."""
        label = field_specs()[self.place.group][self.place.field].label.lower()
        return filled(self.table.often_misread, f"{label} of the {self.place.part}" if part > 0 else label)
