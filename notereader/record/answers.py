"""The surgeon's answers, entered back into the record without losing what stood there."""

from datetime import date

from notereader.record.address import Address
from notereader.record.models import Fact, Record, Rival, Value
from notereader.record.values import check_value
from notereader.vocabulary import field_specs

SURGEON = "surgeon's answer"


def answered(record: Record, place: Address, value: Value, said_on: date, said_by: str = SURGEON) -> Fact:
    """Return what an answer at a full address makes of its fact: an added one. The record stays as it is.

    What the note said there stays: an equal value keeps its evidence, a different one becomes a rival with it.
    Raises ValueRefused where the field cannot take the value, ValueError where the address names no field.
    """
    spec = field_specs()[place.group].get(place.field)
    if spec is None:
        raise ValueError(f"'{place.text()}' names no field; an answer needs the field it fills")
    value = check_value(spec, value)
    before = record.fact(place)
    fact = Fact(value=value, basis="stated", status="added", said_by=said_by, said_on=said_on)
    if before is not None and before.value is not None:
        told = [Rival(value=before.value, evidence=before.evidence), *before.rivals]
        fact.evidence = [e for rival in told if rival.value == value for e in rival.evidence]
        fact.rivals = [rival for rival in told if rival.value != value]
        fact.look_twice = list(before.look_twice)
    return fact


def enter_answer(record: Record, place: Address, value: Value, said_on: date, said_by: str = SURGEON) -> Fact:
    """Enter an answer into a record and return its fact; see `answered`."""
    fact = answered(record, place, value, said_on, said_by)
    record.put(place, fact)
    return fact
