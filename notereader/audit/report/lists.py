"""The report as tables: CSV after RFC 4180 in UTF-8 with a byte order mark, by which spreadsheets know UTF-8.

A text that a spreadsheet would take for a formula has an apostrophe before it (OWASP Application Security Verification
Standard 1.2.10).
"""

import csv
import io
from collections.abc import Callable, Iterable, Iterator, Sequence

from notereader.audit.criteria import Criterion, criteria
from notereader.audit.rates import Rate
from notereader.audit.report.notes import NoteLine
from notereader.audit.results import Results
from notereader.audit.states import STATE_WORDS, WORST_FIRST, note_state
from notereader.audit.tally import NoteCounts
from notereader.exchange.table import harmless
from notereader.record import Address

Cell = str | int | float | None
Row = Sequence[Cell]

COLUMNS: dict[str, dict[str, str]] = {
    "rates.csv": {
        "list": "needs (of a therapist), fields (of the record), or the key of a published standard",
        "criterion": "what is stated or not, as a key",
        "label": "the same in words",
        "weight": "how much it changes the work: 3 much, 2 some, 1 little",
        "column": "what the notes are grouped by; empty for all notes",
        "group": "the group",
        "counting": "notes (a note states it only where it states it for every tendon, pulley or finger), or places",
        "state": "stated, implied, silent or contradictory",
        "count": "notes or places in this state",
        "of": "notes or places to which it applies",
        "share": "count divided by of",
        "low": "lower limit of the 95 % interval of the share",
        "high": "upper limit",
    },
    "periods.csv": {
        "list": "as in rates.csv",
        "criterion": "as in rates.csv",
        "label": "the same in words",
        "period": "the period",
        "count": "notes that state it",
        "of": "notes to which it applies",
        "share": "count divided by of",
        "centre": "average share over all periods",
        "low": "lower limit of the chart",
        "high": "upper limit of the chart",
        "signals": "rules by which the point is a signal, parted by '; '",
    },
    "notes.csv": {
        "number": "number of the note in the source",
        "note": "its name, where names are shown",
        "date": "date of the operation",
        "status": "counted, refused, or left out because its record is counted instead",
        "confirmed": "yes where a person decided on every fact",
        "said": "why it was refused, or what to know of how it was read",
        "weighty_gaps": "how many of the facts that change the work most are missing or contradictory",
        "gaps": "needs the note is silent on, parted by '; '",
        "contradictory": "needs on which it contradicts itself, parted by '; '",
    },
    "states.csv": {
        "number": "number of the note in the source; the other columns are the criteria of rates.csv, by key",
    },
    "reader.csv": {
        "list": "as in rates.csv",
        "criterion": "as in rates.csv",
        "label": "the same in words",
        "found": "confirmed notes that state it, and the program found so",
        "missed": "confirmed notes that state it, and the program did not find so",
        "invented": "confirmed notes that do not, and the program found that they do",
        "rightly_none": "confirmed notes that do not, and the program found so",
        "sensitivity": "found of found and missed",
        "sensitivity_low": "lower limit of its 95 % interval",
        "sensitivity_high": "upper limit",
        "specificity": "rightly_none of rightly_none and invented",
        "specificity_low": "lower limit of its 95 % interval",
        "specificity_high": "upper limit",
        "share_as_read": "share of the notes as read that state it",
        "share_corrected": "the same corrected for reader error; empty where the sample cannot tell",
        "corrected_low": "lower limit of its 95 % interval",
        "corrected_high": "upper limit",
        "corrected_uncut": "corrected share before it was cut off at 0 and 1",
        "only_program_applies": "confirmed notes in which only the program found that it applies",
        "only_person_applies": "confirmed notes in which only the person did",
        "same_values": "places where both give a value and it is the same",
        "values": "places where both give a value",
    },
    "agreement.csv": {
        "field": "field of the record",
        "notes": "notes that both read",
        "places": "places compared; silence is a value",
        "same": "share of places that are the same",
        "kappa": "Cohen's kappa; empty where not defined",
        "kappa_low": "lower limit of its 95 % interval",
        "kappa_high": "upper limit",
        "alpha": "Krippendorff's alpha, nominal",
        "alpha_low": "lower limit of its 95 % interval",
        "alpha_high": "upper limit",
        "alpha_of_figures": "Krippendorff's alpha, interval, where both give a figure",
        "alpha_of_figures_low": "lower limit of its 95 % interval",
        "alpha_of_figures_high": "upper limit",
        "intervals": "what the intervals rest on",
    },
    "disagreements.csv": {
        "note": "the note",
        "fact": "the fact",
        "first": "what the first reader says; empty for silence",
        "second": "what the second reader says",
        "first_words": "words of the note behind the first; only where asked for",
        "second_words": "words of the note behind the second; only where asked for",
    },
    "contradictions.csv": {
        "check": "what was found",
        "kind": "contradiction (two statements cannot both hold) or implausible",
        "count": "notes",
        "of": "notes counted",
        "share": "count divided by of",
        "low": "lower limit of its 95 % interval",
        "high": "upper limit",
    },
    "facts.csv": {
        "number": "number of the note in the source; this table is written only where the words were asked for",
        "address": "where the fact stands: group/digit/part/side/field",
        "fact": "the same in words",
        "value": "the value",
        "words": "the words of the note that prove it",
    },
}


def tables(results: Results, lines: Callable[[], Iterable[NoteLine]]) -> Iterator[tuple[str, Iterable[Row]]]:
    """Yield every table with its file name and its rows, headings first."""
    made: dict[str, Iterable[Row]] = {
        "rates.csv": _rates(results),
        "periods.csv": _periods(results),
        "notes.csv": _notes(results, lines()),
        "states.csv": _states(lines()),
        "contradictions.csv": _contradictions(results),
    }
    if results.comparison is not None:
        made["reader.csv"] = _reader(results)
    if results.agreement is not None:
        made["agreement.csv"] = _agreement(results)
        made["disagreements.csv"] = _disagreements(results)
    if results.with_words:
        made["facts.csv"] = _facts(lines())
    yield from made.items()
    yield "columns.csv", _dictionary(list(made))


def csv_bytes(rows: Iterable[Row]) -> Iterator[bytes]:
    """Yield a table row by row as bytes of CSV."""
    yield b"\xef\xbb\xbf"
    stream = io.StringIO()
    writer = csv.writer(stream, quoting=csv.QUOTE_MINIMAL, lineterminator="\r\n")
    for row in rows:
        # A minus before a figure begins no formula: figures stay as they are.
        writer.writerow([harmless(cell) if isinstance(cell, str) else _number(cell) for cell in row])
        yield stream.getvalue().encode("utf-8", "replace")
        stream.seek(0)
        stream.truncate()


def _number(cell: Cell) -> Cell:
    # Six decimals are more than any of these figures can bear, and the same on every machine.
    return round(cell, 6) if isinstance(cell, float) else cell


def _head(name: str) -> Row:
    return list(COLUMNS[name])


def _of(criterion: Criterion) -> list[Cell]:
    return [criterion.kind, criterion.key, f"{criterion.label} ({criterion.group})"]


def _figures(rate: Rate) -> list[Cell]:
    return [rate.count, rate.of, rate.share, rate.low, rate.high]


def _rates(results: Results) -> Iterator[Row]:
    yield _head("rates.csv")
    counted = results.tally
    for criterion in criteria():
        begin = [*_of(criterion), criterion.weight]
        yield from _rate_rows([*begin, "", ""], criterion, counted.whole)
        for letter in WORST_FIRST:
            rate = counted.places.rate(criterion.key, letter)
            if rate.of:
                yield [*begin, "", "", "places", STATE_WORDS[letter], *_figures(rate)]
        for column, groups in counted.by_group.items():
            for name in sorted(groups):
                yield from _rate_rows([*begin, column, name], criterion, groups[name])


def _rate_rows(begin: list[Cell], criterion: Criterion, counts: NoteCounts) -> Iterator[Row]:
    if counts.of(criterion.key):
        for letter in WORST_FIRST:
            yield [*begin, "notes", STATE_WORDS[letter], *_figures(counts.rate(criterion.key, letter))]


def _periods(results: Results) -> Iterator[Row]:
    yield _head("periods.csv")
    for criterion in criteria():
        chart = results.charts.get(criterion.key)
        for p in chart.points if chart else ():
            figures = [p.count, p.of, p.share, chart.centre if chart else None, p.low, p.high]
            yield [*_of(criterion), p.period, *figures, "; ".join(p.signals)]


def _notes(results: Results, lines: Iterable[NoteLine]) -> Iterator[Row]:
    number, note, *rest = _head("notes.csv")
    yield [number, note, *results.tally.groups, *rest]
    for line in lines:
        told = [line.day, line.status, "yes" if line.confirmed else "no", line.said, line.heavy]
        yield [line.number, line.name, *line.groups, *told, "; ".join(line.gaps), "; ".join(line.contradictions)]


def _states(lines: Iterable[NoteLine]) -> Iterator[Row]:
    yield [*_head("states.csv"), *(criterion.key for criterion in criteria())]
    for line in lines:
        found = line.row.assessment
        if found is not None:
            states = (found.states.get(criterion.key) for criterion in criteria())
            yield [line.number, *(STATE_WORDS[note_state(letters)] if letters else "" for letters in states)]


def _contradictions(results: Results) -> Iterator[Row]:
    yield _head("contradictions.csv")
    for title, kind, rate in results.contradictions():
        yield [title, kind, *_figures(rate)]


def _reader(results: Results) -> Iterator[Row]:
    yield _head("reader.csv")
    for criterion in criteria():
        error = results.reader_error(criterion.key)
        if error is None or not (error.notes.stated or error.notes.silent or error.only_reader or error.only_person):
            continue
        counts = error.notes
        fixed = results.corrected(criterion.key)
        yield [
            *_of(criterion),
            *(counts.true_stated, counts.missed, counts.invented, counts.true_silent),
            *_figures(error.sensitivity())[2:],
            *_figures(error.specificity())[2:],
            results.tally.as_read.rate(criterion.key, "s").share,
            *((fixed.share, fixed.low, fixed.high, fixed.raw) if fixed else ("", "", "", "")),
            *(error.only_reader, error.only_person, error.same_values, error.values),
        ]


def _agreement(results: Results) -> Iterator[Row]:
    yield _head("agreement.csv")
    assert results.agreement is not None
    for f in results.agreement.fields:
        kappa = (f.kappa.value, f.kappa.low, f.kappa.high)
        alpha = (f.alpha.value, f.alpha.low, f.alpha.high)
        figures = (f.figures.value, f.figures.low, f.figures.high) if f.figures else (None, None, None)
        yield [f.key, f.notes, f.places, f.percent, *kappa, *alpha, *figures, f.interval]


def _disagreements(results: Results) -> Iterator[Row]:
    yield _head("disagreements.csv")
    for d in results.disagreements():
        yield [d.note, d.place, d.first, d.second, d.first_words, d.second_words]


def _facts(lines: Iterable[NoteLine]) -> Iterator[Row]:
    yield _head("facts.csv")
    for line in lines:
        found = line.row.assessment
        for address, value in found.values.items() if found else ():
            words = found.words.get(address, "") if found else ""
            yield [line.number, address, Address.parse(address).words(), value, words]


def _dictionary(files: list[str]) -> Iterator[Row]:
    yield ["file", "column", "meaning"]
    for name in files:
        for column, meaning in COLUMNS[name].items():
            yield [name, column, meaning]
