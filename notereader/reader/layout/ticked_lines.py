"""Lines of a form whose options each have a mark, ticked or empty: 'Gap: none [ ] seen [x]', 'Gap _X_ none ___ seen'.

Such lines are read off the text itself, for a mark may be drawn in many ways and stand before its options or behind
them; only that marks and options take turns all along tells which. What an empty mark stands for was not chosen.
"""

import re
from collections.abc import Iterator
from itertools import pairwise

from notereader.reader.layout.form_marks import (
    EDGES,
    EMPTY,
    FEWEST_OPTIONS,
    LONGEST_OPTION,
    MARK,
    TICKED,
    Span,
    TickedField,
)
from notereader.reader.layout.ticked_rows import TickedRows

# Marks that are marks only where all of a field's are of their kind: 'X' and else 'o', a dash or a line; the O of a
# scanned '6/O' is none.
_BARE_EMPTY = r"(?<![^\s:?.|/])(?<![0-9]/)[oO\-\u2013](?!\S)|(?<![0-9_])_{2,}+(?![0-9]|[xXvV]_)"
_BARE_TICK = r"(?<![^\s:?.|/])[xX](?!\S)|_+[xX]_+"
_WEAK = re.compile(rf"(?P<empty>{EMPTY}|{_BARE_EMPTY})|(?P<ticked>{TICKED}|{_BARE_TICK})")
_MAY_TICK = re.compile(r"[\[({\u2610-\u2612\u25a1\u25cb\u25cf\u2713\u2714\u221a]|__|(?<!\S)[xXoO](?!\S)|_[xX]_")
# A remark in brackets behind a label, 'Tension (1, 3):', is part of it.
_LABEL = re.compile(r"\s*[A-Za-z][\w ./'-]{0,40}?(?: ?\([\w ,./-]{2,30}\)(?=:))?(?::|\?|\.{3,}|\s{2,}|\|)+\s*")
_NEXT_FIELD = re.compile(r"\s{2,}(?=[A-Za-z][\w ./'-]{0,40}?[:?]\s)")
_WIDE = re.compile(r"\s{3,}")
# What may follow a ticked option: '30 %', '7 mm distal'.
_MEASURE = re.compile(r"[\s,]*\d+(?:[.,]\d+)?\s*(?:%|mm|cm)?(?:\s+(?:distal|proximal|distally|proximally))?[\s.;]*")


def ticked_lines(text: str, names: list[Span]) -> list[TickedField]:
    """Return the fields of a note in which marks and options take turns, in the order of the text.

    `names` are the tendons, pulleys and fingers it names: they are labels, and no options.
    """
    if _MAY_TICK.search(text) is None:
        return []
    rows = TickedRows(text, names)
    found: list[TickedField] = []
    for begin, end in _lines(text):
        if _ticks_names(text[begin:end]):
            continue
        in_turns = [line for field in _fields(text, begin, end) if (line := _field(text, *field)) is not None]
        in_rows = rows.fields(begin, end)
        plain = len(in_rows) == len(in_turns) == 1 and in_rows[0].span[0] == in_turns[0].span[0]
        found += in_turns if plain else in_rows or in_turns  # 'FDS: [ ] cut [x] whole', a field with a line of its own
    return found


def _ticks_names(line: str) -> bool:
    """'A1 [ ]  A2 [x] intact   A4 [x] excised': boxes tick the names before them, and what follows is told of those."""
    named = len(_NAME_AND_BOX.findall(line))
    return named >= FEWEST_OPTIONS and named == line.count("[")


_NAME_AND_BOX = re.compile(r"\b[AC][1-5] {0,2}\[ ?[xXvV]? ?\]")


def _lines(text: str) -> Iterator[Span]:
    at = 0
    for row in text.splitlines(keepends=True):
        yield at, at + len(row.rstrip())
        at += len(row)


def _fields(text: str, begin: int, end: int) -> Iterator[Span]:
    """Yield the pieces of a line that a label may open."""
    for gap in _NEXT_FIELD.finditer(text, begin, end):
        yield begin, gap.start()
        begin = gap.end()
    yield begin, end


def _field(text: str, begin: int, end: int) -> TickedField | None:
    label = _LABEL.match(text, begin, end)
    first = label.end() if label is not None else begin
    for marks_of in (MARK, _WEAK):
        marks = list(marks_of.finditer(text, first, end))
        if len(marks) < FEWEST_OPTIONS or (marks_of is _WEAK and (label is None or not _alike(marks))):
            continue
        line = _in_turns(text, first, end, marks, labelled=label is not None, bare=marks_of is _WEAK)
        if line is not None:
            return line
    return None


def _alike(marks: list[re.Match[str]]) -> bool:
    """Tell whether bare marks are of one family: 'X', and else 'o', or '-', or lines."""
    empty = {mark.group()[0] for mark in marks if mark.group("empty")}
    return len(empty) <= 1


def _in_turns(
    text: str, first: int, end: int, marks: list[re.Match[str]], *, labelled: bool, bare: bool
) -> TickedField | None:
    """Return the field where its marks lead or trail all options, or None where they do neither."""
    between = [(a.end(), b.start()) for a, b in pairwise(marks)]
    before, after = (first, marks[0].start()), (marks[-1].end(), end)
    if not text[before[0] : before[1]].strip(EDGES):
        options, trailing = [*between, after], False
    elif labelled and _closes(text, after, marks[-1]):
        options, trailing = [_own_option(text, before), *between], True
    else:
        return None
    asks = _yes_or_no(text, options)
    if bare and not _one_ticked(marks) and marks[0].group() in _DASHES and not asks:
        return None  # 'cut - repaired - free'
    to_fill = trailing and not (_one_ticked(marks) or asks) and "__" in marks[0].group()
    if bare and (to_fill or not _are_plain(text, options)):
        return None
    if not all(_is_option(text[a:b]) for a, b in options) or not _one_choice(text, marks, options):
        return None
    aside: list[Span] = []
    for mark, option in zip(marks, options, strict=True):
        aside.append(mark.span())
        if mark.group("empty"):
            aside.append(_up_to_gap(text, option))
        elif parted := len(text[slice(*option)]) - len(text[slice(*option)].lstrip(EDGES)):
            aside.append((option[0], option[0] + parted))  # the stroke before a ticked option is no answer
    return TickedField((first, end), tuple(aside))


def _one_choice(text: str, marks: list[re.Match[str]], options: list[Span]) -> bool:
    """Tell whether at most one of options that differ is ticked: no row of a grid, nor several questions of a line."""
    told = [text[a:b].strip(EDGES + ".").lower() for a, b in options]
    ticked = sum(mark.group("ticked") is not None for mark in marks)
    return ticked <= 1 and len(set(told)) == len(told) and not any(_WIDE.search(words) for words in told[:-1])


def _are_plain(text: str, options: list[Span]) -> bool:
    """Tell whether options are words and counts only, as bare marks ask for: 'x 2 - 3-0' is no choice."""
    words = [w.strip(".,") for a, b in options for w in re.split(r"[\s/|,;]+", text[a:b])]
    return all(w.isalpha() or w.isdecimal() or not w for w in words)


def _yes_or_no(text: str, options: list[Span]) -> bool:
    """Tell whether options can be nothing else: yes and no, or a row of counts."""
    told = [text[a:b].strip(EDGES + ".").lower() for a, b in options]
    return _YES_NO.issuperset(told) or (len(told) > FEWEST_OPTIONS and all(w.isdecimal() for w in told))


_YES_NO = frozenset(["yes", "no", "y", "n", "none", "seen", "present", "absent"])
_DASHES = frozenset(["-", "\u2013"])


def _one_ticked(marks: list[re.Match[str]]) -> bool:
    """Tell whether one is ticked: 'wrist ___ MP ___' is no choice but lines to fill."""
    return any(mark.group("ticked") for mark in marks)


def _closes(text: str, after: Span, last: re.Match[str]) -> bool:
    """Tell whether nothing stands behind the last mark but the measure of what it ticks, or 'other ____' to fill in."""
    nothing = not text[after[0] : after[1]].strip(EDGES + ".")
    return (
        nothing
        or _TO_FILL_IN.fullmatch(text, *after) is not None
        or (bool(last.group("ticked")) and _MEASURE.fullmatch(text, *after) is not None)
    )


_TO_FILL_IN = re.compile(r"[\s/|,]*(?:other|others|specify|if other)[\s:(,]*(?:_{2,}|\.{3,})[\s).]*", re.IGNORECASE)


def _up_to_gap(text: str, option: Span) -> Span:
    """'[ ] no      suture 6-0': what stands behind a wide gap is no part of the option."""
    lead = len(text[option[0] : option[1]]) - len(text[option[0] : option[1]].lstrip())
    gap = _WIDE.search(text, option[0] + lead, option[1])
    return option[0], gap.start() if gap is not None else option[1]


def _own_option(text: str, before: Span) -> Span:
    """Return the first option of a field whose label no mark sets off: the last word before the first mark."""
    lead = text[before[0] : before[1]].rstrip(EDGES)
    words = lead.split()
    if len(words) <= LONGEST_OPTION:
        return before
    return before[0] + len(lead) - len(words[-1]), before[1]


def _is_option(words: str) -> bool:
    told = _WIDE.split(words.strip(EDGES + "."))[0]
    return bool(told) and ":" not in told and len(told.split()) <= LONGEST_OPTION and told[0].isalnum()
