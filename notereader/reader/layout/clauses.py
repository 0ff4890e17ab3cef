"""Where the clause around a word begins and ends."""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import word_list

CLAUSE_MARKS = frozenset([",", ";", ".", "(", ")", ":", "but"])
# What a cue does not reach across.
BOUNDS = word_list("standing", "bounds")
# What shows that words make a clause of their own.
AUXILIARIES = frozenset(["was", "were", "had", "been", "has", "have", "is", "are", "we", "i", "then", "and", ","])


def clause_end(page: Page, sentence: Sentence, k: int) -> int:
    """Return the word that ends the clause of word k."""
    return next((n for n in range(k, sentence.j) if page.words[n] in CLAUSE_MARKS), sentence.j)


def clause_start(page: Page, sentence: Sentence, k: int) -> int:
    """Return the first word of the clause that leads up to word k."""
    return next((n + 1 for n in range(k - 1, sentence.i - 1, -1) if page.words[n] in CLAUSE_MARKS), sentence.i)
