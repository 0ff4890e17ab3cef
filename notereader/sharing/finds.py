"""What may tell who somebody is: a place in a text, its kind, and why it was taken for that."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace

Shift = Callable[[int], str]


@dataclass(frozen=True, slots=True)
class Find:
    """Words from `start` to `end` (code points, exclusive) that may be an identifier of this kind.

    `why` says what led there. `shift` gives, for a date whose day is known, the same date written alike some days later
    (or earlier, for a negative number); without it the words are blanked. `blank` overrides what is put instead.
    """

    start: int
    end: int
    kind: str
    words: str
    why: str
    shift: Shift | None = field(default=None, compare=False, repr=False)
    blank: str | None = None


def claimed(finds: Iterable[Find]) -> list[Find]:
    """Return the finds in the order of the text without overlaps: who comes first keeps its words.

    Of a later find what is left on either side stays one, if it holds a letter or a figure.
    """
    taken: list[Find] = []
    for find in finds:
        for piece in _left_over(find, taken):
            taken.append(piece)
            taken.sort(key=lambda each: each.start)
    return taken


def _left_over(find: Find, taken: list[Find]) -> list[Find]:
    pieces, start = [], find.start
    for other in taken:
        if other.end <= start or other.start >= find.end:
            continue
        pieces.append((start, other.start))
        start = other.end
    pieces.append((start, find.end))
    if pieces == [(find.start, find.end)]:
        return [find]
    return [piece for low, high in pieces if (piece := _cut(find, low, high)) is not None]


def _cut(find: Find, low: int, high: int) -> Find | None:
    """Return a part of a find, without marks at its ends; None where nothing is left. A part of a date has no day."""
    words = find.words[low - find.start : high - find.start]
    kept = words.strip(" \t\r\n,;:.-/()")
    if high <= low or not any(map(str.isalnum, kept)):
        return None
    start = low + words.index(kept)
    return replace(find, start=start, end=start + len(kept), words=kept, shift=None)
