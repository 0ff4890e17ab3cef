"""Letters that a scanner lost inside a word and left a blank for: 'circumf rential', 'gapp ng', 'c ntinuous'."""

import re
from functools import cache

from notereader.vocabulary.wordlists import word_list

_WORD = re.compile(r"\w+")
_SHORTEST_PIECE = 4  # letters of the longer of the two pieces


def with_lost_letters(text: str) -> str:
    """Return the note with such blanks filled; same length, so positions hold."""
    pattern, whole, pieces = _broken_words()
    said = set(_WORD.findall(text.lower()))
    if all(said.isdisjoint(pieces[first]) for first in said & pieces.keys()):
        return text
    return pattern.sub(lambda m: _filled(m.group(), whole[m.group().lower()]), text)


def _filled(broken: str, word: str) -> str:
    k = broken.index(" ")
    return broken[:k] + word[k] + broken[k + 1 :]


@cache
def _broken_words() -> tuple[re.Pattern[str], dict[str, str], dict[str, frozenset[str]]]:
    """Return a pattern of every broken form of the words of the list, the whole word of each, and its second pieces
    by their first: the pattern is dear, and few notes hold both pieces of a word.
    """
    whole = {
        word[:k] + " " + word[k + 1 :]: word
        for word in word_list("scanned", "with_lost_letters")
        for k in range(1, len(word) - 1)
        if max(k, len(word) - k - 1) >= _SHORTEST_PIECE
    }
    pieces: dict[str, set[str]] = {}
    for first, second in map(str.split, whole):
        pieces.setdefault(first, set()).add(second)
    pattern = re.compile(rf"\b(?:{'|'.join(map(re.escape, sorted(whole)))})\b", re.IGNORECASE)
    return pattern, whole, {first: frozenset(seconds) for first, seconds in pieces.items()}
