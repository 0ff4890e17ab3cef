"""Helps the audit's tests: folders of notes, audits with one line, the files of a report."""

import csv
import io
from collections.abc import Collection, Sequence
from datetime import date
from pathlib import Path
from typing import Any

from demo_notes import DemoNote, demo_notes

from notereader.audit.audit import Audit, Outcomes, Settings
from notereader.audit.results import PARTS, Part
from notereader.audit.sources import Columns, Source, open_source
from notereader.casebook import Casebook
from notereader.record import Address, Fact, Record, dump_record

DAY = date(2033, 1, 1)

PLAIN = Settings(day=DAY)


def folder_of(place: Path, notes: Sequence[DemoNote]) -> Path:
    """Write notes as text files, one folder for each site."""
    for note in notes:
        (place / note.site).mkdir(parents=True, exist_ok=True)
        (place / note.site / note.name).write_text(note.text, encoding="utf-8")
    return place


def table_of(place: Path, notes: Sequence[DemoNote]) -> Path:
    """Write notes as a table with columns to group by."""
    with place.open("w", encoding="utf-8", newline="") as stream:
        rows = csv.writer(stream)
        rows.writerow(["id", "note text", "site", "surgeon", "operated"])
        rows.writerows([n.name, n.text, n.site, n.surgeon, n.day.isoformat()] for n in notes)
    return place


def truth_of(place: Path, notes: Sequence[DemoNote]) -> Path:
    """Write the true records as JSON files."""
    place.mkdir(parents=True, exist_ok=True)
    for note in notes:
        (place / note.name).with_suffix(".json").write_text(dump_record(note.truth), encoding="utf-8")
    return place


def audited(
    source: Source,
    out: Path,
    settings: Settings = PLAIN,
    *,
    resume: bool = False,
    parts: Collection[Part] = PARTS,
    **how: Any,
) -> Outcomes:
    """Carry out an audit and write these parts of its report; charts and print take longer than all the rest."""
    audit = Audit(source, out, settings, resume=resume)
    try:
        audit.read(**how)
        sample, results = audit.draw(), audit.results()
        return Outcomes(results, tuple(audit.write(results, out, parts)), sample)
    finally:
        audit.close()


def counted(source: Source, out: Path, settings: Settings = PLAIN, **how: Any) -> Outcomes:
    """Carry out an audit without a report."""
    return audited(source, out, settings, parts=(), **how)


def small_audit(place: Path, number: int = 6, settings: Settings = PLAIN, **how: Any) -> Outcomes:
    """Audit a few notes of a folder."""
    notes = folder_of(place / "notes", demo_notes(number))
    return audited(open_source(notes), place / "out", settings, **how)


def bytes_of(folder: Path) -> dict[str, bytes]:
    """Return every file of a report by name."""
    kept = {".html", ".pdf", ".csv", ".json"}
    return {path.name: path.read_bytes() for path in sorted(folder.iterdir()) if path.suffix in kept}


def rows_of(path: Path) -> list[dict[str, str]]:
    """Return the rows of a table of the report."""
    return list(csv.DictReader(io.StringIO(path.read_text(encoding="utf-8-sig"), newline="")))


def person_confirms(sample: Path, notes: Sequence[DemoNote], place: Path) -> Path:
    """Return a casebook in which every case of a sample is as a careful person would confirm it."""
    truth = {note.truth.note.sha256: note.truth for note in notes}
    drawn, confirmed = Casebook(sample), Casebook(place)
    for line in drawn.cases(limit=10_000):
        confirmed.add(truth[drawn.open(line.id).record.note.sha256])
    drawn.close()
    confirmed.close()
    return place


def record_with(facts: dict[str, Any], **more: Any) -> Record:
    """Return a record from address lines and values or facts: {'repairs/ring/FDP/-/strands': 4}."""
    record = Record(**more)
    for line, value in facts.items():
        fact = value if isinstance(value, Fact) else Fact(value=value, status="confirmed")
        record.put(Address.parse(line), fact)
    return record


def table_source(path: Path, **columns: Any) -> Source:
    """Open a table with named columns."""
    return open_source(path, Columns(**columns))
