"""Which words prove a value: finding typed words in the note, and judging the words a student marked."""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Literal

from notereader.practice.faults import PracticeFault
from notereader.practice.words import tables
from notereader.record import Address, Fact, Value, show_value
from notereader.vocabulary import field_specs, terms

Span = tuple[int, int]
Proof = Literal["fit", "none", "elsewhere", "too little", "too much"]

# Kinds of value whose proof is a figure, written in digits or in words.
_FIGURES = frozenset({"whole", "number", "interval", "size", "date"})
# A size, a date or a range of figures is one word; 'four-strand' is two.
_WORD = re.compile(r"\d+(?:[-/.,:–]\d+)*|[^\W\d_]+\d*")
_LONGEST_WORD = 40
_LETTERS = re.compile(r"[^\W_]+")


@dataclass(frozen=True, slots=True)
class Found:
    """Where typed words stand in the note; `places` counts every place they stand at."""

    span: Span
    places: int


def find_words(text: str, words: str, number: int = 1) -> Found:
    """Find typed words in a note whatever their line breaks; `number` chooses one of several places.

    Raises PracticeFault where they do not stand there.
    """
    spans = _places(text, words)
    if not spans:
        raise PracticeFault(f'The words "{words}" do not stand in the note. Copy them as they are written there.')
    if not 1 <= number <= len(spans):
        raise PracticeFault(f'The words "{words}" stand {len(spans)} times in the note; there is no place {number}.')
    return Found(spans[number - 1], len(spans))


def place_number(text: str, words: str, span: Span) -> int:
    """Return the number by which find_words() finds words at this place; spaces around them do not count."""
    own = text[span[0] : span[1]]
    start = span[0] + len(own) - len(own.lstrip())
    return next((number for number, found in enumerate(_places(text, words), 1) if found[0] == start), 1)


def _places(text: str, words: str) -> list[Span]:
    parts = words.split()
    if not parts:
        raise PracticeFault("No words were given between the quotation marks.")
    pattern = r"\s+".join(re.escape(part) for part in parts)
    whole = rf"(?<!\w){pattern}(?!\w)"
    # As they are written first: whole words before parts of words, the same capitals before others.
    for form, flags in ((whole, 0), (whole, re.IGNORECASE), (pattern, 0), (pattern, re.IGNORECASE)):
        if spans := [match.span() for match in re.finditer(form, text, flags)]:
            return spans
    return []


def spans_of(fact: Fact) -> list[Span]:
    """Return the places of a fact's words."""
    return [evidence.span for evidence in fact.evidence if evidence.span is not None]


def judge(text: str, place: Address, value: Value, marked: Sequence[Span], proofs: Iterable[Span]) -> Proof:
    """Judge the words a student marked for a right value against the places that prove it.

    A part of the proof is enough where it carries the value: the figure, or the word that says it.
    """
    if not marked:
        return "none"
    verdicts = {_judge_one(text, place, value, mark, proof) for mark in marked for proof in proofs}
    order: tuple[Proof, ...] = ("fit", "too much", "too little")
    return next((verdict for verdict in order if verdict in verdicts), "elsewhere")


def _judge_one(text: str, place: Address, value: Value, mark: Span, proof: Span) -> Proof:
    start, end = max(mark[0], proof[0]), min(mark[1], proof[1])
    if start >= end:
        return "elsewhere"
    telling, seen = _telling(text, place, value, proof), _words(text, mark)
    # A date needs day and year; of anything else one telling word is enough.
    enough = telling <= seen if field_specs()[place.group][place.field].kind == "date" else bool(telling & seen)
    if not enough:
        return "too little"
    beyond = (mark[1] - mark[0]) - (end - start)
    return "too much" if beyond > tables().quotes.widest_extra else "fit"


def _words(text: str, span: Span) -> set[Span]:
    """Return the places of the words that lie wholly within a span."""
    # Searched from a little before, so that a span that begins in mid-word holds no half of it.
    begin = max(0, span[0] - _LONGEST_WORD)
    found = {match.span() for match in _WORD.finditer(text, begin, min(len(text), span[1] + _LONGEST_WORD))}
    return {word for word in found if span[0] <= word[0] and word[1] <= span[1]}


def _telling(text: str, place: Address, value: Value, proof: Span) -> set[Span]:
    """Return the words of a proof any one of which carries the value."""
    inside = _words(text, proof)
    if not inside:
        return {proof}
    spec = field_specs()[place.group][place.field]
    if spec.kind in _FIGURES:
        telling = {w for w in inside if _has_figure(text[w[0] : w[1]])}
    else:
        known = _words_for(show_value(value))
        telling = {w for w in inside if _letters(text[w[0] : w[1]]) & known}
    small = tables().quotes.small_words
    return telling or {w for w in inside if text[w[0] : w[1]].casefold() not in small} or inside


def _has_figure(word: str) -> bool:
    return any(c.isdigit() for c in word) or bool(_letters(word) & tables().quotes.figure_words)


def _letters(word: str) -> set[str]:
    return {part.casefold() for part in _LETTERS.findall(word)}


@cache
def _words_for(value: str) -> frozenset[str]:
    """Return the words by which notes say a value, from every kind of the vocabulary."""
    said = [value, *(word for term in terms() if term.value == value for word in (*term.words, *term.exact))]
    found = {part for phrase in said for part in _letters(phrase)}
    return frozenset(found - tables().quotes.small_words)
