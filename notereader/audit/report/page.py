"""The report as one page of HTML that needs no other file."""

from collections.abc import Iterable, Iterator, Sequence
from heapq import nlargest
from html import escape
from itertools import islice

from matplotlib.figure import Figure

from notereader.audit.criteria import FIELDS, NEEDS, criteria_lists
from notereader.audit.report.charts import (
    MOST_CHARTS,
    corrected_chart,
    group_chart,
    period_charts,
    state_chart,
    svg,
)
from notereader.audit.report.notes import COUNTED, NoteLine
from notereader.audit.report.rows import (
    AGREEMENT_HEAD,
    DISAGREEMENT_HEAD,
    READER_HEAD,
    SIGNAL_HEAD,
    Line,
    agreement_lines,
    disagreement_lines,
    group_head,
    group_lines,
    groups_shown,
    label_of,
    reader_lines,
    signal_lines,
    state_cells,
    states_head,
    states_lines,
)
from notereader.audit.report.words import NOTHING, notes_words, percent, rate_of_words
from notereader.audit.results import FEW, Results
from notereader.audit.states import CONTRADICTORY, SILENT, STATED
from notereader.audit.tables import audit_tables

# A page of thousands of notes cannot be read; the table of all is beside it.
MOST_NOTES = 300
MOST_DISAGREEMENTS = 300

Rows = Iterable[Sequence[str]]

_STYLE = """
:root { color-scheme: light; }
body { font: 15px/1.5 "Segoe UI", "Helvetica Neue", Arial, sans-serif; color: #222; background: #fff;
  max-width: 70rem; margin: 2rem auto; padding: 0 1.2rem; }
h1 { font-size: 1.7rem; margin: 0 0 .2rem; } h2 { font-size: 1.25rem; margin: 2.4rem 0 .4rem; }
h3 { font-size: 1.02rem; margin: 1.4rem 0 .3rem; }
p.lead { color: #444; margin: .1rem 0 1rem; } p.small, td.small { font-size: .88rem; color: #555; }
table { border-collapse: collapse; margin: .5rem 0 1rem; width: 100%; font-size: .87rem; }
caption { text-align: left; font-weight: 600; padding: .3rem 0; }
th, td { text-align: left; vertical-align: top; padding: .28rem .7rem .28rem 0; border-bottom: 1px solid #ddd; }
thead th { border-bottom: 2px solid #999; font-weight: 600; }
td { font-variant-numeric: tabular-nums; }
ul.caution { border-left: 4px solid #e08214; padding: .5rem 1rem .5rem 1.6rem; margin: 1rem 0; background: #fdf6ec; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: .1rem 1rem; } dt { color: #555; } dd { margin: 0; }
figure { margin: .6rem 0 1rem; } figcaption { font-size: .88rem; color: #555; } svg { max-width: 100%; height: auto; }
details { margin: .8rem 0; } summary { cursor: pointer; font-weight: 600; } code { font-size: .85em; }
a { color: #1f5f8b; }
@media print { body { max-width: none; margin: 0; font-size: 11px; } table, figure { break-inside: auto; }
  tr { break-inside: avoid; } }
"""


def page(results: Results, lines: Iterable[NoteLine]) -> Iterator[str]:
    """Yield the page piece by piece."""
    yield "<!DOCTYPE html>\n<html lang='en'>\n<head>\n<meta charset='utf-8'>\n"
    yield "<meta name='viewport' content='width=device-width, initial-scale=1'>\n"
    yield f"<title>Completeness of operative notes, {escape(results.day)}</title>\n"
    yield f"<style>{_STYLE}</style>\n</head>\n<body>\n"
    for part in (_head, _needs, _groups, _periods, _contradictions, _reader, _agreement, _other_lists):
        yield from part(results)
    yield from _notes(results, lines)
    yield from _methods(results)
    yield "</body>\n</html>\n"


def _head(results: Results) -> Iterator[str]:
    counts = results.gist()
    yield "<h1>Completeness of operative notes</h1>\n"
    yield f"<p class='lead'>{escape(results.day)}, from {escape(results.source)}. {escape(summary(results))}</p>\n"
    items = "".join(f"<li>{escape(caution.words)}</li>" for caution in audit_tables().caution)
    yield f"<ul class='caution'>{items}</ul>\n"
    shown = {"Notes found": counts["found"], "Notes counted": counts["counted"]}
    shown |= {name[:1].upper() + name[1:]: n for name, n in list(counts.items())[2:] if n}
    yield "<dl>" + "".join(f"<dt>{escape(name)}</dt><dd>{n:,}</dd>" for name, n in shown.items()) + "</dl>\n"
    chosen = "".join(f"<dt>{escape(name)}</dt><dd>{escape(said)}</dd>" for name, said in results.settings.items())
    yield f"<dl>{chosen}</dl>\n"


def summary(results: Results) -> str:
    """Return what the report says in a few sentences."""
    counts, missing = results.tally, results.heaviest_missing()
    said = [f"{notes_words(counts.counted)} counted."]
    if missing:
        shares = [percent(counts.whole.rate(c.key, STATED).share or 0.0) for c in missing[:3]]
        named = ", ".join(f"{c.label} (stated in {share})" for c, share in zip(missing, shares, strict=False))
        said.append(f"Of what changes the work most, most often missing: {named}.")
    if counts.confirmed < counts.counted and not (results.compared):
        said.append("Nobody has confirmed a sample, so how often the program misread is not known.")
    return " ".join(said)


def _needs(results: Results) -> Iterator[str]:
    heaviest = results.heaviest()
    if not heaviest:
        yield "<h2>Nothing to count</h2>\n<p>No note was counted to which any of the facts applies.</p>\n"
        return
    yield "<h2>What a therapist needs</h2>\n"
    told = "Share of notes in each state, with the 95 % interval of the stated share; the number of notes in brackets."
    yield _figure(state_chart(heaviest, results.tally.whole), "What changes the work most", told)
    missing = results.most_missing()
    if missing:
        rows = [[label_of(c), *state_cells(results, c, [SILENT, CONTRADICTORY])] for c in missing]
        yield _table("Most often missing", ["", "Notes", "Silent", "Contradictory"], rows)
    yield _list_table(results, NEEDS, "All that a therapist needs")


def _other_lists(results: Results) -> Iterator[str]:
    yield "<h2>The other lists</h2>\n"
    for each in criteria_lists()[1:]:
        if results.listed(each.kind):
            source = f"<p class='small'>Source: {escape(each.source)}.</p>"
            body = _list_table(results, each.kind, each.title)
            yield f"<details><summary>{escape(each.title)}</summary>{source}{body}</details>\n"


def _list_table(results: Results, kind: str, title: str) -> str:
    return _table(title, states_head(results), _cells(states_lines(results, kind)))


def _cells(lines: Iterable[Line]) -> Iterator[Sequence[str]]:
    return (line.cells for line in lines)


def _groups(results: Results) -> Iterator[str]:
    for column, groups in results.tally.by_group.items():
        shown = groups_shown(results, column)
        yield f"<h2>By {escape(column)}</h2>\n"
        if len(groups) > len(shown):
            yield f"<p class='small'>The {len(shown)} largest of {len(groups)} groups; all stand in rates.csv.</p>\n"
        title = f"Share of notes that state it, by {column}"
        yield _table(title, group_head(results, column), _cells(group_lines(results, column)))
        for criterion in results.heaviest_missing()[:3]:
            told = f"Share of notes that state it, with 95 % intervals, by {column}; the number of notes in brackets."
            drawn = {name: groups[name] for name in shown}
            yield _figure(group_chart(criterion, drawn), f"{criterion.label} by {column}", told)


def _periods(results: Results) -> Iterator[str]:
    drawn = [(c, results.charts[c.key]) for c in results.heaviest() if c.key in results.charts][:MOST_CHARTS]
    if not drawn:
        return
    yield "<h2>Over time</h2>\n"
    periods = max(len(chart.points) for _, chart in drawn)
    told = (
        f"p-charts of the share of notes that state it, by {results.tally.period}: line, average and limits (dashed). "
        "A square marks a signal."
    )
    if periods < 20:
        told += f" With {periods} periods the limits are provisional."
    yield _figure(period_charts(drawn), "Charts over time", told)
    rows = list(_cells(signal_lines(results)))
    if rows:
        yield _table("Signals", SIGNAL_HEAD, rows)
    else:
        yield "<p>No signal in these charts.</p>\n"


def _contradictions(results: Results) -> Iterator[str]:
    found = results.contradictions()
    if found:
        yield "<h2>Contradictions and unusual facts</h2>\n"
        rows = [[title, kind, rate_of_words(rate)] for title, kind, rate in found]
        yield _table("Notes in which a check found something", ["", "Kind", "Notes"], rows)


def _reader(results: Results) -> Iterator[str]:
    compared = results.comparison
    if compared is None:
        return
    yield "<h2>How often the program erred</h2>\n"
    yield f"<p>{escape(sample_words(results))}</p>\n"
    if not compared.compared:
        return
    heaviest = [c for c in results.heaviest() if results.corrected(c.key)]
    if heaviest:
        told = "Share of notes that state it, as read and corrected, with 95 % intervals."
        yield _figure(corrected_chart(heaviest, results), "As read and corrected", told)
    rows = _cells(reader_lines(results, (NEEDS, FIELDS)))
    yield _table("Reader against person, note by note", READER_HEAD, rows)
    yield (
        f"<p class='small'>* rests on fewer than {FEW} confirmed notes of one kind. {NOTHING} the sample cannot tell: "
        "it holds no note that states it, or none that does not.</p>\n"
    )


def sample_words(results: Results) -> str:
    """Return in sentences what was compared and what speaks against it."""
    found = results.comparison
    assert found is not None
    were = "was" if found.compared == 1 else "were"
    said = [f"{notes_words(found.compared)} of those read {were} confirmed by a person."]
    if results.drawn:
        said.append(f"The random sample drawn holds {notes_words(results.drawn)}.")
    if found.not_drawn:
        said.append(f"{found.not_drawn} of the confirmed notes were not drawn at random, which can mislead.")
    if found.open:
        said.append(f"{found.open} more are not confirmed yet.")
    if found.unknown:
        said.append(f"{found.unknown} confirmed notes are not in this audit.")
    if found.compared:
        said.append(
            f"Tendons that the program missed: {found.tendons_missed}; that it entered and the person did not: "
            f"{found.tendons_invented}."
        )
    return " ".join(said)


def _agreement(results: Results) -> Iterator[str]:
    found = results.agreement
    if found is None:
        return
    yield "<h2>Agreement of two readers</h2>\n"
    yield (
        f"<p>{notes_words(found.shared)} read by both; {found.only_first} only by the first, {found.only_second} only "
        "by the second.</p>\n"
    )
    yield _table("Agreement by field", AGREEMENT_HEAD, _cells(agreement_lines(results)))
    if found.disagreements:
        yield _disagreements(results, len(found.disagreements))


def _disagreements(results: Results, every: int) -> str:
    title = f"Where they differ ({every:,})"
    if every > MOST_DISAGREEMENTS:
        title += f", the first {MOST_DISAGREEMENTS}; all stand in disagreements.csv"
    return _table(title, DISAGREEMENT_HEAD, _cells(islice(disagreement_lines(results), MOST_DISAGREEMENTS)))


def _notes(results: Results, lines: Iterable[NoteLine]) -> Iterator[str]:
    refused: list[NoteLine] = []

    def counted() -> Iterator[NoteLine]:
        for line in lines:
            if line.status == COUNTED:
                yield line
            elif len(refused) < MOST_NOTES:
                refused.append(line)

    worst = nlargest(MOST_NOTES, counted(), key=lambda line: line.weight)
    if worst:
        yield "<h2>Notes and their gaps</h2>\n"
        most = results.tally.counted > len(worst)
        yield (
            f"<p class='small'>{'The ' + str(len(worst)) + ' notes with the most gaps, of' if most else 'All'} "
            f"{results.tally.counted:,}. What changes the work most is counted first; notes.csv has every note.</p>\n"
        )
        head = ["Note", *results.tally.groups, "Date", "Weighty gaps", "Silent on", "Contradictory"]
        yield _table("", head, [_note_row(line) for line in worst], is_html=True)
    if refused:
        yield "<h2>Notes left out</h2>\n"
        yield _table("", ["Note", "Why"], [[_named(line), escape(_why(line))] for line in refused], is_html=True)


def _why(line: NoteLine) -> str:
    return line.said or line.status


def _note_row(line: NoteLine) -> list[str]:
    rest = [*line.groups, line.day, str(line.heavy), ", ".join(line.gaps), ", ".join(line.contradictions)]
    return [_named(line), *map(escape, rest)]


def _named(line: NoteLine) -> str:
    return f"<a href='{escape(line.link)}'>{escape(line.name)}</a>" if line.link else escape(line.name)


def _methods(results: Results) -> Iterator[str]:
    yield "<h2>How the figures are made</h2>\n"
    for method in audit_tables().method:
        yield f"<h3>{escape(method.title)}</h3>\n<p>{escape(method.words)}</p>\n"
        yield f"<p class='small'>Source: {escape(method.source)}.</p>\n"
    engine = results.engine
    libraries = ", ".join(f"{name} {number}" for name, number in engine.libraries)
    yield f"<p class='small'>Read by notereader {escape(engine.reader)} ({escape(libraries)}).</p>\n"
    rows = [[name, digest] for name, digest in engine.resources]
    sums = _table("SHA-256", ["File", ""], rows)
    yield f"<details><summary>Checksums of the knowledge it read with</summary>{sums}</details>\n"


def _figure(figure: Figure, name: str, told: str) -> str:
    drawn = svg(figure).replace("<svg ", f"<svg role='img' aria-label='{escape(name)}' ", 1)
    return f"<figure>{drawn}<figcaption>{escape(name)}. {escape(told)}</figcaption></figure>\n"


def _table(caption: str, head: Sequence[str], rows: Rows, is_html: bool = False) -> str:
    """Return a table; with is_html=True the cells are HTML already."""
    title = f"<caption>{escape(caption)}</caption>" if caption else ""
    heads = "".join(f"<th scope='col'>{escape(cell)}</th>" for cell in head)
    body = "".join(
        "<tr>" + "".join(f"<td>{cell if is_html else escape(cell)}</td>" for cell in row) + "</tr>\n" for row in rows
    )
    return f"<table>{title}<thead><tr>{heads}</tr></thead>\n<tbody>{body}</tbody></table>\n"
