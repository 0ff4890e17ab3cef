"""Cells that repeat the cell above them by a sign: '"', '-"-', '\'\'' below 'cut   3-0 Mersilene   4'."""

from notereader.reader.page import Page

_SIGNS = frozenset(['"', "''", "'", "``", "`", ",,", ",", "\u201e", "\u201c", "\u201d", "\u3003"])
_AROUND = frozenset(["-", "--", "\u2013", "\u2014"])


def is_ditto_sign(page: Page, cell: tuple[int, int]) -> bool:
    """Tell whether a cell holds nothing but the sign that stands for the cell above it."""
    words = page.words[cell[0] : cell[1]]
    return not _SIGNS.isdisjoint(words) and _SIGNS.union(_AROUND).issuperset(words)
