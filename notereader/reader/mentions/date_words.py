"""Dates told in words or without a year: 'the sixth of march twenty thirty two', 'on 8 December', 'yesterday (9/13)'.

A date without its year counts only beside a full date of the note: it takes the year that puts it shortly before one,
else shortly after one.
"""

import re
from collections.abc import Iterator
from datetime import date

from notereader.reader.mentions.measures import NUMBER_WORDS
from notereader.reader.page import FoundDate, Page
from notereader.vocabulary.wordlists import word_list

_NTHS = (
    *("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh"),
    *("twelfth", "thirteenth", "fourteenth", "fifteenth", "sixteenth", "seventeenth", "eighteenth", "nineteenth"),
)
ORDINALS = {word: n for n, word in enumerate(_NTHS, 1)} | {"twentieth": 20, "thirtieth": 30}
_TENS = {"twenty": 20, "thirty": 30}
_FIGURES = re.compile(r"(\d{1,2})(?:st|nd|rd|th)?\Z")
_LITTLE = frozenset([",", "of", "the", ".", "-", "/"])
_WITHIN = 60  # days before a full date of the note in which a date without a year may lie
_AFTER = 45  # days after a full date in which one may lie that tells when therapy starts
_DOTTED = re.compile(r"(\d{1,2})\.(\d{2})\Z")
_NOT_DAYS = word_list("dates", "not_days")
_GOES_ON = word_list("dates", "goes_on")
_SINCE = word_list("dates", "since")
_LEADS = word_list("dates", "leads")


def day_before(words: list[str], k: int) -> tuple[int, int] | None:
    """Return the day told before word k, the month, and its first word: '6', '6th', 'sixth', 'twenty second of'."""
    at = k - 1
    while at >= 0 and words[at] in _LITTLE:
        at -= 1
    if at < 0:
        return None
    figure = _FIGURES.match(words[at])
    if figure:
        return int(figure[1]), at
    ones = ORDINALS.get(words[at]) or (NUMBER_WORDS.get(words[at]) if at else None)
    if ones is None:
        return None
    tens = at - 2 if words[at - 1] == "-" else at - 1
    if ones < 10 and tens >= 0 and words[tens] in _TENS:
        return _TENS[words[tens]] + ones, tens
    return ones, at


def day_after(words: list[str], k: int) -> tuple[int, int] | None:
    """Return the day told from word k on, behind a month, and the word after it."""
    while k < len(words) and words[k] in (",", "the", "."):
        k += 1
    if k >= len(words):
        return None
    figure = _FIGURES.match(words[k])
    if figure:
        return int(figure[1]), k + 1
    if words[k] in _TENS:
        ones = k + 2 if words[k + 1 : k + 2] == ["-"] else k + 1
        n = ORDINALS.get(words[ones]) or NUMBER_WORDS.get(words[ones], 0) if ones < len(words) else 0
        return (_TENS[words[k]] + n, ones + 1) if 0 < n < 10 else (_TENS[words[k]], k + 1)
    named = ORDINALS.get(words[k]) or NUMBER_WORDS.get(words[k])
    return (named, k + 1) if named else None


def spoken_year(words: list[str], k: int) -> tuple[int, int] | None:
    """Return the year told from word k on and the word after it: 'two thousand and thirty three', 'twenty thirty'."""
    while k < len(words) and words[k] in (",", "of", "in"):
        k += 1
    if words[k : k + 2] == ["two", "thousand"]:
        at = k + 2 + (words[k + 2 : k + 3] == ["and"])
        low, j = _below_hundred(words, at)
        return 2000 + low, j
    if words[k : k + 1] == ["twenty"]:
        low, j = _below_hundred(words, k + 1 + (words[k + 1 : k + 2] == ["-"]))
        return (2000 + low, j) if low >= 10 else None
    return None


def _below_hundred(words: list[str], k: int) -> tuple[int, int]:
    """Return the number below a hundred that starts at word k, 0 where none does, and the word after it."""
    first = NUMBER_WORDS.get(words[k]) if k < len(words) else None
    if first is None or first >= 100:
        return 0, k
    if first < 20 or first % 10:
        return first, k + 1
    at = k + 2 if words[k + 1 : k + 2] == ["-"] else k + 1
    ones = NUMBER_WORDS.get(words[at], 0) if at < len(words) else 0
    return (first + ones, at + 1) if 0 < ones < 10 else (first, k + 1)


# --- dates without a year


def without_year(page: Page, known: list[FoundDate], months: dict[str, int]) -> Iterator[FoundDate]:
    """Yield the dates that tell no year, each in the year that puts it in the weeks around a full date of the note."""
    if not known:
        return
    taken = {k for d in known for k in range(d.i, d.j)}
    for i, j, month, day in [*_by_month(page, months), *_by_figures(page), *_by_dots(page)]:
        if taken.isdisjoint(range(i, j)):
            value = _shortly_before(known, month, day) or _shortly_after(known, month, day)
            if value:
                taken.update(range(i, j))
                yield FoundDate(value, i, j, yearless=True)
    for i, j, day in _by_day(page):
        if taken.isdisjoint(range(i, j)):
            value = min((v for month in range(1, 13) if (v := _shortly_before(known, month, day, 28))), default="")
            if value:
                yield FoundDate(value, i, j, yearless=True)


def _by_month(page: Page, months: dict[str, int]) -> Iterator[tuple[int, int, int, int]]:
    words = page.words
    for k, month in [(k, months[w]) for k, w in enumerate(words) if w in months]:
        if words[k] == "may" and not page.raw(k, k + 1)[0].isupper() and not _is_month(words, k):
            continue
        before = day_before(words, k)
        if before is not None and not _counts(words, before[1]):
            yield before[1], k + 1, month, before[0]
            continue
        after = day_after(words, k + 1)
        if after is not None and words[after[1] : after[1] + 1] not in ([":"], ["%"]) and not _unit(words, after[1]):
            yield k, after[1], month, after[0]


def _is_month(words: list[str], k: int) -> bool:
    """Tell whether 'may' in small letters is the month: 'the twenty first of may', '3rd may'."""
    before = words[max(k - 1, 0)]
    return before == "of" or before in ORDINALS or before.endswith(("st", "nd", "rd", "th"))


def _counts(words: list[str], k: int) -> bool:
    """Tell whether a figure before a month counts something else: 'zone 2 May'."""
    return k > 0 and words[k - 1] in _NOT_DAYS


def _unit(words: list[str], k: int) -> bool:
    return words[k : k + 1] in (["mm"], ["cm"], ["weeks"], ["days"], ["x"], ["-"])


def _by_figures(page: Page) -> Iterator[tuple[int, int, int, int]]:
    """Yield 'yesterday (9/13)', 'injured 13/9': figures that only a day and a month can be, beside words of time."""
    words = page.words
    for k in range(1, len(words) - 2):
        if words[k + 1] != "/" or not (words[k].isdecimal() and words[k + 2].isdecimal()):
            continue
        first, second = int(words[k]), int(words[k + 2])
        led = set(words[max(0, k - 2) : k]) & _SINCE
        whole = words[k - 1] != "/" and words[k + 3 : k + 4] not in (["/"], ["mm"], ["%"])
        if led and whole and max(len(words[k]), len(words[k + 2])) <= 2:
            if first <= 12 < second <= 31:
                yield k, k + 3, first, second
            elif second <= 12 < first <= 31:
                yield k, k + 3, second, first


def _by_day(page: Page) -> Iterator[tuple[int, int, int]]:
    """Yield 'on the eighth', 'on the 8th' where no noun follows that is counted."""
    words = page.words
    for k in range(len(words) - 2):
        if words[k] != "on" or words[k + 1] != "the":
            continue
        day = day_after(words, k + 2)
        told = day is not None and not words[k + 2].isdecimal() and words[k + 2] not in NUMBER_WORDS
        if day is not None and (told or words[k + 2] in _TENS) and day[1] < len(words) and words[day[1]] in _GOES_ON:
            yield k, day[1], day[0]


def _by_dots(page: Page) -> Iterator[tuple[int, int, int, int]]:
    """Yield 'hand therapy 22.04', 'on 22.04.' beside words that lead to a day."""
    words = page.words
    for k in page.figures:
        match = _DOTTED.match(words[k])
        led = k > 0 and words[k - 1] in _LEADS
        if match is not None and led and not _unit(words, k + 1):
            yield k, k + 1, int(match[2]), int(match[1])


def _shortly_before(known: list[FoundDate], month: int, day: int, within: int = _WITHIN) -> str:
    """Return a day of a month in the year in which it lies on or shortly before a full date of the note, or ''."""
    found: list[tuple[int, str]] = []
    for full in (date.fromisoformat(d.value) for d in known):
        for year in (full.year, full.year - 1):
            try:
                own = date(year, month, day)
            except ValueError:
                continue
            gap = (full - own).days
            if 0 <= gap <= within:
                found.append((gap, own.isoformat()))
    return min(found)[1] if found else ""


def _shortly_after(known: list[FoundDate], month: int, day: int) -> str:
    """Return a day of a month in the year in which it lies shortly after a full date of the note, or ''."""
    found: list[tuple[int, str]] = []
    for full in (date.fromisoformat(d.value) for d in known):
        for year in (full.year, full.year + 1):
            try:
                own = date(year, month, day)
            except ValueError:
                continue
            if 0 < (own - full).days <= _AFTER:
                found.append(((own - full).days, own.isoformat()))
    return min(found)[1] if found else ""
