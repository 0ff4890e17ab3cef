"""Faults of the files of terms: every table [kind.value] with the words notes use for it."""

from collections.abc import Iterator
from typing import Any

from notereader.vocabulary.checking_names import Names
from notereader.vocabulary.checking_words import phrase_faults, shared_faults
from notereader.vocabulary.faults import EntryFault, model_faults
from notereader.vocabulary.terms import Term

# Kinds whose values do not exclude each other, so that one word may stand under several: a cue can do two things, and
# words that only look like something are no finding under any heading.
_MAY_SHARE = frozenset(["cue", "neutral"])


def term_faults(files: dict[str, dict[str, Any]], names: Names) -> list[EntryFault]:
    """Return the faults of the parsed files of terms, by file name; kinds may go on from one file to the next."""
    faults: list[EntryFault] = []
    kinds: dict[str, dict[str, list[tuple[str, str]]]] = {}
    for file, raw in files.items():
        for kind, entries in raw.items():
            if not isinstance(entries, dict) or not all(isinstance(entry, dict) for entry in entries.values()):
                mend = "begin each entry with a line such as [kind.value] and its words below"
                faults.append(EntryFault(file, kind, "it is no table [kind.value]", mend))
                continue
            if wrong := names.kind_fault(kind):
                faults.append(EntryFault(file, f"[{kind}.*]", *wrong))
            for value, entry in entries.items():
                faults += _entry_faults(file, kind, value, entry, names)
                words = [word for key in ("words", "exact") for word in _texts(entry.get(key))]
                kinds.setdefault(kind, {}).setdefault(value, []).extend((file, word) for word in words)
    for kind, values in kinds.items():
        if kind not in _MAY_SHARE:
            faults += _shared(kind, values)
    return faults


def _entry_faults(file: str, kind: str, value: str, entry: dict[str, Any], names: Names) -> Iterator[EntryFault]:
    place = f"[{kind}.{value}]"
    yield from model_faults(file, place, Term, {**entry, "kind": kind, "value": value})
    if wrong := names.value_fault(kind, value):
        yield EntryFault(file, place, *wrong)
    if not _texts(entry.get("words")) and not _texts(entry.get("exact")):
        yield EntryFault(file, place, "it has no words", "list the words by which notes say it, or take the entry out")
    for wrong in phrase_faults(_texts(entry.get("words"))):
        yield EntryFault(file, f"{place} words", *wrong)
    for wrong in phrase_faults(_texts(entry.get("exact")), capitals=True):
        yield EntryFault(file, f"{place} exact", *wrong)
    for word in _texts(entry.get("exact")):
        if word == word.lower():
            yield EntryFault(file, f"{place} exact", f"'{word}' has no capitals", "move it to 'words'")


def _shared(kind: str, values: dict[str, list[tuple[str, str]]]) -> Iterator[EntryFault]:
    files = {word.lower(): file for entries in values.values() for file, word in entries}
    for word, owners in shared_faults({value: [w for _, w in entries] for value, entries in values.items()}).items():
        places = " and ".join(f"[{kind}.{value}]" for value in owners)
        wrong = f"'{word}' stands under both, and they exclude each other"
        yield EntryFault(files[word], places, wrong, "leave it where it is always true, or take it out of both")


def _texts(listed: object) -> list[str]:
    return [word for word in listed if isinstance(word, str)] if isinstance(listed, list) else []
