"""Lines and cells that tell how far by a bare 'total': 'FCU ...... total' over 'FDS D3 ...... intact'."""

from bisect import insort

from notereader.reader.page import Break, Mention, Page, Sentence, within

_TOTAL = frozenset(["total", "tot"])
_NAMES = frozenset(["tendon", "structure", "sided", "anynerve", "anyartery"])
_JOINS = frozenset([",", "and", "+", "&", "/", "-", "of", "the", "to"])
_FEWEST = 2  # lines that answer so


def settle_totals(page: Page) -> None:
    """Take a bare 'total' for a complete cut in lines and cells of a tendon, a nerve or a vessel that say no more."""
    found: list[Mention] = []
    others = 0  # cells of tendons that say how far another way
    for sentence in page.sentences:
        k = _answer(page, sentence)
        if k is not None:
            found.append(Mention("extent", "complete", k, k + 1))
        elif found and _headed_by_a_tendon(page, sentence):
            others += any(m.kind in ("extent", "fraction") for m in within(page.mentions, sentence.i, sentence.j))
    if len(found) + others >= _FEWEST:
        for mention in found:
            insort(page.mentions, mention, key=lambda m: (m.i, m.j))


def _answer(page: Page, sentence: Sentence) -> int | None:
    """Return the word that answers a line's name, or None."""
    words, first = page.words, sentence.i
    if sentence.prefix:
        alone = words[first : sentence.j] in (["total"], ["tot"], ["tot", "."])
        return first if alone and _headed_by_a_tendon(page, sentence) else None
    if page.breaks[first] < Break.LINE or _TOTAL.isdisjoint(words[first : sentence.j]):
        return None
    k = next(k for k in range(first, sentence.j) if words[k] in _TOTAL)
    led = k > first and (words[k - 1].startswith("..") or words[k - 1] == ":" or page.breaks[k] >= Break.COLUMN)
    closed = k + 1 >= sentence.j or words[k + 1] in (",", ";", ".", "(")
    if not led or not closed:
        return None
    return k if only_named(page, first, k) else None


def only_named(page: Page, first: int, k: int, beside: frozenset[str] = frozenset()) -> bool:
    """Tell whether words first to k, up to dots or a colon, name a tendon, nerve or vessel and say nothing more.

    `beside`: words that may stand with the name, such as the rays of its fingers.
    """
    named = [m for m in within(page.mentions, first, k) if m.kind in _NAMES or m.kind == "digit"]
    covered = {n for m in named for n in range(m.i, m.j)}
    rest = (w for n, w in enumerate(page.words[first:k], first) if n not in covered and w not in _JOINS | beside)
    return any(m.kind in _NAMES for m in named) and all(w.startswith("..") or w == ":" for w in rest)


def _headed_by_a_tendon(page: Page, sentence: Sentence) -> bool:
    """Tell whether the titles of a cell name a tendon and say nothing of what was done: 'ring', 'FDS'."""
    named = [m for i, j in sentence.prefix for m in within(page.mentions, i, j)]
    covered = {k for m in named if m.kind in ("digit", "digit?", "tendon") for k in range(m.i, m.j)}
    titles = {k for i, j in sentence.prefix for k in range(i, j) if page.words[k][0].isalnum()}
    return any(m.kind == "tendon" for m in named) and titles <= covered
