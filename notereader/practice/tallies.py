"""Trials and successes for each kind of fact in one marking."""

from collections import Counter
from collections.abc import Iterable

from notereader.practice.marks import ContradictionMark, EntryMark, FactMark, KindTally
from notereader.practice.words import CONTRADICTIONS, SILENCE, WHOSE, WORDS, tables

_VALUE_RIGHT = ("right", "wrong words")
_SILENCES = ("silence seen", "silence unsaid")


def tallies(
    facts: Iterable[FactMark], entries: Iterable[EntryMark], hits: Iterable[ContradictionMark]
) -> list[KindTally]:
    """Return one tally for each kind that was tried, in the order of practice.toml.

    A right value counts for its kind whatever words were marked; the words are a kind of their own. A fact read into
    the note counts against its kind and against silence.
    """
    trials: Counter[str] = Counter()
    right: Counter[str] = Counter()
    over: Counter[str] = Counter()

    def tried(kind: str, success: bool) -> None:
        trials[kind] += 1
        right[kind] += success

    for mark in facts:
        over[mark.kind] += mark.over
        if mark.outcome in _SILENCES or mark.outcome == "read in":
            tried(SILENCE, mark.outcome == "silence seen")
        if mark.outcome not in _SILENCES:
            tried(mark.kind, mark.outcome in _VALUE_RIGHT)
        if mark.outcome in _VALUE_RIGHT and (mark.proof or mark.outcome == "wrong words"):
            tried(WORDS, mark.outcome == "right")
    for entry in entries:
        tried(WHOSE, entry.right)
    for hit in hits:
        if hit.outcome != "unusual":
            tried(CONTRADICTIONS, hit.outcome == "named")
    return [
        KindTally(key=k.key, label=k.label, trials=trials[k.key], right=right[k.key], over=over[k.key])
        for k in tables().kind
        if trials[k.key]
    ]
