"""The printable summary of a record as data: facts with evidence and standing, what is unknown, who confirmed."""

import re
from collections.abc import Iterable
from dataclasses import dataclass

from notereader.appraisal import Appraisal, appraise
from notereader.record import Address, Fact, Record, show_value
from notereader.vocabulary import FieldSpec, field_specs

# Controls and marks that turn the direction of writing: unseen on paper, yet they change what is read.
_UNSEEN = re.compile(r"[\x00-\x08\x0b-\x1f\x7f-\x9f\u200e\u200f\u202a-\u202e\u2066-\u2069]")

_STANDING = {
    "proposed": "proposed, NOT confirmed",
    "confirmed": "confirmed",
    "corrected": "corrected by a person",
    "added": "added by a person",
    "withdrawn": "withdrawn by a person",
}


@dataclass(frozen=True, slots=True)
class Row:
    """One fact: field and value in words, how it stands, the words that prove it, and remarks."""

    label: str
    value: str
    standing: str
    words: tuple[str, ...]
    remarks: tuple[str, ...]
    confirmed: bool


@dataclass(frozen=True, slots=True)
class Section:
    """One entry of the record with its facts."""

    title: str
    rows: tuple[Row, ...]


@dataclass(frozen=True, slots=True)
class Unknown:
    """What the note does not state, for things of one weight: a line for each tendon, pulley set and so on."""

    weight: str
    lines: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Summary:
    """Everything that is printed of a record, in plain text still to be escaped for where it goes.

    `warning` is empty where every fact was decided by a person; `standing` says who confirmed the record.
    """

    title: str
    warning: str
    standing: str
    sections: tuple[Section, ...]
    withdrawn: tuple[Section, ...]
    unknown: tuple[Unknown, ...]
    contradictions: tuple[str, ...]
    cautions: tuple[str, ...]
    origin: str


def summary_of(record: Record) -> Summary:
    """Put together what is printed of a record."""
    appraisal = appraise(record)
    return Summary(
        title=f"Summary of {shown(record.note.name) or 'an operative note'}",
        warning=_warning(record),
        standing=_standing(record),
        sections=_sections(record, withdrawn=False),
        withdrawn=_sections(record, withdrawn=True),
        unknown=tuple(_unknown(appraisal)),
        contradictions=tuple(f"{shown(hit.title)}: {shown(hit.words)}" for hit in appraisal.contradictions),
        cautions=tuple(appraisal.cautions),
        origin=_origin(record),
    )


def shown(text: str) -> str:
    """Return a text on one line, with characters that cannot be seen replaced by a visible mark."""
    return " ".join(_UNSEEN.sub("\ufffd", text).split())


def _warning(record: Record) -> str:
    facts = [fact for _, fact in record.walk()]
    left = sum(fact.status == "proposed" for fact in facts)
    if not left:
        return ""
    return (
        f"NOT ALL FACTS ARE CONFIRMED. {left} of {len(facts)} were proposed by the program and nobody has confirmed "
        "them. They are marked with a question mark below and may be wrong."
    )


def _standing(record: Record) -> str:
    review = record.review
    if review.reviewer is None or review.confirmed_at is None:
        return "Nobody has confirmed this record as a whole."
    when = review.confirmed_at.astimezone().strftime("%Y-%m-%d %H:%M (UTC%z)")
    return f"Confirmed as a whole by {shown(review.reviewer)} on {when}."


def _sections(record: Record, *, withdrawn: bool) -> tuple[Section, ...]:
    sections = []
    for place, facts in record.entries():
        chosen = {name: fact for name, fact in facts.items() if (fact.status == "withdrawn") is withdrawn}
        # An entry without facts is said to be there, for somebody entered it.
        if chosen or (place.part is not None and not facts and not withdrawn):
            rows = tuple(_row(place.field_of(name), chosen[name]) for name in _in_order(place, chosen))
            title = f"{_title(place)}, withdrawn" if withdrawn else _title(place)
            sections.append(Section(title, rows))
    return tuple(sections)


def _in_order(place: Address, facts: dict[str, Fact]) -> list[str]:
    order = [*field_specs()[place.group]]
    return sorted(facts, key=order.index)


def _title(place: Address) -> str:
    if place.group == "elements":
        return "Named in the note"
    return _capital(place.entry_words())


def _row(place: Address, fact: Fact) -> Row:
    spec = field_specs()[place.group][place.field]
    return Row(
        label=spec.label,
        value=_value_words(fact, spec),
        standing=_STANDING[fact.status],
        words=tuple(shown(each.exact) for each in fact.evidence if each.exact),
        remarks=tuple(_remarks(fact, spec.unit)),
        confirmed=fact.status != "proposed",
    )


def _value_words(fact: Fact, spec: FieldSpec) -> str:
    if fact.basis == "silent":
        return "the note is silent"
    value = "in the note" if spec.kind == "named" else shown(show_value(fact.value, spec.unit))
    return f"withdrawn: {value}" if fact.status == "withdrawn" else value


def _remarks(fact: Fact, unit: str) -> Iterable[str]:
    if fact.basis == "implied":
        yield "not said outright: it follows from the words quoted"
    for rival in fact.rivals:
        words = " … ".join(shown(each.exact) for each in rival.evidence if each.exact)
        yield f"the note also says {shown(show_value(rival.value, unit))}" + (f" (“{words}”)" if words else "")
    if fact.said_by or fact.said_on:
        said = " on ".join(part for part in (shown(fact.said_by or ""), str(fact.said_on or "")) if part)
        yield f"not from the note: said by {said}" if fact.said_by else f"not from the note: said on {said}"
    if fact.status == "proposed":
        yield from (f"look twice: {shown(reason)}" for reason in fact.look_twice)


def _unknown(appraisal: Appraisal) -> Iterable[Unknown]:
    for group in appraisal.completeness.needs:
        places: dict[str, list[str]] = {}
        for item in group.items:
            if item.state == "silent":
                places.setdefault(item.where, []).append(_small(shown(item.label)))
        if places:
            lines = (f"{shown(where)}: {', '.join(labels)}" for where, labels in places.items())
            yield Unknown(_capital(shown(group.label)), tuple(lines))


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _small(label: str) -> str:
    """Return a label without its capital, unless it begins with an abbreviation."""
    return label[:1].lower() + label[1:] if label[1:2].islower() else label


def _origin(record: Record) -> str:
    reader = f"Read by notereader {shown(record.review.reader_version)}. " if record.review.reader_version else ""
    digest = f"Note of {record.note.characters} characters, SHA-256 {record.note.sha256}." if record.note.sha256 else ""
    return shown(reader + digest)
