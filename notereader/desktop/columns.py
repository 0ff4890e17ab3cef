"""Which lines of a note stand in columns: there the place of a cross tells what it answers, so widths are kept."""

import re

from PySide6.QtGui import QFontDatabase, QTextCharFormat, QTextFormat

_WIDE_GAP = re.compile(r"\S(?: {3,}|\t+)\S|^ {6,}\S")
_FEWEST = 2  # lines in a row; one wide gap alone is a slip of the hand


def columned_lines(text: str) -> list[bool]:
    """Tell for each line of a text whether it stands in columns: it and a neighbour hold wide gaps."""
    wide = [_WIDE_GAP.search(line) is not None for line in text.split("\n")]
    found = [False] * len(wide)
    first = 0
    for k in range(len(wide) + 1):
        if k < len(wide) and wide[k]:
            continue
        if k - first >= _FEWEST:
            found[first:k] = [True] * (k - first)
        first = k + 1
    return found


def column_format() -> QTextCharFormat:
    """Return the format of such lines: letters of one width, a step smaller, so that more of a row fits."""
    made = QTextCharFormat()
    made.setFontFamilies(QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont).families())
    made.setFontFixedPitch(True)
    made.setProperty(QTextFormat.Property.FontSizeAdjustment.value, -1)
    return made
