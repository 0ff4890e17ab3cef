"""Sutures begun and given up: 'I began with a Savage, gave it up and ended with a pattern that has no name'."""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import word_list

_BEGINS = word_list("given_up", "begins")
_GIVES_UP = [tuple(words.split()) for words in word_list("given_up", "gives_up")]
_DENIED = frozenset(["not", "never", "without", "nearly", "almost", "would"])
_NEAR = 14  # words from the beginning to its giving up


def mark_given_up(page: Page, sentence: Sentence) -> None:
    """Set aside what was begun, up to the words that it was given up, in one sentence."""
    if _BEGINS.isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i, sentence.j):
        if words[k] not in _BEGINS:
            continue
        end = _given_up_by(page, k, sentence.j)
        if end:
            first = k - 1
            while first > sentence.i and words[first - 1] not in (",", ";", ":"):
                first -= 1
            page.mark(max(first, sentence.i), end, "considered")


def _given_up_by(page: Page, k: int, last: int) -> int:
    """Return the word behind those that say that what word k begins was given up, 0 where none do."""
    words = page.words
    for n in range(k + 1, min(k + _NEAR, last)):
        if words[n] == ";":
            return 0
        said = next((g for g in _GIVES_UP if tuple(words[n : n + len(g)]) == g), None)
        if said is not None:
            return 0 if not _DENIED.isdisjoint(words[max(k, n - 3) : n]) else n + len(said)
    return 0
