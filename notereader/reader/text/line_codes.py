"""Lines that carry a code, '8.3 FDP ring - 70 %', 'F1 FDP parted', and what is told by it: 're 8.3: modified Kessler'.

A code says nothing itself, so that the 'D2' of a list 'D1, D2, D3' of things done is no finger; where it is spoken of
elsewhere, the name that its line opens with is read in its place.
"""

import re
from functools import cache

from notereader.reader.text.writing_out import Written
from notereader.vocabulary.terms import terms
from notereader.vocabulary.wordlists import word_list

_CODED = re.compile(
    r"^[ \t]*(?P<code>(?P<series>\d{1,2}\.|[A-Z])(?P<number>\d{1,2}))(?P<mark>[.):]?[ \t]+)(?P<rest>\S[^\n]*)", re.M
)
_NAMES = ("tendon", "structure", "sided", "anynerve", "anyartery", "pulley", "digit", "digit?", "slip")
_OF_A_FINGER = re.compile(r"\bfd[ps]\b|\bfpl\b|profund|superficial|sublimis", re.IGNORECASE)
_OF_PULLEYS = frozenset("AC")
_OF_FINGERS = frozenset("DF")
_FEWEST = {True: 3, False: 2}  # lines of a series that is numbered by its section, and of one with a letter

Series = dict[str, re.Match[str]]  # the lines of a series by their codes


def line_codes(text: str) -> list[Written]:
    """Return what is to be read in the place of the codes of a note's lines, and of those that speak of them."""
    series = _series(text)
    if not series:
        return []
    lines = {code: line for each in series for code, line in each.items()}
    names = {code: _name(line["rest"]) for code, line in lines.items()}
    own = [Written(line.start("code"), line.end("mark"), "") for line in lines.values()]
    heads = {line.start("code") for line in lines.values()}
    spoken = [w for w in _spoken_of(text, names) if w.i not in heads]
    return [*own, *spoken]


def _series(text: str) -> list[Series]:
    """Return the lists of a note whose lines are coded and count up from one."""
    found: dict[str, Series] = {}
    for line in _CODED.finditer(text):
        own = found.setdefault(line["series"], {})
        if int(line["number"]) == len(own) + 1:
            own[line["code"]] = line
    long = {lead: own for lead, own in found.items() if len(own) >= _FEWEST[lead[0].isdecimal()]}
    lettered = [lead for lead in long if lead.isalpha() and lead not in _OF_PULLEYS]
    several = len(lettered) > 1
    if _OF_FINGERS.issubset(lettered):  # nobody calls the fingers by both
        return [own for lead, own in long.items() if lead not in _OF_PULLEYS]
    return [own for lead, own in long.items() if lead[0].isdecimal() or (several and _is_code(lead, own))]


def _is_code(letter: str, own: Series) -> bool:
    """Tell whether a letter numbers lines: 'F1 FDP parted, F2 A2 whole', but not 'D1 FPL cut, D2 FDP cut'."""
    if letter in _OF_PULLEYS:
        return False
    named = sum(_OF_A_FINGER.search(line["rest"]) is not None for line in own.values())
    return letter not in _OF_FINGERS or 2 * named <= len(own)


def _name(rest: str) -> str:
    """Return the name of a part that a line opens with: the 'FDS of ring finger' of 'FDS of ring finger: cut'."""
    opened = _opening().match(rest)
    named = opened.group().rstrip(" /") if opened else ""
    return named if any(c.isalpha() for c in named) else ""


@cache
def _opening() -> re.Pattern[str]:
    phrases = {p.lower() for t in terms() if t.kind in _NAMES for p in (*t.words, *t.exact)}
    words = "|".join(re.escape(p) for p in sorted(phrases, key=len, reverse=True))
    joins = "|".join(word_list("line_codes", "joins"))
    return re.compile(
        rf"(?:(?:{words})(?![\w-])[ /]*|(?:{joins}|\d(?:/\d)?)(?![\w%.-])[ /]+(?!%)){{1,8}}", re.IGNORECASE
    )


def _spoken_of(text: str, names: dict[str, str]) -> list[Written]:
    """Return the names to be read where codes are spoken of: 're 8.1, 8.2:', 'the fibres of 8.3'."""
    codes = "|".join(re.escape(code) for code in sorted(names, key=len, reverse=True))
    leads = "|".join(sorted(word_list("line_codes", "leads"), key=len, reverse=True))
    told = re.compile(
        rf"(?<![\w.])(?:(?<=\n)(?P<lead>[ \t]*)(?:(?i:{leads})[. ]+)?)?(?P<code>{codes})(?![\w%]|\.\d| ?[mc]m\b)"
    )
    found = []
    for m in told.finditer(text):
        i = m.end("lead") if m["lead"] is not None else m.start("code")
        found.append(Written(i, m.end("code"), names[m["code"]] or "that"))
    return found
