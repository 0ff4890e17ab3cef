"""Dates as notes write them: found, and written alike some days earlier or later.

A date whose day cannot be told (03/04/2031 where the note does not show its order, 'March 2031', 'at Easter') has no
day to count from and is blanked instead of shifted.
"""

import re
from collections.abc import Callable, Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass
from datetime import date, timedelta
from functools import partial

from notereader.sharing.date_forms import (
    AGE,
    ISO,
    MEASURE,
    NUMERIC,
    PACKED,
    damaged_forms,
    feasts,
    months_alone,
    named,
    slashed,
    spoken,
    weekdays,
    yearless,
)
from notereader.sharing.finds import Find, Shift
from notereader.sharing.tables import tables

# All ages over 89, and years that show such an age, go into one class.
_OLD = 89
AGE_BLANK = "[90 or over]"

# Days within which the dates of one injury and its operation lie, and by which one reading must be nearer.
_NEAR, _CLEARER, _FAR = 45, 20, 10_000

# 10/7 is ten days, 3/52 three weeks.
_DAYS_SIGN = 7


@dataclass(frozen=True, slots=True)
class _Written:
    """A date as it is written: where its parts stand in its words, and how each is written."""

    words: str
    day: date
    parts: tuple[tuple[int, int, Callable[[date], str]], ...]

    def shifted(self, days: int) -> str:
        """Return the date that many days later, written alike. Raises OverflowError outside the calendar."""
        then = self.day + timedelta(days=days)
        out, last = "", 0
        for start, end, write in sorted(self.parts, key=lambda part: part[0]):
            out += self.words[last:start] + write(then)
            last = end
        return out + self.words[last:]


def dates(text: str, known: Sequence[date] = ()) -> Iterator[Find]:
    """Yield every date of a text; `known` are days of which it is known that the text speaks of them."""
    full = [*_worded(text), *_clear_numeric(text)]
    days = [*known, *(written.day for _, written in full)]
    yield from _old_or_shifted(full, days)
    yield from _damaged(text)
    yield from _unclear_numeric(text, days, {start for start, _ in full})
    yield from _without_year(text, days)
    yield from _incomplete(text)
    yield from _ages(text)


def _old_or_shifted(full: list[tuple[int, _Written]], days: list[date]) -> Iterator[Find]:
    latest = max(days, default=None)
    for start, written in full:
        old = latest is not None and latest.year - written.day.year > _OLD
        why = "a date that shows an age over 89" if old else "a date"
        yield _find(start, written.words, why, None if old else _shift(written))


def _shift(written: _Written) -> Shift:
    return written.shifted


def _find(start: int, words: str, why: str, shift: Shift | None = None, blank: str | None = None) -> Find:
    return Find(start, start + len(words), "date", words, why, shift, blank)


def _worded(text: str) -> Iterator[tuple[int, _Written]]:
    """Yield dates with the month in letters and a year, and dates that begin with the year."""
    for pattern in (*named(), ISO, PACKED):
        for match in pattern.finditer(text):
            written = _made(match, _year(match["y"]), _month(match["m"]), int(match["d"]))
            if written is not None:
                yield match.start(), written


def _clear_numeric(text: str) -> Iterator[tuple[int, _Written]]:
    order = _order(text)
    for match in _numeric(text):
        first, second = int(match["a"]), int(match["b"])
        by_month = second > 12 or (order is True and first <= 12)
        if first > 12 or second > 12 or first == second or order is not None or match["s"] == ".":
            written = _numeric_made(match, by_month and match["s"] != ".")
            if written is not None:
                yield match.start(), written


def _unclear_numeric(text: str, days: list[date], done: set[int]) -> Iterator[Find]:
    """Yield dates in figures whose order only the other dates tell, or nothing."""
    for match in _numeric(text):
        if match.start() in done:
            continue
        readings = [written for by_month in (False, True) if (written := _numeric_made(match, by_month)) is not None]
        if not readings:
            continue
        written = _nearest(readings, days)
        why = "a date" if written else "a date whose order of day and month is unclear"
        yield _find(match.start(), match[0], why, _shift(written) if written else None)


def _nearest(readings: list[_Written], days: list[date]) -> _Written | None:
    """Return the reading that lies near another date while the other does not: an injury, its operation, a visit."""
    far = {reading: min((abs((reading.day - day).days) for day in days), default=_FAR) for reading in readings}
    ordered = sorted(far, key=lambda reading: far[reading])
    best = ordered[0]
    if far[best] > _NEAR or (len(ordered) > 1 and far[ordered[1]] - far[best] < _CLEARER):
        return None
    return best


def _numeric(text: str) -> Iterator[re.Match[str]]:
    for match in NUMERIC.finditer(text):
        if not MEASURE.match(text, match.end()):
            yield match


def _order(text: str) -> bool | None:
    """Tell whether the note's dates in figures begin with the month; None where none of them shows it."""
    for match in _numeric(text):
        first, second = int(match["a"]), int(match["b"])
        if first > 12 >= second >= 1 and first <= 31:
            return False
        if second > 12 >= first >= 1 and second <= 31:
            return True
    return None


def _numeric_made(match: re.Match[str], by_month: bool) -> _Written | None:
    day, month = ("b", "a") if by_month else ("a", "b")
    return _made(match, _year(match["y"]), int(match[month]), int(match[day]), day, month)


def _damaged(text: str) -> Iterator[Find]:
    """Yield dates in which letters stand for figures, as recognition from a picture leaves them: O3 Nov 2O38."""
    for pattern in damaged_forms():
        for match in pattern.finditer(text):
            figures = match["a"] + match["b"]
            if not figures.isdigit() and any(map(str.isalpha, figures)) and sum(map(str.isdigit, figures)) > 1:
                yield _find(match.start(), match[0], "a damaged date")


def _without_year(text: str, days: list[date]) -> Iterator[Find]:
    """Yield days with their month and no year: shifted within the year that the note's other dates lie in."""
    year = max(days).year if days else 2001
    for pattern in yearless():
        for match in pattern.finditer(text):
            month = _month(match["m"])
            written = _made(match, year, month, int(match["d"])) or _made(match, 2004, month, int(match["d"]))
            if written is not None:
                yield _find(match.start(), match[0], "a day and its month", _within_year(written, bool(days)))
    for match in slashed().finditer(text):
        if match["before"] or _near_in_figures(int(match["a"]), int(match["b"]), days):
            yield _find(match.start("date"), match["date"], "a day and a month in figures")


def _near_in_figures(first: int, second: int, days: list[date]) -> bool:
    """True for 13/3 beside a date of that March: never for a share such as 2/3, nor for 10/7, which is ten days."""
    if first <= second <= 12 or second == _DAYS_SIGN:
        return False
    for day, month in ((first, second), (second, first)):
        for other in days:
            with suppress(ValueError):
                if abs((date(other.year, month, day) - other).days) <= _NEAR:
                    return True
    return False


def _within_year(written: _Written, year_known: bool) -> Shift:
    """Return the shift of a date without a year: where it would leave the year that is meant, it is blanked."""

    def shift(days: int) -> str:
        if year_known and (written.day + timedelta(days=days)).year != written.day.year:
            raise OverflowError
        return written.shifted(days)

    return shift


def _incomplete(text: str) -> Iterator[Find]:
    for match in spoken().finditer(text):
        yield _find(match.start(), match[0], "a date in words")
    for pattern in months_alone():
        for match in pattern.finditer(text):
            yield _find(match.start("date"), match["date"], "a month")
    for match in feasts().finditer(text):
        yield _find(match.start(), match[0], "a day of its own name")
    for pattern in weekdays():
        for match in pattern.finditer(text):
            yield _find(match.start(1), match[1], "a day of the week", partial(_weekday, match[1]))


def _weekday(written: str, days: int) -> str:
    names = tables().dates.weekdays
    number = next(n for n, name in enumerate(names) if name.startswith(written.lower()[:3]))
    then = names[(number + days) % 7]
    return _like(then if written.lower() == names[number] else then[:3], written)


def _ages(text: str) -> Iterator[Find]:
    for match in AGE.finditer(text):
        group = "a" if match["a"] else "b"
        yield _find(match.start(group), match[group], "an age over 89", None, AGE_BLANK)


def _made(
    match: re.Match[str], year: int, month: int, day: int, day_at: str = "d", month_at: str = "m"
) -> _Written | None:
    try:
        found = date(year, month, day)
    except ValueError:
        return None
    base = match.start()
    has = match.groupdict()
    padded = any(has.get(name, "").startswith("0") for name in (day_at, month_at)) or match.re in (ISO, PACKED)
    parts: list[tuple[int, int, Callable[[date], str]]] = []

    def put(name: str, write: Callable[[date], str]) -> None:
        start, end = match.span(name)
        parts.append((start - base, end - base, write))

    put(day_at, lambda then: f"{then.day:02d}" if padded else str(then.day))
    if has[month_at].isdigit():
        put(month_at, lambda then: f"{then.month:02d}" if padded else str(then.month))
    else:
        put(month_at, lambda then: _month_like(then.month, has[month_at]))
    if has.get("y"):
        put("y", lambda then: str(then.year) if len(has["y"]) == 4 else f"{then.year % 100:02d}")
    if has.get("th"):
        put("th", lambda then: _like(_ordinal(then.day), has["th"]))
    return _Written(match[0], found, tuple(parts))


def _year(figures: str) -> int:
    """Return a year of four figures; of two, those from 60 on are of the last century, as in dates of birth."""
    return int(figures) if len(figures) == 4 else int(figures) + (1900 if int(figures) >= 60 else 2000)


def _month(word: str) -> int:
    if word.isdigit():
        return int(word)
    return next(n for n, name in enumerate(tables().dates.months, 1) if name.startswith(word.lower()[:3]))


def _month_like(month: int, written: str) -> str:
    name = tables().dates.months[month - 1]
    return _like(name if written.lower() in tables().dates.months else name[:3], written)


def _like(word: str, written: str) -> str:
    if written.isupper():
        return word.upper()
    return word.capitalize() if written[:1].isupper() else word


def _ordinal(day: int) -> str:
    return "th" if 10 <= day % 100 <= 20 else {1: "st", 2: "nd", 3: "rd"}.get(day % 10, "th")
