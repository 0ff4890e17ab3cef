"""Recognised words put back into the rows of the page they stood in.

Recognition cuts a page into blocks and gives them one after the other: the labels of a form, then its values. A label
has to stand beside its value, or the reader takes what is told of last year's repair for today's. So the lines of
blocks that stand side by side become one row again, with a wide gap between. Two columns of running text stay apart.
"""

import statistics
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import combinations, pairwise
from typing import NamedTuple

# A gap of so many letters parts columns; a stretched or doubled space stays below it.
_COLUMN_GAP = 2.8
# Rows further apart than so many usual distances have an empty line between them.
_EMPTY_LINE = 1.6
# Lines share a row where they overlap by this share of the lower one's height.
_SAME_HEIGHT = 0.5
# A column of at least so many lines with so many words each is running text.
_TEXT_LINES, _TEXT_WORDS = 4, 5.0


class Word(NamedTuple):
    """A recognised word: the line it belongs to (page, block, paragraph, line), its place in dots, its sureness."""

    line: tuple[str, ...]
    left: int
    top: int
    width: int
    height: int
    confidence: float
    text: str


class Placed(NamedTuple):
    """A word and what stands before it: nothing, spaces or line ends."""

    before: str
    word: Word


@dataclass
class _Line:
    """A line as it was recognised, and the room it takes."""

    words: list[Word]

    def __post_init__(self) -> None:
        self.block = self.words[0].line[:2]
        self.left = min(word.left for word in self.words)
        self.right = max(word.left + word.width for word in self.words)
        # Medians: one tall bracket or a speck does not move the line.
        self.top = statistics.median(word.top for word in self.words)
        self.bottom = statistics.median(word.top + word.height for word in self.words)

    @property
    def middle(self) -> float:
        return (self.top + self.bottom) / 2

    def beside(self, other: "_Line") -> bool:
        """Tell whether two lines stand in one row, one left of the other."""
        if self.left < other.right and other.left < self.right:
            return False
        shared = min(self.bottom, other.bottom) - max(self.top, other.top)
        return shared >= _SAME_HEIGHT * min(self.bottom - self.top, other.bottom - other.top)


def placed(words: Iterable[Word]) -> Iterator[Placed]:
    """Yield the words, given in the order of recognition, in reading order with what parts each from the one before."""
    lines = _lines(_upright([*words]))
    if not lines:
        return
    letter = statistics.median(word.width / len(word.text) for line in lines for word in line.words)
    if _columns_of_text(lines):
        yield from _as_given(lines, letter)
        return
    rows = _rows(lines)
    middles = [statistics.mean(line.middle for line in row) for row in rows]
    usual = statistics.median(low - high for high, low in pairwise(middles)) if len(rows) > 1 else 0.0
    for number, row in enumerate(rows):
        far = number > 0 and middles[number] - middles[number - 1] > _EMPTY_LINE * usual
        between = "" if number == 0 else "\n\n" if far else "\n"
        yield from _spaced([word for line in row for word in line.words], letter, between)


def _upright(words: list[Word]) -> list[Word]:
    """Return the words as they stand once the page is turned so that lines run from left to right.

    Recognition turns a page that lies on its side or head, but tells the places on the page as it came.
    """
    turned = [
        words,
        [w._replace(left=w.top, top=-w.left - w.width, width=w.height, height=w.width) for w in words],
        [w._replace(left=-w.left - w.width, top=-w.top - w.height) for w in words],
        [w._replace(left=-w.top - w.height, top=w.left, width=w.height, height=w.width) for w in words],
    ]
    return max(turned, key=_in_order)


def _in_order(words: list[Word]) -> int:
    """Return how many words follow the one before in their line to its right, at its height."""
    return sum(
        one.line == other.line
        and one.left + one.width <= other.left
        and other.top < one.top + one.height
        and one.top < other.top + other.height
        for one, other in pairwise(words)
    )


def _lines(words: Iterable[Word]) -> list[_Line]:
    found: dict[tuple[str, ...], list[Word]] = {}
    for word in words:
        found.setdefault(word.line, []).append(word)
    return [_Line(line) for line in found.values()]


def _rows(lines: list[_Line]) -> list[list[_Line]]:
    """Return the rows from the top, each from the left."""
    rows: list[list[_Line]] = []
    for line in sorted(lines, key=lambda line: line.middle):
        # A row is looked for among the last few: lines of one row differ a little in height.
        row = next((row for row in reversed(rows[-3:]) if all(line.beside(other) for other in row)), None)
        if row is None:
            rows.append([line])
        else:
            row.append(line)
    return [sorted(row, key=lambda line: line.left) for row in rows]


def _columns_of_text(lines: list[_Line]) -> bool:
    """Tell whether two blocks of running text stand side by side, as in a newspaper."""
    blocks: dict[tuple[str, ...], list[_Line]] = {}
    for line in lines:
        blocks.setdefault(line.block, []).append(line)
    texts = [block for block in blocks.values() if _is_text(block)]
    return any(any(a.beside(b) for a in one for b in other) for one, other in combinations(texts, 2))


def _is_text(block: list[_Line]) -> bool:
    return len(block) >= _TEXT_LINES and statistics.mean(len(line.words) for line in block) >= _TEXT_WORDS


def _as_given(lines: list[_Line], letter: float) -> Iterator[Placed]:
    """Keep the order of recognition: block after block, an empty line between them."""
    last: _Line | None = None
    for line in lines:
        between = "" if last is None else "\n" if last.block == line.block else "\n\n"
        yield from _spaced(line.words, letter, between)
        last = line


def _spaced(words: list[Word], letter: float, before: str) -> Iterator[Placed]:
    """Yield the words of a row; where a column begins, three spaces stand before it, as in typed forms."""
    end: int | None = None
    for word in words:
        if end is not None:
            before = "   " if word.left - end > _COLUMN_GAP * letter else " "
        yield Placed(before, word)
        end = word.left + word.width
