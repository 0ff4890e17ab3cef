"""A folder of notes and exported records, with its folders within."""

import os
from collections.abc import Iterator
from pathlib import Path

from notereader.audit.faults import AuditFault
from notereader.audit.sources.base import FOLDER, FROM_RECORD, NoteInput

# Files that lie beside notes and never are any; everything else is tried, and refused by name where it is no note.
_BESIDE_NOTES = frozenset([".db", ".ini", ".lnk", ".csv", ".xlsx"])


class FolderSource:
    """Every file of a folder and the folders within, in the order of their names. Hidden files are left out."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self.words = f"the folder {folder.name or folder}"
        self.identity = f"folder {folder.resolve()}"
        self.columns: tuple[str, ...] = (FOLDER, *FROM_RECORD)

    def inputs(self) -> Iterator[NoteInput]:
        """Yield every file."""
        for path in self._paths():
            # A name in another encoding could not be written down as it is.
            name = path.relative_to(self._folder).as_posix().encode("utf-8", "backslashreplace").decode()
            about = path.lstat()
            group = name.split("/")[0] if "/" in name else "(no folder)"
            yield NoteInput(
                key=name,
                name=name,
                stamp=f"{about.st_size}:{about.st_mtime_ns}",
                kind="file",
                content=path,
                link=path.absolute(),
                columns=((FOLDER, group),),
            )

    def count(self) -> int | None:
        """Return the number of files."""
        return sum(1 for _ in self._paths())

    def close(self) -> None:
        """Do nothing: no file is open between notes."""

    def _paths(self) -> Iterator[Path]:
        for where, folders, names in os.walk(self._folder, onerror=self._unreadable):
            here = Path(where)
            folders[:] = sorted(name for name in folders if not name.startswith("."))
            for name in sorted(names):
                if not name.startswith(".") and Path(name).suffix.lower() not in _BESIDE_NOTES:
                    yield here / name

    def _unreadable(self, fault: OSError) -> None:
        raise AuditFault(
            f"The folder {fault.filename} cannot be read ({fault.strerror}). "
            "Ask its owner for leave, or choose another."
        )
