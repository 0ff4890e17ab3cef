"""A note whose marks and codes are written out before it is read, and the way back to the note as it stands.

're 8.3: modified Kessler' below '8.3 FDP ring - 70 %' is read as 'FDP ring: modified Kessler'; what words put in
tell is proved by the mark they stand for.
"""

from bisect import bisect_right
from collections.abc import Callable, Iterator
from dataclasses import dataclass

from notereader.record import Evidence, Fact, Note, Record, Remark, Rival, source_of

Span = tuple[int, int]  # code points


@dataclass(frozen=True, slots=True)
class Written:
    """Words to be read in the place of characters i to j of a note; `moved`: where they stand in it, if elsewhere."""

    i: int
    j: int
    words: str
    moved: Span | None = None


def read_written_out(text: str, parts: list[Written], read: Callable[[str], Record]) -> Record:
    """Return the draft of a note with some parts written out; its quotes are those of the note as it stands."""
    longer, places = _put_in(text, parts)
    record, source = read(longer), source_of(text)
    several: list[Fact | Rival | Remark] = [*record.remarks]
    for _, fact in record.walk():
        several += [fact, *fact.rivals]
    for told in several:
        parted = (part for e in told.evidence if e.span for part in _parted(places, e.span))
        spans = dict.fromkeys(_back(places, span) for span in parted)
        told.evidence = [Evidence.at(text, *span, source) for span in spans if span[0] < span[1]]
    record.note = Note.of(text, record.note.name)
    return record


@dataclass(frozen=True, slots=True)
class _Places:
    """Where the pieces of the longer text begin, in it and in the note, and which of them were put in."""

    starts: list[int]
    origins: list[Span]
    put_in: list[bool]
    moved: list[bool]


def _put_in(text: str, parts: list[Written]) -> tuple[str, _Places]:
    places = _Places([], [], [], [])
    pieces: list[str] = []
    length = 0
    for words, span, part in _pieces(text, parts):
        places.starts.append(length)
        places.origins.append(span)
        places.put_in.append(part is not None and part.moved is None)
        places.moved.append(part is not None and part.moved is not None)
        pieces.append(words)
        length += len(words)
    return "".join(pieces), places


def _pieces(text: str, parts: list[Written]) -> Iterator[tuple[str, Span, Written | None]]:
    """Yield the pieces of the longer text and where they stand in the note, without parts that meet an earlier one.

    With each goes the part it is, None for a piece of the note as it stands.
    """
    at = 0
    for part in sorted(parts, key=lambda each: (each.i, each.j)):
        if part.i < at:
            continue
        yield text[at : part.i], (at, part.i), None
        yield part.words, part.moved or (part.i, part.j), part
        at = part.j
    yield text[at:], (at, len(text)), None


def _parted(places: _Places, span: Span) -> Iterator[Span]:
    """Yield a span of the longer text, cut before and behind words that stand elsewhere in the note."""
    begin = span[0]
    for n in range(bisect_right(places.starts, begin), bisect_right(places.starts, span[1] - 1)):
        if places.moved[n] or places.moved[n - 1]:
            yield begin, places.starts[n]
            begin = places.starts[n]
    yield begin, span[1]


def _back(places: _Places, span: Span) -> Span:
    """Return where a span of the longer text stands in the note; of words put in, all that they stand for."""
    first, last = (bisect_right(places.starts, k) - 1 for k in (span[0], span[1] - 1))
    start, end = places.origins[first], places.origins[last]
    i = start[0] if places.put_in[first] else start[0] + span[0] - places.starts[first]
    j = end[1] if places.put_in[last] else end[0] + span[1] - places.starts[last]
    return i, j
