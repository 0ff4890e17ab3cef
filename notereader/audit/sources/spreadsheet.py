"""A table with a note in each row: CSV in any common form, or an Excel workbook."""

import csv
import hashlib
import re
import zipfile
from collections import Counter
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path
from typing import IO, Any

from notereader.audit.faults import AuditFault
from notereader.audit.sources.base import FROM_RECORD, NoteInput
from notereader.intake.limits import MAX_TEXT_BYTES, MAX_UNPACKED_BYTES
from notereader.intake.plain import decode

# A cell of an Excel sheet holds no more characters than this; a longer note was cut off when it was put in.
EXCEL_CELL = 32_767

_DELIMITERS = ",;\t|"
# Names that a text column often has, where nobody named it.
_TEXT_NAMES = ("text", "note", "note_text", "note text", "operative note", "operation note", "op note", "report")
_LOOKED_AT = 65_536

Row = Sequence[object]


@dataclass(frozen=True, slots=True)
class Columns:
    """Which column holds what, by its heading; '' where there is none or it is to be guessed."""

    text: str = ""
    file: str = ""
    name: str = ""
    day: str = ""
    day_first: bool | None = None
    sheet: str = ""


def headings_of(path: Path, sheet: str = "") -> tuple[str, ...]:
    """Return the headings of a table. Raises AuditFault where it cannot be read or has no such sheet."""
    return _headings(_workbook_rows(path, sheet) if is_workbook(path) else _csv_rows(path))


def sheets_of(path: Path) -> tuple[str, ...]:
    """Return the names of the sheets of a workbook, none for another table. Raises AuditFault."""
    if not is_workbook(path):
        return ()
    with _opened(path) as book:
        return tuple(book.sheetnames)


def is_workbook(path: Path) -> bool:
    """Return whether a table is an Excel workbook, by the ending of its name."""
    return path.suffix.lower() in (".xlsx", ".xlsm")


def likely_text(headings: Sequence[str]) -> str:
    """Return the heading of the column that holds the text of the notes by its name, '' where none does."""
    folded = {heading.casefold(): heading for heading in reversed(headings)}
    return next((folded[name] for name in _TEXT_NAMES if name in folded), "")


class SpreadsheetSource:
    """The rows of a table below its headings. Raises AuditFault where a column that is asked for is missing."""

    def __init__(self, path: Path, columns: Columns) -> None:
        self._path = path
        self._asked = columns
        self.headings = _headings(self._rows())
        self._text = self._find("text", columns.text) if not columns.file else None
        self._file = self._find("file", columns.file) if columns.file else None
        self._name = self._find("name", columns.name) if columns.name else None
        self._day = self._find("date", columns.day) if columns.day else None
        self.words = f"the table {path.name}"
        self.identity = f"table {path.resolve()} {columns}"
        self.columns: tuple[str, ...] = (*dict.fromkeys(h for h in self.headings if h), *FROM_RECORD)

    def inputs(self) -> Iterator[NoteInput]:
        """Yield the note of every row that is not empty."""
        rows = self._rows()
        next(rows)
        for number, row in enumerate(rows, 2):
            cells = [_shown(cell) for cell in row]
            cells += [""] * (len(self.headings) - len(cells))
            if any(cells):
                yield self._input(number, cells, row)

    def count(self) -> int | None:
        """Return the number of rows with something in them: going through them is nothing beside reading the notes."""
        rows = self._rows()
        next(rows)
        return sum(any(map(_shown, row)) for row in rows)

    def close(self) -> None:
        """Do nothing: the table is open only while its rows are gone through."""

    def _input(self, number: int, cells: list[str], row: Row) -> NoteInput:
        key = f"row {number}"
        label = cells[self._name] if self._name is not None else ""
        content: Path | str
        if self._file is not None:
            content = self._path.parent / cells[self._file]
        else:
            assert self._text is not None
            content = cells[self._text]
        kept = tuple((h, " ".join(c.split())) for at, (h, c) in enumerate(self._pairs(cells)) if h and at != self._text)
        return NoteInput(
            key=key,
            name=f"{key}: {label}" if label else key,
            stamp=_stamp(cells, content),
            kind="file" if self._file is not None else "text",
            content=content,
            link=content.absolute() if isinstance(content, Path) else self._path.absolute(),
            columns=kept,
            day=_day(row[self._day], self._asked.day_first) if self._day is not None and self._day < len(row) else "",
        )

    def _pairs(self, cells: list[str]) -> Iterator[tuple[str, str]]:
        return zip(self.headings, cells, strict=False)

    def _find(self, what: str, heading: str) -> int:
        """Return the place of a column; a text column that nobody named is told by its heading."""
        folded = [h.casefold() for h in self.headings]
        wanted = [heading.casefold()] if heading else list(_TEXT_NAMES)
        for name in wanted:
            if name in folded:
                return folded.index(name)
        known = ", ".join(h for h in self.headings if h) or "none"
        if heading:
            raise AuditFault(f"{self._path.name} has no column '{heading}'. Its columns are: {known}.")
        raise AuditFault(
            f"Which column of {self._path.name} holds the {what} of the notes? Name it. Its columns are: {known}."
        )

    def _rows(self) -> Iterator[Row]:
        if is_workbook(self._path):
            return _workbook_rows(self._path, self._asked.sheet)
        return _csv_rows(self._path)


def _headings(rows: Iterator[Row]) -> tuple[str, ...]:
    return tuple(" ".join(_shown(cell).split()) for cell in next(rows, ()))


def _stamp(cells: list[str], content: Path | str) -> str:
    """Return what changes when the row changes, or the file that it names."""
    seen = "\0".join(cells)
    if isinstance(content, Path) and content.exists():
        seen += f"\0{content.stat().st_size}:{content.stat().st_mtime_ns}"
    return hashlib.sha256(seen.encode("utf-8", "surrogatepass")).hexdigest()[:16]


def _csv_rows(path: Path) -> Iterator[Row]:
    # The standard limit of 131,072 characters is less than a long note.
    csv.field_size_limit(4 * MAX_TEXT_BYTES)
    with _faults_named(path), path.open("rb") as raw:
        start = raw.read(_LOOKED_AT)
    codec = "utf-16" if start.startswith((b"\xff\xfe", b"\xfe\xff")) else "utf-8-sig"
    sample = start.decode(codec, "replace")
    with _faults_named(path), path.open(encoding=codec, errors="surrogateescape", newline="") as stream:
        for row in csv.reader(_without_nul(stream), delimiter=_delimiter(sample)):
            yield [_mended(cell) for cell in row]


def _without_nul(stream: IO[str]) -> Iterator[str]:
    return (line.replace("\0", "") for line in stream)


def _mended(cell: str) -> str:
    """Return a cell in which bytes that are not UTF-8 are read as Windows-1252."""
    try:
        cell.encode("utf-8")
    except UnicodeEncodeError:
        return decode(cell.encode("utf-8", "surrogateescape")).text
    return cell


def _delimiter(sample: str) -> str:
    """Return what parts the headings: the most frequent of the usual marks outside quotes in the first line."""
    headings = re.sub(r'"[^"]*"', "", sample).splitlines()[:1]
    counted = Counter(c for c in "".join(headings) if c in _DELIMITERS)
    return counted.most_common(1)[0][0] if counted else ","


def _workbook_rows(path: Path, sheet: str) -> Iterator[Row]:
    with _opened(path) as book:
        if sheet and sheet not in book.sheetnames:
            raise AuditFault(f"{path.name} has no sheet '{sheet}'. Its sheets are: {', '.join(book.sheetnames)}.")
        page = book[sheet or book.sheetnames[0]]
        # The size that some programs write down is wrong, and rows beyond it would be lost.
        page.reset_dimensions()
        yield from page.iter_rows(values_only=True)


@contextmanager
def _opened(path: Path) -> Iterator[Any]:
    from openpyxl import load_workbook

    with _faults_named(path):
        _refuse_swollen(path)
        book = load_workbook(path, read_only=True, data_only=True)
        try:
            yield book
        finally:
            book.close()


def _refuse_swollen(path: Path) -> None:
    with zipfile.ZipFile(path) as packed:
        if sum(part.file_size for part in packed.infolist()) > MAX_UNPACKED_BYTES:
            raise AuditFault(
                f"{path.name} unpacks to more than {MAX_UNPACKED_BYTES // 1_000_000} MB. "
                "Save it as CSV, which can be read row by row."
            )


@contextmanager
def _faults_named(path: Path) -> Iterator[None]:
    try:
        yield
    except csv.Error as fault:
        raise AuditFault(f"{path.name} cannot be read as a table: {fault}. Save it again as CSV in UTF-8.") from None
    except UnicodeError:
        raise AuditFault(f"{path.name} is not in a known encoding. Save it again as CSV in UTF-8.") from None
    except OSError as fault:
        raise AuditFault(f"{path} cannot be read ({fault.strerror or fault}).") from None
    except (zipfile.BadZipFile, KeyError, ValueError, SyntaxError):
        # Broken XML is a SyntaxError.
        raise AuditFault(
            f"{path.name} is no Excel workbook that can be read: it is damaged, of the old .xls kind, or protected by "
            "a password. Open it and save it as .xlsx or CSV without a password."
        ) from None


def _shown(cell: object) -> str:
    if cell is None:
        return ""
    if isinstance(cell, datetime):
        return cell.date().isoformat() if (cell.hour, cell.minute, cell.second) == (0, 0, 0) else cell.isoformat(" ")
    if isinstance(cell, float) and cell.is_integer():
        return str(int(cell))
    return str(cell)


_ISO = re.compile(r"\s*(\d{4})-(\d\d?)-(\d\d?)(?!\d)")
_NUMERIC = re.compile(r"\s*(\d\d?)([./-])(\d\d?)\2(\d{4})(?!\d)")


def _day(cell: object, day_first: bool | None) -> str:
    """Return a cell as an ISO date, '' where it is none or its order cannot be told."""
    if isinstance(cell, date):
        return (cell.date() if isinstance(cell, datetime) else cell).isoformat()
    text = str(cell or "")
    if found := _ISO.match(text):
        year, month, day = map(int, found.groups())
    elif found := _NUMERIC.match(text):
        first, second, year = int(found[1]), int(found[3]), int(found[4])
        first_is_day = day_first if day_first is not None else _order(first, second, found[2])
        if first_is_day is None:
            return ""
        day, month = (first, second) if first_is_day else (second, first)
    else:
        return ""
    try:
        return date(year, month, day).isoformat()
    except ValueError:
        return ""


def _order(first: int, second: int, mark: str) -> bool | None:
    """Return whether the day comes first: points are written so; else a figure above 12 tells."""
    if mark == "." or first > 12 or first == second:
        return True
    return False if second > 12 else None
