"""Sutures that were opened and never used: 'The 3-0 packet was opened and thrown out', 'a 4-0 needle was dropped'."""

from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_FATES = phrases_by_first_word("wasted_sutures", "fates")
_BETWEEN = word_list("wasted_sutures", "between")
_ARTICLES = frozenset(["a", "an", "the", "one", "another", "that", "this", "first"])
_OPENERS = frozenset([";", ".", ":", ",", "-", "but", "and"])


def mark_wasted(page: Page, sentence: Sentence) -> None:
    """Set aside a size and its thread that open a clause and are told right behind to have been thrown away."""
    if _FATES.keys().isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i, sentence.j):
        if not words[k].endswith("-0"):
            continue
        begin = k - (k > sentence.i and words[k - 1] in _ARTICLES)
        end = _thrown_away(page, k + 1, sentence.j) if begin == sentence.i or words[begin - 1] in _OPENERS else 0
        if end:
            page.mark(begin, end, "considered")


def _thrown_away(page: Page, k: int, last: int) -> int:
    """Return the word behind a fate that only small words and the name of the thread lead to, or 0."""
    thread = {n for m in within(page.mentions, k, last) if m.kind == "material" for n in range(m.i, m.j)}
    while k < last:
        fate = next((p for p in _FATES.get(page.words[k], ()) if page.words[k : k + len(p)] == p), None)
        if fate is not None:
            return k + len(fate)
        if k not in thread and page.words[k] not in _BETWEEN:
            return 0
        k += 1
    return 0
