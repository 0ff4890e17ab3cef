"""Reads small notes for the tests of the reader and shows what was proposed in a short form."""

from functools import cache
from unittest.mock import patch

from notereader.reader import read
from notereader.record import Fact, Interval, Record

Shown = dict[str, dict[str, object]]


@cache
def record_of(text: str) -> Record:
    """Read a note; every quote must be the note's words at its position and every fact still a proposal."""
    record = read(text)
    for place, fact in record.walk():
        assert fact.status == "proposed", place.text()
        assert fact.evidence, place.text()
        for evidence in (*fact.evidence, *(e for rival in fact.rivals for e in rival.evidence)):
            assert evidence.span is not None, place.text()
            start, end = evidence.span
            assert evidence.exact == text[start:end] != "", place.text()
    return record


def told(text: str, *fields: str, group: str = "repairs") -> Shown:
    """Return the values proposed for a group by entry ('ring FDP', 'index FDS radial'), all or those of some fields.

    Entries without any of the fields are left out. An interval is shown as the pair of its ends.
    """
    shown: Shown = {}
    for place, fact in record_of(text).walk():
        if place.group == group and (not fields or place.field in fields):
            name = " ".join(part for part in (place.digit, place.part, place.side) if part)
            shown.setdefault(name, {})[place.field] = _plain(fact.value)
    return shown


def each(text: str, field: str, group: str = "repairs") -> dict[str, object]:
    """Return the value proposed for one field by entry: {'ring FDP': 4}."""
    return {name: facts[field] for name, facts in told(text, field, group=group).items()}


def fact_of(text: str, entry: str, field: str, group: str = "repairs") -> Fact:
    """Return one proposed fact, such as of 'ring FDP' and 'strands'."""
    for place, fact in record_of(text).walk():
        name = " ".join(part for part in (place.digit, place.part, place.side) if part)
        if (place.group, name, place.field) == (group, entry, field):
            return fact
    raise AssertionError(f"nothing is proposed for {entry} {field}")


def given_to(text: str, entry: str, field: str, group: str = "repairs") -> set[str]:
    """Return the kinds of the reasons that rules gave a fact, told or not, such as {'by_reference'}."""
    with patch("notereader.reader.drafting.drafting.weigh") as weigh:
        record = read(text)
    given = weigh.call_args.args[2]
    for place, fact in record.walk():
        name = " ".join(part for part in (place.digit, place.part, place.side) if part)
        if (place.group, name, place.field) == (group, entry, field):
            return {reason.kind for reason in given[id(fact)]}
    raise AssertionError(f"nothing is proposed for {entry} {field}")


def quote_of(text: str, entry: str, field: str, group: str = "repairs") -> str:
    """Return the words that prove a fact."""
    return " ... ".join(evidence.exact for evidence in fact_of(text, entry, field, group).evidence)


def _plain(value: object) -> object:
    return (value.low, value.high) if isinstance(value, Interval) else value
