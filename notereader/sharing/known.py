"""Words that are no names: the trade's own, ordinary ones that the resource files use, eponyms and trade names."""

import re
from collections.abc import Iterator
from functools import cache
from typing import Any

from rapidfuzz.fuzz import ratio

from notereader.sharing.tables import tables
from notereader.vocabulary import resource_file

# Not the files whose texts name authors of papers.
_FILES = (
    "anatomy.toml",
    "care.toml",
    "cues.toml",
    "fields.toml",
    "findings.toml",
    "headings.toml",
    "materials.toml",
    "needs.toml",
    "owed.toml",
    "questions.toml",
    "reading.toml",
    "spelling.toml",
    "stitches.toml",
)
# Two words this much alike, of 100, are one and its misspelling.
_ALIKE = 80
_WORD = re.compile(r"[^\W\d_]+")


@cache
def known_words() -> frozenset[str]:
    """Return every word, in small letters, that stands for itself and for no person or place."""
    texts = (text for file in _FILES for text in _texts(resource_file(file)))
    words = {word for text in texts for word in _WORD.findall(text.lower())}
    never, names, places = tables().never, tables().names, tables().places
    labels = [
        *names.labels,
        *places.labels,
        *(label for kind in tables().kind for label in (*kind.labels, *kind.numbered)),
    ]
    words |= {word for label in labels for word in _WORD.findall(label)}
    return frozenset(words.union(never.eponyms, never.towns, never.trade, never.capitals, names.roles))


@cache
def eponyms() -> frozenset[str]:
    """Return the known words that are people's names too: after a title they are a person's."""
    stitches = _texts(resource_file("stitches.toml"))
    return frozenset(tables().never.eponyms) | {word for text in stitches for word in _WORD.findall(text.lower())}


def is_known(word: str) -> bool:
    """True where every part of a word, parted by hyphens and apostrophes, is known: 'Kessler-Tajima', 'Bruner's'."""
    low = word.lower()
    if low in known_words():
        return True
    parts = [part for part in _WORD.findall(low) if part != "s"]
    return bool(parts) and all(_is_known_part(part) for part in parts)


@cache
def is_nearly_known(word: str) -> bool:
    """True for an eponym or trade name that was misspelt or broken off: 'Kesler', 'Kess'. Slower than is_known()."""
    low = word.lower()
    return any(
        (len(low) >= 4 and (name.startswith(low) or low.startswith(name))) or ratio(low, name) >= _ALIKE
        for name in _proper()
    )


@cache
def _proper() -> tuple[str, ...]:
    """Return the eponyms and trade names that are long enough to be known again."""
    materials = {word for text in _texts(resource_file("materials.toml")) for word in _WORD.findall(text.lower())}
    return tuple(sorted(word for word in {*eponyms(), *tables().never.trade, *materials} if len(word) >= 5))


def _is_known_part(part: str) -> bool:
    known = known_words()
    return part in known or (part.endswith("s") and part[:-1] in known)


def _texts(value: Any) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, list):
        for inner in value:
            yield from _texts(inner)
    elif isinstance(value, dict):
        for key, inner in value.items():
            if key != "source":
                yield key
                yield from _texts(inner)
