"""Numbers that answer a form's question for the finger: 'SIDE / RAY ..... left / IV', 'Digit: 4'."""

from notereader.reader.page import Break, Mention, Page
from notereader.vocabulary.wordlists import word_list

_ASKED = word_list("asked_rays", "asked")
_FINGER = word_list("asked_rays", "finger")
_ASIDE = word_list("asked_rays", "aside")
_FIGURES = {"2": "index", "3": "middle", "4": "ring", "5": "small"}
_NUMERALS = {"ii": "index", "iii": "middle", "iv": "ring", "v": "small"}
_LONGEST_LABEL = 7  # words: '3. Side and ray .....'
_LONGEST_ANSWER = 6  # words: 'left / III and IV'


def asked_rays(page: Page, taken: set[int]) -> list[Mention]:
    """Return the fingers whose numbers are all that a line answers to a label that asks for the finger."""
    words, found = page.words, []
    for first in (k for k, word in enumerate(words) if word in _FINGER):
        start = _label_start(page, first)
        begin = _answer(page, first) if start is not None else None
        if begin is None:
            continue
        end = next((k for k in range(begin + 1, len(words)) if page.breaks[k] >= Break.COLUMN), len(words))
        numbers = [k for k in range(begin, end) if _is_number(page, k)]
        rest = [words[k] for k in range(begin, end) if k not in numbers]
        if numbers and end - begin <= _LONGEST_ANSWER and _ASIDE.issuperset(rest) and taken.isdisjoint(numbers):
            found += [Mention("digit", (_FIGURES | _NUMERALS)[words[k]], k, k + 1) for k in numbers]
    return found


def _label_start(page: Page, k: int) -> int | None:
    """Return the first word of the line or cell in which word k asks for a finger, None where it tells more."""
    first = k
    while first > 0 and page.breaks[first] < Break.COLUMN:
        first -= 1
    lead = page.words[first:k]
    numbered = lead[:1] != [] and lead[0].isdecimal() and lead[1:2] in ([], ["."], [")"])
    return first if _ASKED.issuperset(lead[numbered + (numbered and len(lead) > 1) :]) else None


def _answer(page: Page, k: int) -> int | None:
    """Return the first word of the answer behind a label: after dots, a colon, an equals sign or a column of space."""
    words = page.words
    for at in range(k + 1, min(k + _LONGEST_LABEL, len(words))):
        if page.breaks[at] >= Break.LINE:
            return None
        leads = words[at] in (":", "=", "?", "|") or words[at].startswith("..")
        if leads and at + 1 < len(words) and page.breaks[at + 1] < Break.LINE:
            return at + 1
        if page.breaks[at] == Break.COLUMN:
            return at
        if words[at] not in _ASKED:
            return None
    return None


def _is_number(page: Page, k: int) -> bool:
    word = page.words[k]
    return word in _FIGURES or (word in _NUMERALS and page.raw(k, k + 1).isupper())
