"""Files written piece by piece, whole or not at all, readable by their owner only."""

import os
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO

from notereader.audit.faults import AuditFault


@contextmanager
def written(path: Path) -> Iterator[IO[bytes]]:
    """Open a file for writing; what stood there before stays until all is written. Raises AuditFault."""
    try:
        handle, name = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name}.", suffix=".part")
    except OSError as fault:
        raise _fault(path, fault) from None
    part = Path(name)
    try:
        with os.fdopen(handle, "wb") as stream:
            yield stream
            stream.flush()
            os.fsync(stream.fileno())
        part.replace(path)
    except OSError as fault:
        raise _fault(path, fault) from None
    finally:
        part.unlink(missing_ok=True)


def _fault(path: Path, fault: OSError) -> AuditFault:
    return AuditFault(
        f"{path} could not be written: {fault.strerror or fault}. Check that the disk has room and that no other "
        "program has the file open."
    )
