"""What was left undone when the injury was fresh: 'not repaired at the time', 'not treated in his moment'."""

from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_THEN = [tuple(phrase.split()) for phrase in word_list("neglected", "then")]
_FIRST_WORDS = frozenset(phrase[0] for phrase in _THEN)


def mark_neglected(page: Page, sentence: Sentence) -> None:
    """Set aside that a tendon was left, where the words right behind say that it was so at an earlier time."""
    if _FIRST_WORDS.isdisjoint(sentence.said):
        return
    for m in within(page.mentions, sentence.i, sentence.j):
        if m.kind == "deed" and m.value == "left":
            phrase = next((p for p in _THEN if tuple(page.words[m.j : m.j + len(p)]) == p), None)
            if phrase is not None:
                page.mark(m.i, m.j + len(phrase), "history")
