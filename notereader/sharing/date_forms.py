"""The forms in which notes write dates, as patterns."""

import re
from functools import cache

from notereader.sharing.tables import tables

ISO = re.compile(r"(?<![\w.-])(?P<y>(?:19|20)\d\d)(?P<s>[-/.])(?P<m>\d{1,2})(?P=s)(?P<d>\d{1,2})(?![\w-]|[.]\d)")
PACKED = re.compile(r"(?<![\w.-])(?P<y>(?:19|20)\d\d)(?P<m>0[1-9]|1[0-2])(?P<d>0[1-9]|[12]\d|3[01])(?![\w-]|[.]\d)")
NUMERIC = re.compile(
    r"(?<![\w./-])(?P<a>\d{1,2})\s?(?P<s>[-/.])\s?(?P<b>\d{1,2})\s?(?P=s)\s?(?P<y>(?:19|20)\d\d|\d\d)(?![\w/-]|[.]\d)"
)
MEASURE = re.compile(r"\s*(?:mm|cm|%|degrees|deg|°)", re.IGNORECASE)
AGE = re.compile(
    r"(?:\b(?:aged?|age:?)\s+(?:of\s+)?(?P<a>9\d|1[01]\d)\b(?!\s*(?:%|mm|min|deg)))"
    r"|(?<![\w.-])(?P<b>9\d|1[01]\d)(?=[\s-]*(?:y/?o\b|yrs?[\s-]*old|y\.o\.|years?[\s-]*old|-year|\s?[yY]\b(?!\w)))",
    re.IGNORECASE,
)


@cache
def _month_words() -> str:
    names = tables().dates.months
    return "|".join([*names, "sept", *(name[:3] for name in names)])


_DAY = r"(?P<d>3[01]|[12]\d|0?[1-9])(?P<th>st|nd|rd|th)?"


@cache
def named() -> tuple[re.Pattern[str], ...]:
    """Return patterns of dates with their month in letters and a year: day first and month first."""
    month, year = rf"(?P<m>{_month_words()})\.?", r"(?P<y>(?:19|20)\d\d)"
    short = r"(?P<y>(?:19|20)\d\d|\d\d)"
    return (
        re.compile(rf"(?<![\w.-]){_DAY}\s*(?:of\s+)?{month},?\s*(?:of\s+)?{year}(?!\w)", re.IGNORECASE),
        re.compile(rf"(?<![\w.-]){_DAY}[-/ ]?{month}[-/ ]?'?{short}(?![\w-])", re.IGNORECASE),
        re.compile(rf"\b{month}[ -]?(?:the\s+)?{_DAY}\s*[,-]?\s*{year}(?!\w)", re.IGNORECASE),
    )


@cache
def damaged_forms() -> tuple[re.Pattern[str], ...]:
    """Return patterns of dates in which letters may stand for figures, and with the month in Roman figures."""
    one, year = r"[\dOoIlSB|]{1,2}", r"[\dIl|][\dOoIlSBZ|]{1,3}"
    return (
        re.compile(rf"(?<![\w.-])(?P<a>{one})[-/. ]?(?i:{_month_words()})[-/., ]{{0,2}}(?P<b>{year})(?![\w-])"),
        re.compile(rf"(?<![\w.-])(?P<a>{one}([-/.]){one})\2(?P<b>{year})(?![\w-])"),
        re.compile(rf"(?<![\w.-])(?P<a>{year})([-/.])(?P<b>{one}\2{one})(?![\w-])"),
        # With the month in Roman figures.
        re.compile(
            r"(?<![\w.-])(?P<a>\d{1,2}([-/.])(?i:i{1,3}|i?[vx]|vi{1,3}|xi{1,2})\2)(?P<b>(?:19|20)?\d\d)(?![\w-])"
        ),
    )


@cache
def yearless() -> tuple[re.Pattern[str], ...]:
    """Return patterns of a day and its month without a year."""
    # 'May' and 'March' are verbs too: small letters count only where a day stands before or an ending after.
    month = rf"(?P<m>{_month_words()})"
    return (
        re.compile(rf"(?<![\w.-]){_DAY}\s+(?:of\s+)?{month}\b(?!\s*(?:mm|cm))", re.IGNORECASE),
        re.compile(
            rf"\b(?P<m>{_capital_months()})\.?\s+(?:the\s+)?{_DAY}\b(?!\s*(?:mm|cm|%|ml|mg|degrees|[-/.]\s?\d))"
        ),
    )


@cache
def slashed() -> re.Pattern[str]:
    """Return the pattern of a day and a month in figures; `before` is filled after 'on', 'DOI' and the like."""
    days = [f"{name[:3]}[a-z]*" for name in tables().dates.weekdays]
    before = "|".join([*(re.escape(word) for word in tables().dates.before), *days])
    return re.compile(
        rf"(?P<before>\b(?:{before})\.?:?\s+)?(?<![\w./-])(?P<date>(?P<a>\d{{1,2}})/(?P<b>\d{{1,2}}))(?![\w/]|[.-]\d)"
        r"(?!\s*(?:of|mm|cm|%|share|the|width|diameter|thickness))",
        re.IGNORECASE,
    )


@cache
def months_alone() -> tuple[re.Pattern[str], ...]:
    """Return patterns of months without a day: before a year, which may stay, and after a word such as 'since'."""
    before = "|".join(tables().dates.before_month)
    month = rf"(?P<date>(?:{_capital_months()}))"
    return (
        re.compile(rf"\b{month}\b(?=\.?,?\s+(?:of\s+)?(?:19|20)\d\d\b)"),
        re.compile(rf"\b(?i:{before})\s+{month}\b(?!\.?\s*\d)"),
    )


@cache
def _capital_months() -> str:
    """Return the months with a capital: 'may' and 'march' are verbs."""
    return "|".join(f"{name[:1].upper()}(?i:{name[1:]})" for name in _month_words().split("|"))


@cache
def spoken() -> re.Pattern[str]:
    """Return the pattern of dates as they are spoken: 'the second of April twenty thirty one'."""
    words = tables().dates
    ordinals = "|".join(sorted(words.ordinals, key=len, reverse=True)).replace("-", "[ -]")
    figure = r"hundred|oh|[a-z]+teen|[a-z]+ty|ten|eleven|twelve|one|two|three|four|five|six|seven|eight|nine"
    year = rf"(?:,?\s+(?:nineteen|twenty|two\s+thousand(?:\s+and)?)(?:[\s-]+(?:{figure})){{0,2}})?"
    months = "|".join(words.months)
    return re.compile(
        rf"\b(?:(?:the\s+)?(?:{ordinals})\s+(?:day\s+)?(?:of\s+)?(?:{months})|(?:{months})\s+(?:the\s+)?(?:{ordinals}))\b{year}",
        re.IGNORECASE,
    )


@cache
def feasts() -> re.Pattern[str]:
    """Return the pattern of days with a name of their own."""
    names = sorted(tables().dates.feasts, key=len, reverse=True)
    return re.compile(rf"\b(?:{'|'.join(re.escape(name) for name in names)})\b", re.IGNORECASE)


@cache
def weekdays() -> tuple[re.Pattern[str], ...]:
    """Return patterns of the days of the week: in full, and short before a date, for 'sat' and 'sun' are words too."""
    names = tables().dates.weekdays
    return (
        re.compile(rf"\b({'|'.join(names)})(?=s?\b)", re.IGNORECASE),
        re.compile(
            rf"\b(mon|tue|tues|wed|weds|thu|thur|thurs|fri|sat|sun)\b(?=\.?,?\s+(?:the\s+)?(?:\d{{1,2}}(?:st|nd|rd|th)?[\s./-]|"
            rf"(?:{_month_words()})\b))",
            re.IGNORECASE,
        ),
    )
