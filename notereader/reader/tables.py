"""Grids in a note: rows of cells under a line of column titles, and line numbers that later remarks refer to."""

from dataclasses import dataclass, field

from notereader.reader.page import Break, Page

_TITLES = {"digit", "finger", "tendon", "zone", "damage", "action", "repair", "injury", "core", "epi", "lesion", "extent", "treatment", "ray", "level", "line", "no", "structure", "status", "done", "suture", "finding", "findings", "strands", "cut", "state"}
_ROMAN = {"i": "I", "ii": "II", "iii": "III", "iv": "IV", "v": "V", "1": "I", "2": "II", "3": "III", "4": "IV", "5": "V"}
_LETTERS = {"a": "A", "b": "B", "c": "C", "d": "D"}


@dataclass(slots=True)
class Row:
    """A row of a grid: its number, its cells as runs of words, by column title."""

    number: str
    i: int
    j: int
    cells: dict[str, tuple[int, int]] = field(default_factory=dict)


def rows_of(page: Page) -> list[Row]:
    """Return the rows of every grid of the note."""
    lines = _lines(page)
    rows: list[Row] = []
    titles: list[str] = []
    for i, j in lines:
        cells = _cells(page, i, j)
        names = [" ".join(page.words[a:b]) for a, b in cells]
        known = sum(1 for name in names if name.split(" ")[0] in _TITLES)
        if len(cells) >= 3 and known >= 3 and "zone" in names:
            titles = [name.split(" ")[0] for name in names]
        elif titles and len(cells) >= len(titles) - 1 and len(cells) >= 3:
            if len(cells) == len(titles) - 1 and titles[0] in ("line", "no"):
                rows.append(Row("", i, j, dict(zip(titles[1:], cells, strict=False))))
            else:
                number = page.words[cells[0][0]] if titles[0] in ("line", "no") else ""
                rows.append(Row(number, i, j, dict(zip(titles, cells, strict=False))))
        elif titles and len(cells) < 2:
            titles = []
    return rows


def _lines(page: Page) -> list[tuple[int, int]]:
    starts = [k for k in range(len(page.words)) if page.breaks[k] >= Break.LINE]
    return list(zip(starts, [*starts[1:], len(page.words)], strict=True))


def _cells(page: Page, i: int, j: int) -> list[tuple[int, int]]:
    """Cut a line into cells at columns of space or bars."""
    cells: list[tuple[int, int]] = []
    first = i
    for k in range(i, j + 1):
        if k == j or page.words[k] == "|" or (page.breaks[k] == Break.COLUMN and k > first):
            if k > first:
                cells.append((first, k))
            first = k + 1 if k < j and page.words[k] == "|" else k
    return cells


def zone_value(words: list[str]) -> str | None:
    """Read the words of a zone cell or of 'Zone: II' as a zone, or None."""
    words = [w for w in words if w not in (":", ".", "zone", "|", "-", "flexor", "(", ")", "t")]
    if not words:
        return None
    word = words[0]
    letter = word[-1] if len(word) > 1 and word[-1] in _LETTERS and word[:-1] in _ROMAN else ""
    base = _ROMAN.get(word[:-1] if letter else word)
    if base is None:
        return None
    if not letter and len(words) > 1 and words[1] in _LETTERS and base in ("I", "II"):
        letter = words[1]
    value = base + _LETTERS.get(letter, "")
    return value if value in ("I", "IA", "IB", "IC", "II", "IIA", "IIB", "IIC", "IID", "III", "IV", "V") else None
