"""What each action of the therapist means as changes of the record. Knows no Qt and stores nothing."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date

from notereader.desktop.rows import needs_thought
from notereader.record import Address, Evidence, Fact, Record, Rival, Value, answered, check_value, show_value
from notereader.vocabulary import field_specs


class StepRefused(Exception):
    """An action that makes no sense for this fact; the message says why and what to do instead."""


@dataclass(frozen=True)
class Change:
    """What one fact, or with an address without field a whole entry, is to become; None takes it out of the record."""

    address: Address
    after: Fact | dict[str, Fact] | None


@dataclass(frozen=True)
class Step:
    """One action: how it is called in the list of what can be undone, and its changes."""

    words: str
    changes: tuple[Change, ...]


def confirm(record: Record, address: Address) -> Step:
    """Say that the note says so. Raises StepRefused where there is nothing to confirm."""
    fact = record.fact(address)
    if fact is None:
        raise StepRefused("Nothing was found here. Enter what the note says (E), or mark that it is silent (S).")
    if fact.status not in ("proposed", "withdrawn"):
        return Step(f"keep {address.words()}", ())
    return Step(f"confirm {address.words()}", (Change(address, _with(fact, status="confirmed")),))


def correct(record: Record, address: Address, value: Value, evidence: Evidence | None = None) -> Step:
    """Give a fact another value, or its first one. `evidence`: words selected in the note; without them the old stay.

    Raises ValueRefused where the field cannot take the value.
    """
    spec = field_specs()[address.group][address.field]
    value = check_value(spec, value)
    fact = record.fact(address)
    if fact is not None and evidence is None:
        if fact.value == value:
            return confirm(record, address)
        for number, rival in enumerate(fact.rivals):
            if rival.value == value:
                return take_rival(record, address, number)
    words = f"{'correct' if fact else 'add'} {address.words()}: {show_value(value, spec.unit)}"
    if fact is None or fact.basis == "silent" or fact.status == "added":
        kept = [] if fact is None else fact.evidence
        after = Fact(value=value, status="added", evidence=[evidence] if evidence else kept)
    else:
        after = _with(fact, value=value, status="corrected")
        if evidence is not None:
            after = _with(after, evidence=[evidence], basis="stated")
    return Step(words, (_put(record, address, after),))


def take_rival(record: Record, address: Address, number: int) -> Step:
    """Put the rival of that number (from 0) in the place of the proposed value, which becomes a rival itself."""
    fact = record.fact(address)
    if fact is None or not 0 <= number < len(fact.rivals):
        raise StepRefused("The note states no other value for this fact. Correct it (E) if it is wrong.")
    chosen = fact.rivals[number]
    others = [rival for position, rival in enumerate(fact.rivals) if position != number]
    if fact.value is not None and not fact.said_by:
        # An answer that did not come from the note is no rival in it; the history keeps it.
        others.insert(0, Rival(value=fact.value, evidence=fact.evidence))
    after = _with(
        fact, value=chosen.value, evidence=chosen.evidence, rivals=others, status="corrected", basis="stated",
        said_by=None, said_on=None,
    )  # fmt: skip
    unit = field_specs()[address.group][address.field].unit
    return Step(f"choose {show_value(chosen.value, unit)} for {address.words()}", (Change(address, after),))


def answer(record: Record, address: Address, value: Value, said_on: date) -> Step:
    """Enter what the surgeon answered, with its day; what the note says stays as a rival. Raises ValueRefused."""
    fact = answered(record, address, value, said_on)
    unit = field_specs()[address.group][address.field].unit
    words = f"enter the surgeon's answer for {address.words()}: {show_value(fact.value, unit)}"
    return Step(words, (_put(record, address, fact),))


def mark_silent(record: Record, address: Address) -> Step:
    """Say that the note says nothing here."""
    fact = record.fact(address)
    after = Fact(value=None, basis="silent", status="corrected" if fact else "confirmed")
    return Step(f"mark the note silent on {address.words()}", (_put(record, address, after),))


def withdraw(record: Record, address: Address) -> Step:
    """Say that the proposed fact is none of this operation. Raises StepRefused where there is nothing."""
    fact = record.fact(address)
    if fact is None or fact.value is None:
        raise StepRefused("There is no value here to withdraw.")
    return Step(f"withdraw {address.words()}", (Change(address, _with(fact, status="withdrawn")),))


def take_words(record: Record, address: Address, evidence: Evidence) -> Step:
    """Make the words selected in the note the proof of a fact. Raises StepRefused where there is no value yet."""
    fact = record.fact(address)
    if fact is None or fact.value is None:
        raise StepRefused("There is no value yet these words could prove. Enter it first (E); they will go with it.")
    status = "added" if fact.status == "added" else "corrected"
    after = _with(fact, evidence=[evidence], status=status, basis="stated")
    return Step(f"take other words for {address.words()}", (Change(address, after),))


def confirm_shown(record: Record, addresses: Iterable[Address]) -> Step:
    """Confirm those of the given facts that are still proposed and give no reason to look twice."""
    changes = [Change(address, _with(fact, status="confirmed")) for address, fact in _plain(record, addresses)]
    return Step(f"confirm {len(changes)} facts", tuple(changes))


def withdraw_entry(record: Record, place: Address) -> Step:
    """Withdraw every fact of a tendon, pulley or injury that this operation did not have."""
    facts = record.facts_of(place) or {}
    changes = [
        Change(place.field_of(name), _with(fact, status="withdrawn")) for name, fact in facts.items() if fact.live
    ]
    if not changes:
        raise StepRefused(f"{place.entry_words()} holds no value to withdraw.")
    return Step(f"withdraw {place.entry_words()}", tuple(changes))


def move_entry(record: Record, place: Address, digit: str | None) -> Step:
    """Enter all facts of a tendon, pulley or injury under another digit. Raises StepRefused where that one is taken."""
    target = replace(place.entry(), digit=digit)
    if target == place.entry():
        raise StepRefused(f"It already stands under {digit or 'the wrist'}.")
    if record.facts_of(target):
        raise StepRefused(f"{target.entry_words()} is already entered. Correct its facts there.")
    facts = {name: _with(fact) for name, fact in (record.facts_of(place) or {}).items()}
    words = f"move {place.entry_words()} to {target.entry_words()}"
    return Step(words, (Change(place.entry(), None), Change(target, facts)))


def plain_ones(record: Record, addresses: Iterable[Address]) -> list[Address]:
    """Return those of the given facts that confirm_shown would confirm."""
    return [address for address, _ in _plain(record, addresses)]


def _plain(record: Record, addresses: Iterable[Address]) -> list[tuple[Address, Fact]]:
    found = [(address, record.fact(address)) for address in addresses]
    return [(a, fact) for a, fact in found if fact and fact.status == "proposed" and not needs_thought(fact)]


def _put(record: Record, address: Address, fact: Fact) -> Change:
    """Set a fact, adding its entry with it where there is none yet."""
    if record.facts_of(address) is None:
        return Change(address.entry(), {address.field: fact})
    return Change(address, fact)


def _with(fact: Fact, **changed: object) -> Fact:
    """Return a copy with some fields changed; the original is never touched, it is the way back."""
    return fact.model_copy(update=changed, deep=True)
