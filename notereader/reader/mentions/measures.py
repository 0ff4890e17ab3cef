"""Step 4, measures: figures and figure words with their units, ranges among them.

Sizes stay words of their own ("4-0"); dates are read by `dates`. Percentages, millimetres, degrees, days and weeks
become quantities; centimetres are turned into millimetres.
"""

import re
from itertools import pairwise

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.layout.bare_shares import take_bare_shares
from notereader.reader.layout.grid_shares import take_shares
from notereader.reader.page import Break, Page, Quantity, page_of, within

_ONES = [
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
]
_TENS = dict(
    zip(["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"], range(20, 100, 10), strict=True)
)
NUMBER_WORDS: dict[str, int] = {word: n for n, word in enumerate(_ONES)} | _TENS | {"fourty": 40}


def count_of(word: str) -> int:
    """Return the number a word or figure tells: 'three' and '3' are 3; 0 for any other word."""
    return NUMBER_WORDS.get(word, int(word) if word.isdecimal() else 0)


UNITS: dict[str, tuple[str, float]] = {
    **dict.fromkeys(
        ("mm", "mms", "millimetre", "millimetres", "millimeter", "millimeters", "mil", "rnm", "mrn", "rnrn"),
        ("mm", 1.0),
    ),
    **dict.fromkeys(("milimetre", "milimetres", "milimeter", "milimeters"), ("mm", 1.0)),  # as they are often misspelt
    **dict.fromkeys(("mrn", "rnm"), ("mm", 1.0)),  # as a fax may show it
    **dict.fromkeys(("cm", "cms", "centimetre", "centimetres", "centimeter", "centimeters", "crn"), ("mm", 10.0)),
    **dict.fromkeys(("%", "percent", "pct", "procent", "pc"), ("%", 1.0)),
    **dict.fromkeys(("degrees", "degree", "deg", "degs", "\u00b0"), ("deg", 1.0)),
    **dict.fromkeys(("day", "days"), ("day", 1.0)),
    **dict.fromkeys(("week", "weeks", "wk", "wks", "w"), ("week", 1.0)),
    **dict.fromkeys(("month", "months"), ("month", 1.0)),
    **dict.fromkeys(
        ("ml", "mls", "cc", "mg", "g", "kg", "mmhg", "hour", "hours", "hr", "hrs", "h", "min", "mins"), ("x", 1.0)
    ),
    **dict.fromkeys(
        ("minutes", "minute", "years", "year", "yr", "yo", "y", "gauge", "inch", "l", "litre", "am", "pm"), ("x", 1.0)
    ),
}
# 'lO mm' of a fax is 10 mm; asked only before a unit.
_SLIPPED = re.compile(r"[lio0-9]{2,3}")
_FIGURES = str.maketrans("lio", "110")
_TERMS = {"7": "day", "52": "week", "12": "month"}
_BEGINS = frozenset([*NUMBER_WORDS, "l", "a", "half", "fortnight"])  # words besides figures that a quantity begins with
_RANGE = frozenset(["-", "to", "or", "and", "until"])


def times_told(words: list[str], j: int) -> int:
    """Return the count of 'x2', '(x 3)' that begins at word j, behind the name of what is counted; 0 for none."""
    k = j + (words[j : j + 1] == ["("])
    count = count_of(words[k + 1]) if words[k : k + 1] == ["x"] and k + 1 < len(words) else 0
    return count if 1 < count <= _MOST_TENDONS else 0


_MOST_TENDONS = 5  # of one kind, in a hand


@Language.component("notereader_measures")
def measures(doc: Doc) -> Doc:
    """Fill the Page's figures and quantities. RETURNS the same Doc."""
    page = page_of(doc)
    begins = [
        k
        for k, w in enumerate(page.words)
        if w[0].isdecimal() or w in _BEGINS or (w[0] in "lio" and len(w) <= 3 and _SLIPPED.fullmatch(w))
    ]
    page.figures = [k for k in begins if page.words[k][0].isdecimal() or page.words[k] in NUMBER_WORDS]
    reach = 0
    for k in begins:
        found = _quantity(page, k) if k >= reach else None
        if found is not None and found.unit == "mm" and page.words[found.j : found.j + 1] == ["hg"]:
            found.unit, found.j = "x", found.j + 1  # '250 mm Hg' is a pressure
        if found is not None:
            page.quantities.append(found)
            reach = found.j
    _take_units_of_labels(page)
    take_shares(page)
    take_bare_shares(page)
    _share_units(page)
    return doc


def _share_units(page: Page) -> None:
    """'Trimmed back 3 and 4 mm, respectively', 'trimmed 5 + 3 mm (IF, MF)': lengths with one unit."""
    for first, second in pairwise(page.quantities):
        joined = page.words[first.j : second.i] in _JOINED and not first.unit
        behind = page.words[second.j : second.j + _DEALT]
        behind = behind[: behind.index(".")] if "." in behind else behind
        if joined and second.unit in ("mm", "%") and ("respectively" in behind or _deals_out(behind)):
            scale = UNITS.get(page.words[second.j - 1], ("", 1.0))[1]
            first.unit, first.low, first.high = second.unit, _scaled(first.low, scale), _scaled(first.high, scale)


def _deals_out(behind: list[str]) -> bool:
    """'(IF, MF)', '(ring / small)': two names in brackets right behind two values."""
    close = behind.index(")") if ")" in behind else 0
    return behind[:1] == ["("] and close == _TWO_NAMES and behind[2] in _BETWEEN_NAMES


_TWO_NAMES = 4  # words of '( IF , MF' before the closing bracket
_BETWEEN_NAMES = frozenset([",", "/", "and", "&", "+"])
_JOINED = (["and"], ["&"], ["+"], ["/"])


def _scaled(value: float | None, scale: float) -> float | None:
    return None if value is None else _round(value * scale)


_DEALT = 12  # words from the second of two lengths to their 'respectively'


def _take_units_of_labels(page: Page) -> None:
    """'Bite (mm): 8-10', a cell '8' of a row 'Trimmed, mm': the label holds the unit."""
    labels = {sentence.i: sentence.prefix for sentence in page.sentences if sentence.prefix}
    for q in page.quantities:
        if q.unit:
            continue
        k = q.i
        while k > 0 and q.i - k < 3 and page.words[k - 1] in (":", "=", ")"):
            k -= 1
        beside = k < q.i and page.words[k - 1] == "mm"
        if beside or any("mm" in page.words[max(i, j - 2) : j] for i, j in labels.get(q.i, ())):
            q.unit = "mm"


def figure_at(page: Page, k: int) -> tuple[float, int] | None:
    """Return the figure that starts at word k and the word after it, or None."""
    if k >= len(page.words):
        return None
    word = page.words[k]
    if word[0].isdecimal():
        try:
            return float(word), k + 1
        except ValueError:
            return None
    if word in NUMBER_WORDS:
        return _number_words(page, k)
    if word == "l" and k + 1 < len(page.words) and UNITS.get(page.words[k + 1], ("x", 0))[0] not in ("x",):
        return 1.0, k + 1
    if _SLIPPED.fullmatch(word) and k + 1 < len(page.words) and page.words[k + 1] in UNITS:
        return float(word.translate(_FIGURES)), k + 1
    if word in ("a", "one", "half") and k + 1 < len(page.words):
        return _a_unit(page, k)
    return None


def _number_words(page: Page, k: int) -> tuple[float, int]:
    value = NUMBER_WORDS[page.words[k]]
    after = k + 1
    if page.words[k] in _TENS:
        ones = after + 1 if after < len(page.words) and page.words[after] == "-" else after
        if (
            ones < len(page.words)
            and 0 < NUMBER_WORDS.get(page.words[ones], 0) < 10
            and page.breaks[ones] <= Break.SPACE
        ):
            return _with_tenths(page, value + NUMBER_WORDS[page.words[ones]], ones + 1)
    return _with_tenths(page, value, after)


def _with_tenths(page: Page, value: int, k: int) -> tuple[float, int]:
    """'One point two', 'zero point seven five': a whole number spoken on by its decimals."""
    decimals, after = "", k + 1
    while page.words[k : k + 1] == ["point"] and NUMBER_WORDS.get("".join(page.words[after : after + 1]), 10) < 10:
        decimals += str(NUMBER_WORDS[page.words[after]])
        after += 1
    return (float(f"{value}.{decimals}"), after) if decimals else (float(value), k)


def _a_unit(page: Page, k: int) -> tuple[float, int] | None:
    """Read 'a centimetre', 'half a centimetre', 'a couple of mm'."""
    word, after = page.words[k], page.words[k + 1]
    long_units = ("centimetre", "centimeter", "millimetre", "millimeter", "cm", "week", "fortnight")
    if word == "a" and after in long_units:
        return 1.0, k + 1
    if word == "a" and after in ("good", "full", "whole", "clear") and page.words[k + 2 : k + 3] != []:
        return (1.0, k + 2) if page.words[k + 2] in long_units else None  # 'a good centimetre of either stump'
    if word == "a" and after == "couple":
        of = k + 2 < len(page.words) and page.words[k + 2] == "of"
        unit = k + 2 + of
        return (2.0, unit) if unit < len(page.words) and page.words[unit] in UNITS else None
    if word == "half" and after == "a" and k + 2 < len(page.words) and page.words[k + 2] in long_units:
        return 0.5, k + 2
    return None


def _quantity(page: Page, k: int) -> Quantity | None:
    """Read the figure or range at word k with its unit."""
    word = page.words[k]
    if "/" in word and word[0].isdecimal():
        return _uk_term(page, k)
    if word in ("fortnight",):
        return Quantity(2, 2, "week", k, k + 1)
    first = figure_at(page, k)
    if first is None:
        return None
    low, after = first
    unit, scale, end = _unit_at(page, after)
    if unit and _and_a_half(page, end):
        return Quantity(_round((low + 0.5) * scale), _round((low + 0.5) * scale), unit, k, end + 3)
    if unit and word in ("a", "one") and page.words[end : end + 2] == ["or", "two"]:
        return Quantity(_round(low * scale), _round(2 * scale), unit, k, end + 2)  # 'a millimetre or two'
    second = _second_figure(page, end)
    if second is None:
        return Quantity(_round(low * scale), _round(low * scale), unit, k, end)
    high, after = second
    unit2, scale2, end2 = _unit_at(page, after)
    if not unit:
        unit, scale = unit2, scale2
    if (unit2 and unit2 != unit) or high < low or (not unit2 and unit) or _numbers_a_finger(page, k, unit2):
        return Quantity(_round(low * scale), _round(low * scale), unit, k, end)
    return Quantity(_round(low * scale), _round(high * (scale2 if unit2 else scale)), unit, k, end2)


def _numbers_a_finger(page: Page, k: int, unit: str) -> bool:
    """'FDS 3 - 20 %', 'flexor profundus 4 - 70 %': a finger's number, a dash, and how much of its tendon was cut."""
    dashed = page.words[k + 1] == "-" and page.breaks[k + 1] == page.breaks[k + 2] == Break.SPACE
    named = any(m.j == k and m.kind in ("tendon", "slip") for m in within(page.mentions, max(0, k - _NAME), k))
    return unit == "%" and dashed and named and page.words[k] in _FINGER_NUMBERS


_FINGER_NUMBERS = frozenset("12345")
_NAME = 3  # words


def _and_a_half(page: Page, k: int) -> bool:
    """'5 weeks and a half', but not '5 mm and a half of the slip'."""
    return page.words[k : k + 3] == ["and", "a", "half"] and page.words[k + 3 : k + 4] not in (["of"], ["the"], ["a"])


def _second_figure(page: Page, k: int) -> tuple[float, int] | None:
    """Read the upper figure of a range that goes on at word k: '-10', 'to 10', 'or 4', 'and day five'."""
    if k + 1 >= len(page.words) or page.words[k] not in _RANGE:
        return None
    after = k + 1
    if page.words[after] in ("day", "days") and page.words[k] in ("and", "to", "-", "or"):
        after += 1
    if page.words[k] == "and" and (k < 2 or "between" not in page.words[max(0, k - 5) : k]):
        return None
    if page.words[after] == "a":
        return None
    return figure_at(page, after)


def _unit_at(page: Page, k: int) -> tuple[str, float, int]:
    """Return unit, factor and the word after the unit; ('', 1, k) where none stands there."""
    at = k + 1 if k < len(page.words) and page.words[k] == "-" else k
    if at >= len(page.words) or page.breaks[at] == Break.COLUMN:  # 'day 5      WEEKS IN SPLINT'
        return "", 1.0, k
    if page.breaks[at] >= Break.LINE and page.words[at + 1 : at + 2] == [":"]:
        return "", 1.0, k  # 'IP: 0', and on the next line 'Weeks : 6'
    word = page.words[at]
    if word == "per" and at + 1 < len(page.words) and page.words[at + 1] == "cent":
        return "%", 1.0, at + 2
    if word in UNITS and (at == k or word not in ("l", "h", "g", "w", "y")):
        unit, scale = UNITS[word]
        return unit, scale, at + 1
    return "", 1.0, k


def _uk_term(page: Page, k: int) -> Quantity | None:
    """Read '6/52' (weeks), '10/7' and '3-5/7' (days)."""
    figures, _, unit = page.words[k].partition("/")
    if unit not in _TERMS or "/" in unit:
        return None
    low, _, high = figures.partition("-")
    return Quantity(float(low), float(high or low), _TERMS[unit], k, k + 1)


def _round(value: float) -> float:
    return round(value, 3)
