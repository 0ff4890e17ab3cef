"""What somebody who was there remembers: 'the scrub nurse recalls an edge stitch; I have no memory of one'.

It is no finding of the writer's, up to where the sentence turns to the writer ('; I saw none'), unless the writer joins
in: '... and so do I'.
"""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_PRESENT = word_list("recollections", "present")
_RECALLING = word_list("recollections", "recalling")
_SURE = word_list("recollections", "sure")
_JOINING_IN = phrases_by_first_word("recollections", "joining_in")
_STOPS = frozenset([";", ".", "but", "however", "though", "although", "yet", "whereas", "while"])
_IS = frozenset(["is", "was", "felt", "feels", "seems"])
_SOON = 3  # words from somebody to the verb: 'the nurse who counted swears'


def mark_recollections(page: Page, sentence: Sentence) -> None:
    """Set aside what a sentence says that somebody of the team remembers, unless its writer says so too."""
    if _PRESENT.isdisjoint(sentence.said) or (_RECALLING | _SURE).isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i, sentence.j - 1):
        verb = next((n for n in range(k + 1, min(k + 1 + _SOON, sentence.j)) if _recalls(words, n)), -1)
        if words[k] in _PRESENT and verb > 0 and not _joins_in(page, sentence, verb):
            page.mark(verb, next((n for n in range(verb, sentence.j) if words[n] in _STOPS), sentence.j), "story")
            return


def _recalls(words: list[str], n: int) -> bool:
    return words[n] in _RECALLING or (words[n] in _SURE and words[n - 1] in _IS)


def _joins_in(page: Page, sentence: Sentence, verb: int) -> bool:
    behind = range(verb + 1, sentence.j)
    return any(page.words[k : k + len(p)] == p for k in behind for p in _JOINING_IN.get(page.words[k], ()))
