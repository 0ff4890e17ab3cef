"""Facts as a table in long form, one row for each fact, with a dictionary of its columns.

The form is RFC 4180 (commas, CRLF, quoted cells) in UTF-8 with a byte order mark, by which spreadsheets know UTF-8.
"""

import csv
import io
import re
from collections.abc import Iterable, Iterator
from pathlib import Path

from notereader.appraisal.cautions import all_cautions
from notereader.exchange.cautions import brief_caution_for
from notereader.exchange.files import write_file
from notereader.record import Address, Evidence, Fact, Interval, Record, Value, show_value
from notereader.vocabulary import FieldSpec, field_specs

COLUMNS = {
    "note_name": "name of the note",
    "note_sha256": "SHA-256 of the note's text; tells notes apart",
    "address": "where the fact stands: group/digit/part/side/field, '-' where one does not apply",
    "group": "operation, repairs, pulleys, injuries, aftercare or elements",
    "digit": "thumb, index, middle, ring or small; empty for wrist flexors and unnamed digits",
    "part": "tendon, pulley or other structure",
    "side": "slip of a tendon, or side of an injured structure: radial or ulnar",
    "field": "name of the field; its rows below say what it means",
    "label": "the field in words",
    "value": "the value; empty where the person found the note silent",
    "low": "lower figure of a number or range; empty where a range is open below",
    "high": "upper figure of a number or range; empty where a range is open above",
    "unit": "unit of the figures",
    "basis": "stated (the note's words say it), implied (follows from another fact), silent (the note does not say)",
    "status": "proposed (by the program, nobody confirmed it), confirmed, corrected, added or withdrawn (by a person)",
    "words": "the words of the note that prove it, several places parted by ' … '; line breaks as spaces",
    "start": "where the first of these words begins in the note, in Unicode code points from 0",
    "end": "where it ends, exclusive",
    "rivals": "other values the note also states, parted by ' … '",
    "look_twice": "the program's reasons to check it with care, parted by ' … '",
    "said_by": "who said it, where it comes from elsewhere than the note",
    "said_on": "when, as an ISO date",
    "reviewer": "who confirmed the whole record; empty where nobody did",
    "confirmed_at": "when, as an ISO time",
    "reader_version": "version of the program that proposed the facts",
    "caution": "what to keep in mind with facts of tendons, pulleys and motion; all cautions stand below",
}

Cell = str | float | None

_BETWEEN = " … "

# A spreadsheet takes a cell for a formula when it begins with one of these, plain or full width.
_FORMULA = re.compile(r"^(?=[\s\x00-\x1f]*[=+\-@＝＋－＠])")

# Where a spreadsheet parts cells at another mark than the comma, a cell may begin in mid-text too.
_FORMULA_WITHIN = re.compile(r"(?<=[;|\t])(?=[\s\x00-\x1f]*[=+\-@＝＋－＠])")


def facts_csv(records: Iterable[Record], *, words: bool = True) -> str:
    """Return the facts of records as CSV text; with words=False the words of the note are left out."""
    rows = (fact_row(record, place, fact, words) for record in records for place, fact in record.walk())
    return _csv([[*COLUMNS], *rows])


def columns_csv() -> str:
    """Return the dictionary of the table as CSV text: its columns, every field with its values, and the cautions."""
    note = "a text that a spreadsheet would take for a formula has an apostrophe before it"
    rows: list[list[Cell]] = [["kind", "name", "meaning", "values", "unit"], *dictionary_rows()]
    rows.append(["note", "apostrophe", note, "", ""])
    rows += [["caution", str(number), text, "", ""] for number, text in enumerate(all_cautions(), 1)]
    return _csv(rows)


def dictionary_rows() -> list[list[Cell]]:
    """Return for each column and each field: kind of row, name, meaning, possible values, unit."""
    columns: list[list[Cell]] = [["column", name, meaning, "", ""] for name, meaning in COLUMNS.items()]
    return columns + [_field_row(spec) for specs in field_specs().values() for spec in specs.values()]


def write_facts(records: Iterable[Record], path: Path, *, words: bool = True) -> Path:
    """Write the table and, beside it, its dictionary; return the dictionary's path. Raises ExportFault."""
    dictionary = path.with_name(f"{path.stem}-columns.csv")
    write_file(dictionary, columns_csv())
    write_file(path, facts_csv(records, words=words))
    return dictionary


def harmless(text: str) -> str:
    """Return a text that no spreadsheet takes for a formula, with an apostrophe where one would begin."""
    return _FORMULA_WITHIN.sub("'", _FORMULA.sub("'", " ".join(text.splitlines())))


def _csv(rows: Iterable[list[Cell]]) -> str:
    stream = io.StringIO()
    writer = csv.writer(stream, quoting=csv.QUOTE_ALL, lineterminator="\r\n")
    # A minus before a figure begins no formula: figures stay as they are.
    writer.writerows([harmless(cell) if isinstance(cell, str) else cell for cell in row] for row in rows)
    return "\ufeff" + stream.getvalue()


def fact_row(record: Record, place: Address, fact: Fact, words: bool) -> list[Cell]:
    """Return the cells of a fact in the order of COLUMNS; without `words`, no words of the note."""
    spec = field_specs()[place.group][place.field]
    low, high = _figures(fact.value)
    span = next((evidence.span for evidence in fact.evidence if evidence.span), (None, None))
    review = record.review
    return [
        record.note.name,
        record.note.sha256,
        place.text(),
        place.group,
        place.digit,
        place.part,
        place.side,
        place.field,
        spec.label,
        _shown(fact.value),
        low,
        high,
        spec.unit if low is not None or high is not None else "",
        fact.basis,
        fact.status,
        _quotes(fact.evidence) if words else "",
        *span,
        _BETWEEN.join(str(_shown(rival.value)) for rival in fact.rivals),
        _BETWEEN.join(fact.look_twice) if words else "",
        fact.said_by,
        fact.said_on.isoformat() if fact.said_on else None,
        review.reviewer,
        review.confirmed_at.isoformat() if review.confirmed_at else None,
        review.reader_version,
        brief_caution_for(place),
    ]


def _figures(value: Value | None) -> tuple[float | None, float | None]:
    if isinstance(value, Interval):
        return _figure(value.low), _figure(value.high)
    if isinstance(value, bool) or not isinstance(value, int | float):
        return None, None
    return _figure(value), _figure(value)


def _figure(value: float | None) -> float | None:
    """Return a whole figure without a decimal point."""
    return int(value) if value is not None and float(value).is_integer() else value


def _shown(value: Value | None) -> str | float:
    if value is None:
        return ""
    low, high = _figures(value)
    return low if low is not None and low == high else show_value(value)


def _quotes(evidence: list[Evidence]) -> str:
    return _BETWEEN.join(each.exact for each in evidence if each.exact)


def _field_row(spec: FieldSpec) -> list[Cell]:
    return ["field", f"{spec.group}.{spec.name}", spec.meaning or spec.label, "; ".join(_values(spec)), spec.unit]


def _values(spec: FieldSpec) -> Iterator[str]:
    yield from spec.values
    if spec.low is not None and spec.high is not None:
        yield f"{spec.low:g} to {spec.high:g}"
    kinds = {
        "size": "USP size such as 4-0",
        "date": "ISO date",
        "yes-no": "yes or no",
        "named": "yes: it is in the note",
    }
    if spec.kind in kinds:
        yield kinds[spec.kind]
