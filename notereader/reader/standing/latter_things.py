"""'FPL and radial digital nerve both through. The latter lay under tension': what is told of the nerve."""

from notereader.reader.page import Mention, Page, Sentence, within

_PLACES = {"former": 0, "latter": 1}
_THINGS = frozenset(["sided", "structure", "anynerve", "anyartery"])
_PAIR = 2
_STOPS = frozenset([";", ".", "but", "while", "whereas"])


def mark_latter_things(page: Page) -> None:
    """Set aside what is said of 'the former' or 'the latter' where that is the nerve or vessel of two things named."""
    pair: tuple[Mention, ...] = ()
    for sentence in page.sentences:
        if not _PLACES.keys().isdisjoint(sentence.said):
            for k in range(sentence.i + 1, sentence.j):
                if page.words[k] in _PLACES and page.words[k - 1] == "the":
                    own = _things(page, sentence.i, k)
                    _mark_one(page, sentence, k, _two_things(own) if own else pair)
        named = _things(page, sentence.i, sentence.j)
        pair = _two_things(named) if named else pair


def _things(page: Page, i: int, j: int) -> list[Mention]:
    return [m for m in within(page.mentions, i, j) if m.kind == "tendon" or m.kind in _THINGS]


def _two_things(named: list[Mention]) -> tuple[Mention, ...]:
    """Return the tendon and the other thing that are named, where these two are and no more."""
    values = list(dict.fromkeys((m.kind == "tendon", m.value) for m in named))
    both = len(values) == len({tendon for tendon, _ in values}) == _PAIR
    return tuple(next(m for m in named if m.value == value) for _, value in values) if both else ()


def _mark_one(page: Page, sentence: Sentence, k: int, pair: tuple[Mention, ...]) -> None:
    if not pair or pair[_PLACES[page.words[k]]].kind == "tendon":
        return
    end = next((n for n in range(k, sentence.j) if page.words[n] in _STOPS or _turns(page, n, k)), sentence.j)
    page.mark(k - 1, end, "other")


def _turns(page: Page, n: int, k: int) -> bool:
    """'..., the former with 3-0': the other of the two takes its turn."""
    return page.words[n] in _PLACES and page.words[n] != page.words[k]
