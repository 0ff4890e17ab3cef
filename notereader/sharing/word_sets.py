"""Sets of words that several searches ask, from resources/identifiers.toml."""

import re
from collections.abc import Iterable
from functools import cache

from notereader.sharing.tables import tables

# Letters after a name that are ordinary words or other short forms too.
_UNCERTAIN = frozenset({"ma", "ms", "jr", "sr", "ii", "iii", "pa", "ot", "pt", "np", "do"})


@cache
def particles() -> frozenset[str]:
    """Return small words within names: 'van', 'de'."""
    return frozenset(tables().names.particles)


@cache
def titles() -> frozenset[str]:
    """Return titles before names."""
    return frozenset(tables().names.titles)


@cache
def credentials() -> frozenset[str]:
    """Return letters after names, without those that are words."""
    return frozenset(tables().names.credentials) - {"do", "ms", "pa", "ma"}


@cache
def certain_credentials() -> frozenset[str]:
    """Return letters that mean nothing else after a name."""
    return frozenset(tables().names.credentials) - _UNCERTAIN


@cache
def roles() -> frozenset[str]:
    """Return what stands after the label of a person without being anybody's name."""
    return frozenset(tables().names.roles)


@cache
def passed_over() -> frozenset[str]:
    """Return words between a label and a name, or between two names."""
    return titles() | credentials() | roles() | {"and", "with", "by", "the"}


@cache
def given_names() -> frozenset[str]:
    """Return given names that are no ordinary words."""
    return frozenset(tables().names.given)


@cache
def ordinary_names() -> frozenset[str]:
    """Return given names that are ordinary words too."""
    return frozenset(tables().names.ordinary)


@cache
def other_words() -> frozenset[str]:
    """Return words with a capital that other searches take, or that are larger than a place may be."""
    dates, places = tables().dates, tables().places
    months = [*dates.months, *(name[:3] for name in dates.months), "sept"]
    larger = [word for entry in places.larger for word in entry.split()]
    return frozenset([*months, *dates.weekdays, *larger]) | titles() | credentials()


@cache
def common_words() -> frozenset[str]:
    """Return words that may be part of a name and are ordinary too: they are not looked for again."""
    return other_words() | ordinary_names() | {*tables().names.businesses, "and", "the", "of", "for"}


def any_of(words: Iterable[str]) -> str:
    """Return a pattern for any of the words, the longest first, with one blank or more, or a stop, within."""
    ordered = sorted(words, key=len, reverse=True)
    return "|".join(r"\.?[ ]+".join(re.escape(part) for part in word.split()) for word in ordered)
