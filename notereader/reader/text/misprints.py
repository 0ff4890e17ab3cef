"""Words that a later line puts right by naming them: "'8 mm' should read '12 mm'", 'For two strands read four strands'.

A note with such a line is read as if the right words had stood in the place of the wrong ones from the start. What is
told there is proved by the words of the correction; what the wrong words would have told stays as a rival.
"""

import re
from bisect import bisect_right
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from itertools import islice

from notereader.reader.mentions.measures import count_of
from notereader.reader.reasons import Reason
from notereader.record import Evidence, Fact, Note, Record, Remark, Rival, show_value, source_of
from notereader.vocabulary.fields import field_specs

Span = tuple[int, int]  # code points
Reading = Callable[[str], Record]

_QUOTED = "(?:\"{0}\"|'{0}'|\u2018{0}\u2019|\u201c{0}\u201d)".format(r"[^\n\"'\u2018\u2019\u201c\u201d]{1,80}")
_WORDS = r"[\w/.%-]*\w%?(?: [\w/.%-]*\w%?){0,4}"
_SHOULD = r"(?:should|ought to|must|was meant to) (?:read|be|say|have read|have been|state)(?: as)?:?"
_FOR = r"(?:for|instead of|in place of)(?: an?| the)?"
_SAYS = r"where (?:it|the note|this|the above|I) (?:says|said|wrote|reads|states|dictated)"
_INSTEAD = r",? (?:(?:it|this) (?:should (?:say|read|be)|is|was)|(?:please )?read)"
_FIGURE = r"(?=\d|(?:no|one|two|three|four|five|six|seven|eight|ten)\b)"
_PATTERNS = tuple(
    re.compile(pattern, re.IGNORECASE)
    for pattern in (
        rf"(?P<wrong>{_QUOTED}),? {_SHOULD} (?P<right>{_QUOTED})",
        rf"\b{_FOR} (?P<wrong>{_QUOTED}),? (?:please )?read (?P<right>{_QUOTED})",
        rf"\b{_SAYS} (?P<wrong>{_QUOTED}|{_WORDS}?){_INSTEAD} (?P<right>{_QUOTED}|{_WORDS})(?=[.;,\n]|$)",
        rf"\b{_FOR} (?P<wrong>{_WORDS}?),? (?:please )?read (?:an? )?(?P<right>{_WORDS})(?=[.;,\n]|$)",
        rf"\b(?P<wrong>{_FIGURE}{_WORDS}) should read (?P<right>{_WORDS})(?=[.;,\n]|$)",
    )
)
# 'The number of strands is wrong: there were four': the one count of the note is meant.
_COUNT_IS_WRONG = re.compile(
    r"\b(?:number of (?:core )?strands|strand count|count of strands) (?:is|was|given above is) "
    r"(?:wrong|incorrect|mistaken|misstated)[:;,.]? (?:there|it|this) (?:were|was|should be|should read)(?: in fact)? "
    rf"(?P<right>{_FIGURE}\w+)",
    re.IGNORECASE,
)
_COUNT = re.compile(rf"\b({_FIGURE}\w+)(?:[ -]core)?[ -]strands?\b", re.IGNORECASE)
# 'The statement that there was no gap is wrong': nothing takes its place, or what follows does.
_STRUCK = re.compile(
    r"\bthe (?:statement|entry|remark|sentence|line|passage)(?: above)? that [^.;:\n]{3,80}? (?:is|was) "
    r"(?:wrong|incorrect|mistaken|untrue|false|not (?:right|correct|true)|a mistake|an error)",
    re.IGNORECASE,
)
_DOUBTED = re.compile(
    r"\b(?:not|whether|if|ask(?:s|ed)?|wonder(?:s|ed)?|unsure|perhaps|maybe|never)\b|n't", re.IGNORECASE
)
_PART = re.compile(
    r"\b(?:fd[ps]|fpl|fcr|fcu|profund\w*|superficialis|sublimis|thumb|index|middle|long|ring|small|little|nerve|slip"
    r"|a[1-5]|other|second|latter)\b",
    re.IGNORECASE,
)
_MOST = 40  # corrections of one note that are heeded: each costs a look through the note
_QUOTES = "\"'\u2018\u2019\u201c\u201d"
_PLACE = re.compile(r" (?:in|for|of|on|at|to) ")  # 'for 3-0 read 4-0 in the core suture'
# 'A2 vented' says what it is said of; '8 mm', '4-0 nylon' and 'middle finger' do not.
_TELLS_ITSELF = re.compile(
    r"(?!.*(?:\d[-/]0|\b(?:finger|digit|thumb|ray|slip|hand)\b))(?=.*[a-z]{4})\S+\s+\S", re.IGNORECASE
)


@dataclass(frozen=True, slots=True)
class Misprint:
    """A correction: where it stands, its right words, and the one place of the wrong ones (None where not found)."""

    clause: Span
    right: Span
    wrong: Span | None


def misprints(text: str) -> list[Misprint]:
    """Return the corrections of a note that name the words they put right, in order."""
    found: list[Misprint] = []
    for match in islice((m for pattern in _PATTERNS for m in pattern.finditer(text)), _MOST):
        misprint = None if _is_open(text, match) else _misprint(text, match)
        if misprint and not any(_meet(misprint.clause, other.clause) for other in found):
            found.append(misprint)
    for match in islice(_COUNT_IS_WRONG.finditer(text), _MOST):
        counts = [m.span(1) for m in islice(_COUNT.finditer(text, 0, match.start()), 2)]
        found += [Misprint(match.span(), match.span("right"), counts[0])] if len(counts) == 1 else []
    found += [Misprint(match.span(), (match.end(), match.end()), None) for match in _STRUCK.finditer(text)]
    return _apart(sorted(found, key=lambda each: each.clause))


def _apart(found: list[Misprint]) -> list[Misprint]:
    """Leave out all corrections where two are of the same words, or one is of another: which holds is not known."""
    taken = [each.clause for each in found] + [each.wrong for each in found if each.wrong]
    meeting = any(_meet(a, b) for n, a in enumerate(taken) for b in taken[:n])
    return [] if meeting else found


def _is_open(text: str, match: re.Match[str]) -> bool:
    """Tell whether a correction is asked, denied or of a part named beside it, whose words these may not be."""
    before, behind = text[: match.start()], text[match.end() :]
    lead = re.split(r"[.;:\n]", before)[-1]
    tail = re.split(r"[.;\n]", behind)[0]
    return "?" in tail or _DOUBTED.search(lead) is not None or _PART.search(f"{lead} | {tail}") is not None


def read_put_right(text: str, found: list[Misprint], read: Reading) -> Record:
    """Return the draft of a note with its misprints put right; its quotes are those of the note as it stands."""
    blanked = _blanked(text, found)
    moves = _Moves.of(text, blanked, found)
    before, record = read(blanked), read(moves.text)
    old = {place.text(): fact for place, fact in before.walk()}
    source = source_of(text)
    for place, fact in record.walk():
        touched = any(moves.touches(e.span) for e in fact.evidence if e.span)
        _move([fact, *fact.rivals], moves, text, source)
        was = old.get(place.text())
        if touched and was is not None and was.value is not None and was.value != fact.value:
            spans = [e.span for e in was.evidence if e.span]
            rival = Rival(value=was.value, evidence=[Evidence.at(text, *span, source) for span in spans])
            fact.rivals = [rival, *(r for r in fact.rivals if r.value != was.value)]
            unit = field_specs()[place.group][place.field].unit
            fact.look_twice.insert(0, Reason("also_says", (show_value(was.value, unit),)).told)
    _move(record.remarks, moves, text, source)
    record.note = Note.of(text, record.note.name)
    return record


def _misprint(text: str, match: re.Match[str]) -> Misprint | None:
    wrong, right = _bare(text, match.span("wrong")), _bare(text, match.span("right"))
    quoted = text[match.end() - 1] in _QUOTES
    if not quoted:
        place = _PLACE.search(text, *right)
        right = (right[0], place.start()) if place else right
    place_of_wrong, first = _where(text, wrong, match.start(), all_of_it=wrong != match.span("wrong"))
    if place_of_wrong is not None and " " not in text[slice(*right)]:
        place_of_wrong = _number_of(text, place_of_wrong)
    if place_of_wrong is None and not (quoted and _TELLS_ITSELF.search(text[slice(*right)])):
        return None
    clause = (match.start() if match.re is not _PATTERNS[-1] else first, match.end())
    return Misprint(clause, right, place_of_wrong)


def _bare(text: str, span: Span) -> Span:
    """Return a span without the quotes around it."""
    i, j = span
    return (i + 1, j - 1) if text[i] in _QUOTES else (i, j)


def _where(text: str, wrong: Span, end: int, all_of_it: bool) -> tuple[Span | None, int]:
    """Return the one place before `end` where the wrong words stand, and where they begin in the correction.

    Unquoted words may open with others that lead to them: then the longest of their ends that stands before counts.
    """
    words_of = re.compile(r"\S+").finditer(text, *wrong)
    starts = [wrong[0]] if all_of_it else [m.start() for m in words_of]
    for first in starts:
        words = r"\s+".join(re.escape(w) for w in text[first : wrong[1]].split())
        pattern = re.compile(rf"(?<![\w/.-]){words}(?![\w/-])", re.IGNORECASE)
        found = [m.span() for m in islice(pattern.finditer(text, 0, end), 2)]
        if found:
            return (found[0] if len(found) == 1 else None), first
    return None, wrong[0]


def _number_of(text: str, span: Span) -> Span:
    """'Where it says two strands it should say six': of wrong words that a number opens, the number alone."""
    first = text[slice(*span)].split()[0]
    counted = count_of(first.lower()) is not None or first[0].isdecimal()
    return (span[0], span[0] + len(first)) if counted else span


def _meet(one: Span, other: Span) -> bool:
    return one[0] < other[1] and other[0] < one[1]


def _blanked(text: str, found: list[Misprint]) -> str:
    """Return the note without the words of its corrections; right words whose wrong ones are not found stay."""
    kept = list(text)
    for each in found:
        stays = range(*each.right) if each.wrong is None else range(0)
        for k in range(*each.clause):
            kept[k] = kept[k] if k in stays or kept[k] == "\n" else " "
    return "".join(kept)


@dataclass(frozen=True, slots=True)
class _Moves:
    """A text with right words in the place of wrong ones, and where its parts stand in the note."""

    text: str
    starts: list[int]  # of the parts of the new text
    origins: list[Span]  # where each part stands in the note
    put_in: list[bool]  # whether a part is the right words of a correction

    @classmethod
    def of(cls, text: str, blanked: str, found: list[Misprint]) -> "_Moves":
        starts, origins, put_in, parts = list[int](), list[Span](), list[bool](), list[str]()
        at = length = 0
        for each in sorted((each for each in found if each.wrong), key=lambda each: each.wrong or (0, 0)):
            i, j = each.wrong or (0, 0)
            for (a, b), new in (((at, i), False), (each.right, True)):
                starts.append(length)
                origins.append((a, b))
                put_in.append(new)
                parts.append(text[a:b] if new else blanked[a:b])
                length += b - a
            at = j
        starts.append(length)
        origins.append((at, len(text)))
        put_in.append(False)
        return cls("".join(parts) + blanked[at:], starts, origins, put_in)

    def touches(self, span: Span) -> bool:
        """Tell whether a span of the new text holds words of a correction."""
        return any(self.put_in[n] for n in self._parts(span))

    def back(self, span: Span) -> Iterator[Span]:
        """Yield where a span of the new text stands in the note: its words of a correction alone, if it has any."""
        parts = list(self._parts(span))
        told = [n for n in parts if self.put_in[n]] or parts
        for n in told:
            a, b = self.origins[n]
            i, j = max(span[0] - self.starts[n], 0), min(span[1] - self.starts[n], b - a)
            yield (a, b) if self.put_in[n] else (a + i, a + j)

    def _parts(self, span: Span) -> Iterator[int]:
        n = bisect_right(self.starts, span[0]) - 1
        while n < len(self.starts) and self.starts[n] < span[1]:
            a, b = self.origins[n]
            if self.starts[n] + b - a > span[0]:
                yield n
            n += 1


def _move(several: Iterable[Fact | Rival | Remark], moves: _Moves, text: str, source: str) -> None:
    """Point the evidence of facts, their rivals and remarks to the note as it stands."""
    for told in several:
        spans = [back for e in told.evidence if e.span for back in moves.back(e.span)]
        told.evidence = [Evidence.at(text, *span, source) for span in dict.fromkeys(spans)]
