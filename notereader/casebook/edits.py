"""Edits of a record: what stood at one address before, what shall stand there after, and how to undo it."""

import json
from dataclasses import dataclass
from typing import Any

from pydantic import TypeAdapter

from notereader.record import Address, Fact, Record, RecordRefused, load_record

Facts = dict[str, Fact]
Content = Fact | Facts | None

# Groups whose entries can be added and dropped; the others are always there.
ENTRY_GROUPS = ("repairs", "pulleys", "injuries")

_FACT = TypeAdapter(Fact)
_FACTS = TypeAdapter(Facts)


class EditRefused(ValueError):
    """An edit that makes no sense for its record; the message says why."""


@dataclass(frozen=True, slots=True)
class Edit:
    """One change of a record.

    `address` names a fact, or with an empty field a whole repair, pulley or injury. `before` and `after` are the fact
    (or the facts of the whole entry) on either side of the change; None means that nothing stands there. `position` is
    the place of an entry within its group, None for the end; see `dropping`. `note` is the person's own remark.
    """

    address: Address
    before: Content
    after: Content
    note: str = ""
    position: int | None = None

    def inverse(self) -> "Edit":
        """Return the edit that undoes this one."""
        return Edit(self.address, self.after, self.before, self.note, self.position)

    @classmethod
    def dropping(cls, record: Record, address: Address, note: str = "") -> "Edit":
        """Return the edit that drops a whole entry and whose inverse puts it back where it stood."""
        place = address.entry()
        group = [found for found, _ in record.entries() if found.group == place.group]
        return cls(place, record.facts_of(place), None, note, group.index(place) if place in group else None)


def content_at(record: Record, address: Address) -> Content:
    """Return the fact, or for an empty field the facts of the entry, that a record holds at an address."""
    return record.fact(address) if address.field else record.facts_of(address)


def pack(content: Content) -> str | None:
    """Return a fact or the facts of an entry as JSON text; None stays None."""
    return None if content is None else json.dumps(_plain(content), separators=(",", ":"), sort_keys=True)


def unpack(address: Address, text: str | None) -> Content:
    """Read what pack() wrote for this address."""
    if text is None:
        return None
    return _FACT.validate_json(text) if address.field else _FACTS.validate_json(text)


def apply_edit(record: Record, edit: Edit) -> Record:
    """Return a new record with the edit done; the given one stays as it is. Raises EditRefused.

    That `before` stands there is for the caller to check (see `fits`).
    """
    changed = record.model_copy(deep=True)
    do_edit(changed, edit)
    return verified(changed)


def do_edit(record: Record, edit: Edit) -> None:
    """Do an edit within the given record. Raises EditRefused where the address or the value is impossible."""
    try:
        (_apply_to_fact if edit.address.field else _apply_to_entry)(record, edit)
    except (ValueError, KeyError) as fault:
        raise EditRefused(f"{edit.address.words()} cannot be changed so: {fault}") from None


def verified(record: Record) -> Record:
    """Return the record as it will be when it is loaded again, for one that could not be must never be saved.

    Raises EditRefused where it is at fault, for instance where quoted words do not stand in the note.
    """
    try:
        return load_record(record.model_dump(mode="json"))
    except RecordRefused as fault:
        raise EditRefused(f"This change cannot be saved: {fault}") from None


def fits(record: Record, edit: Edit) -> bool:
    """Return True where the record holds at the address what the edit says stood there before.

    Values count, not how they are written: 7 and 7.0 are the same.
    """
    return content_at(record, edit.address) == edit.before


def _plain(content: Fact | Facts) -> Any:
    if isinstance(content, Fact):
        return content.model_dump(mode="json")
    return {name: fact.model_dump(mode="json") for name, fact in content.items()}


def _apply_to_fact(record: Record, edit: Edit) -> None:
    if record.facts_of(edit.address) is None:
        raise EditRefused("there is no such entry; add it first with an edit of the whole entry")
    if edit.after is None:
        record.drop(edit.address)
    elif isinstance(edit.after, Fact):
        record.put(edit.address, edit.after.model_copy(deep=True))
    else:
        raise EditRefused("a single field takes one fact")


def _apply_to_entry(record: Record, edit: Edit) -> None:
    if edit.address.group not in ENTRY_GROUPS:
        raise EditRefused("only tendons, pulleys and other injuries can be added or dropped")
    if isinstance(edit.after, Fact):
        raise EditRefused("a whole entry takes its facts by field name")
    if edit.after is None:
        record.drop_entry(edit.address)
        return
    is_new = record.facts_of(edit.address) is None
    facts = record.ensure(edit.address)
    facts.clear()
    facts.update({name: fact.model_copy(deep=True) for name, fact in edit.after.items()})
    if is_new and edit.position is not None:
        group = getattr(record, edit.address.group)
        group.insert(edit.position, group.pop())
