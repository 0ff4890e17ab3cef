"""Calendar dates as notes write them, read to ISO form; the order of day and month is taken from the note itself."""

import re
from collections.abc import Iterator
from datetime import date

from notereader.reader.page import FoundDate, Page

_MONTHS = {
    name: n // 2 + 1
    for n, name in enumerate(
        "jan january feb february mar march apr april may may jun june jul july aug august sep september "
        "oct october nov november dec december".split()
    )
} | {"sept": 9}
_NUMERIC = re.compile(r"(\d{1,2})[./-](\d{1,2})[./-](\d{4}|\d{2})\Z")
_ISO = re.compile(r"(\d{4})-(\d{2})-(\d{2})\Z")
_NAMED = re.compile(r"(\d{1,2})-([A-Za-z]{3,9})-(\d{4}|\d{2})\Z")
_DAY = re.compile(r"(\d{1,2})(?:st|nd|rd|th)?\Z")
_YEAR = re.compile(r"(?:19|20)\d\d\Z")


def find_dates(page: Page) -> list[FoundDate]:
    """Return the dates of a note in order; numeric ones whose order cannot be told are left out."""
    numeric = [(k, _NUMERIC.match(word)) for k, word in enumerate(page.words) if word[0].isdigit() and len(word) >= 6]
    month_first = _month_first([m for _, m in numeric if m], page)
    found = list(_worded(page))
    for k, match in numeric:
        if match:
            found += _numeric(page, k, match, month_first)
        elif iso := _ISO.match(page.words[k]):
            found += _made(page, k, k + 1, int(iso[1]), int(iso[2]), int(iso[3]))
        elif named := _NAMED.match(page.words[k]):
            month = _MONTHS.get(named[2].lower())
            if month:
                found += _made(page, k, k + 1, _year(named[3]), month, int(named[1]))
    return sorted(found, key=lambda d: d.i)


def _year(figures: str) -> int:
    return int(figures) if len(figures) == 4 else 2000 + int(figures)


def _month_first(matches: list[re.Match[str]], page: Page) -> bool | None:
    """Tell the note's order of day and month: by its own unambiguous dates, else by its spelling; None where unknown."""
    for match in matches:
        first, second = int(match[1]), int(match[2])
        if first > 12 >= second:
            return False
        if second > 12 >= first:
            return True
    if any("." in m[0] for m in matches):
        return False
    text = set(page.words)
    if text & {"anesthesia", "anesthesiologist", "anesthetic", "mcp", "hemostasis", "xeroform", "center"}:
        return True
    if text & {"anaesthesia", "anaesthetist", "anaesthetic", "theatre", "haemostasis", "registrar", "cephazolin"}:
        return False
    return None


def _numeric(page: Page, k: int, match: re.Match[str], month_first: bool | None) -> Iterator[FoundDate]:
    first, second, year = int(match[1]), int(match[2]), _year(match[3])
    clear = first > 12 or second > 12 or first == second
    if not clear and month_first is None:
        return
    by_month = second > 12 or (first <= 12 and bool(month_first))
    month, day = (first, second) if by_month else (second, first)
    yield from _made(page, k, k + 1, year, month, day, inferred=not clear)


def _worded(page: Page) -> Iterator[FoundDate]:
    """Yield dates with the month in letters: '3 June 2029', 'June 3, 2029', '3rd of June 2029'."""
    words = page.words
    for k, word in enumerate(words):
        month = _MONTHS.get(word)
        if not month:
            continue
        year_at = k + 1
        while year_at < len(words) and words[year_at] in (",", "."):
            year_at += 1
        if year_at < len(words) and _YEAR.match(words[year_at]):
            back = k - 2 if k >= 2 and words[k - 1] == "of" else k - 1
            day = _DAY.match(words[back]) if back >= 0 else None
            if day:
                yield from _made(page, back, year_at + 1, int(words[year_at]), month, int(day[1]))
            continue
        day = _DAY.match(words[year_at]) if year_at < len(words) else None
        after = year_at + 1
        while after < len(words) and words[after] in (",", "."):
            after += 1
        if day and after < len(words) and _YEAR.match(words[after]):
            yield from _made(page, k, after + 1, int(words[after]), month, int(day[1]))


def _made(page: Page, i: int, j: int, year: int, month: int, day: int, inferred: bool = False) -> Iterator[FoundDate]:
    try:
        yield FoundDate(date(year, month, day).isoformat(), i, j, inferred)
    except ValueError:
        return
