"""The surgeon's answers, entered back into the record without losing what stood there."""

from datetime import date

from notereader.record import Address, Fact, Record, Rival, Value, check_value
from notereader.vocabulary import field_specs

SURGEON = "surgeon's answer"


def enter_answer(record: Record, place: Address, value: Value, said_on: date, said_by: str = SURGEON) -> Fact:
    """Enter an answer at a full address as an added fact and return it.

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
    record.put(place, fact)
    return fact
