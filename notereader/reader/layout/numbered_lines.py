"""Rows of a grid named 'line 1', 'Tendon 2' that say whose they are, and a second grid below that only says 'line 1'.

'line 1   R   thumb   FPL   ...' above 'line 1   Kessler   4   3-0': the row below is of the thumb's FPL.
"""

from notereader.reader.page import Break, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_NOUNS = word_list("row_references", "nouns")
_STATES = frozenset(["zone", "extent", "hurt", "deed", "opened", "stitch", "material"])
_STOPS = frozenset([",", "(", ";"])
_LABEL = 2  # words

Span = tuple[int, int]


def lend_names(page: Page) -> None:
    """Give the cells of rows that bear no more than a number the names that the row of that number has above."""
    named: dict[tuple[str, ...], Span] = {}
    for sentence in page.sentences:
        if _opens_row(page, sentence):
            named.setdefault(tuple(page.words[sentence.i : sentence.i + _LABEL]), _names(page, sentence))
    if not any(i < j for i, j in named.values()):
        return
    for sentence in page.sentences:
        if sentence.prefix and not any(_names_tendon(page, *label) for label in sentence.prefix):
            sentence.prefix = [_lent(page, label, named) for label in sentence.prefix]


def _opens_row(page: Page, sentence: Sentence) -> bool:
    words = page.words[sentence.i : sentence.i + _LABEL]
    return (
        len(words) == _LABEL and words[0] in _NOUNS and words[1].isdecimal() and page.breaks[sentence.i] >= Break.LINE
    )


def _names(page: Page, sentence: Sentence) -> Span:
    """Return the words behind a row's number that name its tendon, none where it names none or more than one."""
    first = sentence.i + _LABEL
    first += page.words[first : first + 1] == [":"]
    end = next((k for k in range(first, sentence.j) if page.words[k] in _STOPS), sentence.j)
    end = min([end, *(m.i for m in within(page.mentions, first, end) if m.kind in _STATES)])
    tendons = [m for m in within(page.mentions, first, end) if m.kind == "tendon"]
    return (first, end) if len(tendons) == 1 else (first, first)


def _names_tendon(page: Page, i: int, j: int) -> bool:
    return any(m.kind in ("tendon", "digit") for m in within(page.mentions, i, j))


def _lent(page: Page, label: Span, named: dict[tuple[str, ...], Span]) -> Span:
    """Return the names above for a label that is no more than 'line 1', else the label as it is."""
    i, j = label
    lent = named.get(tuple(page.words[i:j])) if j - i == _LABEL else None
    return lent if lent is not None and lent[0] < lent[1] and lent[1] <= i else label
