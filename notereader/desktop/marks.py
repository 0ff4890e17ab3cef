"""Which words of the note are marked, why, and for which fact. Knows no widgets and counts in code points."""

from collections.abc import Iterator
from dataclasses import dataclass

from notereader.desktop.rows import needs_thought
from notereader.desktop.themes import MarkKind
from notereader.record import Address, Fact, Record

_KINDS = {
    "confirmed": MarkKind.CONFIRMED,
    "corrected": MarkKind.CORRECTED,
    "added": MarkKind.ADDED,
}


@dataclass(frozen=True)
class Span:
    """Marked words: from start to end (exclusive), the fact they belong to and why they are marked."""

    start: int
    end: int
    address: Address
    kind: MarkKind


def marks_of(record: Record) -> list[Span]:
    """Return the marks of all facts in the order of the note; withdrawn facts have none."""
    return sorted(_spans(record), key=lambda span: (span.start, span.end))


def spans_of(address: Address, fact: Fact) -> list[Span]:
    """Return the marks of the fact in hand: its words, then the words of its rivals."""
    words = [Span(*evidence.span, address, MarkKind.IN_HAND) for evidence in fact.evidence if evidence.span]
    return words + list(_rivals(address, fact))


def facts_at(spans: list[Span], point: int) -> list[Address]:
    """Return the facts whose marked words hold the code point, the shortest words first."""
    hits = sorted((s for s in spans if s.start <= point < s.end), key=lambda span: span.end - span.start)
    return list(dict.fromkeys(span.address for span in hits))


def _spans(record: Record) -> Iterator[Span]:
    for address, fact in record.walk():
        if fact.status == "withdrawn":
            continue
        kind = _KINDS.get(fact.status) or (MarkKind.LOOK_TWICE if needs_thought(fact) else MarkKind.PROPOSED)
        for evidence in fact.evidence:
            if evidence.span:
                yield Span(*evidence.span, address, kind)
        if fact.status == "proposed":
            yield from _rivals(address, fact)


def _rivals(address: Address, fact: Fact) -> Iterator[Span]:
    for rival in fact.rivals:
        for evidence in rival.evidence:
            if evidence.span:
                yield Span(*evidence.span, address, MarkKind.RIVAL)
