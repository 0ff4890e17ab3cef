"""A first try of the same operation that did not last: 'First effort: six strands, no gap. It tore out. Second: two'.

What the first try came to is told of a repair that is no more.
"""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import word_list

_FIRST = word_list("first_efforts", "first")
_EFFORT = word_list("first_efforts", "effort")
_FAILED = frozenset(tuple(words.split()) for words in word_list("first_efforts", "failed"))
_AGAIN = word_list("first_efforts", "again")
_AT_FIRST = [words.split() for words in word_list("first_efforts", "at_first")]
_DENIED = frozenset(["not", "never", "nothing", "no", "none"])
_LEAD = 4  # words: 'At the first attempt', 'Attempt one:'
_SOON = 3  # sentences to the end of the first try, and to the next one


def mark_first_efforts(page: Page) -> None:
    """Set aside the sentences that open with a first try, where the next ones say that it failed and was done again."""
    for n, sentence in enumerate(page.sentences):
        if not _opens_with_first(page, sentence):
            continue
        behind = [s for s in page.sentences[n + 1 : n + 1 + _SOON] if s.block == sentence.block]
        failed = next((m for m, s in enumerate(behind) if _fails(page, s)), None)
        if failed is not None and any(not _AGAIN.isdisjoint(s.said) for s in behind[failed:]):
            page.mark(sentence.i, behind[failed - 1].j if failed else sentence.j, "history")


def _opens_with_first(page: Page, sentence: Sentence) -> bool:
    lead = page.words[sentence.i : min(sentence.i + _LEAD, sentence.j)]
    tried = not _FIRST.isdisjoint(lead) and not _EFFORT.isdisjoint(lead)
    return tried or any(lead[: len(words)] == words for words in _AT_FIRST)


def _fails(page: Page, sentence: Sentence) -> bool:
    words = page.words[sentence.i : sentence.j]
    spots = [k for k in range(len(words)) for f in _FAILED if tuple(words[k : k + len(f)]) == f]
    return bool(spots) and _DENIED.isdisjoint(words[: spots[0]])
