"""What something seemed to be until it was looked at: 'at first sight divided', 'was thought complete'.

A cut, an end or a pulley told so is set aside; what the closer look showed is told behind it.
"""

from itertools import pairwise

from notereader.reader.page import Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_SEEMING = word_list("first_looks", "seeming")
_THOUGHT = word_list("first_looks", "thought")
_AT_FIRST = [words.split() for words in word_list("first_looks", "at_first")]
_AT_SIGHT = [words.split() for words in word_list("first_looks", "at_sight")]
_CLOSER = [words.split() for words in word_list("first_looks", "closer")]
# The word of each phrase that few other sentences hold: 'sight', 'look', 'taken'.
_WORDS = _SEEMING | _THOUGHT | {words[-2] if words[-1] == "for" else words[-1] for words in _AT_SIGHT}
_KINDS = frozenset(["extent", "ends", "opened"])
_STOPS = frozenset([",", ";", ".", "but"])
_LEAD = 4  # words of a sentence in which it says how it was looked at


def mark_first_looks(page: Page, sentence: Sentence, after: Sentence | None) -> None:
    """Set aside what a sentence tells of a first look only; `after`: the sentence behind it."""
    if _WORDS.isdisjoint(sentence.said):
        return
    told = [m for m in within(page.mentions, sentence.i, sentence.j) if m.kind in _KINDS and m.i < m.j]
    for m in told:
        begin, end = _clause(page, sentence, m)
        words = page.words[begin:end]
        seemed = any(a in _SEEMING and b not in _LOOKED_AT for a, b in pairwise([*words, ""]))
        thought = any(a in _BE and b in _THOUGHT for a, b in pairwise(words))
        first = seemed and (_has(words, _AT_FIRST) or _seen_closer(page, m, after))
        if first or thought or _has(words, _AT_SIGHT):
            page.mark(m.i, m.j, "considered")


_LOOKED_AT = frozenset(["at", "for", "into", "after", "over"])  # 'looked at and found intact'
_BE = frozenset(["was", "were", "been", "first"])


def _clause(page: Page, sentence: Sentence, m: Mention) -> tuple[int, int]:
    begin = next((k + 1 for k in range(m.i - 1, sentence.i - 1, -1) if page.words[k] in _STOPS), sentence.i)
    return begin, next((k for k in range(m.j, sentence.j) if page.words[k] in _STOPS), sentence.j)


def _has(words: list[str], phrases: list[list[str]]) -> bool:
    return any(words[k : k + len(p)] == p for p in phrases for k in range(len(words)))


def _seen_closer(page: Page, m: Mention, after: Sentence | None) -> bool:
    """Tell whether the next sentence opens on a closer look and tells of the same kind: 'Once washed, clean.'"""
    if after is None:
        return False
    lead = page.words[after.i : min(after.i + _LEAD, after.j)]
    return _has(lead, _CLOSER) and any(o.kind == m.kind for o in within(page.mentions, after.i, after.j))
