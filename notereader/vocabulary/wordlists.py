"""Plain lists of words that steps of the reader need, in resources/reading.toml.

A list is one string of words, or an array of strings where it holds phrases.
"""

from collections.abc import Mapping
from functools import cache
from typing import Any

from notereader.vocabulary.places import ResourceFault, resource_file

_FILE = "reading.toml"


@cache
def word_list(table: str, name: str) -> frozenset[str]:
    """Return the words of one list by its table and name. Raises ResourceFault where the file has no such list."""
    listed = _lists().get(table)
    words = listed.get(name) if isinstance(listed, dict) else None
    if isinstance(words, list) and all(isinstance(w, str) for w in words):
        return frozenset(words)
    if not isinstance(words, str):
        raise ResourceFault(
            f"{_FILE}: [{table}] {name}: there is no such list of words. To mend it: put the entry back as a string of "
            f"words, or install again."
        )
    return frozenset(words.split())


@cache
def _lists() -> Mapping[str, Any]:
    """Parse the file once: hundreds of lists are asked for while the program starts."""
    return resource_file(_FILE)


@cache
def phrases_by_first_word(table: str, name: str) -> Mapping[str, list[list[str]]]:
    """Return the phrases of one list, split into words, by their first word: most words begin none of them."""
    found: dict[str, list[list[str]]] = {}
    for phrase in sorted(word_list(table, name)):
        words = phrase.split()
        found.setdefault(words[0], []).append(words)
    return found
