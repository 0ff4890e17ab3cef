"""A record as readable text that shows for each fact where it comes from and why it may need a second look."""

import textwrap
from bisect import bisect_left
from collections.abc import Iterable, Iterator

from notereader.appraisal.cautions import cautions_about
from notereader.commands.terminal import harmless
from notereader.record import Evidence, Fact, Record, Value, show_value
from notereader.vocabulary import FieldSpec, field_specs

_WIDTH = 100
_STATUS = {
    "proposed": "proposed by the program",
    "confirmed": "confirmed by a person",
    "corrected": "corrected by a person",
    "added": "added by a person",
    "withdrawn": "withdrawn by a person: no finding",
}


def explained(record: Record) -> str:
    """Return the facts of a record, in its order, with words, rule, reasons to look twice, rivals and remarks."""
    lines = _Lines(record.note.text)
    text = [*_head(record), *_cautions()]
    for place, facts in record.entries():
        if facts:
            text += ["", place.entry_words().upper()]
        specs = field_specs()[place.group]
        for name, fact in facts.items():
            text += _fact(specs[name], fact, lines)
    if record.remarks:
        text += ["", "REMARKS ON THE NOTE"]
    for remark in record.remarks:
        text += [*_fill(remark.text, "    ", "  "), *(_quote(each, lines, "    ") for each in remark.evidence)]
    return "\n".join(text) + "\n"


class _Lines:
    """Tells in which line of the note a position lies."""

    def __init__(self, text: str | None) -> None:
        self._ends = None if text is None else [k for k, c in enumerate(text) if c == "\n"]

    def place(self, start: int) -> str:
        """Say where a quote begins: its line, counted from 1, or its position where the record has no text."""
        if self._ends is None:
            return f"character {start}"
        return f"line {bisect_left(self._ends, start) + 1}"


def _head(record: Record) -> Iterator[str]:
    facts = [fact for _, fact in record.walk()]
    twice = sum(bool(fact.look_twice) for fact in facts)
    proposed = sum(fact.status == "proposed" for fact in facts)
    need = "needs" if twice == 1 else "need"
    yield f"WHAT THE NOTE SAYS: {harmless(record.note.name)}" if record.note.name else "WHAT THE NOTE SAYS"
    yield ""
    yield from _fill(
        f"{len(facts)} facts, {proposed} of them proposed by the program and not confirmed by anybody; compare each "
        f"with the words quoted. {twice} {need} a second look, marked with !. What is not listed was not found, which "
        "does not mean that it was not done."
    )


def _cautions() -> Iterator[str]:
    yield ""
    yield "CAUTIONS"
    for caution in cautions_about("general"):
        yield from _fill(caution, "    ", "  * ")


def _fact(spec: FieldSpec, fact: Fact, lines: _Lines) -> Iterator[str]:
    mark = "! " if fact.look_twice else "  "
    basis = " (implied, not said outright)" if fact.basis == "implied" else ""
    status = "" if fact.status == "proposed" else f" [{_STATUS[fact.status]}]"
    yield from _fill(f"{spec.label}: {_in_words(spec, fact.value)}{basis}{status}", "      ", mark)
    for evidence in fact.evidence:
        yield _quote(evidence, lines, "      ")
    if fact.rule:
        yield from _fill(f"decided by: {fact.rule}", "        ", "      ")
    if fact.said_by or fact.said_on:
        said = " on ".join(str(part) for part in (fact.said_by, fact.said_on) if part)
        yield from _fill(f"not from the note: {said}", "        ", "      ")
    for reason in fact.look_twice:
        yield from _fill(f"look twice: {reason}", "        ", "      ")
    for rival in fact.rivals:
        yield from _fill(f"the note also states: {_in_words(spec, rival.value)}", "        ", "      ")
        yield from (_quote(each, lines, "        ") for each in rival.evidence)


def _in_words(spec: FieldSpec, value: Value | None) -> str:
    """Say a value as a person would: silence and named parts in words of their own."""
    if value is None:
        return "the note is silent, as a person found"
    if spec.kind == "named":
        return "in the note"
    return show_value(value, spec.unit)


def _quote(evidence: Evidence, lines: _Lines, indent: str) -> str:
    span = evidence.span
    where = f"{lines.place(span[0])}: " if span else ""
    return f"{indent}{where}“{harmless(evidence.exact)}”"


def _fill(words: str, indent: str = "", first: str | None = None) -> Iterable[str]:
    start = indent if first is None else first
    return textwrap.wrap(harmless(words), _WIDTH, initial_indent=start, subsequent_indent=indent) or [start]
