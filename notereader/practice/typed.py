"""Values as people type them: '4/0', '1 cm', 'four', '20 extension', 'Ethibond', '4 March 2033'."""

import difflib
import re
from datetime import date, datetime
from functools import cache

from notereader.practice.words import tables, tip
from notereader.record import Interval, Value, ValueRefused, check_value
from notereader.vocabulary import FieldSpec, field_specs, sizes, terms

_FIGURE = r"-?(?:\d+(?:\.\d+)?|\.\d+)"
_RANGE = re.compile(rf"({_FIGURE})\s*([a-z%]*)\s*(?:to|until|and|-)\s*({_FIGURE})")
_OPEN = re.compile(rf"(at least|over|more than|>=?|≥|at most|under|up to|less than|<=?|≤)\s*({_FIGURE})")
_LOW_SIDE = frozenset({"at least", "over", "more than", ">", ">=", "≥"})
_TERM = re.compile(r"(\d+)\s*/\s*(7|52|12)\b")
_DATES = ("%d %B %Y", "%B %d %Y", "%d %b %Y", "%b %d %Y", "%Y/%m/%d", "%Y.%m.%d")
_DAYS = {"day": 1.0, "week": 7.0, "wk": 7.0, "fortnight": 14.0, "month": 30.0}
_METRIC = re.compile(rf"(?:ep|metric)\s*({_FIGURE})")
_SIZE = re.compile(r"#?\s*(\d{1,2})\s*(?:[-/.]\s*|\s+)(?:0|o|oh|ought|zero)$")


def value_of(spec: FieldSpec, words: str) -> Value:
    """Return what was typed in the stored form of a field. Raises ValueRefused, saying what the field can take."""
    clean = _clean(words)
    if not clean:
        raise ValueRefused(f"{spec.label}: nothing was entered; {hint_of(spec)}.")
    readers = {
        "choice": _choice,
        "whole": _whole,
        "number": _number,
        "size": _size,
        "interval": _interval,
        "date": _date,
        "yes-no": _yes_no,
        "named": _named,
    }
    return check_value(spec, readers[spec.kind](spec, clean))


def hint_of(spec: FieldSpec) -> str:
    """Say in a few words what can be typed for a field."""
    if "degrees" in spec.unit:
        return "20 flexion, 20 extension, 60-70 flexion or neutral"
    figures = "" if spec.low is None else f" from {spec.low:g} to {spec.high:g} {spec.unit}".rstrip()
    hints = {
        "choice": f"one of: {', '.join(spec.values)}",
        "whole": f"a whole number{figures}",
        "number": f"a figure{figures}",
        "interval": f"8, 7-10, at least 8 or at most 10;{figures}",
        "size": "a size such as 4-0",
        "date": "a date such as 2031-03-14",
        "yes-no": "yes or no",
        "named": "yes, where it is in the note",
    }
    return hints[spec.kind]


def _clean(words: str) -> str:
    plain = words.replace("–", "-").replace("—", "-").replace("−", "-").replace("‑", "-").replace("°", " degrees")
    return " ".join(plain.casefold().split()).rstrip(".,;")


def _refused(spec: FieldSpec, words: str, more: str = "") -> ValueRefused:
    return ValueRefused(f"{spec.label}: '{words}' is not understood; give {hint_of(spec)}.{more}")


def _choice(spec: FieldSpec, words: str) -> Value:
    # A value's own name comes before any wording of the notes: 'released' is not a pulley 'vented'.
    known = _synonyms(f"{spec.group}.{spec.name}") | {value.casefold(): value for value in spec.values}
    if words in known:
        return known[words]
    near = difflib.get_close_matches(words, known, n=1, cutoff=0.75)
    told = tip(f"{spec.group}.{spec.name}")
    raise _refused(spec, words, f" Did you mean '{near[0]}'?" if near else f" {told}".rstrip())


@cache
def _synonyms(field: str) -> dict[str, str]:
    """Return typed words -> value for one field, from the vocabulary and from practice.toml."""
    found: dict[str, str] = {}
    for term in terms():
        if term.kind in tables().typed.get(field, ()):
            found |= {word.casefold(): term.value for word in (*term.words, *term.exact)}
    for value, words in tables().also_typed.get(field, {}).items():
        found |= dict.fromkeys(words, value)
    return {word: value for word, value in found.items() if value in _values(field)}


@cache
def _values(field: str) -> frozenset[str]:
    group, name = field.split(".")
    return frozenset(field_specs()[group][name].values)


def _figure_of(words: str) -> float | None:
    """Read a bare figure: '4', '4.5', 'four', 'half', '2/3'."""
    if re.fullmatch(_FIGURE, words):
        return float(words)
    if words in tables().number_words:
        return float(tables().number_words.index(words))
    return None


def _whole(spec: FieldSpec, words: str) -> Value:
    first = re.match(r"([a-z]+|-?\d+)(?:[- ]|$)", words)
    figure = _figure_of(first.group(1)) if first else None
    rest = words[first.end() :] if first else ""
    if figure is None or not re.fullmatch(r"[a-z ]*", rest):
        raise _refused(spec, words)
    return int(figure)


def _number(spec: FieldSpec, words: str) -> Value:
    if spec.unit == "%" and (share := _share(words)) is not None:
        return share
    found = _interval(spec, words)
    if found.low is None or found.low != found.high:
        raise _refused(spec, words, " One figure is wanted here.")
    return found.low


@cache
def _shares() -> dict[str, float]:
    return {w.casefold(): float(t.value) for t in terms() if t.kind == "fraction" for w in t.words}


def _share(words: str) -> float | None:
    return _shares().get(words)


def _interval(spec: FieldSpec, words: str) -> Interval:
    """Read a figure or a range with its unit, turned into the unit of the field."""
    if "degrees" in spec.unit:
        return _angle(spec, words)
    if term := _TERM.fullmatch(words):
        days = int(term.group(1)) * {"7": 1.0, "52": 7.0, "12": 30.0}[term.group(2)]
        return _in_unit(spec, words, days, days, "day")
    plain = re.sub(
        rf"\b({'|'.join(tables().number_words)})\b", lambda m: str(tables().number_words.index(m.group(1))), words
    )
    plain = re.sub(r"^(?:about|approximately|roughly|from|day|days|for)\s+", "", plain).replace(",", ".")
    if bound := _OPEN.match(plain):
        figure = float(bound.group(2))
        low, high = (figure, None) if bound.group(1) in _LOW_SIDE else (None, figure)
        return _in_unit(spec, words, low, high, plain[bound.end() :])
    if span := _RANGE.match(plain):
        return _in_unit(spec, words, float(span.group(1)), float(span.group(3)), plain[span.end() :] or span.group(2))
    single = re.match(_FIGURE, plain)
    if single is None:
        raise _refused(spec, words)
    return _in_unit(spec, words, float(single.group()), float(single.group()), plain[single.end() :])


def _in_unit(spec: FieldSpec, words: str, low: float | None, high: float | None, unit: str) -> Interval:
    scale = _scale(spec, unit.strip())
    if scale is None:
        raise _refused(spec, words, f" The unit is {spec.unit or 'none'}.")
    scaled = [None if figure is None else round(figure * scale, 6) for figure in (low, high)]
    try:
        return Interval(low=scaled[0], high=scaled[1])
    except ValueError:
        raise _refused(spec, words, " The upper figure is smaller than the lower one.") from None


def _scale(spec: FieldSpec, unit: str) -> float | None:
    """Return what a figure in a typed unit is to be multiplied by, or None for a unit that does not fit."""
    if not unit or unit == spec.unit:
        return 1.0
    if spec.unit == "mm":
        lengths = {"mm": 1.0, "millimetre": 1.0, "millimeter": 1.0, "cm": 10.0, "centimetre": 10.0, "centimeter": 10.0}
        return lengths.get(unit.removesuffix("s"))
    if spec.unit in ("weeks", "days after operation"):
        days = _DAYS.get(unit.split()[0].removesuffix("s"))
        return None if days is None else days / (7.0 if spec.unit == "weeks" else 1.0)
    return 1.0 if spec.unit == "%" and unit in ("percent", "per cent") else None


def _angle(spec: FieldSpec, words: str) -> Interval:
    """Read degrees: flexion counts up, extension down, neutral and straight are 0."""
    if re.fullmatch(r"(?:in )?(?:neutral|straight|extended|full extension|extension)(?: \(0 degrees\))?", words):
        return Interval(low=0, high=0)
    back = re.search(r"\b(?:extension|extended|ext|dorsiflexion|dorsiflexed)\b", words) is not None
    bare = re.sub(r"\b(?:degrees?|degs?|of|in|flexion|flexed|flex|extension|extended|ext|dorsi\w+)\b", " ", words)
    bare = " ".join(bare.split())
    span = re.fullmatch(rf"({_FIGURE})(?:\s*(?:to|-)\s*({_FIGURE}))?", bare)
    if span is None:
        raise _refused(spec, words)
    ends = [float(span.group(1)), float(span.group(2) or span.group(1))]
    if back:
        ends = [-figure for figure in ends]
    elif spec.name.startswith("wrist") and "flex" not in words and max(ends) > 0:
        # 20 degrees bent and 20 degrees back are opposite orders; a bare figure must not decide between them.
        raise _refused(spec, words, " Say which way the wrist is: 20 flexion or 20 extension.")
    return Interval(low=min(ends), high=max(ends))


def _size(spec: FieldSpec, words: str) -> Value:
    bare = words.removeprefix("usp ").strip()
    if gauge := _METRIC.fullmatch(bare):
        return next((s.usp for s in sizes().values() if s.metric == float(gauge.group(1))), bare)
    for number, name in enumerate(tables().number_words):
        bare = re.sub(rf"^{name}\b", str(number), bare)
    if re.fullmatch(r"0{2,12}", bare):
        return f"{len(bare)}-0"
    if written := _SIZE.fullmatch(bare):
        return "0" if written.group(1) == "1" else f"{written.group(1)}-0"
    bare = bare.removeprefix("#").removeprefix("no. ").removeprefix("no ").strip()
    if bare not in sizes():
        raise _refused(spec, words)
    return bare


def _date(spec: FieldSpec, words: str) -> Value:
    plain = re.sub(r"(\d)(?:st|nd|rd|th)\b", r"\1", words.replace(",", " "))
    plain = " ".join(plain.split())
    for form in ("%Y-%m-%d", *_DATES):
        try:
            return datetime.strptime(plain, form).date().isoformat()
        except ValueError:
            continue
    if numeric := re.fullmatch(r"(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})", plain):
        return _numeric_date(spec, words, *(int(part) for part in numeric.groups()))
    raise _refused(spec, words)


def _numeric_date(spec: FieldSpec, words: str, first: int, second: int, year: int) -> Value:
    """Read 14/03/2031 where only one order is possible; 03/04/2031 could be either and is refused."""
    orders = {(first, second), (second, first)}
    possible = set()
    for day, month in orders:
        try:
            possible.add(date(year, month, day))
        except ValueError:
            continue
    if len(possible) != 1:
        raise _refused(spec, words, " Day and month could be either way round; year-month-day is clear.")
    return possible.pop().isoformat()


def _yes_no(spec: FieldSpec, words: str) -> Value:
    if words not in ("yes", "true", "y", "no", "false", "n"):
        raise _refused(spec, words)
    return words in ("yes", "true", "y")


def _named(spec: FieldSpec, words: str) -> Value:
    if words not in ("yes", "true", "y", "there", "present"):
        raise _refused(spec, words, " Where it is missing, say: silent.")
    return True
