"""One of several, and it alone: 'of the two only the middle ran freely', 'of both profundi just that of the ring'.

What follows is said of the one, and nothing of the others: the words that count them stand for nobody.
"""

from itertools import pairwise

from notereader.reader.groups import Group
from notereader.reader.page import Page, Sentence

_COUNTS = frozenset(["the", "these", "those", "two", "three", "four", "2", "3", "4", "both", "all"])
_NOUNS = frozenset(
    [
        *("repairs", "fingers", "digits", "tendons", "flexors", "sutures", "repaired", "flexor", "tendon", "deep"),
        *("superficial", ","),
    ]
)
_ONLY = frozenset(["only", "just", "solely"])
_LEADS = frozenset(["the", "that", "one", "of", "in", "for", "on"])
_NOBODY = "here"  # stands for words that are to name nobody: no rule asks for it
_FAR = 7  # words from 'of' to 'only'


def settle_only_one_of(page: Page) -> None:
    """Put a word that names nobody for 'of the two' before 'only'."""
    for sentence in page.sentences:
        if _ONLY.isdisjoint(sentence.said) or _COUNTS.isdisjoint(sentence.said):
            continue
        for k in range(sentence.i, sentence.j - 2):
            if page.words[k] == "of" and page.words[k + 1] in _COUNTS:
                _neutral(page, sentence, k)


def _neutral(page: Page, sentence: Sentence, k: int) -> None:
    end = min(k + _FAR, sentence.j)
    only = next((n for n in range(k + 2, end) if page.words[n] in _ONLY), 0)
    named = {n for m in page.mentions if m.kind == "tendon" and k < m.i < only for n in range(m.i, m.j)}
    between = [n for n in range(k + 1, only) if n not in named]
    after = next((n for n in range(only + 1, sentence.j) if page.words[n] not in _LEADS), sentence.j)
    one = any(m.kind == "digit" and m.i == after for m in page.mentions)
    if only and one and all(page.words[n] in _COUNTS | _NOUNS for n in between):
        for n in (k, *between):
            page.words[n] = _NOBODY
        page.mentions = [m for m in page.mentions if m.kind != "quantifier" or not k < m.i < only]


def take_the_one(page: Page, groups: list[Group]) -> None:
    """'... profundi only the middle': give the finger the tendon that was named for all, and drop the rest."""
    for all_of, one in pairwise(groups):
        between = page.words[all_of.j : one.i]
        alone = not _ONLY.isdisjoint(between) and set(between) <= _ONLY | _LEADS
        counted = page.words[all_of.i - 1 : all_of.i] == [_NOBODY]
        if alone and counted and not all_of.digits and one.digits and not one.tendons:
            one.tendons = all_of.tendons
            one.pairs = tuple((digit, tendon, None) for digit in one.digits for tendon in all_of.tendons)
            groups.remove(all_of)
            return
