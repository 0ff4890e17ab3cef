"""Good states that an instruction waits for: 'once it glides freely start the fist', 'a full fist where A4 is intact'.

The states are set aside alone, for what the instruction asks of the weeks to come is told.
"""

from notereader.reader.page import Page, Sentence
from notereader.reader.standing.good_states import mark_good_states
from notereader.vocabulary.wordlists import word_list

_OPENS = word_list("awaited", "opens")
_INSTRUCTS = word_list("awaited", "instructs")
_PAST = word_list("awaited", "past")
_CLAUSES = frozenset([",", ";", ".", ":", "(", ")", "but"])


def mark_awaited(page: Page, sentence: Sentence) -> None:
    """Set aside the good states of a clause that an instruction waits for, told as no past event."""
    if _OPENS.isdisjoint(sentence.said) or _INSTRUCTS.isdisjoint(sentence.said) or not _PAST.isdisjoint(sentence.said):
        return
    for k in range(sentence.i, sentence.j):
        if page.words[k] in _OPENS:
            end = next((n for n in range(k + 1, sentence.j) if page.words[n] in _CLAUSES), sentence.j)
            mark_good_states(page, k, end, "conditional")
