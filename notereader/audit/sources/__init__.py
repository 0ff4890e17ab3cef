"""Where the notes of an audit come from: a folder, a table, the casebook, exported records."""

from pathlib import Path

from notereader.audit.faults import AuditFault
from notereader.audit.sources.base import FOLDER, FROM_RECORD, NoteInput, Source
from notereader.audit.sources.cases import CasebookSource
from notereader.audit.sources.folder import FolderSource
from notereader.audit.sources.spreadsheet import Columns, SpreadsheetSource, headings_of, likely_text, sheets_of

TABLES = (".csv", ".tsv", ".tab", ".xlsx", ".xlsm")
_SQLITE = b"SQLite format 3\x00"

__all__ = [
    "FOLDER",
    "FROM_RECORD",
    "TABLES",
    "CasebookSource",
    "Columns",
    "FolderSource",
    "NoteInput",
    "Source",
    "SpreadsheetSource",
    "headings_of",
    "likely_text",
    "open_source",
    "sheets_of",
]


def open_source(place: str | Path, columns: Columns | None = None) -> Source:
    """Open a source of notes by what it is: a folder, a table, the file of a casebook or the URL of one.

    `columns` says which columns of a table hold what. Raises AuditFault where it is none of these.
    """
    if isinstance(place, str) and "://" in place:
        return CasebookSource(place)
    path = Path(place).expanduser()
    if path.is_dir():
        return FolderSource(path)
    if not path.exists():
        raise AuditFault(f"There is no file or folder {path}. Check the name.")
    if path.suffix.lower() in TABLES:
        return SpreadsheetSource(path, columns or Columns())
    if _begins(path) == _SQLITE:
        return CasebookSource(path)
    raise AuditFault(
        f"{path.name} is no source of many notes. Choose a folder, a table (.csv, .tsv, .xlsx) or the file of a "
        "casebook."
    )


def _begins(path: Path) -> bytes:
    try:
        with path.open("rb") as stream:
            return stream.read(len(_SQLITE))
    except OSError as fault:
        raise AuditFault(f"{path} cannot be read ({fault.strerror or fault}).") from None
