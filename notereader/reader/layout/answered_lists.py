"""Lists that answer a list before them by its marks: 'a) FCU severed, b) ulnar nerve severed', then 'b) 9-0 nylon'.

What stands under such a mark is read as if it stood behind the name that the first list gives it.
"""

from notereader.reader.page import Break, Page, Sentence, within

_KINDS = frozenset(["tendon", "structure", "sided", "anynerve", "anyartery", "bone"])
_STATES = frozenset(["zone", "extent", "hurt", "deed", "opened"])
_LETTERS = frozenset("abcdefgh")
_HIGHEST = 12
_FEWEST = 2  # marks that two lists share
_OPENING = 4  # words in which a line names what it is about

Span = tuple[int, int]


def answered_lists(page: Page) -> None:
    """Give the lines of a second list that name nothing the label of the line with the same mark in the first."""
    named: dict[str, Span] = {}
    answers: list[tuple[int, Span]] = []
    shared: set[str] = set()
    for n, sentence in enumerate(page.sentences):
        mark = _mark(page, sentence)
        if not mark:
            continue
        if mark not in named:
            label = _label(page, sentence)
            if label is not None:
                named[mark] = label
            continue
        shared.add(mark)
        if not sentence.prefix and not _names(page, sentence.i + 2, min(sentence.i + 2 + _OPENING, sentence.j)):
            answers.append((n, named[mark]))
    if len(shared) < _FEWEST:
        return
    for n, label in answers:
        page.sentences[n].prefix = [label]


def _mark(page: Page, sentence: Sentence) -> str:
    """Return the letter or number with which a line of a list begins, or ''."""
    mark, closes = [*page.words[sentence.i : sentence.i + 2], "", ""][:2]
    known = mark in _LETTERS or (mark.isdecimal() and int(mark) <= _HIGHEST)
    return mark if known and closes == ")" and page.breaks[sentence.i] >= Break.LINE else ""


def _label(page: Page, sentence: Sentence) -> Span | None:
    """Return the words of a line that name what it is about, up to what is told of it."""
    first, last = sentence.i + 2, sentence.j
    cut = next((k for k in range(first, last) if page.words[k] in (",", ":", ";", "(")), last)
    end = min([cut, *(m.i for m in within(page.mentions, first, last) if m.kind in _STATES and m.i > first)])
    return (first, end) if _names(page, first, end) else None


def _names(page: Page, i: int, j: int) -> bool:
    return any(m.kind in _KINDS and m.j <= j for m in within(page.mentions, i, j))
