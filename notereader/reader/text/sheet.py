"""A note whose sheet was copied with its margin, or with every line end doubled, is read without them."""

import re
from collections.abc import Iterator

from notereader.reader.text.writing_out import Written

_MARGIN = re.compile(r"^[ \t]*(?=\S)", re.MULTILINE)
_EMPTY = re.compile(r"^[ \t]+$", re.MULTILINE)
_ENDS = re.compile(r"(?:[ \t]*\n)+")
_FEWEST_ENDS = 6
_PARAGRAPH = 4  # line ends where the sheet had a blank line


def sheet_marks(text: str) -> Iterator[Written]:
    """Yield the margin of each line and the second half of doubled line ends, with nothing in their place."""
    yield from _margin(text)
    yield from _doubled_ends(text)


def _margin(text: str) -> Iterator[Written]:
    """'   FDP: cut', '   FDS: intact': blanks that every line begins with part nothing and indent nothing."""
    if text.lstrip("\n")[:1] not in (" ", "\t"):
        return
    lines = list(_MARGIN.finditer(text))
    shortest = min((m.group() for m in lines), key=len, default="")
    width = len(shortest) if all(m.group().startswith(shortest) for m in lines) else 0
    if width and len(lines) > 1:
        for m in lines:
            yield Written(m.start(), m.start() + width, "")
        for m in _EMPTY.finditer(text):
            yield Written(*m.span(), "")


def _doubled_ends(text: str) -> Iterator[Written]:
    """Halve the ends of lines where all come in pairs and some paragraph is parted by two pairs.

    Without such a paragraph the blank lines may be the note's own.
    """
    if text.count("\n\n\n\n") == 0:
        return
    runs = [m for m in _ENDS.finditer(text) if m.end() < len(text)]
    counts = [m.group().count("\n") for m in runs]
    if len(runs) < _FEWEST_ENDS or any(n % 2 for n in counts) or max(counts) < _PARAGRAPH:
        return
    for m, n in zip(runs, counts, strict=True):
        first = m.group().find("\n") if n == 2 else len(m.group()) - n // 2
        yield Written(m.start() + first, m.start() + first + n // 2, "")
