"""The results of an audit, ready to be shown, printed and exported; they do not tell who carried out the work."""

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from typing import Any, Literal

from notereader.appraisal.checks import check_tables
from notereader.audit.concord import Agreement, Disagreement
from notereader.audit.correction import Corrected
from notereader.audit.criteria import NEEDS, Criterion, criteria
from notereader.audit.engine import Engine
from notereader.audit.pcharts import Chart, p_chart
from notereader.audit.rates import Rate, rate
from notereader.audit.sample import Comparison, ReaderError
from notereader.audit.states import STATED
from notereader.audit.tables import audit_tables
from notereader.audit.tally import Tally, most_missing

# What a report consists of: the page in HTML, the print in PDF, the tables in CSV, the data in JSON.
Part = Literal["page", "print", "tables", "data"]
PARTS: tuple[Part, ...] = ("page", "print", "data", "tables")

# Charts of fewer periods than this show nothing that a table does not.
FEWEST_PERIODS = 2
# Below this number of confirmed notes on either side a corrected share is marked as resting on little.
FEW = 5


@dataclass(frozen=True, slots=True)
class Results:
    """Everything the report says except the single notes, which are taken from the journal one by one.

    `settings` are the choices that shape the figures, in words; `drawn` is the size of the sample that was drawn.
    """

    day: str
    source: str
    engine: Engine
    settings: dict[str, str]
    tally: Tally
    copies: int = 0
    drawn: int = 0
    comparison: Comparison | None = None
    agreement: Agreement | None = None
    with_words: bool = False
    with_names: bool = True
    charts: dict[str, Chart] = field(default_factory=dict)

    @property
    def compared(self) -> bool:
        """Whether a person confirmed any of the notes that were read."""
        return self.comparison is not None and self.comparison.compared > 0

    def reader_error(self, key: str) -> ReaderError | None:
        """Return what is known of the reader's error for a criterion, None where nothing was compared."""
        return self.comparison.rows.get(key) if self.comparison is not None and self.compared else None

    def corrected(self, key: str) -> Corrected | None:
        """Return the corrected share of a criterion, None where the sample cannot tell."""
        error = self.reader_error(key)
        return error.correct(self.tally.as_read) if error else None

    def rests_on_little(self, key: str) -> bool:
        """Return whether a corrected share rests on very few confirmed notes of one kind."""
        error = self.reader_error(key)
        return error is not None and min(error.notes.stated, error.notes.silent) < FEW

    def listed(self, kind: str) -> list[Criterion]:
        """Return the criteria of a list that apply to at least one note."""
        return [c for c in criteria() if c.kind == kind and self.tally.whole.of(c.key)]

    def heaviest(self) -> list[Criterion]:
        """Return the needs that change the work most."""
        return [c for c in self.listed(NEEDS) if c.weight == 3]

    def most_missing(self) -> list[Criterion]:
        """Return the needs that most notes leave out, the most missing first."""
        return most_missing(self.tally.whole, NEEDS)

    def heaviest_missing(self) -> list[Criterion]:
        """Return the needs that change the work most, the most missing first, without those that never are."""
        heavy = set(self.heaviest())
        return [c for c in most_missing(self.tally.whole, NEEDS, most=len(criteria())) if c in heavy]

    def contradictions(self) -> list[tuple[str, str, Rate]]:
        """Return (title, kind, share of notes) of every named check that found something, the most frequent first."""
        words = check_tables().check
        found = [(words[key].title, words[key].kind, n) for key, n in self.tally.checks.items()]
        ranked = sorted(found, key=lambda entry: (-entry[2], entry[0]))
        return [(title, kind, rate(n, self.tally.counted)) for title, kind, n in ranked]

    def disagreements(self) -> Iterator[Disagreement]:
        """Yield where two readers differ, as it may be reported: without names or words that were not asked for."""
        assert self.agreement is not None
        for each in self.agreement.disagreements:
            shown = each if self.with_words else replace(each, first_words="", second_words="")
            yield shown if self.with_names else replace(shown, note=f"note {self.agreement.numbers[each.note]}")

    def signals(self) -> list[tuple[Criterion, str, str]]:
        """Return (criterion, rule in words, periods) of the signals in the needs that change the work most."""
        found = []
        for criterion in self.heaviest():
            points = self.charts[criterion.key].points if criterion.key in self.charts else ()
            for rule in audit_tables().signal:
                marked = [rule.key in point.signals for point in points]
                if any(marked):
                    found.append((criterion, rule.words, _spans([point.period for point in points], marked)))
        return found

    def gist(self) -> dict[str, Any]:
        """Return the counts that the report begins with."""
        t = self.tally
        return {
            "found": t.found,
            "counted": t.counted,
            "as read": t.counted - t.confirmed,
            "confirmed by a person": t.confirmed,
            "refused": t.refused,
            "counted through their records": t.with_record,
            "same text as another": self.copies,
            "without a tendon": t.without_tendon,
            "without a date": t.dateless,
        }


def _spans(periods: list[str], marked: list[bool]) -> str:
    """Return the marked periods, those in a row as one: '2031-04 to 2031-09, 2032-01'."""
    spans: list[list[str]] = []
    for at, period in enumerate(periods):
        if marked[at]:
            if at and marked[at - 1]:
                spans[-1] = [spans[-1][0], period]
            else:
                spans.append([period])
    return ", ".join(" to ".join(span) for span in spans)


def charts_of(counted: Tally) -> dict[str, Chart]:
    """Return the p-chart of notes that state it for every criterion with enough periods."""
    charts = {}
    for criterion in criteria():
        rows = [(p, c.count(criterion.key, STATED), c.of(criterion.key)) for p, c in sorted(counted.by_period.items())]
        chart = p_chart(rows, audit_tables().signal)
        if chart is not None and len(chart.points) >= FEWEST_PERIODS:
            charts[criterion.key] = chart
    return charts
