"""What differs between two states of a record, in plain words. Knows no Qt."""

from collections.abc import Collection

from notereader.desktop.rows import standing_of
from notereader.record import Address, Fact, Record, show_value
from notereader.vocabulary import field_specs


def differences(old: Record, new: Record, besides: Collection[Address] = ()) -> list[str]:
    """Say which facts differ: 'ring FDP: core strands: 4 (proposed) → 6 (corrected)'.

    `besides` are facts or whole entries that are left out, usually those the person changed.
    """
    before, after = dict(old.walk()), dict(new.walk())
    skipped = set(besides)
    lines = []
    for address in dict.fromkeys([*before, *after]):
        if address in skipped or address.entry() in skipped or before.get(address) == after.get(address):
            continue
        lines.append(f"{address.words()}: {_said(address, before)} → {_said(address, after)}")
    return lines


def _said(address: Address, facts: dict[Address, Fact]) -> str:
    return said(address, facts.get(address))


def said(address: Address, fact: Fact | None) -> str:
    """Say a fact's value and standing: '4 (proposed)', 'nothing', 'note silent'."""
    if fact is None:
        return "nothing"
    if fact.value is None:
        return str(standing_of(fact))
    return f"{show_value(fact.value, field_specs()[address.group][address.field].unit)} ({standing_of(fact)})"
