"""What a patient or a family was told: 'the parents were told by telephone that the FPL had been repaired'.

It is an account for laymen, given before or after, and the note may go on to say that it was otherwise.
"""

from notereader.reader.page import Page, Sentence, within
from notereader.reader.standing.good_states import OF_SUTURES, is_good
from notereader.vocabulary.wordlists import word_list

_LAYMEN = word_list("told_to_family", "laymen")
_TELLING = word_list("told_to_family", "telling")
_LEADS = frozenset(["that", "of"])
_ENDS = frozenset([";", ".", "but", "however", "although", "though"])
_NEAR = 4  # words: 'the parents had since been told'
_REACH = 7  # words up to 'that': 'told by telephone the same evening that'


def mark_told_to_family(page: Page, sentence: Sentence) -> None:
    """Set aside the good states and the sutures of which a sentence says only that laymen were told of them."""
    if _LAYMEN.isdisjoint(sentence.said) or _TELLING.isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i, sentence.j):
        if words[k] not in _TELLING or _LAYMEN.isdisjoint(words[max(sentence.i, k - _NEAR) : k + 3]):
            continue
        that = next((n for n in range(k + 1, min(k + _REACH, sentence.j)) if words[n] in _LEADS), -1)
        if that < 0:
            continue
        end = next((n for n in range(that, sentence.j) if words[n] in _ENDS), sentence.j)
        for m in within(page.mentions, that, end):
            if is_good(m) or m.kind in OF_SUTURES:
                page.mark(m.i, m.j, "story")
