"""The sample notes with their keys as records that a reader would propose."""

import json
from functools import cache
from typing import Any

from notereader.intake import NoteText
from notereader.record import Note, Record, load_record
from notereader.vocabulary import samples_folder


@cache
def sample_text(name: str) -> str:
    """Return the text of a sample note."""
    return (samples_folder() / f"{name}.txt").read_text(encoding="utf-8")


def sample_record(name: str) -> Record:
    """Return the key of a sample as a record in which every fact is only proposed."""
    key = json.loads((samples_folder() / f"{name}.json").read_text(encoding="utf-8"))
    key.pop("remark", None)
    _propose(key)
    note = Note.of(sample_text(name), name).model_dump()
    return load_record({"format": "notereader-record", "format_version": 1, **key, "note": note})


def proposed(note: NoteText) -> Record:
    """Stand in for the reader: the key of the sample with this text, or a record without facts."""
    for sample in ("01-plain-index", "02-terse-ring", "13-saw-respectively"):
        if sample_text(sample) == note.text:
            return sample_record(sample)
    return Record(note=Note.of(note.text, note.name))


def _propose(part: Any) -> None:
    if isinstance(part, list):
        for inner in part:
            _propose(inner)
    elif isinstance(part, dict):
        if "value" in part and "basis" in part:
            part.setdefault("status", "proposed")
            part.setdefault("evidence", [])
        for inner in part.values():
            _propose(inner)
