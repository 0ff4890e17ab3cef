"""Files in and out: written whole or not at all, readable by their owner only."""

import contextlib
import os
import tempfile
from pathlib import Path

from notereader.record import Record, RecordRefused, dump_record, load_record

# No record of a note comes near this; a larger file is something else.
LARGEST_RECORD = 64 * 1024 * 1024


class ExportFault(Exception):
    """A file could not be written; the message says why and what to do. What stood there before is untouched."""


def write_file(path: Path, content: str) -> None:
    """Write a text file in UTF-8, whole or not at all, readable by its owner only.

    What stood at the path before stays until the new file is safely on the disk. Raises ExportFault.
    """
    target = path.resolve()
    try:
        _replace(target, content.encode("utf-8"))
    except OSError as fault:
        reason = fault.strerror or type(fault).__name__
        raise ExportFault(
            f"{path} could not be written: {reason}. Check that the folder exists, that you may write there, that the "
            "disk has room and that no other program has the file open. Nothing there was changed."
        ) from None


def _replace(target: Path, content: bytes) -> None:
    handle, name = tempfile.mkstemp(dir=target.parent, prefix=f".{target.name[:40]}.", suffix=".part")
    part = Path(name)
    try:
        with os.fdopen(handle, "wb") as stream:
            stream.write(content)
            stream.flush()
            os.fsync(stream.fileno())
        os.replace(part, target)
    except BaseException:
        part.unlink(missing_ok=True)
        raise
    _sync_folder(target.parent)


def _sync_folder(folder: Path) -> None:
    """Make the new name durable where the system lets a folder be opened; Windows does not and needs no such step."""
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def write_record(record: Record, path: Path, *, text: bool = True) -> None:
    """Write a record as JSON. Raises ExportFault.

    With text=False the note's own text is left out; the quoted words that prove each fact stay.
    """
    write_file(path, dump_record(record, text=text) + "\n")


def read_record(path: Path) -> Record:
    """Read a record that was written as JSON. Raises RecordRefused, naming the file."""
    try:
        with path.open("rb") as stream:
            data = stream.read(LARGEST_RECORD + 1)
    except OSError as fault:
        raise RecordRefused(f"{path} could not be read: {fault.strerror or type(fault).__name__}.") from None
    if len(data) > LARGEST_RECORD:
        raise RecordRefused(f"{path} is larger than {LARGEST_RECORD // 2**20} MB and is no record of a note.")
    try:
        return load_record(data)
    except RecordRefused as fault:
        raise RecordRefused(f"{path}: {fault}") from None
