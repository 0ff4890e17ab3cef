"""Plain lists of words that steps of the reader need: one line of words a list, in resources/reading.toml."""

from functools import cache

from notereader.vocabulary.places import resource_file


@cache
def word_list(table: str, name: str) -> frozenset[str]:
    """Return the words of one list. Raises KeyError where reading.toml has no such table or list."""
    return frozenset(resource_file("reading.toml")[table][name].split())
