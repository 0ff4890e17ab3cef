"""Contacts, numbers and codes that belong to one person or thing, by their form and by the labels before them."""

import re
from collections.abc import Iterable, Iterator
from functools import cache

from notereader.sharing.finds import Find
from notereader.sharing.tables import kinds

_EMAIL = re.compile(r"[\w.+'%-]+\s?@\s?[\w-]+(?:\.[\w-]+)+")
_URL = re.compile(r"(?:\b(?:https?|ftp|sftp)://|\bwww\.)[^\s<>\"')\]]+[^\s<>\"')\].,;:]", re.IGNORECASE)
_BARE_URL = re.compile(
    r"\b[a-z0-9][a-z0-9-]*(?:\.[a-z0-9-]+)*\.(?:com|org|net|edu|gov|info|health|nhs\.uk|co\.uk|org\.uk|ac\.uk|example|int|eu|de|fr|no|ie|ca|au|nz|in)\b(?:/[^\s<>\"')\]]*)?",
    re.IGNORECASE,
)
_IP4 = re.compile(r"(?<![\d.])(?:(?:25[0-5]|2[0-4]\d|1?\d?\d)\.){3}(?:25[0-5]|2[0-4]\d|1?\d?\d)(?![\d.]*\d)")
_IP6 = re.compile(r"(?<![\w:])(?=[0-9a-f:]*:[0-9a-f:]*:)(?:[0-9a-f]{0,4}:){2,7}[0-9a-f]{1,4}(?![\w:])", re.IGNORECASE)
_SSN = re.compile(r"(?<![\d-])\d{3}([- ])\d{2}\1\d{4}(?![\d-])")
_PICTURE = re.compile(
    r"\b[\w-]+(?:[./\\][\w-]+)*\.(?:jpe?g|png|heic|heif|tiff?|bmp|gif|webp|mp4|mov|avi|dcm|nef|raw)\b", re.IGNORECASE
)
_CAMERA = re.compile(r"\b(?:IMG|DSC|DSCN|DSCF|PXL|MVI|VID|P)[_-]?\d{3,}(?:[_-]\d+)*\b")
_VIN = re.compile(r"\b(?=[A-Z0-9]*\d)(?=[A-Z0-9]*[A-Z])[A-HJ-NPR-Z0-9]{17}\b")
_UDI = re.compile(r"\(01\)\s?\d{14}(?:\s?\(\d{2,3}\)\s?[\w.-]+)*")
_IBAN = re.compile(r"\b[A-Z]{2}\d{2}(?: ?[A-Z0-9]{4}){3,7}(?: ?[A-Z0-9]{1,3})?\b")

_PHONES = (
    # With the country's number.
    re.compile(r"(?<![\w+])(?:\+|00)\d{1,3}[ .()-]*\d(?:[ .()-]{0,2}\d){6,12}(?![\w-])"),
    # North America.
    re.compile(r"(?<![\w.-])(?:1[ .-])?\(?\d{3}\)?[ .-]?\d{3}[ .-]\d{4}(?:\s?(?:x|ext\.?)\s?\d{2,6})?(?![\w-])"),
    # With the trunk's nought.
    re.compile(r"(?<![\w.+-])\(?0\d{2,5}\)?[ -]\d{3,4}[ -]?\d{2,6}(?![\w-])"),
    re.compile(r"(?<![\w.+-])0\d{9,10}(?![\w-])"),
    # Local: three figures and four.
    re.compile(r"(?<![\w.-])\d{3}[-.]\d{4}(?![\w-])"),
)

# Between a label and its number; the second form is asked for where the label alone is an ordinary word.
_SIGN_WORDS = "no|nos|nr|num|number|numbers|id|ref|code|file|files|template|record|sample|is|on file"
_SIGN = rf"(?:\s*\(?(?:{_SIGN_WORDS})\b\.?\)?|\s*#|\s*№)"
_JOIN = rf"(?:{_SIGN}){{0,2}}\s*[:=\-–]?\s*"
_STRICT = rf"(?:{_SIGN}\s*[:=]?|\s*[:=])\s*"
# Figures, or letters and figures; groups parted by single blanks as long as they hold figures.
_VALUE = (
    r"(?P<value>(?:[A-Z][A-Z-]{1,7}[ ](?=\d))?(?=[A-Z/.\-]*\d)[A-Z0-9](?:[A-Z0-9/.\-]*[A-Z0-9])?"
    r"(?:[ ](?=[A-Z]{0,3}\d)[A-Z0-9/\-]*\d[A-Z0-9]*)*)"
)
_PLATE = (
    r"(?P<value>(?-i:(?=[A-Z0-9 -]{0,9}\d)[A-Z0-9]{1,4}[ -]?[A-Z0-9]{2,4}(?:[ -]?[A-Z0-9]{1,4})?|[A-HJ-NPR-Z0-9]{17}))"
)
_SHORT = r"(?P<value>\+?\(?\d[\d ().\-/]*\d(?:\s?(?:x|ext\.?)\s?\d{2,6})?)"

# At least this many figures and letters together, and of them figures, make a number that tells somebody apart.
_LEAST, _LEAST_FIGURES = 4, 3

# Telephone numbers have more, save within one house.
_INTERNAL = frozenset({"pager", "bleep", "ext", "call back on", "ring on"})
_LEAST_CALLED, _LEAST_INTERNAL = 5, 3

# Without a label: a long row of figures, or letters and figures together as codes have them.
_LONG = re.compile(r"(?<![\w.,:/-])\d{6,}(?![\w]|[.,:/-]\d)")
_CODE = re.compile(r"(?<![\w.-])(?=[A-Z0-9/-]*[A-Z])(?=(?:[A-Z/-]*\d){5})[A-Z0-9]+(?:[/-][A-Z0-9]+)*(?![\w.-]*\w)")
_GROUPED = re.compile(r"(?<![\w.-])\d{3} \d{3} \d{3,4}(?![\w-])")
# Codes of ours that no one is known by: product sizes and the like have fewer figures.
_MEASURED = re.compile(r"\s*(?:mm|cm|m|ml|mg|mcg|g|kg|%|units?|iu|mmhg|min|mins|minutes|degrees|x)\b", re.IGNORECASE)


def contacts(text: str) -> Iterator[Find]:
    """Yield e-mail and web addresses, IP numbers and files of pictures: what is known by its form alone."""
    for match in _EMAIL.finditer(text):
        yield _find(match, "e-mail", "the form of an e-mail address")
    for pattern in (_URL, _BARE_URL):
        for match in pattern.finditer(text):
            yield _find(match, "web address", "the form of a web address")
    for pattern in (_IP4, _IP6):
        for match in pattern.finditer(text):
            yield _find(match, "IP address", "the form of an IP address")
    for pattern in (_PICTURE, _CAMERA):
        for match in pattern.finditer(text):
            yield _find(match, "photograph", "the name of a picture's file")


def labelled_numbers(text: str) -> Iterator[Find]:
    """Yield numbers that stand after a label of their kind."""
    for kind, loose, pattern in _labels():
        for match in pattern.finditer(text):
            value = match["value"]
            figures = sum(map(str.isdigit, value))
            least = _LEAST_INTERNAL if match["label"].lower() in _INTERNAL else _LEAST_CALLED
            if not loose:
                least = 1 if kind == "vehicle" else _LEAST_FIGURES
            enough = figures >= least and (loose or len(value) >= _LEAST)
            if enough and not _MEASURED.match(text, match.end("value")):
                start, end = match.span("value")
                yield Find(start, end, kind, value, f"after '{' '.join(match['label'].split())}'")


def bare_numbers(text: str) -> Iterator[Find]:
    """Yield numbers that are known by their form without any label."""
    forms = (
        ("social security number", (_SSN,), "the form of a social security number"),
        ("vehicle", (_VIN,), "the form of a vehicle's number"),
        ("device", (_UDI,), "the form of a device's number"),
        ("account number", (_IBAN,), "the form of an account number"),
        ("telephone", _PHONES, "the form of a telephone number"),
    )
    for kind, patterns, why in forms:
        for pattern in patterns:
            for match in pattern.finditer(text):
                if not _MEASURED.match(text, match.end()):
                    yield _find(match, kind, why)


def long_numbers(text: str) -> Iterator[Find]:
    """Yield what is left: long rows of figures, and codes of letters and figures."""
    for pattern in (_GROUPED, _LONG, _CODE):
        for match in pattern.finditer(text):
            if not _MEASURED.match(text, match.end()):
                yield _find(match, "other number", "a long number without a label")


def _find(match: re.Match[str], kind: str, why: str) -> Find:
    return Find(match.start(), match.end(), kind, match[0], why)


@cache
def _labels() -> tuple[tuple[str, bool, re.Pattern[str]], ...]:
    """Return kind, whether short numbers count too, and pattern of every list of labels."""
    found = []
    for kind in kinds().values():
        loose = kind.name in ("telephone", "fax")
        value = _SHORT if loose else _PLATE if kind.name == "vehicle" else _VALUE
        for labels, join in ((kind.labels, _JOIN), (kind.numbered, _STRICT)):
            if labels:
                pattern = rf"(?<![\w-])(?P<label>{_any(labels)})(?![a-z]){join}{value}"
                found.append((kind.name, loose, re.compile(pattern, re.IGNORECASE)))
    # Whatever is called a number: 'Versicherung no: A4471'.
    anything = rf"(?P<label>\b[^\W\d_]{{2,}}\.?\s+(?:no|nos|nr|number|id))\b\.?\s*[:#]?\s*{_VALUE}"
    found.append(("other number", False, re.compile(anything, re.IGNORECASE)))
    return tuple(found)


def _any(words: Iterable[str]) -> str:
    """Return a pattern for any of the words, the longest first, with any blanks and an optional full stop within."""
    ordered = sorted(words, key=len, reverse=True)
    return "|".join(r"\.?\s+".join(re.escape(part) for part in word.split()) for word in ordered)
