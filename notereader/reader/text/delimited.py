"""Notes exported as fields with a mark between them: 'finger;tendon;cut' above '2;FDP;100 %', 'side;R'.

Lines with the same number of fields below a line of titles are read as a grid; others as a label and its answer.
"""

import re
from collections.abc import Iterator
from itertools import pairwise

from notereader.reader.text.writing_out import Written
from notereader.vocabulary.wordlists import word_list

_MARKS = (";", "^", "~", "\u00a6", "\u00ac", ",")
_LINE = re.compile(r"[^\n]+")
_FEWEST = 4  # lines whose fields the mark parts
_FEWEST_FIELDS = 3  # of a row
_LONGEST_LABEL = 30  # characters
_SPACED = re.compile(r"[ \t]")

Line = re.Match[str]


def delimited(text: str) -> list[Written]:
    """Return what is to be read in the place of the marks between the fields of a note; nothing where it has none."""
    for mark in _MARKS:
        if text.count(mark) >= _FEWEST:
            lines = [m for m in _LINE.finditer(text) if _is_parted(m.group(), mark)]
            rows = _rows(text, lines, mark)
            if len(lines) >= _FEWEST and (rows or mark == ";"):
                return [w for line in lines for w in _told(line, mark, line.start() in rows)]
    return []


def _is_parted(line: str, mark: str) -> bool:
    """Tell whether a mark parts the fields of a line: behind a short label, and with no space behind it."""
    label, found, rest = line.partition(mark)
    named = 0 < len(label.strip()) <= _LONGEST_LABEL and "." not in label[:-1]
    return bool(found) and named and _SPACED.match(rest) is None


def _rows(text: str, lines: list[Line], mark: str) -> set[int]:
    """Return where the lines of the grids begin: a line of titles, and those below it with as many fields."""
    found: set[int] = set()
    for n, title in enumerate(lines):
        fields = title.group().split(mark)
        if title.start() in found or len(fields) < _FEWEST_FIELDS or not all(_is_title(f) for f in fields):
            continue
        body = list(_below(text, lines[n:], mark))
        if body and fields[0] not in {row.group().split(mark)[0] for row in body}:
            found.update(row.start() for row in (title, *body))
    return found


def _is_title(field: str) -> bool:
    return any(c.isalpha() for c in field) and not any(c.isdecimal() for c in field)


def _below(text: str, lines: list[Line], mark: str) -> Iterator[Line]:
    """Yield the lines right below the first that have as many fields as it has."""
    for above, line in pairwise(lines):
        next_to = text[above.end() : line.start()].count("\n") == 1
        if not next_to or line.group().count(mark) != lines[0].group().count(mark):
            return
        yield line


def _told(line: Line, mark: str, in_grid: bool) -> Iterator[Written]:
    """Yield what the marks of a line are read as: the bars of a grid, or a colon behind a label and commas."""
    begin, said = line.start(), line.group()
    if in_grid:
        yield from (Written(begin + k, begin + k + 1, " | ") for k, c in enumerate(said) if c == mark)
        return
    end = len(said.rstrip(mark + " \t"))
    spots = [k for k, c in enumerate(said[:end]) if c == mark and said[k + 1 : k + 2] != " "]
    says_nothing = said[: said.index(mark)].strip().lower() in word_list("delimited", "says_nothing")
    label = len(spots) > 1 and says_nothing  # 'other;median nerve;2 of 6 groups': the name is the second field
    if label:
        yield Written(begin, begin + spots[0] + 1, "")
    for n, k in enumerate(spots[label:]):
        yield Written(begin + k, begin + k + 1, ": " if n == 0 else ", ")
    yield Written(begin + end, begin + len(said), "" if said[end - 1] in ".?!" else ".")
