"""Plain lists of words that steps of the reader need: one string of words a list, in resources/reading.toml."""

from functools import cache

from notereader.vocabulary.places import ResourceFault, resource_file

_FILE = "reading.toml"


@cache
def word_list(table: str, name: str) -> frozenset[str]:
    """Return the words of one list by its table and name. Raises ResourceFault where the file has no such list."""
    listed = resource_file(_FILE).get(table)
    words = listed.get(name) if isinstance(listed, dict) else None
    if not isinstance(words, str):
        raise ResourceFault(
            f"{_FILE}: [{table}] {name}: there is no such list of words. To mend it: put the entry back as a string of "
            f"words, or install again."
        )
    return frozenset(words.split())
