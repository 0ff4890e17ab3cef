"""Answers as lines of text: 'ring FDP strands: 4 "four-strand"'. Typed one by one, or kept in a file."""

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass

from notereader.practice.attempts import OpenAttempt
from notereader.practice.cases import needed_silences
from notereader.practice.explain import shown
from notereader.practice.faults import PracticeFault
from notereader.practice.naming import entry_of, places_of
from notereader.practice.quotes import Span, find_words, place_number
from notereader.practice.typed import value_of
from notereader.practice.words import spec_of, tables
from notereader.record import Address, Evidence, Rival, Value, ValueRefused
from notereader.vocabulary import field_specs

_QUOTE = re.compile(r"[\"“”]([^\"“”]*)[\"“”](?:\s*@\s*(\d+))?")
_OR = re.compile(r"\s+or\s+(?=(?:[^\"“”]*[\"“”][^\"“”]*[\"“”])*[^\"“”]*$)")
_BUNDLE = re.compile(r"\b(?:(?:neurovascular|nv) bundles?|bundles?|nvbs?)\b", re.IGNORECASE)
_BOTH = re.compile(r"\bboth\b", re.IGNORECASE)
_SILENT = ("silent", "note silent", "not stated", "the note is silent")
_OTHERS = ("others silent", "other silent", "rest silent", "everything else silent")

HELP = """\
Answer in lines. What the line is about comes first, then a colon, then what the note says and, in quotation marks, the
words of the note that say it. Each line is saved at once.

  side: right "R RF"                      a fact of the operation
  ring FDP zone: IIA "zone 2A"            a fact of a tendon: finger, tendon, field
  ring FDP: repaired "FDP repair"         what was done to it
  ring FDP size: 4/0 "4/0 Ticron"         4-0, 4/0 and four-oh are the same
  ring FDP purchase: 8 mm "8 mm each side"
  ring A2: intact "A2 not touched"        the state of a pulley
  ring A4 percent: 50 "half of A4"
  ring ulnar digital nerve: contused "UDN bruised"
  ring both digital arteries: intact "Both arteries ok"       both: radial and ulnar; a bundle: nerve and artery
  wrist: 20 extension "wrist 20 ext"      an order for after the operation
  start: day 3 "from day 3"
  ring FDP bulk: silent                   the note does not say, and it matters
  ring FDP: others silent                 the same for all that is still open of this tendon
  ring pulleys: others silent             ... for the pulleys you have not entered
  aftercare: others silent                ... for the orders ('operation: others silent' for the operation)
  small FDP strands: 4 "four-strand" or 6 "six-strand"     the note says both; the one that promises less first
  contradiction: small FDP strands        the note contradicts itself here (several facts: part them with ;)
  questions: ring FDP gap; ring A3; programme     the three worth asking, the most telling first
  forget ring FDP size                    take an answer back

  note         show the note again        answers      show what you have entered
  fields       list the fields and their values          help         show this
  done         hand in and see the marking               leave        stop here; your work is kept

Words that stand several times in the note: "4-0" @2 takes the second place.
"""


@dataclass(frozen=True, slots=True)
class _Answer:
    """A value as typed, with the places of its words."""

    typed: str
    spans: tuple[Span, ...]
    remarks: tuple[str, ...]


def enter_line(attempt: OpenAttempt, line: str) -> str:
    """Enter one answer line and return a sentence that says what was saved.

    Raises PracticeFault, ValueRefused or EditRefused, each saying what was not understood; nothing is saved then.
    """
    words = " ".join(line.split())
    if words.casefold().startswith("forget "):
        return _forget(attempt, words[7:])
    subject, colon, answer = (part.strip() for part in words.partition(":"))
    room = _rooms().get(subject.casefold())
    if room is None:
        # The value stands after the last colon before any quotation; 'ring FDP: core strands: 4' is as good.
        subject, colon, answer = _parted(words)
    if not colon or not answer:
        raise PracticeFault(f"'{words}' is no answer. Write for instance: ring FDP strands: 4 \"four-strand\"")
    if room is not None:
        return room(attempt, subject, answer)
    return "\n  ".join(_fact(attempt, each, answer) for each in _spread(subject))


def _spread(subject: str) -> list[str]:
    """Return the subjects of a line said of several: a bundle is a nerve and an artery, both are radial and ulnar."""
    parts = [_BUNDLE.sub(structure, subject) for structure in ("digital nerve", "digital artery")]
    parts = parts if _BUNDLE.search(subject) else [subject]
    if not _BOTH.search(subject):
        return parts
    return [_BOTH.sub(side, part) for part in parts for side in ("radial", "ulnar")]


def _parted(words: str) -> tuple[str, str, str]:
    head = re.split(r"[\"“”]", words, maxsplit=1)[0]
    subject, colon, _ = head.rpartition(":")
    return subject.strip(), colon, words[len(subject) + 1 :].strip()


def _rooms() -> dict[str, Callable[[OpenAttempt, str, str], str]]:
    return {
        "contradiction": _contradiction,
        "contradictions": _contradiction,
        "questions": _questions,
        "question": _questions,
    }


def answer_lines(attempt: OpenAttempt) -> Iterator[str]:
    """Yield what was entered so far, one line each, in the order of the record."""
    for place, fact in attempt.record.walk():
        if fact.status == "withdrawn":
            continue
        told = "silent" if fact.value is None else _said(attempt, place, fact.value, fact.evidence)
        others = "".join(f" or {_said(attempt, place, rival.value, rival.evidence)}" for rival in fact.rivals)
        yield f"{place.words()}: {told}{others}"
    for hit in attempt.attempt.contradictions:
        yield f"contradiction: {'; '.join(Address.parse(p).words() for p in hit.places)}"
    if attempt.attempt.questions:
        yield f"questions: {'; '.join(Address.parse(p).words() for p in attempt.attempt.questions)}"


def _said(attempt: OpenAttempt, place: Address, value: Value, evidence: list[Evidence]) -> str:
    """Write a value with its words as they could be typed again."""
    quotes = [_quoted(attempt.case.text, e.span) for e in evidence if e.span is not None]
    return " ".join([shown(place, value), *quotes])


def _quoted(text: str, span: Span) -> str:
    words = " ".join(text[span[0] : span[1]].split())
    number = place_number(text, words, span)
    return f'"{words}"' if number == 1 else f'"{words}" @{number}'


def _forget(attempt: OpenAttempt, subject: str) -> str:
    if subject.casefold().startswith("contradiction"):
        number = subject.rsplit(maxsplit=1)[-1]
        attempt.drop_contradiction(int(number) - 1 if number.isdecimal() else len(attempt.attempt.contradictions) - 1)
        return "taken back: the contradiction"
    for place in places_of(subject, attempt.record):
        if attempt.record.fact(place) is not None:
            attempt.forget(place)
            return f"taken back: {place.words()}"
    raise PracticeFault(f"Nothing was entered for '{subject}'.")


def _contradiction(attempt: OpenAttempt, subject: str, answer: str) -> str:
    places = _each(attempt, answer)
    attempt.name_contradiction(places)
    return f"saved: contradiction in {' and '.join(place.words() for place in places)}"


def _questions(attempt: OpenAttempt, subject: str, answer: str) -> str:
    places = _each(attempt, answer)
    most = tables().asking.ranked
    if len(places) > most:
        raise PracticeFault(f"Rank {most} questions at most; part them with semicolons, the most telling first.")
    attempt.rank_questions(places)
    return "saved: " + "; ".join(f"{number}. {place.words()}" for number, place in enumerate(places, 1))


def _each(attempt: OpenAttempt, answer: str) -> list[Address]:
    return [places_of(part.strip(), attempt.record)[0] for part in answer.split(";") if part.strip()]


def _fact(attempt: OpenAttempt, subject: str, answer: str) -> str:
    plain = answer.casefold().rstrip(".")
    if plain in _OTHERS:
        return _others_silent(attempt, subject)
    places = places_of(subject, attempt.record)
    if plain in _SILENT:
        attempt.say_silent(places[0])
        return f"saved: {places[0].words()}: the note is silent"
    told = [_answer(attempt, part) for part in _OR.split(answer)]
    place, value = _value(places, told[0].typed)
    rivals = [
        Rival(value=value_of(spec_of(place), other.typed), evidence=[attempt.words(*span) for span in other.spans])
        for other in told[1:]
    ]
    attempt.put(place, value, told[0].spans, rivals)
    return _saved(place, value, told)


def _saved(place: Address, value: Value, told: list[_Answer]) -> str:
    said = f"saved: {place.words()}: {shown(place, value)}"
    if not told[0].spans:
        return f"{said}. No words were given; add them in quotation marks, they count."
    return " ".join([said, *(remark for answer in told for remark in answer.remarks)])


def _answer(attempt: OpenAttempt, part: str) -> _Answer:
    """Read one value with its quoted words."""
    text, spans, remarks = attempt.case.text, [], []
    for match in _QUOTE.finditer(part):
        found = find_words(text, match.group(1), int(match.group(2) or 1))
        spans.append(found.span)
        remarks.append(f"(line {text.count(chr(10), 0, found.span[0]) + 1})")
        if found.places > 1 and not match.group(2):
            remarks.append(f'These words stand {found.places} times; the first was taken, "..." @2 takes the second.')
    typed = _QUOTE.sub(" ", part).strip()
    if '"' in typed:
        raise PracticeFault("A quotation mark is missing: put the words of the note between two of them.")
    return _Answer(typed, tuple(spans), tuple(remarks))


def _value(places: list[Address], typed: str) -> tuple[Address, Value]:
    """Return the first of the places that can take what was typed, with its value. Raises ValueRefused."""
    refusal: ValueRefused | None = None
    for place in places:
        try:
            return place, value_of(spec_of(place), typed)
        except ValueRefused as fault:
            refusal = refusal or fault
    assert refusal is not None
    raise ValueRefused(f"{refusal}{_fits_elsewhere(places[0], typed)}") from None


def _fits_elsewhere(place: Address, typed: str) -> str:
    """Name another field of the same tendon, pulley or structure that takes what was typed as one of its words."""
    for name, spec in field_specs()[place.group].items():
        kin = spec.kind == "choice" or name.startswith(f"{place.field}_")
        if kin and name != place.field:
            try:
                value_of(spec, typed)
            except ValueRefused:
                continue
            return f" It would fit: {place.entry_words()} {name.replace('_', ' ')}."
    return ""


def _others_silent(attempt: OpenAttempt, subject: str) -> str:
    needed = [place for place in needed_silences(attempt.record) if attempt.record.fact(place) is None]
    words = subject.casefold().split()
    if words and words[-1] in ("pulleys", "pulley") and len(words) > 1:
        digit = places_of(f"{' '.join(words[:-1])} A2", attempt.record)[0].digit
        places = [p for p in needed if p.group == "pulleys" and p.digit == digit]
    else:
        entry = entry_of(subject, attempt.record)
        places = [p for p in needed if p.entry() == entry]
    if not places:
        return f"Nothing that matters is open there: {subject}. Nothing was changed."
    attempt.say_silent(*places)
    return f"saved: the note is silent on {'; '.join(place.words() for place in places)}"
