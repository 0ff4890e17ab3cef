"""The report as JSON: everything that the page and the tables say, for other programs."""

import json
from collections.abc import Iterable, Iterator
from dataclasses import asdict
from typing import Any

from notereader.audit.agreement import Measure
from notereader.audit.criteria import Criterion, criteria, criteria_lists
from notereader.audit.rates import Rate
from notereader.audit.report.notes import NoteLine
from notereader.audit.results import Results
from notereader.audit.states import STATE_WORDS, WORST_FIRST, Assessment, note_state
from notereader.audit.tables import audit_tables
from notereader.audit.tally import NoteCounts

FORMAT, FORMAT_VERSION = "notereader-audit", 1
NOT_APPLYING = "."


def json_text(results: Results, lines: Iterable[NoteLine]) -> Iterator[str]:
    """Yield the JSON text piece by piece; the notes stand in the member 'notes', one to a line."""
    head = json.dumps(_rounded(_head(results)), ensure_ascii=False, indent=1)
    yield head[: head.rindex("}")].rstrip() + ',\n "notes": ['
    between = "\n  "
    for line in lines:
        yield between + json.dumps(_note(results, line), ensure_ascii=False)
        between = ",\n  "
    yield "\n ]\n}\n"


def _head(results: Results) -> dict[str, Any]:
    counted = results.tally
    return {
        "format": FORMAT,
        "format_version": FORMAT_VERSION,
        "date": results.day,
        "source": results.source,
        "reader": {
            "version": results.engine.reader,
            "libraries": dict(results.engine.libraries),
            "resources_sha256": dict(results.engine.resources),
        },
        "settings": results.settings,
        "cautions": [caution.words for caution in audit_tables().caution],
        "counts": results.gist(),
        "lists": [asdict(each) for each in criteria_lists()],
        "criteria": [_criterion(results, c) for c in criteria()],
        "groups": {
            column: {name: _group(results, column, name, counts) for name, counts in sorted(groups.items())}
            for column, groups in counted.by_group.items()
        },
        "contradictions": [
            {"title": title, "kind": kind, **_rate(rate)} for title, kind, rate in results.contradictions()
        ],
        "sample": _sample(results),
        "agreement": _agreement(results),
        "state_letters": {**STATE_WORDS, NOT_APPLYING: "does not apply"},
    }


def _criterion(results: Results, criterion: Criterion) -> dict[str, Any]:
    chart = results.charts.get(criterion.key)
    return {
        **asdict(criterion),
        "notes": _states(results.tally.whole, criterion),
        "places": {
            STATE_WORDS[letter]: _rate(results.tally.places.rate(criterion.key, letter)) for letter in WORST_FIRST
        },
        "reader_error": _error(results, criterion),
        "chart": asdict(chart) if chart else None,
    }


def _states(counts: NoteCounts, criterion: Criterion) -> dict[str, Any]:
    return {STATE_WORDS[letter]: _rate(counts.rate(criterion.key, letter)) for letter in WORST_FIRST}


def _group(results: Results, column: str, name: str, counts: NoteCounts) -> dict[str, Any]:
    held = [c for c in criteria() if counts.of(c.key)]
    return {
        "notes": results.tally.group_sizes[column][name],
        "criteria": {criterion.key: _states(counts, criterion) for criterion in held},
    }


def _error(results: Results, criterion: Criterion) -> dict[str, Any] | None:
    error = results.reader_error(criterion.key)
    if error is None:
        return None
    fixed = results.corrected(criterion.key)
    return {
        **asdict(error.notes),
        "sensitivity": _rate(error.sensitivity()),
        "specificity": _rate(error.specificity()),
        "stated_as_read": _rate(results.tally.as_read.rate(criterion.key, "s")),
        "stated_corrected": asdict(fixed) if fixed else None,
        "only_program_applies": error.only_reader,
        "only_person_applies": error.only_person,
        "same_values": error.same_values,
        "values": error.values,
    }


def _sample(results: Results) -> dict[str, Any] | None:
    found = results.comparison
    if found is None:
        return None
    counts = {name: value for name, value in _shallow(found).items() if name != "rows"}
    return {"drawn": results.drawn, **counts}


def _agreement(results: Results) -> dict[str, Any] | None:
    found = results.agreement
    if found is None:
        return None
    return {
        "shared": found.shared,
        "only_first": found.only_first,
        "only_second": found.only_second,
        "fields": [
            {
                **_shallow(each),
                "kappa": _measure(each.kappa),
                "alpha": _measure(each.alpha),
                "figures": _measure(each.figures) if each.figures else None,
            }
            for each in found.fields
        ],
        "disagreements": [
            {name: said for name, said in asdict(each).items() if name != "text"} for each in results.disagreements()
        ],
    }


def _note(results: Results, line: NoteLine) -> dict[str, Any]:
    found = line.row.assessment
    said: dict[str, Any] = {
        "number": line.number,
        "name": line.name,
        "link": line.link,
        "columns": dict(zip(results.tally.groups, line.groups, strict=True)),
        "date": line.day,
        "status": line.status,
        "said": line.said,
        "confirmed": line.confirmed,
        "states": _letters(found),
        "places": {key: letters for key, letters in found.states.items() if len(letters) > 1} if found else {},
        "checks": found.checks if found else [],
    }
    if results.with_words and found:
        said["facts"] = {a: {"value": v, "words": found.words.get(a, "")} for a, v in found.values.items()}
    return said


def _letters(found: Assessment | None) -> str:
    """Return one letter for each criterion, in their order; short, for there may be thousands of notes."""
    if found is None:
        return ""
    states = (found.states.get(criterion.key) for criterion in criteria())
    return "".join(note_state(letters) if letters else NOT_APPLYING for letters in states)


def _shallow(thing: Any) -> dict[str, Any]:
    return {name: getattr(thing, name) for name in thing.__dataclass_fields__}


def _rate(rate: Rate) -> dict[str, Any]:
    return {"count": rate.count, "of": rate.of, "share": rate.share, "low": rate.low, "high": rate.high}


def _measure(measure: Measure) -> dict[str, Any]:
    return {"value": measure.value, "low": measure.low, "high": measure.high}


def _rounded(data: Any) -> Any:
    """Return JSON data with its figures cut to nine decimals, the same on every machine."""
    if isinstance(data, float):
        return round(data, 9)
    if isinstance(data, dict):
        return {name: _rounded(part) for name, part in data.items()}
    return [_rounded(part) for part in data] if isinstance(data, list | tuple) else data
