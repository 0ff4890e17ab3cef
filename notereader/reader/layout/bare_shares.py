"""Bare figures right behind a tendon's name that tell how much of it was cut: 'FDP 100, FDS 40', 'FDP gone 100.'."""

from bisect import bisect_right
from operator import attrgetter

from notereader.reader.page import Page, Quantity, Sentence
from notereader.vocabulary.wordlists import word_list

_CUT = word_list("bare_shares", "cut") | {":"}
_CLOSES = frozenset([".", ",", ";", "and", "+", "&", ")", "-"])
_ALL = 100  # per cent; no length, strand or thread behind a tendon's name is told by this figure alone
_LEAST = 10
_STEP = 5  # per cent; nobody guesses a share more finely
_first_word = attrgetter("i")


def take_bare_shares(page: Page) -> None:
    """Take a bare 100 behind a tendon for per cent, and the other bare figures behind tendons of its paragraph."""
    shares = [q for q in page.quantities if not q.unit and may_be_share(q)]
    names = {m.j for m in page.mentions if m.kind in ("tendon", "slip")} if shares else set()
    told = [(_sentence_of(page, q), q) for q in shares if _behind_name(page.words, q.i) in names]
    closed = [(s, q) for s, q in told if q.j >= s.j or page.words[q.j] in _CLOSES]
    blocks = {s.block for s, q in closed if q.high == _ALL}
    for sentence, q in closed:
        if sentence.block in blocks:
            q.unit = "%"


def may_be_share(q: Quantity) -> bool:
    """Tell whether a bare figure may be a share in per cent: a round one, and too large to count strands."""
    return q.low == q.high and q.high is not None and _LEAST <= q.high <= _ALL and not q.high % _STEP


def _behind_name(words: list[str], k: int) -> int:
    """'FDP gone 100', 'FDP: 100': the word behind the tendon's name."""
    while words[k - 1] in _CUT:
        k -= 1
    return k


def _sentence_of(page: Page, q: Quantity) -> Sentence:
    return page.sentences[bisect_right(page.sentences, q.i, key=_first_word) - 1]
