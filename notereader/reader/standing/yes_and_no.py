"""'Epitendinous yes, no respectively': an answer for each of several, of which the first alone is not that of all."""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import word_list

_YES = word_list("unrecorded", "yes_in_turn")
_NO = word_list("unrecorded", "no_in_turn")
_JOINS = frozenset([",", "and", "/", "then"])
_STOPS = frozenset([";", ".", ":", "("])


def mark_yes_and_no(page: Page, sentence: Sentence) -> None:
    """Set aside a label with answers that differ in turn: whose is which, no rule asks."""
    if "respectively" not in sentence.said or _YES.isdisjoint(sentence.said) or _NO.isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i, sentence.j):
        if words[k] != "respectively":
            continue
        begin = k
        while begin > sentence.i and words[begin - 1] in _YES | _NO | _JOINS:
            begin -= 1
        if not _YES.isdisjoint(words[begin:k]) and not _NO.isdisjoint(words[begin:k]):
            named = begin - (words[begin - 1] == ":")
            first = next((n + 1 for n in range(named - 1, sentence.i - 1, -1) if words[n] in _STOPS), sentence.i)
            page.mark(first, k + 1, "unfilled")
