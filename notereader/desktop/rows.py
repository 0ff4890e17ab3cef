"""What the list of facts shows: headings and rows in order, each with its words. Knows no Qt."""

from collections.abc import Collection, Iterator
from dataclasses import dataclass
from enum import StrEnum

from notereader.record import Address, Fact, Record, show_value
from notereader.vocabulary import FieldSpec, field_specs

# A field of this weight (resources/fields.toml) is listed as 'not found' where the record has no fact for it.
_ASKED_FOR = 3
# Treatments after which a suture crosses the tendon; only then are its figures asked for.
_SUTURED = frozenset({"repaired", "reinserted", "grafted"})
_UNCUT = frozenset({"intact"})
_ALWAYS_ASKED = frozenset({"treatment"})
# The two pulleys whose state a therapist most needs; the thumb's counterpart is the oblique pulley. Common practice.
_MAIN_PULLEYS = {"thumb": ("oblique",)}
_MAIN_PULLEYS_OF_A_FINGER = ("A2", "A4")
DIGITS = ("thumb", "index", "middle", "ring", "small")


class Standing(StrEnum):
    """Where a fact stands, as the word shown beside it."""

    PROPOSED = "proposed"
    CONFIRMED = "confirmed"
    CORRECTED = "corrected"
    ADDED = "added"
    WITHDRAWN = "withdrawn"
    SILENT = "note silent"
    NOT_FOUND = "not found"


@dataclass(frozen=True)
class Heading:
    """A line above the rows of one operation, tendon, digit's pulleys, other injuries, aftercare or named parts."""

    key: str
    title: str


@dataclass(frozen=True)
class Row:
    """One fact, or one place where a fact is missing, as it is shown."""

    address: Address
    spec: FieldSpec
    fact: Fact | None
    heading: Heading
    label: str
    unread: bool

    @property
    def standing(self) -> Standing:
        """Where the fact stands."""
        return standing_of(self.fact)

    @property
    def word(self) -> str:
        """The word that says where the fact stands."""
        return str(self.standing)

    @property
    def proof(self) -> str:
        """The words of the note in quotation marks, or why there are none and what to do."""
        if self.elsewhere:
            return f"{capital(self.elsewhere)}." + (f" The note: “{self.quote}”" if self.quote else "")
        if self.quote:
            return f"“{self.quote}”"
        if self.fact is None:
            return "Nothing was found. Enter what the note says, or mark that it is silent."
        if self.standing is Standing.SILENT:
            return "The note does not say."
        return "Entered without words of the note. Select them in the note and take them as proof."

    @property
    def tip(self) -> str:
        """What counts as what in this field, where that is to be told."""
        return ""

    @property
    def value(self) -> str:
        """The value in plain words."""
        if self.fact is None:
            return "–"
        return show_value(self.fact.value, self.spec.unit)

    @property
    def quote(self) -> str:
        """The words of the note it came from, on one line; empty where there are none."""
        return quote_of(self.fact) if self.fact else ""

    @property
    def elsewhere(self) -> str:
        """Who said it and on which day, where it comes from elsewhere than the note."""
        if self.fact is None or not self.fact.said_by:
            return ""
        return f"{self.fact.said_by} of {self.fact.said_on}" if self.fact.said_on else self.fact.said_by

    @property
    def reasons(self) -> tuple[str, ...]:
        """Why it deserves a second look."""
        return reasons_of(self.fact) if self.fact else ()

    @property
    def rivals(self) -> tuple[str, ...]:
        """The other values the note states, in plain words."""
        return tuple(show_value(rival.value, self.spec.unit) for rival in self.fact.rivals) if self.fact else ()

    @property
    def needs_thought(self) -> bool:
        """True where there is a rival or a reason to look twice."""
        return self.fact is not None and needs_thought(self.fact)

    @property
    def unsettled(self) -> bool:
        """True while the fact is only proposed."""
        return self.fact is not None and self.fact.status == "proposed"

    def sentence(self) -> str:
        """Say the whole row as one sentence, for a screen reader."""
        parts = [f"{self.address.words()}: {self.value}", self.word]
        if self.unread:
            parts.append("unread")
        if self.elsewhere:
            parts.append(self.elsewhere)
        if self.quote:
            parts.append(f"words of the note: {self.quote}")
        if self.reasons:
            parts.append("look twice: " + "; ".join(self.reasons))
        if self.rivals:
            parts.append("the note also says " + ", ".join(self.rivals))
        return ". ".join(parts) + "."


Item = Heading | Row


def standing_of(fact: Fact | None) -> Standing:
    """Return where a fact stands; silence a person confirmed has a standing of its own."""
    if fact is None:
        return Standing.NOT_FOUND
    if fact.basis == "silent" and fact.status not in ("proposed", "withdrawn"):
        return Standing.SILENT
    return Standing(fact.status)


def quote_of(fact: Fact) -> str:
    """Return the words a fact came from on one line, several places joined by dots."""
    return " … ".join(" ".join(evidence.exact.split()) for evidence in fact.evidence if evidence.exact)


def reasons_of(fact: Fact) -> tuple[str, ...]:
    """Return the reasons to look twice; an implied fact always has one."""
    if fact.basis == "implied" and not fact.look_twice:
        return ("implied: it follows from other words of the note",)
    return tuple(fact.look_twice)


def needs_thought(fact: Fact) -> bool:
    """True where a fact has rivals or reasons to look twice."""
    return bool(fact.rivals or reasons_of(fact))


def items_of(
    record: Record, read: Collection[str] = (), *, thought_first: bool = False, every_field: bool = False
) -> list[Item]:
    """Return headings and rows in the order of the list.

    `read` are the addresses, as text, a person has had in hand. With `thought_first` everything with a rival or a
    reason to look twice stands under one heading at the top; a row stays there once it is settled, so nothing jumps
    while working. With `every_field` each field without a fact is listed, not only those that matter most.
    """
    rows = list(_rows(record, frozenset(read), every_field))
    if not thought_first:
        return _under_headings(rows)
    top = Heading("thought", "To think about")
    thought = [_moved(row, top) for row in rows if row.needs_thought]
    return _under_headings([*thought, *(row for row in rows if not row.needs_thought)])


def _moved(row: Row, heading: Heading) -> Row:
    return Row(row.address, row.spec, row.fact, heading, capital(row.address.words()), row.unread)


def _under_headings(rows: list[Row]) -> list[Item]:
    items: list[Item] = []
    last: Heading | None = None
    for row in rows:
        if row.heading != last:
            items.append(row.heading)
            last = row.heading
        items.append(row)
    return items


def _rows(record: Record, read: frozenset[str], every_field: bool) -> Iterator[Row]:
    entries = dict(record.entries())
    for heading, place in _entries(record, list(entries)):
        facts = entries.get(place, {})
        for name, spec in field_specs()[place.group].items():
            fact = facts.get(name)
            if fact is None and not _asked_for(spec, facts, every_field):
                continue
            address = Address(place.group, place.digit, place.part, place.side, name)
            yield Row(
                address, spec, fact, heading, _label(address, spec), fact is not None and address.text() not in read
            )


def _entries(record: Record, places: list[Address]) -> Iterator[tuple[Heading, Address]]:
    """Yield every entry with its heading: operation, each digit's tendons and pulleys, injuries, aftercare, parts."""
    yield Heading("operation", "Operation"), Address("operation")
    for digit in digits_of(record):
        for place in places:
            if place.group == "repairs" and place.digit == digit:
                yield Heading(place.text(), capital(place.entry_words())), place
        pulleys = Heading(f"pulleys/{digit or '-'}", f"{capital(digit or 'wrist')}: pulleys")
        for place in _pulley_places(record, places, digit):
            yield pulleys, place
    for place in places:
        if place.group == "injuries":
            yield Heading("injuries", "Other injuries"), place
    yield Heading("aftercare", "Aftercare"), Address("aftercare")
    yield Heading("elements", "Named in the note"), Address("elements")


def digits_of(record: Record) -> list[str | None]:
    """Return the digits with a tendon or a pulley, thumb to small, then None for the wrist and unnamed digits."""
    present = {place.digit for place, _ in record.entries() if place.group in ("repairs", "pulleys")}
    return [*(digit for digit in DIGITS if digit in present), *([None] if None in present else [])]


def _pulley_places(record: Record, places: list[Address], digit: str | None) -> list[Address]:
    """Return the pulleys of a digit: those of the record, and the main ones where a tendon of it was cut."""
    named = [place for place in places if place.group == "pulleys" and place.digit == digit]
    tendons = [repair.facts for repair in record.repairs if repair.digit == digit]
    if digit is None or all(_says(facts, "extent", _UNCUT) for facts in tendons):
        return named
    wanted = _MAIN_PULLEYS.get(digit, _MAIN_PULLEYS_OF_A_FINGER)
    missing = [Address("pulleys", digit, pulley) for pulley in wanted]
    return [*named, *(place for place in missing if place not in named)]


def _asked_for(spec: FieldSpec, facts: dict[str, Fact], every_field: bool) -> bool:
    if every_field:
        return True
    if spec.weight < _ASKED_FOR:
        return False
    if spec.group != "repairs":
        return True
    if _says(facts, "extent", _UNCUT):
        return False
    if spec.name in _ALWAYS_ASKED:
        return True
    if spec.name == "gap_mm":
        return _says(facts, "gap", frozenset({"seen"}))
    return _says(facts, "treatment", _SUTURED) or "treatment" not in facts


def _says(facts: dict[str, Fact], field: str, values: frozenset[str]) -> bool:
    fact = facts.get(field)
    return fact is not None and fact.live and fact.value in values


def _label(address: Address, spec: FieldSpec) -> str:
    if address.group == "pulleys":
        return spec.label if address.part is None else f"{address.part}: {spec.label[0].lower()}{spec.label[1:]}"
    if address.group == "injuries":
        return capital(f"{address.entry_words()}: {spec.label[0].lower()}{spec.label[1:]}")
    return spec.label


def capital(words: str) -> str:
    """Return words with a capital first letter and the rest as it is."""
    return words[:1].upper() + words[1:]
