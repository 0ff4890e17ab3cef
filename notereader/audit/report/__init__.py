"""The report of an audit: a page, a print, tables and JSON."""

from collections.abc import Collection, Iterable, Iterator
from pathlib import Path

from notereader.audit.journal import Journal
from notereader.audit.report.charts import looks
from notereader.audit.report.data import json_text
from notereader.audit.report.files import written
from notereader.audit.report.lists import csv_bytes, tables
from notereader.audit.report.notes import NoteLine, note_lines
from notereader.audit.report.page import page
from notereader.audit.report.paper import print_report
from notereader.audit.results import PARTS, Part, Results

PAGE, PAPER, DATA = "report.html", "report.pdf", "audit.json"

__all__ = ["DATA", "PAGE", "PAPER", "write_report"]


def write_report(results: Results, journal: Journal, folder: Path, parts: Collection[Part] = PARTS) -> list[Path]:
    """Write parts of the report into a folder; return the files, the page first.

    The same results and journal give the same bytes. Raises AuditFault.
    """
    files: list[Path] = []

    def lines() -> Iterator[NoteLine]:
        return note_lines(results, journal.rows(), folder)

    def put(name: str, pieces: Iterable[bytes]) -> None:
        with written(folder / name) as stream:
            stream.writelines(pieces)
        files.append(folder / name)

    with looks():
        if "page" in parts:
            put(PAGE, (piece.encode("utf-8", "replace") for piece in page(results, lines())))
        if "print" in parts:
            with written(folder / PAPER) as stream:
                print_report(results, stream)
            files.append(folder / PAPER)
    if "data" in parts:
        put(DATA, (piece.encode("utf-8", "replace") for piece in json_text(results, lines())))
    if "tables" in parts:
        for name, rows in tables(results, lines):
            put(name, csv_bytes(rows))
    return files
