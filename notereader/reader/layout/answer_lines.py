"""Forms printed line by line: 'Ring FDP :' above '   whole', 'Knot position' above 'Outside the repair'.

What stands below such a label is read as a cell of a grid, told with its label.
"""

from itertools import pairwise

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.page import Break, Page, Sentence, page_of, within
from notereader.vocabulary.wordlists import word_list

_WORDS = word_list("answer_lines", "labels")
_NAMES = ("digit", "tendon", "slip", "pulley", "structure", "sided", "bone")
_ASKS = (*_NAMES, "strandword", "endword", "bite", "lockword", "knotword", "gap", "glide", "bulk", "tension", "role")
_READ = frozenset(["narrative", "findings", "core", "peripheral", "zone"])  # what else is headed is read as a whole
_LONGEST = 6  # words
_FEWEST_CLOSED, _FEWEST_BARE = 4, 6  # labels of such a form

Span = tuple[int, int]


@Language.component("notereader_answer_lines")
def answer_lines(doc: Doc) -> Doc:
    """Give what stands below a label on a line of its own that label as its prefix. RETURNS the same Doc."""
    page = page_of(doc)
    lines = _lines(page)
    closed = [n for n in range(len(lines) - 1) if _is_closed(page, lines[n], lines[n + 1])]
    bare = {n for n, line in enumerate(lines) if _is_bare(page, line)}
    answered = [n for n in sorted(bare) if n + 1 < len(lines) and n + 1 not in bare and _follows(page, lines[n + 1])]
    pairs: list[tuple[Span, Span]] = []
    if len(closed) >= _FEWEST_CLOSED:
        pairs = [((lines[n][0], lines[n][1] - 1), _below(page, lines, n)) for n in closed]
    elif len(answered) >= _FEWEST_BARE:
        blank = [n for n in sorted(bare) if n not in answered]
        pairs = [*((lines[n], lines[n + 1]) for n in answered), *((lines[n], (lines[n][1],) * 2) for n in blank)]
    for label, answer in pairs:
        if any(m.kind in _ASKS for m in within(page.mentions, *label)):
            _tell(page, label, answer)
    return doc


def _lines(page: Page) -> list[Span]:
    starts = [k for k in range(len(page.words)) if k == 0 or page.breaks[k] >= Break.LINE]
    return list(pairwise([*starts, len(page.words)]))


def _indent(page: Page, k: int) -> int:
    return page.starts[k] - (page.text.rfind("\n", 0, page.starts[k]) + 1)


def _follows(page: Page, line: Span) -> bool:
    """Tell whether a line stands right below the one before it; a blank between them leaves a label unanswered."""
    return page.breaks[line[0]] == Break.LINE


def _is_closed(page: Page, line: Span, below: Span) -> bool:
    """'Ring FDP :' with its answer on the next line, further in."""
    i, j = line
    short = 1 < j - i <= _LONGEST and page.words[j - 1] == ":" and ":" not in page.words[i : j - 1]
    return short and _follows(page, below) and _indent(page, below[0]) > _indent(page, i)


def _below(page: Page, lines: list[Span], n: int) -> Span:
    """Return the words of the lines below label n that stand further in than it."""
    end, first = n + 1, _indent(page, lines[n][0])
    while end + 1 < len(lines) and _follows(page, lines[end + 1]) and _indent(page, lines[end + 1][0]) > first:
        end += 1
    return lines[n + 1][0], lines[end][1]


def _is_bare(page: Page, line: Span) -> bool:
    """'Knot position', 'A3', 'Nerve radial': a line of nothing but words of labels, or the name of one thing."""
    i, j = line
    named = any((m.i, m.j) == line for m in within(page.mentions, i, j) if m.kind in _NAMES)
    return j - i <= _LONGEST and (named or _WORDS.issuperset(page.words[i:j]))


def _tell(page: Page, label: Span, answer: Span) -> None:
    """Make cells of the sentences of an answer, and a label of what stands above it."""
    told: list[Sentence] = []
    for s in page.sentences:
        if s.j <= label[0] or s.i >= answer[1] or s.prefix or s.section not in _READ:
            told.append(s)
            continue
        if s.i < label[0]:
            told.append(Sentence(s.i, label[0], s.section, s.block, s.label))
        if s.i <= label[0] < s.j:
            kind = "narrative" if any(m.kind in _NAMES for m in within(page.mentions, *label)) else "label"
            told.append(Sentence(*label, kind, s.block, True))
        i, j = max(s.i, answer[0]), min(s.j, answer[1])
        if i < j:
            told.append(Sentence(i, j, s.section, s.block, True, [label]))
        if s.j > answer[1]:
            told.append(Sentence(answer[1], s.j, s.section, s.block, True))
    page.sentences = told
