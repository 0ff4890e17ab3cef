"""Cells of a ruled grid that go on in the lines below: '| FDS | ulnar slip cut, radial |' above '|   | slip intact |'.

Such a row is read as one line: what stands in its further lines is read behind the cell that it goes on with.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from notereader.reader.text.writing_out import Span, Written

_LINE = re.compile(r"[^\n]+")
_FEWEST_BARS = 2
_NOTHING = frozenset(["-", "\u2013", "\u2014", "n/a", "/"])
# What opens a statement of its own in a cell: a name, or a label with a colon.
_OPENS = re.compile(r"(?:A\d|FD[PS]|FPL|[RU]D[NA])\b|[^\s:]+(?: [^\s:]+)?: ")
_GOES_ON = re.compile(r"[,;:/&+-]$|\b(?:and|of|with|to|the|in|by|for|at|from)$", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class _Row:
    """A line of a grid: where it stands, its bars, counted from its beginning, and its filled cells by their place."""

    i: int
    j: int
    bars: tuple[int, ...]
    cells: dict[int, Span]


def wrapped_cells(text: str) -> list[Written]:
    """Return what is to be read so that each wrapped cell of a ruled grid stands in one line; often nothing."""
    if "|" not in text:
        return []
    found: list[Written] = []
    row: _Row | None = None
    cells: dict[int, Span] = {}  # the last piece of each cell of the row
    for line in _LINE.finditer(text):
        below = _row(line)
        beside = row is not None and text[row.j : line.start()].count("\n") == 1
        if row is not None and beside and below.bars == row.bars and _goes_on(text, cells, row, below):
            found += _joined(text, cells, row, below)
            cells |= below.cells
            row = _Row(row.i, below.j, row.bars, row.cells)
        else:
            row = below if len(below.bars) >= _FEWEST_BARS else None
            cells = dict(below.cells)
    return found


def _row(line: re.Match[str]) -> _Row:
    said, begin = line.group(), line.start()
    bars = tuple(k for k, c in enumerate(said) if c == "|")
    cells: dict[int, Span] = {}
    for n, (i, j) in enumerate(zip((-1, *bars), (*bars, len(said)), strict=True)):
        cell = said[i + 1 : j]
        if cell.strip():
            left = i + 1 + len(cell) - len(cell.lstrip())
            cells[n] = (begin + left, begin + left + len(cell.strip()))
    return _Row(begin, line.end(), bars, cells)


def _goes_on(text: str, cells: dict[int, Span], row: _Row, below: _Row) -> bool:
    """Tell whether a line has no label of its own and fills only cells that the row has filled."""
    label = min(row.cells, default=None)
    if label is None or not below.cells or label in below.cells or not below.cells.keys() <= cells.keys():
        return False
    if any(text[slice(*cells[n])].lower() in _NOTHING for n in below.cells):
        return False
    # '| long | FDP | 100 |' above '|      | FDS | 100 |': the second cell is the label of a row of its own
    second = below.cells.get(label + 1)
    return second is None or any(" " in text[slice(*span)] for span in (second, row.cells[label + 1]))


def _joined(text: str, cells: dict[int, Span], row: _Row, below: _Row) -> Iterator[Written]:
    """Yield each cell of a line that goes on, put behind its cell of the row, and nothing in the place of the line."""
    for n, (i, j) in below.cells.items():
        at, above = row.cells[n][1], text[slice(*cells[n])]
        own = _OPENS.match(text[i:j]) and not _GOES_ON.search(above)
        yield Written(at, at, "; " if own else " ")
        yield Written(at, at, text[i:j], (i, j))
    yield Written(below.i - 1, below.j, "")
