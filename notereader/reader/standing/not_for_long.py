"""Good states that the next sentence ends: 'A2 was intact. It did not remain so', 'It was slim. Not for long'."""

from notereader.reader.page import Page, within
from notereader.reader.standing.good_states import GOOD_STATES
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_ENDINGS = phrases_by_first_word("not_for_long", "endings")
_OPENERS = word_list("not_for_long", "openers")
_STATES = frozenset(["opened", "extent", "gap", "glide", "tension", "bulk"])
_LEAD = 4  # words before the ending: 'this happy state'


def mark_not_for_long(page: Page) -> None:
    """Set aside the last good state before each sentence that opens with words which end it."""
    for before, sentence in zip(page.sentences, page.sentences[1:], strict=False):
        if before.block != sentence.block or _ENDINGS.keys().isdisjoint(sentence.said):
            continue
        opens = page.words[sentence.i] in _OPENERS and any(
            page.words[k : k + len(words)] == words
            for k in range(sentence.i, min(sentence.i + _LEAD, sentence.j))
            for words in _ENDINGS.get(page.words[k], ())
        )
        told = [m for m in within(page.mentions, before.i, before.j) if m.kind in _STATES] if opens else []
        last = max((m.j for m in told), default=-1)
        for m in told:
            if m.j == last and m.value in GOOD_STATES[m.kind]:
                page.mark(m.i, m.j, "history")
