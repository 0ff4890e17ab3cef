"""Calendar dates as notes write them, read to ISO form; the order of day and month is taken from the note itself."""

import re
from collections.abc import Iterator
from datetime import date
from itertools import pairwise

from notereader.reader.mentions.date_words import day_after, day_before, spoken_year, without_year
from notereader.reader.page import Break, FoundDate, Page
from notereader.vocabulary.wordlists import word_list

_NAMES = (
    *("january", "february", "march", "april", "may", "june"),
    *("july", "august", "september", "october", "november", "december"),
)
MONTHS = {short: n for n, name in enumerate(_NAMES, 1) for short in (name, name[:3])} | {"sept": 9}
_NUMERIC = re.compile(r"(\d{1,2})[./-](\d{1,2})[./-](\d{4}|\d{2})\Z")
_ISO = re.compile(r"(\d{4})[./-](\d{1,2})[./-](\d{1,2})\Z")
_NAMED = re.compile(r"(\d{1,2})-?([A-Za-z]{3,9})-?(\d{4}|\d{2})\Z")
_YEAR = re.compile(r"(?:19|20)\d\d\Z")
_BETWEEN = frozenset([",", ".", "of", "the", "/"])
_NEAR = 45  # days within which the dates of one injury and its operation lie
_DAYS_APART = 7  # days that mostly lie between an injury, its operation and the dictation of the note
_CLEARER = 20  # days by which one reading must lie nearer than the other


def find_dates(page: Page) -> list[FoundDate]:
    """Return the dates of a note in order; numeric ones whose order cannot be told are left out."""
    numeric: list[tuple[int, int, re.Match[str]]] = []
    found = list(_worded(page))
    for k in page.figures:
        word = page.words[k]
        if len(word) < 6:
            spaced = _spaced(page.words[k : k + _PARTS])
            numeric += [(k, k + _PARTS, spaced)] if spaced else []
            continue
        if match := _NUMERIC.match(word):
            numeric.append((k, k + 1, match))
        elif iso := _ISO.match(word):
            found += _made(page, k, k + 1, int(iso[1]), int(iso[2]), int(iso[3]))
        elif (named := _NAMED.match(word)) and named[2].lower() in MONTHS:
            found += _made(page, k, k + 1, _year(named[3]), MONTHS[named[2].lower()], int(named[1]))
    month_first = _month_first([m for _, _, m in numeric], found, page)
    for k, j, match in numeric:
        found += _numeric(page, k, j, match, month_first)
    found += without_year(page, found, MONTHS)
    return sorted(found, key=lambda d: d.i)


def _spaced(words: list[str]) -> re.Match[str] | None:
    """Read the five words of '26 / 09 / 2031': a date whose parts stand apart, with the year in full."""
    if words[1::2] not in (["/", "/"], [".", "."], ["-", "-"]) or not _YEAR.match(words[-1]):
        return None
    return _NUMERIC.match("".join(words))


_PARTS = 5  # words


def _year(figures: str) -> int:
    return int(figures) if len(figures) == 4 else 2000 + int(figures)


def _month_first(matches: list[re.Match[str]], known: list[FoundDate], page: Page) -> bool | None:
    """Tell the note's order of day and month: by its own other dates, else by its spelling; None where unknown."""
    for match in matches:
        first, second = int(match[1]), int(match[2])
        if first > 12 >= second:
            return False
        if second > 12 >= first:
            return True
    if any("." in m[0] for m in matches):
        return False
    near = _order_near(matches, known)
    near = _order_among(matches) if near is None else near
    if near is not None:
        return near
    text = set(page.words)
    american, british = text & word_list("dates", "american"), text & word_list("dates", "british")
    return None if bool(american) == bool(british) else bool(american)


def _order_near(matches: list[re.Match[str]], known: list[FoundDate]) -> bool | None:
    """Tell the order by a date that can be read one way only: the dates of one injury and operation lie close."""
    days = [date.fromisoformat(d.value).toordinal() for d in known]
    for match in matches:
        if match[1] == match[2]:
            continue
        far = [_distance(match, by_month, days) for by_month in (True, False)]
        if min(far) <= _NEAR and abs(far[0] - far[1]) >= _CLEARER:
            return far[0] < far[1]
    return None


def _order_among(matches: list[re.Match[str]]) -> bool | None:
    """Tell the order by two dates that lie days apart when read one way and weeks apart when read the other."""
    for first, second in pairwise(dict.fromkeys(m[0] for m in matches)):
        pair = [m for text in (first, second) for m in matches if m[0] == text][:2]
        gaps = []
        for by_month in (True, False):
            one, two = (_day_of(m, by_month) for m in pair)
            gaps.append(10_000 if one is None or two is None else abs(one - two))
        if min(gaps) <= _DAYS_APART and abs(gaps[0] - gaps[1]) >= _CLEARER and max(gaps) < 10_000:
            return gaps[0] < gaps[1]
    return None


def _day_of(match: re.Match[str], by_month: bool) -> int | None:
    month, day = (int(match[1]), int(match[2])) if by_month else (int(match[2]), int(match[1]))
    try:
        return date(_year(match[3]), month, day).toordinal()
    except ValueError:
        return None


def _distance(match: re.Match[str], by_month: bool, days: list[int]) -> int:
    """Return the days between a date, read with the month first or not, and the nearest of the days given."""
    own = _day_of(match, by_month)
    if own is None:
        return 10_000
    return min((abs(own - other) for other in days), default=10_000)


def _numeric(page: Page, k: int, j: int, match: re.Match[str], month_first: bool | None) -> Iterator[FoundDate]:
    first, second, year = int(match[1]), int(match[2]), _year(match[3])
    clear = first > 12 or second > 12 or first == second
    if not clear and month_first is None:
        return
    by_month = second > 12 or (first <= 12 and bool(month_first))
    month, day = (first, second) if by_month else (second, first)
    yield from _made(page, k, j, year, month, day, inferred=not clear)


def _worded(page: Page) -> Iterator[FoundDate]:
    """Yield dates with the month in letters: '3 June 2029', 'June 3, 2029', 'the third of June twenty thirty'."""
    words = page.words
    for k, month in [(k, MONTHS[word]) for k, word in enumerate(words) if word in MONTHS]:
        year = _year_at(words, k + 1) or _short_year(page, k + 1)
        if year is not None:
            day = day_before(words, k)
            if day:
                yield from _made(page, day[1], year[1], year[0], month, day[0])
                continue
        after = day_after(words, k + 1)
        year = _year_at(words, after[1]) if after is not None else None
        if after is not None and year is not None:
            yield from _made(page, k, year[1], year[0], month, after[0])


def _year_at(words: list[str], k: int) -> tuple[int, int] | None:
    """Return the year that is told from word k on, in figures or in words, and the word after it."""
    at = _past(words, k)
    if at < len(words) and _YEAR.match(words[at]):
        return int(words[at]), at + 1
    return spoken_year(words, k)


def _short_year(page: Page, k: int) -> tuple[int, int] | None:
    """Return the year of '11 Jul 31' where nothing follows that the figure may count, and the word after it."""
    words = page.words
    if k >= len(words) or not (words[k].isdecimal() and len(words[k]) == 2 and 20 <= int(words[k]) <= 79):
        return None
    closed = k + 1 >= len(words) or page.breaks[k + 1] >= Break.COLUMN or words[k + 1] in (",", ".", ")", "]", ";")
    return (2000 + int(words[k]), k + 1) if closed and page.breaks[k] == Break.SPACE else None


def _past(words: list[str], k: int) -> int:
    """Return the first word from k on that is not a comma or a little word."""
    while k < len(words) and words[k] in _BETWEEN:
        k += 1
    return k


def _made(page: Page, i: int, j: int, year: int, month: int, day: int, inferred: bool = False) -> Iterator[FoundDate]:
    try:
        yield FoundDate(date(year, month, day).isoformat(), i, j, inferred)
    except ValueError:
        return
