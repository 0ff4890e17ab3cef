"""The tables of the report as rows of words, the same on the page and in the window."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from notereader.audit.criteria import GROUP_WORDS, Criterion, criteria
from notereader.audit.pcharts import Chart
from notereader.audit.report.words import (
    NOTHING,
    corrected_words,
    measure_words,
    percent,
    rate_of_words,
    rate_words,
)
from notereader.audit.results import Results
from notereader.audit.states import CONTRADICTORY, IMPLIED, SILENT, STATED
from notereader.audit.tables import audit_tables

# More groups than this do not fit beside one another.
GROUPS_IN_TABLE = 12


@dataclass(frozen=True, slots=True)
class Line:
    """One row: the key of what it is about, and its cells."""

    key: str
    cells: tuple[str, ...]


def label_of(criterion: Criterion) -> str:
    """Return a criterion in words: 'Core strands (tendons)'."""
    return f"{criterion.label} ({GROUP_WORDS[criterion.group].lower()})"


def states_head(results: Results) -> list[str]:
    """Return the headings of states_lines()."""
    head = ["", "Notes", "Stated", "Implied", "Silent", "Contradictory", "Stated, of places"]
    return [*head, "Stated, corrected"] if results.compared else head


def states_lines(results: Results, kind: str) -> Iterator[Line]:
    """Yield every criterion of a list with its share of notes in each state."""
    for criterion in results.listed(kind):
        cells = [label_of(criterion), *state_cells(results, criterion, (STATED, IMPLIED, SILENT, CONTRADICTORY))]
        cells.append(rate_of_words(results.tally.places.rate(criterion.key, STATED)))
        if results.compared:
            cells.append(corrected_words(results.corrected(criterion.key), results.rests_on_little(criterion.key)))
        yield Line(criterion.key, tuple(cells))


def state_cells(results: Results, criterion: Criterion, letters: Sequence[str]) -> list[str]:
    """Return the number of notes to which a criterion applies, and the share in each of these states."""
    counts = results.tally.whole
    return [f"{counts.of(criterion.key):,}", *(rate_words(counts.rate(criterion.key, letter)) for letter in letters)]


def groups_shown(results: Results, column: str) -> list[str]:
    """Return the groups of a column that are shown: the largest, by name."""
    sizes = results.tally.group_sizes[column]
    ranked = sorted(results.tally.by_group[column], key=lambda name: (-sizes[name], name))
    return sorted(ranked[:GROUPS_IN_TABLE])


def group_head(results: Results, column: str) -> list[str]:
    """Return the headings of group_lines(): the groups with their numbers of notes."""
    sizes = results.tally.group_sizes[column]
    return ["Stated in", *(f"{name} ({sizes[name]:,})" for name in groups_shown(results, column))]


def group_lines(results: Results, column: str) -> Iterator[Line]:
    """Yield what changes the work most, with the share of notes that state it in each group."""
    groups = [results.tally.by_group[column][name] for name in groups_shown(results, column)]
    for criterion in results.heaviest():
        shares = [rate_words(counts.rate(criterion.key, STATED)) for counts in groups]
        yield Line(criterion.key, (label_of(criterion), *shares))


PERIOD_HEAD = ("Period", "Stated", "Notes", "Share", "Limits", "Signal")


def period_lines(chart: Chart) -> Iterator[Line]:
    """Yield the points of a chart over time with their limits and the rules by which they are signals."""
    words = {rule.key: rule.words for rule in audit_tables().signal}
    for p in chart.points:
        signals = "; ".join(words[key] for key in p.signals)
        cells = (p.period, f"{p.count:,}", f"{p.of:,}", percent(p.share), f"{percent(p.low)} to {percent(p.high)}")
        yield Line(p.period, (*cells, signals))


SIGNAL_HEAD = ("", "Rule", "Periods")


def signal_lines(results: Results) -> Iterator[Line]:
    """Yield the signals in what changes the work most."""
    for criterion, rule, periods in results.signals():
        yield Line(criterion.key, (label_of(criterion), rule, periods))


READER_HEAD = ("", "Confirmed notes", "Sensitivity", "Specificity", "Stated as read", "Stated, corrected")


def reader_lines(results: Results, kinds: Sequence[str]) -> Iterator[Line]:
    """Yield how often the program erred in each criterion of some lists that a confirmed note can tell of."""
    for criterion in (c for kind in kinds for c in results.listed(kind)):
        error = results.reader_error(criterion.key)
        if error is None or not error.notes.stated + error.notes.silent:
            continue
        cells = (
            label_of(criterion),
            str(error.notes.stated + error.notes.silent),
            rate_of_words(error.sensitivity()),
            rate_of_words(error.specificity()),
            rate_words(results.tally.as_read.rate(criterion.key, STATED)),
            corrected_words(results.corrected(criterion.key), results.rests_on_little(criterion.key)),
        )
        yield Line(criterion.key, cells)


AGREEMENT_HEAD = ("", "Places", "Same", "Kappa", "Alpha", "Alpha of figures")


def agreement_lines(results: Results) -> Iterator[Line]:
    """Yield how well two readers agree on each field."""
    assert results.agreement is not None
    labels = {criterion.key: label_of(criterion) for criterion in criteria()}
    for f in results.agreement.fields:
        same = percent(f.percent) if f.percent is not None else NOTHING
        figures = NOTHING if f.figures is None else measure_words(f.figures)
        cells = (labels[f.key], str(f.places), same, measure_words(f.kappa), measure_words(f.alpha), figures)
        yield Line(f.key, cells)


DISAGREEMENT_HEAD = ("Note", "Fact", "First reader", "Second reader")


def disagreement_lines(results: Results) -> Iterator[Line]:
    """Yield where two readers differ, with the words of the note where they are asked for; keys are those of texts."""
    for each in results.disagreements():
        said = [
            f"{value or 'silent'}{f' “{words}”' if words else ''}"
            for value, words in ((each.first, each.first_words), (each.second, each.second_words))
        ]
        yield Line(each.text, (each.note, each.place, *said))
