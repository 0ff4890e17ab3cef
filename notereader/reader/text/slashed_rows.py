"""Grids whose cells a spaced slash parts: 'ray / tendon / zone / % cut' above '5 / FDS / - / 0'.

A row may stop early: what it does not say stands in the last columns.
"""

import re
from collections.abc import Iterator

from notereader.reader.text.writing_out import Written

_MARK = " / "
_FEWEST_FIELDS = 4  # of the line of titles
_FEWEST_CELLS = 3  # of a row
_FEWEST_ROWS = 2
_LONGEST_TITLE = 24  # characters
_LINE = re.compile(r"[^\n]*\n?")


def slashed_rows(text: str) -> list[Written]:
    """Return bars to be read in the place of the slashes of each grid; nothing where the note has none."""
    if text.count(_MARK) < _FEWEST_FIELDS + _FEWEST_ROWS:
        return []
    lines = [m for m in _LINE.finditer(text) if m.group()]
    found: list[Written] = []
    for n, title in enumerate(lines):
        if _is_title(title.group().strip()):
            rows = list(_rows(lines[n + 1 :], title.group().count(_MARK)))
            if len(rows) >= _FEWEST_ROWS:
                found += [bar for line in (title, *rows) for bar in _bars(line, title.group().count(_MARK))]
    return found


def _is_title(line: str) -> bool:
    fields = line.split(_MARK)
    return len(fields) >= _FEWEST_FIELDS and all(_names_a_column(field) for field in fields)


def _names_a_column(field: str) -> bool:
    opens = field.lstrip()[:1].isalpha() or field.lstrip()[:1] == "%"  # the box of a choice opens no title
    plain = opens and not any(c.isdecimal() or c in ".:;[]" for c in field)
    return plain and any(c.isalpha() for c in field) and len(field) <= _LONGEST_TITLE


def _rows(lines: list[re.Match[str]], most: int) -> Iterator[re.Match[str]]:
    """Yield the lines right below a line of titles that have as many fields as it has, or fewer."""
    for line in lines:
        if not _FEWEST_CELLS - 1 <= line.group().count(_MARK) <= most:
            return
        yield line


def _bars(line: re.Match[str], most: int) -> Iterator[Written]:
    """Yield the bars of a line, with those that a row leaves out at its end."""
    begin, said = line.start(), line.group()
    spots = [m.start() for m in re.finditer(_MARK, said)]
    yield from (Written(begin + k, begin + k + len(_MARK), " | ") for k in spots)
    end = begin + len(said.rstrip())
    yield Written(end, end, " | " * (most - len(spots)))
