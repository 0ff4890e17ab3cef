"""Notes and records as they are named on the command line."""

import glob
import sys
from collections.abc import Iterable
from pathlib import Path

from notereader.exchange.files import LARGEST_RECORD, read_record
from notereader.intake import NoteText, read_file, read_stream
from notereader.record import Record, RecordRefused, load_record

# The name by which standard input is asked for.
STANDARD_INPUT = "-"

_NOTE_FIRST = " If this is a note, make its record first: notereader read NOTE --out FOLDER"


def named_files(names: Iterable[str]) -> list[str]:
    """Return the names with patterns such as *.txt resolved, which not every shell does; each file once, in order."""
    found: dict[str, None] = {}
    for name in names:
        matches = [] if name == STANDARD_INPUT or Path(name).exists() else sorted(glob.glob(name))
        found.update(dict.fromkeys(matches or [name]))
    return list(found)


def open_note(name: str) -> NoteText:
    """Return the text of a note from a file or from standard input. Raises IntakeRefused."""
    return read_stream(sys.stdin.buffer) if name == STANDARD_INPUT else read_file(name)


def open_record(name: str) -> Record:
    """Return a record from a JSON file or from standard input. Raises RecordRefused."""
    if name != STANDARD_INPUT:
        try:
            return read_record(Path(name))
        except RecordRefused as refused:
            looks_like_note = not name.lower().endswith(".json") and Path(name).is_file()
            raise RecordRefused(f"{refused}{_NOTE_FIRST if looks_like_note else ''}") from None
    try:
        return load_record(sys.stdin.buffer.read(LARGEST_RECORD))
    except RecordRefused as refused:
        raise RecordRefused(f"standard input: {refused}") from None
