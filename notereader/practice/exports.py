"""Markings, progress and the teacher's view as JSON and as tables; what was written is read in again."""

import csv
import io
import json
from collections.abc import Iterable, Iterator, Sequence
from pathlib import Path
from typing import Any

from pydantic import BaseModel, ValidationError

from notereader.exchange import ExportFault, write_file
from notereader.exchange.table import harmless
from notereader.practice.faults import PracticeFault
from notereader.practice.marks import MARKING_FORMAT, MARKING_VERSION, Marking, Words
from notereader.practice.progress import Progress
from notereader.practice.teacher import TeacherView

EXPORT_FORMAT = "notereader-markings"
EXPORT_VERSION = 1
LARGEST_EXPORT = 128 * 1024 * 1024

FACT_COLUMNS = (
    "student",
    "case",
    "difficulty",
    "handed_in_at",
    "address",
    "field",
    "kind",
    "outcome",
    "over_stated",
    "said",
    "key",
    "points",
    "worth",
    "sentence",
    "words_marked",
    "words_of_the_key",
)
PROGRESS_COLUMNS = ("student", "kind", "label", "case", "when", "right", "trials", "over", "estimate", "low", "high")

Cell = str | float | None


def export_json(markings: Iterable[Marking], progress: Progress | None = None, *, words: bool = False) -> str:
    """Return markings as JSON text to hand to a teacher; the note's words only with words=True."""
    chosen = [marking if words else marking.without_words() for marking in markings]
    data: dict[str, Any] = {
        "format": EXPORT_FORMAT,
        "format_version": EXPORT_VERSION,
        "cautions": chosen[0].cautions if chosen else [],
        "markings": [marking.model_dump(mode="json") for marking in chosen],
    }
    if progress is not None:
        data["progress"] = progress.model_dump(mode="json")
    return json.dumps(data, ensure_ascii=False, indent=1) + "\n"


def model_json(model: BaseModel) -> str:
    """Return the progress or the teacher's view as JSON text."""
    return json.dumps(model.model_dump(mode="json"), ensure_ascii=False, indent=1) + "\n"


def read_markings(path: Path) -> list[Marking]:
    """Read markings that were written one by one or as an export. Raises PracticeFault naming the file."""
    try:
        with path.open("rb") as stream:
            data = stream.read(LARGEST_EXPORT + 1)
        raw = json.loads(data) if len(data) <= LARGEST_EXPORT else None
    except OSError as fault:
        raise PracticeFault(f"{path} could not be read: {fault.strerror or type(fault).__name__}.") from None
    except (ValueError, RecursionError):
        raise PracticeFault(f"{path} holds no markings: it is not readable JSON.") from None
    raw = raw if isinstance(raw, dict) else {}
    form = raw.get("format")
    if form not in (EXPORT_FORMAT, MARKING_FORMAT):
        raise PracticeFault(f"{path} holds no markings of notereader.")
    version, newest = raw.get("format_version"), EXPORT_VERSION if form == EXPORT_FORMAT else MARKING_VERSION
    if isinstance(version, int) and version > newest:
        raise PracticeFault(f"{path} was written by a newer notereader (format {version}). Update this one to open it.")
    try:
        return [Marking.model_validate(one) for one in (raw.get("markings", []) if form == EXPORT_FORMAT else [raw])]
    except ValidationError as fault:
        first = fault.errors(include_url=False, include_context=False)[0]
        where = ".".join(str(part) for part in first["loc"])
        raise PracticeFault(f"{path} is faulty at {where}: {first['msg']}.") from None


def facts_csv(markings: Iterable[Marking], *, words: bool = False) -> str:
    """Return one row for each marked fact, contradiction and misfiled entry; the note's words only with words=True."""
    chosen = list(markings)
    rows = [row for marking in chosen for row in _rows(marking, words)]
    return _table(FACT_COLUMNS, rows, chosen[0].cautions[0] if chosen else "")


def progress_csv(progress: Progress) -> str:
    """Return one row for each kind and case, with the estimate after it."""
    rows: list[list[Cell]] = [
        [
            progress.student,
            kind.key,
            kind.label,
            point.case,
            point.when.isoformat() if point.when else "",
            point.right,
            point.trials,
            point.over,
            point.middle,
            point.low,
            point.high,
        ]
        for kind in progress.kinds
        for point in kind.points
    ]
    return _table(PROGRESS_COLUMNS, rows, progress.caution)


def teacher_csv(view: TeacherView) -> str:
    """Return one row for each field with its difficulty and discrimination."""
    columns = tuple(view.fields[0].model_dump()) if view.fields else ("field",)
    return _table(columns, [list(line.model_dump().values()) for line in view.fields], view.caution)


def save_text(path: Path, content: str) -> None:
    """Write an export, whole or not at all, readable by its owner only. Raises PracticeFault."""
    try:
        write_file(path, content)
    except ExportFault as fault:
        raise PracticeFault(str(fault)) from None


def _rows(marking: Marking, words: bool) -> Iterator[list[Cell]]:
    head: list[Cell] = [marking.student, marking.case, marking.difficulty, _when(marking)]
    for m in marking.facts:
        what: list[Cell] = [m.address, m.field, m.kind, m.outcome, "yes" if m.over else "no", m.said, m.true]
        quotes = [_quotes(m.said_words), _quotes(m.key_words)] if words else ["", ""]
        yield [*head, *what, m.points, m.worth, m.sentence, *quotes]
    for e in marking.entries:
        if not e.right:
            filed: list[Cell] = [e.address, "", "whose", "wrong", "no", e.filed_under, e.where]
            yield [*head, *filed, e.points, 0.0, e.sentence, "", ""]
    for hit in marking.contradictions:
        named: list[Cell] = ["; ".join(hit.places), "", "contradictions", hit.outcome, "no", "", hit.title]
        yield [*head, *named, hit.points, hit.worth, hit.sentence, "", ""]


def _quotes(words: Iterable[Words]) -> str:
    return " … ".join(w.quote for w in words)


def _when(marking: Marking) -> str:
    return marking.handed_in_at.isoformat() if marking.handed_in_at else ""


def _table(columns: Sequence[str], rows: Iterable[Sequence[Cell]], caution: str) -> str:
    """Return RFC 4180 text with a byte order mark; the caution stands in a column of its own, in the first row.

    No cell can be taken for a formula: a text that would be gets an apostrophe before it. Figures stay figures.
    """
    stream = io.StringIO()
    writer = csv.writer(stream, quoting=csv.QUOTE_ALL, lineterminator="\r\n")
    writer.writerow([*columns, "caution"])
    for number, row in enumerate(rows):
        cells = [harmless(cell) if isinstance(cell, str) else cell for cell in row]
        writer.writerow([*cells, harmless(caution) if number == 0 else ""])
    return "\ufeff" + stream.getvalue()
