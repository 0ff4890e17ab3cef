"""Facts called by words: 'ring FDP strands', 'RF A2', 'ulnar digital nerve of the thumb', 'wrist'."""

import difflib
from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import cache

from notereader.practice.faults import PracticeFault
from notereader.practice.words import tables
from notereader.record import Address, Record
from notereader.vocabulary import field_specs, terms

# What is meant where only the tendon, pulley or structure is named; the value decides between several.
MEANT = {"repairs": ("treatment", "extent"), "pulleys": ("finding",), "injuries": ("extent", "treatment")}

# Values of the vocabulary that name no single slip or structure; answer lines spread bundles themselves.
_NO_NAMES = ("both", "one", "other", "radial bundle", "ulnar bundle")
_ANATOMY = ("sided", "slip", "structure", "pulley", "tendon", "digit", "digit?", "border", "pulley?")
_GROUP_OF = {"tendon": "repairs", "pulley": "pulleys", "structure": "injuries"}
_LONGEST = 5
# Longer than any name of a fact; more would only take time.
_MOST_TOKENS = 14
_EMPTY = frozenset(
    ("operation", "aftercare", "elements", "of", "the", "finger", "pulley", "nerve's", "tendon", "in", "on", "at")
)
_WRIST = ("FCR", "FCU", "PL")
# Structures that lie in one digit; the others lie in the hand or at the wrist and may stand without one.
_OF_A_DIGIT = ("digital nerve", "digital artery")


@dataclass
class _Heard:
    """What the words were understood as."""

    digit: str | None = None
    part: str | None = None
    side: str | None = None
    group: str | None = None
    fields: list[tuple[str, str]] = field(default_factory=list)


def places_of(words: str, record: Record) -> list[Address]:
    """Return the addresses that words may mean, one where a field is named, else those usually meant.

    What is not named (the finger, the tendon) is taken from the record where it holds only one. Raises PracticeFault
    saying what is missing or not understood.
    """
    heard = _heard(words)
    if heard.group is None and not heard.fields:
        raise PracticeFault(f"'{words}' names no fact. Say for instance: ring FDP strands.")
    if heard.group is None:
        return [_without_part(heard, record, words)]
    entry = Address(heard.group, _digit(heard, record, words), heard.part, heard.side)
    if not heard.fields:
        return [entry.field_of(name) for name in MEANT[heard.group]]
    named = [name for group, name in heard.fields if group == heard.group]
    if not named:
        known = ", ".join(field_specs()[heard.group])
        raise PracticeFault(f"'{words}': {entry.entry_words()} has no such field. It has: {known}.")
    return [entry.field_of(named[0])]


def entry_of(words: str, record: Record) -> Address:
    """Return the tendon, pulley, structure or group that words name. Raises PracticeFault."""
    plain = words.strip().casefold()
    if plain in ("operation", "aftercare"):
        return Address(plain)
    return places_of(words, record)[0].entry()


def _heard(words: str) -> _Heard:
    tokens = words.replace(",", " ").replace(":", " ").split()
    if len(tokens) > _MOST_TOKENS:
        raise PracticeFault(f"'{' '.join(tokens[:6])} ...' is too long to name one fact.")
    furthest = 0

    def parsed(at: int) -> list[list[tuple[str, str]]] | None:
        """Return the meanings of the tokens from here on, the longest phrases first, or None where one has none."""
        nonlocal furthest
        furthest = max(furthest, at)
        if at == len(tokens):
            return []
        for size in range(min(_LONGEST, len(tokens) - at), 0, -1):
            phrase = " ".join(tokens[at : at + size])
            meanings = _meanings().get(phrase) or _meanings().get(phrase.casefold())
            if meanings and (rest := parsed(at + size)) is not None:
                return [meanings, *rest]
        return parsed(at + 1) if tokens[at].casefold() in _EMPTY else None

    found = parsed(0)
    if found is None:
        raise _not_understood(tokens[furthest])
    heard = _Heard()
    for meanings in found:
        _take(heard, meanings)
    return heard


def _take(heard: _Heard, meanings: list[tuple[str, str]]) -> None:
    kind, value = meanings[0]
    if kind == "sided":
        side, _, part = value.partition(" ")
        heard.side, heard.part, heard.group = side, part, "injuries"
    elif kind in ("digit", "digit?"):
        heard.digit = value
    elif kind in ("slip", "border"):
        heard.side = value
    elif kind == "field":
        heard.fields = [(group, name) for _, text in meanings for group, name in [_split(text)]]
    else:
        heard.part, heard.group = value, _GROUP_OF[kind.rstrip("?")]


def _split(text: str) -> tuple[str, str]:
    group, _, name = text.partition(".")
    return group, name


def _not_understood(token: str) -> PracticeFault:
    single = [phrase for phrase in _meanings() if " " not in phrase]
    near = difflib.get_close_matches(token.casefold(), single, n=1, cutoff=0.7)
    return PracticeFault(f"'{token}' is not understood.{f' Did you mean {near[0]}?' if near else ''}")


def _digit(heard: _Heard, record: Record, words: str) -> str | None:
    """Return the digit of a part, from the words or, where the record knows only one, from there."""
    if heard.digit or heard.part in _WRIST or heard.part == "flexor retinaculum":
        return heard.digit
    if heard.part == "FPL":
        return "thumb"
    if heard.group == "injuries" and heard.part not in _OF_A_DIGIT:
        return None
    digits = {place.digit for place, _ in record.entries() if place.digit}
    if len(digits) == 1:
        return digits.pop()
    raise PracticeFault(f"'{words}': which finger? Say for instance: ring {heard.part}.")


def _without_part(heard: _Heard, record: Record, words: str) -> Address:
    """Return the fact where only a field is named, perhaps with a digit."""
    single = [(group, name) for group, name in heard.fields if group in ("operation", "aftercare", "elements")]
    if single and heard.digit is None:
        return Address(single[0][0], field=single[0][1])
    groups = dict(heard.fields)
    entries = [
        place
        for place, _ in record.entries()
        if place.group in groups and place.part is not None and heard.digit in (None, place.digit)
    ]
    chosen = [entry for entry in entries if not _unharmed(record, entry)] if len(entries) > 1 else entries
    if len(chosen) == 1:
        return chosen[0].field_of(groups[chosen[0].group])
    found = " or ".join(entry.entry_words() for entry in entries[:3])
    raise PracticeFault(f"'{words}': whose? {f'Name it: {found}.' if found else 'Name the finger and the tendon.'}")


def _unharmed(record: Record, entry: Address) -> bool:
    """True for a tendon entered as intact and nothing else: a fact without a name is hardly its."""
    live = {name: fact.value for name, fact in (record.facts_of(entry) or {}).items() if fact.live}
    return live == {"extent": "intact"}


@cache
def _meanings() -> dict[str, list[tuple[str, str]]]:
    """Return phrase -> what it can mean; anatomy before fields, the first wording of a phrase wins."""
    found: dict[str, list[tuple[str, str]]] = {}
    for kind in _ANATOMY:
        for term in terms():
            if term.kind == kind and term.value not in _NO_NAMES:
                for phrase in (*(w.casefold() for w in (term.value, *term.words)), *term.exact):
                    found.setdefault(phrase, [(kind, term.value)])
    for border in ("radial", "ulnar"):
        found[f"{border} side"] = [("border", border)]
    for phrase, name in _field_phrases():
        meant = found.setdefault(phrase, [])
        if not meant or meant[0][0] == "field":
            meant.append(("field", name))
    return found


def _field_phrases() -> Iterator[tuple[str, str]]:
    for group, specs in field_specs().items():
        for name, spec in specs.items():
            full = f"{group}.{name}"
            phrases = (name.replace("_", " "), name, spec.label.casefold(), *tables().called.get(full, ()))
            yield from ((phrase, full) for phrase in dict.fromkeys(phrases))
