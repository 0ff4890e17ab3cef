"""Rows whose dashes repeat the row above, as the note itself says: 'one line each; dash = as line above'.

Such rows have no titles. Every cell becomes a sentence of its own, told with the name that begins its row and with the
word that begins its column: '8' under 'purchase 9', 'out' under 'knot in'. A dash is the cell above told once more.
"""

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.page import Break, Page, Sentence, page_of, within

Span = tuple[int, int]

_DASHES = frozenset(["dash", "dashes", "-", '"', "ditto", "do"])
_ABOVE = 6  # words from the sign to 'above'
_FEWEST_BARS = 2
_COLUMN_WORDS = ("role", "bite", "knotword", "lockword")
_OF_THREADS = ("material", "stitch", "strandword", "looped")


@Language.component("notereader_as_above")
def as_above(doc: Doc) -> Doc:
    """Turn the cells of such rows into sentences. RETURNS the same Doc."""
    page = page_of(doc)
    if "|" not in page.words or not _says_so(page):
        return doc
    made: list[Sentence] = []
    above: list[Span] = []
    first: list[Span] = []
    taken: set[int] = set()
    for i, j in _lines(page):
        cells = _cells(page, i, j)
        if not _is_row(page, i, j, cells):
            above, first = [], []
            continue
        told = [above[n] if n < len(above) and _is_dash(page, cell) else cell for n, cell in enumerate(cells)]
        first = first or told
        made += _sentences(page, told, first)
        above = told
        taken.update(range(i, j))
    if made:
        kept = [part for s in page.sentences for part in _outside(page, s, taken)]
        page.sentences = sorted([*kept, *made], key=lambda s: s.i)
    return doc


def _says_so(page: Page) -> bool:
    """Tell whether a note says that a dash stands for what is above it."""
    words = page.words
    signs = (k for k in range(len(words) - 2) if words[k] in _DASHES and words[k + 1] in ("=", ":", "means"))
    return any("above" in words[k + 2 : k + _ABOVE] for k in signs)


def _lines(page: Page) -> list[Span]:
    starts = [k for k in range(len(page.words)) if page.breaks[k] >= Break.LINE]
    return list(zip(starts, [*starts[1:], len(page.words)], strict=True))


def _cells(page: Page, i: int, j: int) -> list[Span]:
    """Cut a line at its bars, and before the first one at columns of space."""
    cells: list[Span] = []
    start, barred = i, False
    for k in range(i, j + 1):
        at_bar = k < j and page.words[k] == "|"
        gap = k < j and k > start and not barred and page.breaks[k] == Break.COLUMN
        if (k == j or at_bar or gap) and k > start:
            cells.append((start, k))
        if at_bar or gap:
            start, barred = k + at_bar, barred or at_bar
    return cells


def _is_row(page: Page, i: int, j: int, cells: list[Span]) -> bool:
    """Tell whether a line with bars begins with the name of a tendon in a cell of its own."""
    barred = page.words[i:j].count("|") >= _FEWEST_BARS and len(cells) > _FEWEST_BARS
    return barred and any(m.kind == "tendon" for m in within(page.mentions, *cells[0]))


def _is_dash(page: Page, cell: Span) -> bool:
    return page.words[cell[0] : cell[1]] in (["-"], ['"'], ["ditto"], ["do"])


def _sentences(page: Page, told: list[Span], first: list[Span]) -> list[Sentence]:
    """Return a sentence for the name of a row and for each of its cells."""
    name, block = told[0], max((s.block for s in page.sentences), default=0)
    made = [Sentence(*name, "narrative", block, True)]
    for n, cell in enumerate(told[1:], 1):
        if not any(w[0].isalnum() for w in page.words[cell[0] : cell[1]]):
            continue
        word = _word_of_column(page, first[n]) if n < len(first) and cell != first[n] else None
        own = {m.kind for m in within(page.mentions, *cell) if m.value != "skin"}  # 'none, palm' under 'epi 6/0'
        prefix = [name] if word is None or not own.isdisjoint(_COLUMN_WORDS) else [name, word]
        section = "core" if own & set(_OF_THREADS) and "role" not in own else "narrative"
        made.append(Sentence(*cell, section, block, True, prefix))
    return made


def _word_of_column(page: Page, cell: Span) -> Span | None:
    """Return the word that begins the first cell of a column and says what it tells: 'purchase 9', 'knot in'."""
    leads = [m for m in within(page.mentions, *cell) if m.kind in _COLUMN_WORDS and m.i == cell[0]]
    return (cell[0], leads[0].j) if leads else None  # of two meanings of one word, the first


def _outside(page: Page, sentence: Sentence, taken: set[int]) -> list[Sentence]:
    """Return what a sentence says outside the rows."""
    inside = [k for k in range(sentence.i, sentence.j) if k in taken]
    if not inside:
        return [sentence]
    parts = [(sentence.i, inside[0]), (inside[-1] + 1, sentence.j)]
    return [Sentence(i, j, sentence.section, sentence.block, sentence.label) for i, j in parts if i < j]
