"""What a label says was not taken: 'Alternatives not used: six-strand Savage', 'Options rejected: a 3-0 FiberWire'."""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_HEADS = word_list("rejected_labels", "heads")
_REJECTED = phrases_by_first_word("rejected_labels", "rejected")
_LONGEST = 6  # words of such a label
_STOPS = frozenset([";", "."])


def mark_rejected_labels(page: Page, sentence: Sentence) -> None:
    """Set aside what stands behind a label that names alternatives and ends in words that turn them down."""
    words = page.words
    if ":" not in sentence.said or _HEADS.isdisjoint(words[sentence.i : sentence.i + _LONGEST]):
        return
    colon = next((k for k in range(sentence.i, min(sentence.i + _LONGEST, sentence.j)) if words[k] == ":"), -1)
    label = range(sentence.i + 1, max(colon, sentence.i + 1))
    if any(words[k:colon] == phrase for k in label for phrase in _REJECTED.get(words[k], ())):
        page.mark(colon, next((k for k in range(colon, sentence.j) if words[k] in _STOPS), sentence.j), "considered")
