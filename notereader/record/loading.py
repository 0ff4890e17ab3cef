"""Records in and out as JSON: versions, migrations and clear refusals."""

import json
from collections.abc import Callable, Iterator
from typing import Any

from pydantic import ValidationError

from notereader.record.evidence import Evidence, note_hash
from notereader.record.models import FORMAT, FORMAT_VERSION, Record


class RecordRefused(Exception):
    """A record that cannot be used; the message says what is wrong, where, and what to do."""


# Older format version -> what turns it into the next one. Empty while version 1 is the first.
MIGRATIONS: dict[int, Callable[[dict[str, Any]], dict[str, Any]]] = {}


def load_record(data: str | bytes | dict[str, Any]) -> Record:
    """Read a record from JSON text or from parsed JSON, migrating older formats.

    Raises RecordRefused where it is no record, a newer format, or contradicts itself (quotes that do not stand where
    they should, a text that is not the one hashed).
    """
    raw = parsed_json(data)
    if raw.get("format") != FORMAT:
        raise RecordRefused(f'This is no notereader record: "format" is {raw.get("format")!r}, expected "{FORMAT}".')
    raw = _migrated(raw)
    try:
        record = Record.model_validate(raw)
    except ValidationError as fault:
        raise RecordRefused(_first_fault(fault)) from None
    _check_against_text(record)
    return record


def dump_record(record: Record, *, text: bool = True, indent: int | None = 1) -> str:
    """Return a record as JSON text; with text=False the note's own text is left out."""
    data = record.model_dump(mode="json")
    if not text:
        data["note"].pop("text", None)
    return json.dumps(data, ensure_ascii=False, indent=indent)


def parsed_json(data: str | bytes | dict[str, Any]) -> dict[str, Any]:
    """Return the object that JSON text holds; raises RecordRefused where it holds none or names a thing twice."""
    if isinstance(data, dict):
        return data
    try:
        raw = json.loads(data, object_pairs_hook=_named_once, parse_constant=_no_number)
    except (ValueError, RecursionError) as fault:
        raise RecordRefused(f"This is no readable JSON: {fault}. Export the record again.") from None
    if not isinstance(raw, dict):
        raise RecordRefused("This JSON is no record: expected an object with the fields of a record.")
    return raw


def _named_once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    """Build an object; of two entries under one name JSON readers take either, and a fact would be lost unseen."""
    built = dict(pairs)
    if len(built) < len(pairs):
        names = [name for name, _ in pairs]
        twice = next(name for name in names if names.count(name) > 1)
        raise ValueError(f"{twice[:40]!r} is entered twice in one object")
    return built


def _no_number(name: str) -> float:
    raise ValueError(f"{name} is no number of JSON")


def _migrated(raw: dict[str, Any]) -> dict[str, Any]:
    version = raw.get("format_version")
    if isinstance(version, bool) or not isinstance(version, int) or version < 1:
        raise RecordRefused(f'"format_version" is {version!r}; expected a whole number from 1.')
    if version > FORMAT_VERSION:
        raise RecordRefused(
            f"This record has format version {version}; this program reads up to version {FORMAT_VERSION}. "
            "It was written by a newer notereader: update this one to open it."
        )
    while version < FORMAT_VERSION:
        raw = MIGRATIONS[version](raw)
        version += 1
    return raw


def _first_fault(fault: ValidationError) -> str:
    first = fault.errors(include_url=False, include_context=False)[0]
    where = ".".join(str(part) for part in first["loc"]) or "record"
    more = f" ({fault.error_count() - 1} more)" if fault.error_count() > 1 else ""
    return f"The record is faulty at {where}: {first['msg']}{more}."


def _check_against_text(record: Record) -> None:
    """Refuse a record whose text or quotes are not the ones it was made from."""
    text = record.note.text
    if text is not None and record.note.sha256 and record.note.sha256 != note_hash(text):
        raise RecordRefused("The note's text is not the one this record was made from (its checksum differs).")
    length = record.note.characters if text is None else len(text)
    if text is None and not length:
        # Neither text nor length is known: nothing to hold the places against.
        return
    for where, evidence in _quotes(record):
        span = evidence.span
        if span is None:
            continue
        moved = text is not None and evidence.exact and text[span[0] : span[1]] != evidence.exact
        if span[1] > length or moved:
            raise RecordRefused(
                f"{where}: the quoted words do not stand at {span[0]}-{span[1]} of the note. "
                "The record and its note do not belong together."
            )


def _quotes(record: Record) -> Iterator[tuple[str, Evidence]]:
    """Yield the evidence of every fact, rival and remark with what it belongs to, in words."""
    for place, fact in record.walk():
        for evidence in (*fact.evidence, *(e for rival in fact.rivals for e in rival.evidence)):
            yield place.words(), evidence
    for remark in record.remarks:
        for evidence in remark.evidence:
            yield "A remark", evidence
