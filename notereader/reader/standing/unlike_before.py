"""A repair held against an earlier one: 'Unlike the first repair, which had two strands, today's re-repair has six'."""

from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import phrases_by_first_word

_TODAY = phrases_by_first_word("unlike_before", "today")
_TURNS = frozenset([",", ";"])
_OF_SUTURES = frozenset(["strandword", "stitch", "material"])


def turns_to_today(page: Page, sentence: Sentence, last: int) -> int | None:
    """Return the word at which a sentence comes to today's repair behind word `last`; None for another."""
    words = page.words
    for k in range(last, sentence.j - 1):
        if words[k] in _TURNS and any(words[k + 1 : k + 1 + len(p)] == p for p in _TODAY.get(words[k + 1], ())):
            sewn = any(m.kind in _OF_SUTURES for m in within(page.mentions, k + 1, sentence.j))
            return k if sewn else None
    return None
