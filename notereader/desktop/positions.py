"""Code points of the record and UTF-16 units of Qt: the one place that knows both.

The record counts Unicode code points (W3C Web Annotation Data Model, section 4.2.4); Qt's texts and cursors count
UTF-16 units, of which a character beyond U+FFFF takes two.
"""

from bisect import bisect_left, bisect_right
from itertools import accumulate

# What QTextDocument would drop, join or take for the end of a paragraph, and what is shown in its place. Each keeps its
# length, or every position after it would be off.
_UNSHOWABLE = {0x2028: "\n", 0x2029: "\n", 0xFDD0: "\ufffd", 0xFDD1: "\ufffd", 0xFEFF: "\u200b"}


def shown(text: str) -> str:
    """Return the text as a Qt document keeps it: same number of code points and of UTF-16 units as the original."""
    same_length = text.replace("\r\n", " \n").replace("\r", "\n").translate(_UNSHOWABLE)
    return "".join("\ufffd" if "\ud800" <= letter <= "\udfff" else letter for letter in same_length)


class Positions:
    """Translates positions within one text both ways."""

    def __init__(self, text: str):
        units = (2 if letter > "\uffff" else 1 for letter in text)
        # Without characters beyond U+FFFF, the usual case, both counts are the same and no table is kept.
        self._length = len(text)
        self._starts = None if not text or max(text) <= "\uffff" else [0, *accumulate(units)]

    def to_utf16(self, point: int) -> int:
        """Return the UTF-16 position of a code point; beyond the end it is the end."""
        point = max(0, min(point, self._length))
        return point if self._starts is None else self._starts[point]

    def to_points(self, unit: int) -> int:
        """Return the code point at a UTF-16 position; the middle of a pair counts as its beginning."""
        unit = max(0, unit)
        if self._starts is None:
            return min(unit, self._length)
        return min(bisect_right(self._starts, unit) - 1, self._length)

    def span_to_points(self, start: int, end: int) -> tuple[int, int]:
        """Return a selection from `start` to `end` in code points, never cutting a pair: its end is rounded up."""
        if self._starts is None:
            return self.to_points(start), self.to_points(end)
        return self.to_points(start), min(bisect_left(self._starts, max(0, end)), self._length)
