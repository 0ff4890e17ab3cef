"""Rows named by no more than their number, once a note names them so: 'For 6 I took two strands', '8 a cruciate'.

Such a figure is believed only behind a word that may lead to the name of a tendon or at the start of a statement, and
before one that no unit or thing counted could be.
"""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import word_list

_LEADS = word_list("bare_numbers", "leads")
_FOLLOWS = word_list("bare_numbers", "follows")
_ORDERS = frozenset(["instructions", "splint", "closure", "dressing", "tourniquet", "antibiotics", "blood_loss"])
_STOPS = frozenset([";", ".", ":"])
_BY_NUMBER = (["by", "number"], ["by", "numbers"], ["by", "their"])
_SEVERAL = 2


def says_by_number(words: list[str]) -> bool:
    """'REPAIRS (by number)', 'numbered as above': the note says that figures below stand for what it has numbered."""
    if "numbered" in words:
        return "above" in words
    return any(words[k : k + 2] in _BY_NUMBER for k in range(len(words)) if words[k] == "by")


def opens_bare_number(page: Page, sentence: Sentence, k: int) -> bool:
    """Tell whether the figure at word k may name a row: it opens a statement, or 'of', 'for' lead to it."""
    if sentence.section in _ORDERS:
        return False
    return k == sentence.i or page.words[k - 1] in _STOPS or page.words[k - 1] in _LEADS


def closes_bare_numbers(page: Page, sentence: Sentence, k: int, count: int) -> bool:
    """Tell whether word k, behind some figures, shows that they name rows and count nothing."""
    after = page.words[k] if k < sentence.j else "."
    return after in _FOLLOWS or (count >= _SEVERAL and after in _STOPS)
