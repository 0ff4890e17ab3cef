"""What is still to be checked: 'six strands (to be confirmed)', 'please check that A2 is intact', 'TBC: no gap'.

Good states and sutures are set aside; that a tendon was repaired at all stays told.
"""

from collections.abc import Mapping

from notereader.reader.page import Break, Page, Sentence, within
from notereader.reader.standing.good_states import is_good
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_PENDING = phrases_by_first_word("unchecked", "pending")
_ORDERS = phrases_by_first_word("unchecked", "orders")
_LEADS = word_list("unchecked", "leads")
_CLAUSES = frozenset([",", ";", ".", "(", ")", ":", "but"])
_OPENERS = _PENDING.keys() | _ORDERS.keys()


def mark_unchecked(page: Page, sentence: Sentence) -> None:
    """Set aside what a sentence says is still to be confirmed."""
    if _OPENERS.isdisjoint(sentence.said):
        return
    for k in range(sentence.i, sentence.j):
        phrase = _phrase_at(page, _PENDING, k) or (_is_order(page, sentence, k) and _phrase_at(page, _ORDERS, k))
        if phrase:
            _set_aside(page, *_reach(page, sentence, k, k + len(phrase)))


def _phrase_at(page: Page, phrases: Mapping[str, list[list[str]]], k: int) -> list[str]:
    return next((p for p in phrases.get(page.words[k], ()) if page.words[k : k + len(p)] == p), [])


def _is_order(page: Page, sentence: Sentence, k: int) -> bool:
    """'Please check that ...', 'need to confirm that ...'; 'I could confirm that A2 was intact' tells a finding."""
    before = k - 2 if page.words[k - 1] == "to" else k - 1
    return k == sentence.i or page.words[before] in _LEADS or _bounds(page, k - 1)


def _reach(page: Page, sentence: Sentence, i: int, j: int) -> tuple[int, int]:
    """Return the clause of words i to j, with the one before it that they close: 'no gap (to be confirmed)'."""
    begin = _start(page, sentence, i)
    if begin == i > sentence.i:
        begin = _start(page, sentence, i - 1)
    if begin > sentence.i and page.words[begin - 1] == ":":
        begin = _start(page, sentence, begin - 1)
    end = next((n for n in range(j, sentence.j) if _bounds(page, n)), sentence.j)
    return begin, sentence.j if i == sentence.i else end


def _start(page: Page, sentence: Sentence, k: int) -> int:
    return next((n + 1 for n in range(k - 1, sentence.i - 1, -1) if _bounds(page, n)), sentence.i)


def _bounds(page: Page, n: int) -> bool:
    spaced = page.words[n] == "-" and page.breaks[n] != Break.NONE  # not of 'six-strand'
    return page.words[n] in _CLAUSES or spaced


def _set_aside(page: Page, i: int, j: int) -> None:
    inside = within(page.mentions, i, j)
    deeds = {m.i for m in inside if m.kind == "deed" and m.value == "repaired"}
    if not deeds and any(m.kind == "strands" for m in inside):
        page.mark(i, j, "unfilled")  # 'Strands: six (to be confirmed)'
    for m in inside:
        if is_good(m) and m.i not in deeds and m.i < m.j:
            page.mark(m.i, m.j, "unfilled")
    for k in range(i, j):
        if page.words[k].endswith("-0"):
            page.mark(k, k + 1, "unfilled")
