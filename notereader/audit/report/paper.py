"""The report on paper: a PDF of charts and tables, drawn by matplotlib."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from typing import IO, Any

from matplotlib.backends.backend_pdf import PdfPages
from matplotlib.figure import Figure
from matplotlib.font_manager import FontProperties
from matplotlib.layout_engine import ConstrainedLayoutEngine
from matplotlib.textpath import text_to_path

from notereader.audit.criteria import NEEDS, criteria_lists
from notereader.audit.report.charts import MOST_CHARTS, PRINT, corrected_chart, period_charts, state_chart
from notereader.audit.report.page import sample_words, summary
from notereader.audit.report.rows import (
    AGREEMENT_HEAD,
    SIGNAL_HEAD,
    agreement_lines,
    groups_shown,
    label_of,
    signal_lines,
)
from notereader.audit.report.words import corrected_words, notes_words, rate_words
from notereader.audit.results import Results
from notereader.audit.states import CONTRADICTORY, IMPLIED, SILENT, STATED
from notereader.audit.tables import audit_tables

# A4 upright, in inches; lines are counted in points.
WIDTH, HEIGHT = 8.27, 11.69
LEFT, TOP, BOTTOM = 0.75, 0.8, 0.8
LINE = 12.0
TEXT_SIZE, TABLE_SIZE, HEADING_SIZE, TITLE_SIZE = 9.0, 7.6, 12.5, 18.0
CHARTS_TO_A_PAGE = 8
GROUPS_ACROSS = 4
# Points across the page, down the page, and between the columns of a table.
_ACROSS = (WIDTH - 2 * LEFT) * 72
_DOWN = (HEIGHT - TOP - BOTTOM) * 72
_BETWEEN = 6.0


@dataclass(slots=True)
class Paper:
    """Pages that are filled from the top; a new one is begun where there is no room."""

    pages: PdfPages
    foot: str
    figure: Figure | None = None
    used: float = 0.0
    number: int = field(default=0)

    def heading(self, words: str, size: float = HEADING_SIZE) -> None:
        """Write a heading; it does not stand alone at the foot of a page."""
        self._room(6 * LINE)
        self.used += LINE * (0.9 if self.used else 0)
        for line in wrapped(words, _ACROSS, size, bold=True):
            self._write(0, line, size, weight="bold")
            self.used += size * 1.35

    def text(self, words: str, size: float = TEXT_SIZE, **style: Any) -> None:
        """Write a paragraph."""
        for line in wrapped(words, _ACROSS, size, style.get("weight") == "bold"):
            self._room(LINE)
            self._write(0, line, size, **style)
            self.used += size * 1.35
        self.used += 4

    def table(
        self, head: Sequence[str], rows: Iterable[Sequence[str]], widths: Sequence[float], title: str = ""
    ) -> None:
        """Write a table under its title; widths are shares of the page.

        It is not parted where it fits on a page of its own; where it is, the head stands again on each page.
        """
        body = list(rows)
        whole = 3 * LINE + _height(head, widths, True) + sum(_height(row, widths) for row in body)
        self._room(whole if whole <= _DOWN else 6 * LINE)
        if title:
            self.heading(title)
        self._row(head, widths, weight="bold")
        for row in body:
            if self._left() < _height(row, widths):
                self.finish()
                self._row(head, widths, weight="bold")
            self._row(row, widths)
        self.used += LINE

    def chart(self, figure: Figure, title: str, told: str) -> None:
        """Put a chart on a page of its own, at the top, with its title and what it shows."""
        self.finish()
        wide, tall = figure.get_figwidth(), figure.get_figheight()
        tall = min(tall * (WIDTH - 2 * LEFT) / wide, HEIGHT - TOP - BOTTOM - 1)
        figure.set_size_inches(WIDTH, HEIGHT)
        top = HEIGHT - TOP - 0.75
        engine = figure.get_layout_engine()
        if isinstance(engine, ConstrainedLayoutEngine):
            engine.set(rect=(LEFT / WIDTH, (top - tall) / HEIGHT, 1 - 2 * LEFT / WIDTH, tall / HEIGHT))
        self._begin(figure)
        self.heading(title)
        self.text(told, TABLE_SIZE, color=PRINT.quiet)
        self.finish()

    def finish(self) -> None:
        """Put the page that was begun into the file."""
        if self.figure is not None:
            self.pages.savefig(self.figure)  # type: ignore[no-untyped-call]
            self.figure = None

    def _begin(self, figure: Figure) -> None:
        self.figure, self.used = figure, 0.0
        self.number += 1
        figure.text(LEFT / WIDTH, 0.45 / HEIGHT, self.foot, fontsize=7, color=PRINT.quiet)
        figure.text(1 - LEFT / WIDTH, 0.45 / HEIGHT, str(self.number), fontsize=7, color=PRINT.quiet, ha="right")

    def _left(self) -> float:
        return _DOWN - self.used

    def _room(self, needed: float) -> None:
        if self.figure is not None and self._left() < needed:
            self.finish()
        if self.figure is None:
            self._begin(Figure(figsize=(WIDTH, HEIGHT)))

    def _row(self, cells: Sequence[str], widths: Sequence[float], **style: Any) -> None:
        bold = style.get("weight") == "bold"
        self._room(_height(cells, widths, bold))
        for at, lines in enumerate(_parted(cells, widths, bold)):
            for down, line in enumerate(lines):
                self._write(sum(widths[:at]), line, TABLE_SIZE, down * TABLE_SIZE * 1.3, **style)
        self.used += _height(cells, widths, bold)

    def _write(self, across: float, words: str, size: float, down: float = 0.0, **style: Any) -> None:
        assert self.figure is not None
        x = (LEFT + across * (WIDTH - 2 * LEFT)) / WIDTH
        y = 1 - (TOP + (self.used + down + size) / 72) / HEIGHT
        self.figure.text(x, y, words, fontsize=size, va="baseline", **style)


def _height(cells: Sequence[str], widths: Sequence[float], bold: bool = False) -> float:
    """Return the height of a row in points."""
    return max(map(len, _parted(cells, widths, bold))) * TABLE_SIZE * 1.3 + 2.5


def _parted(cells: Sequence[str], widths: Sequence[float], bold: bool) -> list[list[str]]:
    """Return the cells of a row in lines as wide as their columns."""
    across = [width * _ACROSS - _BETWEEN for width in widths]
    return [wrapped(cell, room, TABLE_SIZE, bold) for cell, room in zip(cells, across, strict=True)]


def wrapped(words: str, across: float, size: float, bold: bool = False) -> list[str]:
    """Return a text in lines of at most `across` points; a word that is longer is parted."""
    lines = [""]
    for word in words.split():
        joined = f"{lines[-1]} {word}".strip()
        if _width(joined, size, bold) <= across:
            lines[-1] = joined
            continue
        if lines[-1]:
            lines.append("")
        for letter in word:
            if _width(lines[-1] + letter, size, bold) > across:
                lines.append("")
            lines[-1] += letter
    return lines


@lru_cache(maxsize=20_000)
def _width(words: str, size: float, bold: bool) -> float:
    font = FontProperties(family="DejaVu Sans", weight="bold" if bold else "normal", size=size)
    return float(text_to_path.get_text_width_height_descent(words, font, ismath=False)[0])


def print_report(results: Results, stream: IO[bytes]) -> None:
    """Write the PDF. The single notes are not in it; they stand in the tables and on the page."""
    told = {"Title": "Completeness of operative notes", "Creator": None, "Producer": None, "CreationDate": None}
    with PdfPages(stream, metadata=told) as pages:
        paper = Paper(pages, f"Completeness of operative notes, {results.day}, {results.source}")
        for part in (_first, _needs, _groups, _periods, _reader, _agreement, _others, _methods):
            part(paper, results)
        paper.finish()


def _first(paper: Paper, results: Results) -> None:
    paper.heading("Completeness of operative notes", TITLE_SIZE)
    paper.text(f"{results.day}, from {results.source}. {summary(results)}")
    for caution in audit_tables().caution:
        paper.text(caution.words, weight="bold")
    counts = [[name[:1].upper() + name[1:], f"{n:,}"] for name, n in results.gist().items() if n]
    paper.table(["Notes", ""], [*counts, *([name, said] for name, said in results.settings.items())], [0.42, 0.58])
    missing = results.most_missing()
    if missing:
        rows = []
        for c in missing:
            rates = [results.tally.whole.rate(c.key, letter) for letter in (SILENT, CONTRADICTORY)]
            rows.append([label_of(c), f"{rates[0].of:,}", *map(rate_words, rates)])
        head = ["What a therapist needs", "Notes", "Silent", "Contradictory"]
        paper.table(head, rows, [0.46, 0.1, 0.22, 0.22], "Most often missing")


def _needs(paper: Paper, results: Results) -> None:
    heaviest = results.heaviest()
    if heaviest:
        told = "Share of notes in each state, with the 95 % interval of the stated share; number of notes in brackets."
        paper.chart(state_chart(heaviest, results.tally.whole), "What changes the work most", told)
        _list(paper, results, NEEDS, "What a therapist needs")


def _list(paper: Paper, results: Results, kind: str, title: str) -> None:
    listed = results.listed(kind)
    if not listed:
        return
    rows = []
    for c in listed:
        rates = [results.tally.whole.rate(c.key, letter) for letter in (STATED, IMPLIED, SILENT, CONTRADICTORY)]
        rows.append([label_of(c), f"{rates[0].of:,}", *map(rate_words, rates)])
    head = ["", "Notes", "Stated", "Implied", "Silent", "Contradictory"]
    paper.table(head, rows, [0.305, 0.075, 0.155, 0.155, 0.155, 0.155], title)


def _groups(paper: Paper, results: Results) -> None:
    for column, groups in results.tally.by_group.items():
        sizes = results.tally.group_sizes[column]
        names = groups_shown(results, column)
        title = f"Share of notes that state it, by {column}"
        if len(names) < len(groups):
            title += f" (the {len(names)} largest of {len(groups)} groups; all stand in rates.csv)"
        for at in range(0, len(names), GROUPS_ACROSS):
            some = names[at : at + GROUPS_ACROSS]
            rows = [[c.label, *(rate_words(groups[n].rate(c.key, STATED)) for n in some)] for c in results.heaviest()]
            head = ["", *(f"{name} ({sizes[name]:,})" for name in some)]
            paper.table(head, rows, [0.26, *[0.185] * len(some)], title if not at else "")


def _periods(paper: Paper, results: Results) -> None:
    drawn = [(c, results.charts[c.key]) for c in results.heaviest() if c.key in results.charts][:MOST_CHARTS]
    told = "Share of notes that state it: line, average and limits (dashed). A square marks a signal."
    for at in range(0, len(drawn), CHARTS_TO_A_PAGE):
        paper.chart(period_charts(drawn[at : at + CHARTS_TO_A_PAGE]), "Charts over time", told)
    rows = [line.cells for line in signal_lines(results)]
    if rows:
        paper.table(SIGNAL_HEAD, rows, [0.3, 0.35, 0.35], "Signals")


def _reader(paper: Paper, results: Results) -> None:
    found = results.comparison
    if found is None:
        return
    paper.heading("How often the program erred")
    paper.text(sample_words(results))
    if not found.compared:
        return
    rows = []
    for c in results.listed(NEEDS):
        error = results.reader_error(c.key)
        if error is not None and error.notes.stated + error.notes.silent:
            fixed = corrected_words(results.corrected(c.key), results.rests_on_little(c.key))
            raw = rate_words(results.tally.as_read.rate(c.key, STATED))
            seen = [rate_words(error.sensitivity()), rate_words(error.specificity())]
            rows.append([label_of(c), *seen, raw, fixed])
    head = ["", "Sensitivity", "Specificity", "Stated as read", "Stated, corrected"]
    paper.table(head, rows, [0.32, 0.17, 0.17, 0.17, 0.17])
    heaviest = [c for c in results.heaviest() if results.corrected(c.key)]
    if heaviest:
        told = "Share of notes that state it, as read and corrected, with 95 % intervals."
        paper.chart(corrected_chart(heaviest, results), "As read and corrected", told)


def _agreement(paper: Paper, results: Results) -> None:
    found = results.agreement
    if found is None:
        return
    paper.heading("Agreement of two readers")
    paper.text(f"{notes_words(found.shared)} read by both.")
    rows = [line.cells for line in agreement_lines(results)]
    paper.table(AGREEMENT_HEAD, rows, [0.3, 0.08, 0.08, 0.18, 0.18, 0.18])


def _others(paper: Paper, results: Results) -> None:
    for each in criteria_lists()[1:]:
        _list(paper, results, each.kind, each.title)
    found = results.contradictions()
    if found:
        rows = [[title, kind, str(rate.count), rate_words(rate)] for title, kind, rate in found]
        paper.table(["", "Kind", "Notes", "Share"], rows, [0.48, 0.18, 0.1, 0.24], "Contradictions and unusual facts")


def _methods(paper: Paper, results: Results) -> None:
    paper.heading("How the figures are made")
    for method in audit_tables().method:
        paper.text(method.title, weight="bold")
        paper.text(f"{method.words} ({method.source})")
    libraries = ", ".join(f"{name} {number}" for name, number in results.engine.libraries)
    paper.text(f"Read by notereader {results.engine.reader} ({libraries}).")
    paper.table(["Knowledge it read with", "SHA-256"], results.engine.resources, [0.3, 0.7])
