"""Other places of the note that state a fact as well: notes repeat themselves, a key mostly quotes once."""

from notereader.practice.promise import same_value
from notereader.practice.quotes import Span, spans_of
from notereader.practice.words import spec_of
from notereader.record import Address, Value

# A note that says a thing more often than this needs no more proofs.
_MOST = 6


def other_proofs(text: str, place: Address, value: Value, known: list[Span]) -> list[Span]:
    """Return further places that state the fact, found by reading the note with the known ones blanked out.

    The reader decides whether words elsewhere speak of this tendon, pulley or operation; words that merely look alike
    (the skin's suture size, an earlier operation) do not count.
    """
    # Imported here: it brings spaCy, and most markings never need it.
    from notereader.reader import read

    found: list[Span] = []
    for _ in range(_MOST):
        fact = read(_blanked(text, [*known, *found])).fact(place)
        if fact is None or not fact.live or fact.value is None or not same_value(spec_of(place), fact.value, value):
            break
        fresh = [span for span in spans_of(fact) if span not in found]
        if not fresh:
            break
        found += fresh
    return found


def _blanked(text: str, spans: list[Span]) -> str:
    letters = list(text)
    for start, end in spans:
        letters[start:end] = [c if c.isspace() else " " for c in letters[start:end]]
    return "".join(letters)
