"""The record of one note: what is known, on what evidence, and where each fact stands.

The shape is format version 1 of the record contract. Which fields exist and which values they take stands in
resources/fields.toml; the models here check every fact against it.
"""

from collections.abc import Iterator
from datetime import date, datetime
from typing import Annotated, Any, Literal

from pydantic import BaseModel, ConfigDict, Field, SerializerFunctionWrapHandler, model_serializer, model_validator

from notereader.record.address import Address
from notereader.record.evidence import Evidence, note_hash
from notereader.record.values import Interval, Value, check_value
from notereader.vocabulary.fields import field_specs

FORMAT = "notereader-record"
FORMAT_VERSION = 1

Digit = Literal["thumb", "index", "middle", "ring", "small"]
Tendon = Literal["FDP", "FDS", "FPL", "FCR", "FCU", "PL"]
PulleyName = Literal["A1", "A2", "A3", "A4", "A5", "C1", "C2", "C3", "variable", "oblique", "flexor retinaculum"]
Structure = Literal[
    "digital nerve",
    "common digital nerve",
    "digital artery",
    "median nerve",
    "ulnar nerve",
    "radial nerve branch",
    "radial artery",
    "ulnar artery",
    "phalanx",
    "metacarpal",
    "volar plate",
    "collateral ligament",
    "joint",
    "extensor tendon",
]
Border = Literal["radial", "ulnar"]
Basis = Literal["stated", "implied", "silent"]
Status = Literal["proposed", "confirmed", "corrected", "added", "withdrawn"]


class _Strict(BaseModel):
    model_config = ConfigDict(extra="forbid", validate_assignment=False)


class Rival(_Strict):
    """Another value the note also states for the same field."""

    value: Value
    evidence: list[Evidence] = []


class Fact(_Strict):
    """One thing known of the note: its value, the words that prove it and where it stands.

    `look_twice` holds plain reasons to check it with care; `rule` names what decided. `said_by` and `said_on` are
    filled where a fact comes from elsewhere than the note, for instance the surgeon's answer.
    """

    value: Value | None
    basis: Basis = "stated"
    status: Status = "proposed"
    evidence: list[Evidence] = []
    rivals: list[Rival] = []
    look_twice: list[str] = []
    rule: str | None = None
    said_by: str | None = None
    said_on: date | None = None

    @property
    def live(self) -> bool:
        """True where the fact holds a value and nobody withdrew it."""
        return self.value is not None and self.status != "withdrawn"

    @model_validator(mode="after")
    def _silent_has_no_value(self) -> "Fact":
        if self.basis == "silent" and (self.value is not None or self.evidence):
            raise ValueError("a field the note is silent on has neither value nor evidence")
        if self.basis != "silent" and self.value is None:
            raise ValueError("a fact without a value must have the basis 'silent'")
        return self

    @model_serializer(mode="wrap")
    def _leave_out_empty(self, handler: SerializerFunctionWrapHandler) -> dict[str, Any]:
        data: dict[str, Any] = handler(self)
        for name in ("rivals", "look_twice", "rule", "said_by", "said_on"):
            if not data.get(name):
                data.pop(name, None)
        return data


Facts = dict[str, Fact]


def _checked(group: str, facts: Facts) -> Facts:
    """Check every fact of a group against its field; raises ValueError with the field's name and the mend."""
    specs = field_specs()[group]
    for name, fact in facts.items():
        spec = specs.get(name)
        if spec is None:
            raise ValueError(f"{group}.{name}: there is no such field; known are {', '.join(specs)}")
        if fact.value is not None:
            fact.value = check_value(spec, fact.value)
        for rival in fact.rivals:
            rival.value = check_value(spec, rival.value)
    return facts


class Repair(_Strict):
    """One tendon of one digit, or one slip of it where the note treats the slips apart."""

    digit: Digit | None = None
    tendon: Tendon
    slip: Border | None = None
    facts: Facts = {}

    @model_validator(mode="after")
    def _check(self) -> "Repair":
        _checked("repairs", self.facts)
        return self


class Pulley(_Strict):
    """One pulley of one digit."""

    digit: Digit | None = None
    pulley: PulleyName
    facts: Facts = {}

    @model_validator(mode="after")
    def _check(self) -> "Pulley":
        _checked("pulleys", self.facts)
        return self


class Injury(_Strict):
    """Another structure that bears on therapy."""

    digit: Digit | None = None
    structure: Structure
    side: Border | None = None
    facts: Facts = {}

    @model_validator(mode="after")
    def _check(self) -> "Injury":
        _checked("injuries", self.facts)
        return self


class Note(_Strict):
    """The note read: its name, its hash and, unless left out, its text."""

    name: str = ""
    sha256: str = ""
    characters: int = Field(default=0, ge=0)
    text: str | None = None

    @classmethod
    def of(cls, text: str, name: str | None = None) -> "Note":
        """Describe a note text; `characters` counts code points."""
        return cls(name=name or "", sha256=note_hash(text), characters=len(text), text=text)

    @model_serializer(mode="wrap")
    def _leave_out_text(self, handler: SerializerFunctionWrapHandler) -> dict[str, Any]:
        data: dict[str, Any] = handler(self)
        if self.text is None:
            data.pop("text", None)
        return data


class Review(_Strict):
    """Who confirmed the record and when, and which version of the reader proposed it."""

    reviewer: str | None = None
    confirmed_at: datetime | None = None
    reader_version: str = ""


class Remark(_Strict):
    """Something said of the note as a whole, such as 'no flexor tendon repair found', with the words that led there."""

    text: str
    evidence: list[Evidence] = []


class Record(_Strict):
    """All that is known of one note."""

    format: Literal["notereader-record"] = "notereader-record"
    format_version: Annotated[int, Field(ge=1)] = FORMAT_VERSION
    note: Note = Note()
    operation: Facts = {}
    repairs: list[Repair] = []
    pulleys: list[Pulley] = []
    injuries: list[Injury] = []
    aftercare: Facts = {}
    elements: Facts = {}
    review: Review = Review()
    remarks: list[Remark] = []

    @model_validator(mode="after")
    def _check(self) -> "Record":
        for group in ("operation", "aftercare", "elements"):
            _checked(group, getattr(self, group))
        seen: set[Address] = set()
        for place, _ in self.entries():
            if place in seen:
                raise ValueError(f"{place.entry_words()} is entered twice; put its facts into one entry")
            seen.add(place)
        return self

    @model_serializer(mode="wrap")
    def _leave_out_remarks(self, handler: SerializerFunctionWrapHandler) -> dict[str, Any]:
        data: dict[str, Any] = handler(self)
        if not self.remarks:
            data.pop("remarks", None)
        return data

    def entries(self) -> Iterator[tuple[Address, Facts]]:
        """Yield the address (without field) and the facts of every group and entry, in the order of the record."""
        yield Address("operation"), self.operation
        for repair in self.repairs:
            yield Address("repairs", repair.digit, repair.tendon, repair.slip), repair.facts
        for pulley in self.pulleys:
            yield Address("pulleys", pulley.digit, pulley.pulley), pulley.facts
        for injury in self.injuries:
            yield Address("injuries", injury.digit, injury.structure, injury.side), injury.facts
        yield Address("aftercare"), self.aftercare
        yield Address("elements"), self.elements

    def walk(self) -> Iterator[tuple[Address, Fact]]:
        """Yield every fact with its full address."""
        for place, facts in self.entries():
            for name, fact in facts.items():
                yield place.field_of(name), fact

    def facts_of(self, place: Address) -> Facts | None:
        """Return the facts of the entry an address lies in, or None where there is no such entry."""
        digit, part, side = place.digit, place.part, place.side
        if place.group == "repairs":
            repairs = (r.facts for r in self.repairs if r.tendon == part and r.digit == digit and r.slip == side)
            return next(repairs, None)
        if place.group == "pulleys":
            pulleys = (p.facts for p in self.pulleys if p.pulley == part and p.digit == digit and side is None)
            return next(pulleys, None)
        if place.group == "injuries":
            injuries = (n.facts for n in self.injuries if n.structure == part and n.digit == digit and n.side == side)
            return next(injuries, None)
        wanted = place.entry()
        return next((facts for found, facts in self.entries() if found == wanted), None)

    def fact(self, place: Address) -> Fact | None:
        """Return the fact at a full address, or None."""
        facts = self.facts_of(place)
        return None if facts is None else facts.get(place.field)

    def put(self, place: Address, fact: Fact) -> None:
        """Set the fact at a full address, making its entry where it is missing. Raises ValueRefused."""
        if fact.value is not None:
            fact.value = check_value(field_specs()[place.group][place.field], fact.value)
        self.ensure(place)[place.field] = fact

    def ensure(self, place: Address) -> Facts:
        """Return the facts of the entry an address lies in, adding the entry where it is missing."""
        facts = self.facts_of(place)
        if facts is not None:
            return facts
        if place.group == "repairs":
            self.repairs.append(Repair.model_validate(dict(digit=place.digit, tendon=place.part, slip=place.side)))
            return self.repairs[-1].facts
        if place.group == "pulleys":
            self.pulleys.append(Pulley.model_validate(dict(digit=place.digit, pulley=place.part)))
            return self.pulleys[-1].facts
        self.injuries.append(Injury.model_validate(dict(digit=place.digit, structure=place.part, side=place.side)))
        return self.injuries[-1].facts

    def drop(self, place: Address) -> Fact | None:
        """Take the fact at a full address out and return it, or None where there was none."""
        facts = self.facts_of(place)
        return None if facts is None else facts.pop(place.field, None)

    def drop_entry(self, place: Address) -> None:
        """Take a whole repair, pulley or injury out of the record."""
        wanted = place.entry()
        for group in (self.repairs, self.pulleys, self.injuries):
            kept = [entry for entry in group if _address_of(entry) != wanted]
            if len(kept) != len(group):
                group[:] = kept  # type: ignore[assignment]


def _address_of(entry: Repair | Pulley | Injury) -> Address:
    if isinstance(entry, Repair):
        return Address("repairs", entry.digit, entry.tendon, entry.slip)
    if isinstance(entry, Pulley):
        return Address("pulleys", entry.digit, entry.pulley)
    return Address("injuries", entry.digit, entry.structure, entry.side)


__all__ = ["FORMAT", "FORMAT_VERSION", "Interval", "Value"]
