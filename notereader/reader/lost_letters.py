"""Letters that a scanner lost inside a word and left a blank for: 'circumf rential', 'gapp ng', 'c ntinuous'."""

import re
from functools import cache

from notereader.vocabulary.wordlists import word_list

_SHORTEST_PIECE = 4  # letters of the longer of the two pieces


def with_lost_letters(text: str) -> str:
    """Return the note with such blanks filled; same length, so positions hold."""
    pattern, whole = _broken_words()
    return pattern.sub(lambda m: _filled(m.group(), whole[m.group().lower()]), text)


def _filled(broken: str, word: str) -> str:
    k = broken.index(" ")
    return broken[:k] + word[k] + broken[k + 1 :]


@cache
def _broken_words() -> tuple[re.Pattern[str], dict[str, str]]:
    """Return a pattern of every broken form of the words of the list, and the whole word of each."""
    whole = {
        word[:k] + " " + word[k + 1 :]: word
        for word in word_list("scanned", "with_lost_letters")
        for k in range(1, len(word) - 1)
        if max(k, len(word) - k - 1) >= _SHORTEST_PIECE
    }
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, sorted(whole)))})\b", re.IGNORECASE), whole
