"""What was explained to a learner: 'it was explained to the medical student that an edge suture adds a third'.

It is true of repairs in general and of none of this hand, up to where the sentence turns to it ('; here it read 9 mm').
"""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import word_list

_EXPLAINING = word_list("lessons", "explaining")
_LEARNERS = word_list("lessons", "learners")
_LEADS = frozenset(["that", "how", "why"])
_TURNS = word_list("published", "turns") - {"i", "we"}
_PAST = word_list("awaited", "past")
_REACH = 9  # words from the verb to its 'that': 'explained once more to the young medical student that'


def mark_lessons(page: Page, sentence: Sentence) -> None:
    """Set aside what a sentence says that somebody was told, shown or reminded for the sake of learning."""
    if _EXPLAINING.isdisjoint(sentence.said) or _LEARNERS.isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i, sentence.j):
        if words[k] not in _EXPLAINING:
            continue
        near = range(k + 1, min(k + 1 + _REACH, sentence.j))
        that = next((n for n in near if words[n] in _LEADS), -1)
        if that < 0 or _LEARNERS.isdisjoint(words[max(sentence.i, k - _BEFORE) : that]):
            continue
        end = next((n for n in range(that, sentence.j) if words[n] in _TURNS), sentence.j)
        if _PAST.isdisjoint(words[that:end]):
            page.mark(that, end, "teaching")  # but 'I showed the registrar that it ran freely'
            return


_BEFORE = 5  # words: 'the house officer was then told that'
