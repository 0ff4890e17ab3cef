"""Records of people: a casebook, a folder of exported records, a single one, or the keys of exercises."""

from collections.abc import Iterator
from pathlib import Path
from typing import Any

from notereader.audit.faults import AuditFault
from notereader.audit.sources import open_source
from notereader.exchange.files import LARGEST_RECORD
from notereader.record import FORMAT, FORMAT_VERSION, Note, Record, RecordRefused, load_record, parsed_json


def records_in(place: str | Path) -> Iterator[Record]:
    """Yield every record of a casebook (its file or URL), of a folder of JSON files, or of one JSON file.

    Raises AuditFault, naming the file, where one cannot be used.
    """
    path = Path(place).expanduser()
    if "://" not in str(place) and path.is_file() and path.suffix.lower() == ".json":
        yield _record(path)
        return
    source = open_source(place)
    try:
        for item in source.inputs():
            if isinstance(item.content, bytes):
                yield load_record(item.content)
            elif isinstance(item.content, Path) and item.content.suffix.lower() == ".json":
                yield _record(item.content)
    finally:
        source.close()


def _record(path: Path) -> Record:
    try:
        if path.stat().st_size > LARGEST_RECORD:
            raise RecordRefused(f"it is larger than {LARGEST_RECORD // 2**20} MB.")
        data = parsed_json(path.read_bytes())
        record = load_record(_completed(data))
    except (OSError, RecordRefused) as fault:
        raise AuditFault(f"{path} cannot be used as a record: {fault}") from None
    if not record.note.sha256:
        record.note = _note_beside(path)
    return record


def _completed(data: dict[str, Any]) -> dict[str, Any]:
    """Return a key, which is a record with less in it, as a record."""
    if "format" not in data and "repairs" not in data:
        raise RecordRefused("it is no record and no key.")
    if "format" in data:
        return data
    kept = {name: part for name, part in data.items() if name in Record.model_fields}
    return {"format": FORMAT, "format_version": FORMAT_VERSION, **kept}


def _note_beside(path: Path) -> Note:
    """Return the note of a key: the text file of the same name beside it, or only the name where there is none."""
    beside = path.with_suffix(".txt")
    try:
        return Note.of(beside.read_bytes().decode("utf-8"), beside.name)
    except (OSError, UnicodeError):
        return Note(name=beside.name)
