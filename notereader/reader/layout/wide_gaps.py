"""Running text with wide gaps between its words, as a scanner or a fax leaves it: such a gap parts no cells.

Two spaces usually begin a new column. In a paragraph whose gaps stand anywhere, behind full stops or before words in
small letters, and whose lines go on in small letters, they mean no more than one space.
"""

from dataclasses import dataclass
from itertools import pairwise

from notereader.reader.layout.sentences import in_small_letters
from notereader.reader.page import Break, Page

_WIDEST = 5  # characters of a gap within running text
_FEWEST = 4  # gaps in a paragraph
_LOOSE = 0.7  # of the gaps of running text stand before small letters or behind a mark
_LONG = 100  # characters; a line that long is a paragraph of its own
_MARKS = frozenset([".", ",", ";", ":", ")", "(", "-"])
_ITEMS = frozenset(["+", "-", "*", ">"])
_CELLS = frozenset(["|", "[", "]", "\u2610", "\u2611", "\u2612"])


@dataclass(slots=True)
class _Line:
    i: int
    j: int
    gaps: list[int]  # words behind a wide gap


def close_wide_gaps(page: Page) -> None:
    """Take the wide gaps of running text for single spaces."""
    if page.breaks.count(Break.COLUMN) < _FEWEST or in_small_letters(page):
        return
    for lines in _paragraphs(page):
        gaps = [k for line in lines for k in line.gaps]
        if len(gaps) >= _FEWEST and _runs_on(page, lines) and _are_loose(page, lines, gaps):
            page.run_on.update(line.i for line in lines)
            for k in gaps:
                page.breaks[k] = Break.SPACE


def _paragraphs(page: Page) -> list[list[_Line]]:
    """Return the lines of each paragraph."""
    starts = [k for k in range(len(page.words)) if k == 0 or page.breaks[k] >= Break.LINE]
    found: list[list[_Line]] = []
    for i, j in zip(starts, [*starts[1:], len(page.words)], strict=True):
        line = _Line(i, j, [k for k in range(i + 1, j) if page.breaks[k] == Break.COLUMN])
        if not found or page.breaks[i] == Break.BLANK:
            found.append([])
        found[-1].append(line)
    return found


def _runs_on(page: Page, lines: list[_Line]) -> bool:
    """Tell whether a line goes on in small letters with the one above it, or one line is as long as a paragraph."""
    words = page.words[lines[0].i : lines[-1].j]
    if not _CELLS.isdisjoint(words) or any(w.startswith("..") for w in words):
        return False
    if sum(page.words[line.i] in _ITEMS for line in lines) > 1:
        return False  # a list
    long = any(page.ends[line.j - 1] - page.starts[line.i] >= _LONG and len(line.gaps) >= _FEWEST for line in lines)
    return long or any(
        page.text[page.starts[line.i]].islower() and page.words[line.i - 1] not in _MARKS for line in lines[1:]
    )


def _are_loose(page: Page, lines: list[_Line], gaps: list[int]) -> bool:
    """Tell whether the gaps of a paragraph stand where no column begins, and never under one another."""
    widths = [page.starts[k] - page.ends[k - 1] for k in gaps]
    if max(widths) > _WIDEST or "\t" in page.text[page.starts[lines[0].i] : page.ends[lines[-1].j - 1]]:
        return False
    loose = sum(_is_loose(page, k) for k in gaps)
    return loose >= _LOOSE * len(gaps) and not _stand_in_columns(page, lines, len(gaps))


def _is_loose(page: Page, k: int) -> bool:
    """Tell whether word k behind a gap goes on with what stands before it, and is no label: 'zone:'."""
    small = page.text[page.starts[k]].islower()
    return (small or page.words[k - 1] in _MARKS) and ":" not in page.words[k + 1 : k + 3]


def _stand_in_columns(page: Page, lines: list[_Line], count: int) -> bool:
    """Tell whether gaps of neighbouring lines end at one place, as those of a grid do."""
    places = [{page.starts[k] - page.starts[line.i] for k in line.gaps} for line in lines]
    shared = sum(len(a & b) for a, b in pairwise(places))
    return shared * 4 > count
