"""Braces of a template that leave a statement open: 'Repairs {did/did not} glide freely', 'it glides {well|poorly}'.

Where a word and its denial are offered, or nothing but manners and degrees, the statement around them was neither made
nor denied.
"""

import re
from bisect import bisect_right
from operator import attrgetter

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import word_list

_CHOICE = re.compile(r"\{([^{}\n]{1,60})\}|\[([^\[\]\n]{1,60})\]|<([^<>\n]{1,60})>")
_BAR = re.compile(r" ?[/|] ?")
_DENIALS = frozenset(["not", "no", "never", "without", "none", "nil"])
_SMALL = frozenset(["a", "an", "any"])
_ENDS = frozenset([".", ";"])
_FEWEST = 2  # options
_JUST_BEHIND = 4  # characters
_MANNERS = word_list("standing", "manners")

_first_word = attrgetter("i")


def mark_open_denials(page: Page) -> None:
    """Set aside the statement around each choice of a note that offers it and its denial, or only how it was."""
    if not any(sign in page.text for sign in "{[<"):
        return
    for m in _CHOICE.finditer(page.text):
        k = page.words_in(*m.span())[0]
        if not _is_open(next(filter(None, m.groups()))) or _is_answered(page, m.end()):
            continue
        n = bisect_right(page.sentences, max(k - 1, 0), key=_first_word) - 1
        if n >= 0:
            _mark_around(page, page.sentences[n], k)


def _is_answered(page: Page, end: int) -> bool:
    """'[was / was not] -> was', '{placed / not placed}: placed': a sign leads from a choice to what was chosen."""
    return page.text[end : end + _JUST_BEHIND].lstrip(" -=")[:1] in (">", "\u2192", ":")


def _mark_around(page: Page, sentence: Sentence, k: int) -> None:
    """Set aside the statement in which a choice stands before word k."""
    first = next((n + 1 for n in range(k - 1, sentence.i - 1, -1) if page.words[n] in _ENDS), sentence.i)
    last = next((n for n in range(k, sentence.j) if page.words[n] in _ENDS), sentence.j)
    page.mark(first, last, "unticked")


def _is_open(offered: str) -> bool:
    """Tell whether one option is another with a denial, 'placed/not placed', or all tell only how: 'well|poorly'."""
    options = [option.casefold().replace("\u2019", "'").split() for option in _BAR.split(offered)]
    if len(options) < _FEWEST or not all(options):
        return False
    if all(_tells_how(option) for option in options):
        return True
    bare = [_bare(option) for option in options]
    denied = [_is_denied(option) for option in options]
    return any(bare[n] == words for n, no in enumerate(denied) if no for k, words in enumerate(bare) if not denied[k])


def _tells_how(option: list[str]) -> bool:
    return option[0] in _MANNERS or (option[0].endswith("ly") and len(option) == 1)


def _is_denied(option: list[str]) -> bool:
    return any(word in _DENIALS or word.endswith("n't") for word in option)


def _bare(option: list[str]) -> list[str]:
    """Return the words of an option without its denial and its article: 'wasn't', 'was not' and 'was' are one."""
    return [word.removesuffix("n't") for word in option if word not in _SMALL and word not in _DENIALS]
