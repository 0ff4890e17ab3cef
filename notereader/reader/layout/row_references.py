"""Rows that a note refers to by number: 'Remark on 4, 5 and 8: ends clean', '1+2: ...', 'repaired, see 1'.

Rows of a grid carry a number of their own, lines of a list begin with one, and a cell may point to a footnote. What is
then said under such a number is read as if it stood in those rows: the sentence gets their labels as its prefix.
"""

from itertools import pairwise

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.layout.answered_lists import answered_lists
from notereader.reader.layout.grid_lines import Row
from notereader.reader.layout.lettered_names import lend_lettered_names
from notereader.reader.layout.numbered_lines import lend_names
from notereader.reader.page import Break, Page, Sentence, page_of, within
from notereader.vocabulary.wordlists import word_list

_LEADS = word_list("row_references", "leads")
_JOINS = word_list("row_references", "joins")
_POINTS = word_list("row_references", "points")
_KINDS = frozenset(["tendon", "structure", "sided", "anynerve", "anyartery", "pulley", "bone"])
_STATES = frozenset(["zone", "extent", "hurt", "deed", "opened"])
_LONGEST_LABEL = 8  # words: '3. FDS of the ring finger .....'
_MOST = 20  # rows; larger numbers are figures of something else

Span = tuple[int, int]


@Language.component("notereader_row_references")
def row_references(doc: Doc) -> Doc:
    """Give sentences that open with numbers of rows the labels of these rows. RETURNS the same Doc."""
    page = page_of(doc)
    answered_lists(page)
    lend_names(page)
    lend_lettered_names(page)
    page.rows += _listed(page)
    rows = {row.number: row.label for row in page.rows if row.number.isdecimal() and row.label}
    notes = _footnotes(page)
    if not rows and not notes:
        return doc
    in_rows = {k for row in page.rows for k in range(row.i, row.j)}
    for sentence in page.sentences:
        if sentence.prefix or sentence.i in in_rows:
            continue
        footnote = notes.get(page.words[sentence.i])
        if footnote and page.words[sentence.i + 1 : sentence.i + 2] in ([")"], ["."], [":"]):
            sentence.prefix = list(footnote)
            continue
        numbers = _opening_numbers(page, sentence) or _answering_numbers(page, sentence)
        if numbers and all(n in rows for n in numbers):
            sentence.prefix = [rows[n] for n in numbers]
    return doc


def _listed(page: Page) -> list[Row]:
    """Return the lines of a list that open with a number and a name: '1 FDP-3 zone 3, ...', '2. FCR ... cut'."""
    found: list[Row] = []
    for sentence in page.sentences:
        i, j = sentence.i, sentence.j
        word = page.words[i]
        if not sentence.label or sentence.prefix or not word.isdecimal() or int(word) > _MOST or j - i < 3:
            continue
        dotted = page.words[i + 1] in (".", ")")
        if (page.words[i + 1] in (":", "-") or page.breaks[i + 1] == Break.NONE) and not dotted:
            continue
        led = any(page.words[k].startswith("..") for k in range(i + 2, min(i + _LONGEST_LABEL, j)))
        if dotted and not led and not _only_named(page, i + 2, j):
            continue
        cuts = [k for k in range(i + 1, j) if page.words[k] in (",", ":", "(", ";") or page.words[k].startswith("..")]
        end = next((k for k in cuts if any(m.kind in _KINDS for m in within(page.mentions, i + 1, k))), j)
        named = within(page.mentions, i + 1, end)
        end = min([end, *(m.i for m in named if m.kind in _STATES)])
        if any(m.kind in _KINDS and m.j <= end for m in named):
            found.append(Row(word, i, j, (i + 1 + dotted, end)))
    counts_up = any(int(b.number) == int(a.number) + 1 for a, b in pairwise(found))
    return found if counts_up else []


def _only_named(page: Page, i: int, j: int) -> bool:
    """Tell whether a line says no more than which tendon it is about: '1) FDP small finger'."""
    covered = {k for m in within(page.mentions, i, j) for k in range(m.i, m.j)}
    return all(k in covered or page.words[k] in _JOINS or page.words[k] in (".", "of", "the") for k in range(i, j))


def _footnotes(page: Page) -> dict[str, list[Span]]:
    """Return by their number the footnotes that cells of a grid point to, with the labels of those rows."""
    found: dict[str, list[Span]] = {}
    for row in page.rows:
        for k in range(row.i, row.j - 1):
            number = page.words[k + 1]
            if row.label and page.words[k] in _POINTS and number.isdecimal() and int(number) <= _MOST:
                found.setdefault(number, []).append(row.label)
    return found


def _opening_numbers(page: Page, sentence: Sentence) -> list[str]:
    """Return the numbers that a sentence opens with before a colon: 'Remark on 4, 5, 8:', '1+2:', '3:'."""
    return _numbers_from(page, sentence, sentence.i)


def _answering_numbers(page: Page, sentence: Sentence) -> list[str]:
    """Return the numbers of rows that a label is answered for: 'Outer stitch .... 12 only: 5-0 Prolene'."""
    label = range(sentence.i + 1, min(sentence.i + _LONGEST_LABEL, sentence.j))
    dots = next((k for k in label if page.words[k].startswith("..")), None)
    return _numbers_from(page, sentence, dots + 1) if dots is not None else []


def _numbers_from(page: Page, sentence: Sentence, k: int) -> list[str]:
    """Return the numbers before a colon that stand from word k on."""
    words, first = page.words, k
    while k < sentence.j and (words[k] in _LEADS or (words[k] == "." and words[k - 1] in ("no", "nos") and k > first)):
        k += 1
    numbers: list[str] = []
    ranged = False
    while k < sentence.j and (words[k].isdecimal() or (numbers and words[k] in _JOINS)):
        if words[k].isdecimal():
            first = int(numbers[-1]) + 1 if ranged else int(words[k])
            numbers += [str(n) for n in range(first, min(int(words[k]), _MOST) + 1)]
        ranged = words[k] in ("-", "to") and bool(numbers)
        k += 1
    k += words[k : k + 1] == ["only"]
    return numbers if k < sentence.j and words[k] == ":" else []
