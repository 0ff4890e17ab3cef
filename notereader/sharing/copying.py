"""The copy of a text without its identifiers, and where every position of the old text lies in the new one."""

import secrets
from bisect import bisect_right
from collections.abc import Iterable
from dataclasses import dataclass

from notereader.sharing.finds import Find
from notereader.sharing.tables import kinds

# Dates move back by at least a month, so that none stays near its day, and by two years at most, so that the state of
# the trade at the time is still about the same.
_LEAST_DAYS, _MOST_DAYS = 30, 730


def random_shift() -> int:
    """Return by how many days the dates of one copy are moved: back, and at random. It is kept nowhere."""
    return -(_LEAST_DAYS + secrets.randbelow(_MOST_DAYS - _LEAST_DAYS + 1))


def replacement(find: Find, days: int) -> str:
    """Return what stands in the copy instead of a find."""
    if find.shift is not None:
        try:
            return find.shift(days)
        except OverflowError:
            pass
    return find.blank or kinds()[find.kind].blank


@dataclass(frozen=True, slots=True)
class _Change:
    """Old text from start to end (exclusive) became new text from new_start to new_end."""

    start: int
    end: int
    new_start: int
    new_end: int


class CleanCopy:
    """A text with the given finds shifted or blanked, and the way of positions into it."""

    def __init__(self, text: str, finds: Iterable[Find], days: int) -> None:
        self._changes: list[_Change] = []
        pieces, last, length = [], 0, 0
        for find in sorted(finds, key=lambda each: each.start):
            new = replacement(find, days)
            pieces += [text[last : find.start], new]
            length += find.start - last
            self._changes.append(_Change(find.start, find.end, length, length + len(new)))
            length += len(new)
            last = find.end
        self.text = "".join([*pieces, text[last:]])
        self._starts = [change.start for change in self._changes]

    def span(self, start: int, end: int) -> tuple[int, int]:
        """Return where the words from start to end lie now; what was changed in them is in them whole."""
        return self._moved(start, whole_from_start=True), self._moved(end, whole_from_start=False)

    def touches(self, start: int, end: int) -> bool:
        """True where a change lies within the words from start to end, or overlaps them."""
        return any(change.start < end and change.end > start for change in self._changes)

    def _moved(self, position: int, *, whole_from_start: bool) -> int:
        number = bisect_right(self._starts, position) - 1
        if number < 0:
            return position
        change = self._changes[number]
        if change.start == position:
            return change.new_start
        if position >= change.end:
            return position - change.end + change.new_end
        return change.new_start if whole_from_start else change.new_end
