"""The lines of a note cut into cells, at bars, tabs or columns of space."""

from dataclasses import dataclass, field

from notereader.reader.page import Break, Page

Span = tuple[int, int]


@dataclass(slots=True)
class Line:
    """A line of the note and its cells."""

    i: int
    j: int
    cells: list[Span] = field(default_factory=list)
    starts: list[int] = field(default_factory=list)  # column of each cell on its line
    ends: list[int] = field(default_factory=list)
    bars: list[int] = field(default_factory=list)  # how many bars stand before each cell; empty where there are none
    all_bars: int = 0
    tabs: list[int] = field(default_factory=list)  # how many tabs stand before each cell; empty where there are none


@dataclass(slots=True)
class Row:
    """A row of a grid with its number, if it has one, and the words that say what it is about."""

    number: str
    i: int
    j: int
    label: Span | None = None


def lines_of(page: Page) -> list[Line]:
    """Return every line of the note, cut into cells."""
    starts = [k for k in range(len(page.words)) if page.breaks[k] >= Break.LINE]
    lines = []
    for i, j in zip(starts, [*starts[1:], len(page.words)], strict=True):
        line = Line(i, j)
        cut_cells(page, line, [])
        lines.append(line)
    return lines


def _new_cell(page: Page, k: int, origin: int, columns: list[int], first: int) -> bool:
    """Tell whether a cell begins at word k: after a column of space, or right under the start of a title.

    `first`: where the cell before it begins. One that stands under no title is not cut by the title beside it.
    """
    if page.breaks[k] == Break.COLUMN:
        return True
    begins = page.starts[first] - origin
    if page.breaks[first] < Break.LINE and not any(abs(begins - column) <= 1 for column in columns):
        return False
    return page.breaks[k] == Break.SPACE and page.starts[k] - origin in columns and page.words[k] not in _BOX_ENDS


_BOX_ENDS = frozenset([")", "]"])  # a box is never cut in two, wherever its column begins


def cut_cells(page: Page, line: Line, columns: list[int]) -> None:
    """Cut a line into cells at bars or at columns of space; before the first bar, where labels stand, at both."""
    line.cells, line.starts, line.ends = [], [], []
    bars = page.words[line.i : line.j].count("|")
    origin = page.text.rfind("\n", 0, page.starts[line.i]) + 1
    first, barred = line.i, False
    for k in range(line.i, line.j + 1):
        # 'Core type ......... M-Tang    mattress': dots lead from a label to its cells as a bar does.
        at_bar = k < line.j and (page.words[k] == "|" or (page.words[k].startswith("..") and k > line.i))
        barred = barred or at_bar
        gap = k < line.j and k > first and not (barred and bars >= 2) and _new_cell(page, k, origin, columns, first)
        if k == line.j or at_bar or gap:
            if k > first:
                line.cells.append((first, k))
                line.starts.append(page.starts[first] - origin)
                line.ends.append(page.ends[k - 1] - origin)
            first = k + 1 if at_bar else k
    line.all_bars = bars
    line.bars = [page.words[line.i : i].count("|") for i, _ in line.cells] if bars > 1 else []
    tabs = [page.text.count("\t", origin, page.starts[i]) for i, _ in line.cells]
    line.tabs = tabs if max(tabs, default=0) and len(set(tabs)) == len(tabs) else []
