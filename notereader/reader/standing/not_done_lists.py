"""What a list under 'NOT DONE' names: '- 6 strand (extra Kessler), no room', '- A2 repair'."""

from notereader.reader.page import Break, Page, Sentence, within
from notereader.reader.standing.good_states import GOOD
from notereader.vocabulary.wordlists import phrases_by_first_word

_HEADS = phrases_by_first_word("not_done_lists", "heads")
_BULLETS = frozenset(["-", "*", "\u2022", "+"])
_OF_CORE = frozenset(["strandword", "stitch"])


def mark_not_done_lists(page: Page) -> None:
    """Set aside the cores and the good states in the bullets below a line that says that none of it was done."""
    heads = False
    for sentence in page.sentences:
        if _is_head(page, sentence):
            heads = True
        elif heads and _at_bullet(page, sentence):
            for m in within(page.mentions, sentence.i, sentence.j):
                if m.i < m.j and (m.kind in _OF_CORE or m.value in GOOD.get(m.kind, ())):
                    page.mark(m.i, m.j, "considered")
        elif page.breaks[sentence.i] >= Break.LINE:
            heads = False


def _at_bullet(page: Page, sentence: Sentence) -> bool:
    return not _BULLETS.isdisjoint(page.words[max(0, sentence.i - 1) : sentence.i + 1])


def _is_head(page: Page, sentence: Sentence) -> bool:
    """Tell whether a sentence is a line of its own that says 'not done', with or without a colon."""
    words = page.words[sentence.i : sentence.j]
    words = words[: len(words) - (words[-1:] == [":"])]
    return words[:1] != [] and page.breaks[sentence.i] >= Break.LINE and words in _HEADS.get(words[0], ())
