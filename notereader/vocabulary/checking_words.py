"""Faults of words: what no note can match, and what two meanings share."""

import re
import unicodedata
from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from notereader.vocabulary.faults import EntryFault

# What the reader takes for an unfilled place of a template and passes over.
_PASSED_OVER = re.compile(r"[{}]|\*{2,}|_{2,}|\[[^\]]*/[^\]]*\]")
# A single mark may be a word, as # for a fracture.
_MARKS = re.compile(r"[^\w\s]{1,2}")


def phrase_faults(words: Iterable[object], *, capitals: bool = False) -> Iterator[tuple[str, str]]:
    """Yield (what is wrong, the mend) for each word of a list that no note could match as it is written."""
    for word in words:
        if not isinstance(word, str):
            yield f"{word!r} is no text", "put it in quotation marks"
        elif wrong := _never_matched(word):
            yield f"'{word}' {wrong[0]}", wrong[1]
        elif not capitals and word != word.lower():
            yield (
                f"'{word}' has capitals, which count for nothing here",
                "write it small, or put it under 'exact' if only the capitals tell what it means",
            )


def _never_matched(word: str) -> tuple[str, str] | None:
    """Return why no note can hold a word as it is written, and the mend; None where one can."""
    if not word.strip():
        return "is empty", "take it out"
    if any(unicodedata.category(c) in ("Cc", "Cf", "Zl", "Zp") for c in word):
        return "holds a line break, a tab or a character that cannot be seen", "type it again"
    if word != " ".join(word.split()):
        return "has a space too many", "leave one space between words and none around them"
    if _PASSED_OVER.search(word):
        return "looks like an unfilled place of a template, which the reader passes over", "write the words alone"
    if not any(c.isalnum() for c in word) and not _MARKS.fullmatch(word):
        return "holds no letter and no figure", "write the word itself"
    return None


def shared_faults(words: Mapping[str, Iterable[object]]) -> dict[str, list[str]]:
    """Return the words that stand under several names, with the names."""
    owners: dict[str, list[str]] = {}
    for name, found in words.items():
        for word in {word.lower() for word in found if isinstance(word, str)}:
            owners.setdefault(word, []).append(name)
    return {word: names for word, names in sorted(owners.items()) if len(names) > 1}


def word_list_faults(file: str, raw: dict[str, Any]) -> Iterator[EntryFault]:
    """Yield the faults of a file of plain word lists: tables whose values are lists or lines of words."""
    for table, lists in raw.items():
        if not isinstance(lists, dict):
            yield EntryFault(file, table, "it stands outside any [table]", "move it below the table it belongs to")
            continue
        for name, listed in lists.items():
            place = f"[{table}] {name}"
            words = listed.split() if isinstance(listed, str) else listed
            if not isinstance(words, list) or not words:
                yield EntryFault(file, place, "it holds no words", "list the words, or take the line out")
                continue
            # The lists of a line each may hold single marks, such as an opening bracket.
            for wrong, mend in phrase_faults(words, capitals=isinstance(listed, str)):
                yield EntryFault(file, place, wrong, mend)
