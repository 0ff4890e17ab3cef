"""The report of an audit: a page, a print, tables and JSON."""

from pathlib import Path

from notereader.audit.journal import Journal
from notereader.audit.report.charts import looks
from notereader.audit.report.data import json_text
from notereader.audit.report.files import written
from notereader.audit.report.lists import csv_bytes, tables
from notereader.audit.report.notes import note_lines
from notereader.audit.report.page import page
from notereader.audit.report.paper import print_report
from notereader.audit.results import Results

PAGE, PAPER, DATA = "report.html", "report.pdf", "audit.json"

__all__ = ["DATA", "PAGE", "PAPER", "write_report"]


def write_report(results: Results, journal: Journal, folder: Path) -> list[Path]:
    """Write the page, the print, the tables and the JSON into a folder; return the files, the page first.

    The same results and journal give the same bytes. Raises AuditFault.
    """
    with looks():
        with written(folder / PAGE) as stream:
            for piece in page(results, note_lines(results, journal, folder)):
                stream.write(piece.encode("utf-8", "replace"))
        with written(folder / PAPER) as stream:
            print_report(results, stream)
    with written(folder / DATA) as stream:
        for piece in json_text(results, note_lines(results, journal, folder)):
            stream.write(piece.encode("utf-8", "replace"))
    files = [folder / PAGE, folder / PAPER, folder / DATA]
    for name, rows in tables(results, lambda: note_lines(results, journal, folder)):
        with written(folder / name) as stream:
            stream.writelines(csv_bytes(rows))
        files.append(folder / name)
    return files
