"""The boxes of a form, ticked or empty, and the options they stand for: '[x] intact   [ ] divided'."""

from itertools import pairwise

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.page import Break, Page, Sentence, page_of

_OPENED, _CLOSED = frozenset(["[", "(", "{"]), frozenset(["]", ")", "}"])
_DRAWN = {"\u2610": False, "\u25a1": False, "\u2611": True, "\u2612": True}  # boxes drawn as one sign: ticked or not
BOX_SIGNS = _OPENED | _DRAWN.keys()  # no box without one of these
BOX_ENDS = _CLOSED | _DRAWN.keys()  # what stands right before the option of a box
_NOTHING = (["none"], ["nil"])
_LONGEST_LABEL = 6  # words
_READ_AS_CELLS = frozenset(["narrative", "findings", "core", "peripheral", "zone"])  # other rows are read as a whole


@Language.component("notereader_boxes")
def boxes(doc: Doc) -> Doc:
    """Turn each ticked option of a row 'label: [x] one  [ ] other' into a cell told with its label. RETURNS the Doc."""
    page = page_of(doc)
    if BOX_SIGNS.isdisjoint(page.words):
        return doc
    found: list[Sentence] = []
    in_rows = {page.words_in(*field.span)[0] for field in page.ticked if field.begin >= 0}
    for sentence in page.sentences:
        if not in_rows.isdisjoint(range(sentence.i, sentence.j)):
            found.append(sentence)  # a field beside others, whose ticks were read off the text
            continue
        for question in _questions(page, sentence):
            found += _answers(page, question) or [question]
    page.sentences = found
    return doc


def _questions(page: Page, sentence: Sentence) -> list[Sentence]:
    """Return a sentence for each question of a row: 'Gap: [ ] Y [x] N     Glide: [x] free [ ] catches'."""
    if sentence.prefix or sentence.section not in _READ_AS_CELLS:
        return [sentence]
    told = find_boxes(page, sentence)
    if len(told) < _FEWEST or boxes_trail(page, sentence, told):
        return [sentence]
    begins = [k for i, _, _ in told if (k := _label_before(page, i, sentence.i)) > sentence.i]
    if not begins or not all(_asked_there(page, k) for k in (sentence.i, *begins)):
        return [sentence]
    edges = [sentence.i, *begins, sentence.j]
    return [Sentence(i, j, sentence.section, sentence.block) for i, j in pairwise(edges)]


_FEWEST = 3  # boxes of two questions


def _label_before(page: Page, k: int, first: int) -> int:
    """Return where the label begins that ends in a colon before the box at word k, set off by a gap; or -1."""
    if page.words[k - 1] != ":":
        return -1
    i = next((i for i in range(k - 2, max(first, k - 2 - _LONGEST_LABEL), -1) if page.breaks[i] >= Break.COLUMN), -1)
    return i if i > 0 and ":" not in page.words[i : k - 1] else -1


def _asked_there(page: Page, k: int) -> bool:
    """Tell whether a label and a box behind its colon begin at word k."""
    words = page.words[k : k + _LONGEST_LABEL + 2]
    colon = words.index(":") if ":" in words else -1
    return 0 < colon < len(words) - 1 and words[colon + 1] in BOX_SIGNS


def _answers(page: Page, sentence: Sentence) -> list[Sentence]:
    """Return a sentence for each ticked option of a row; nothing where it is no such row or nothing is ticked."""
    if sentence.prefix or sentence.section not in _READ_AS_CELLS:
        return []
    told = find_boxes(page, sentence)
    if len(told) < 2 or not any(ticked for _, _, ticked in told) or boxes_trail(page, sentence, told):
        return []
    first = told[0][0]
    label = page.words[sentence.i : first]
    if label[-1:] != [":"] or not 2 <= len(label) <= _LONGEST_LABEL:
        return []
    ends = [*(i for i, _, _ in told[1:]), sentence.j]
    options = [(j, end, ticked) for (_, j, ticked), end in zip(told, ends, strict=True)]
    if ":" in page.words[first : sentence.j] or any(_goes_on(page, j, end) for j, end, _ in options):
        return []  # 'UDN: [x] intact   RDN: [ ] intact', '[x] yes   type: 6-0': more than one question
    spans = [(j, end) for j, end, ticked in options if ticked]
    if any(page.words[i:j] in _NOTHING for i, j in spans):
        return []  # 'Nerve injury: [ ] radial [ ] ulnar [x] none' tells of all that the row names
    return [
        Sentence(i, j, sentence.section, sentence.block, prefix=[(sentence.i, first - 1)]) for i, j in spans if i < j
    ]


def _goes_on(page: Page, j: int, end: int) -> bool:
    """Tell whether something else stands behind the option at word j; '[x] partial   30 %' is still one answer."""
    rest = page.words[option_after(page, j, end) : end]
    return bool(rest) and not (len(rest) == _SHARE and rest[0].isdecimal() and rest[1] == "%")


_SHARE = 2  # words of '30 %'


def find_boxes(page: Page, sentence: Sentence) -> list[tuple[int, int, bool]]:
    """Return the boxes of a sentence: first word, word after, and whether ticked."""
    words = page.words
    found: list[tuple[int, int, bool]] = []
    if BOX_SIGNS.isdisjoint(words[sentence.i : sentence.j]):
        return found
    for k in range(sentence.i, sentence.j):
        if words[k] in _DRAWN:
            found.append((k, k + 1, _DRAWN[words[k]]))
        if words[k] not in _OPENED or k + 1 >= sentence.j:
            continue
        if words[k + 1] in _CLOSED:
            found.append((k, k + 2, False))
        elif k + 2 < sentence.j and words[k + 2] in _CLOSED and words[k + 1] in ("x", "v", "y"):
            found.append((k, k + 3, True))
    return found


def boxes_trail(page: Page, sentence: Sentence, boxes: list[tuple[int, int, bool]]) -> bool:
    """Tell whether boxes stand behind their options ('right [ ]   left [x]'), which the wider gap behind them shows."""
    leans = 0
    for i, j, _ in boxes:
        if j == sentence.j and page.words[i - 1] == ":":
            continue  # 'Pattern: [    ]', an answer that nobody gave
        behind = page.breaks[j] if j < sentence.j else Break.COLUMN
        leans += (page.breaks[i] < behind) - (page.breaks[i] > behind)
    return leans > 0 and boxes[0][0] > sentence.i


def option_before(page: Page, k: int, first: int) -> int:
    """Return the first word of the option that ends before a box at word k."""
    i = k
    while i > first and page.breaks[i] < Break.COLUMN and page.words[i - 1] not in BOX_ENDS | {":", "|"}:
        if page.words[i - 1].startswith(".."):
            break
        i -= 1
    return i


def option_after(page: Page, k: int, last: int) -> int:
    """Return the word after the option that begins behind a box at word k."""
    j = k
    while j < last and not _is_box(page, j) and page.words[j] != ";" and page.breaks[j] < Break.COLUMN:
        j += 1
    return j


def _is_box(page: Page, k: int) -> bool:
    """Tell whether a box opens at word k, rather than a remark in brackets."""
    after = page.words[k + 1 : k + 3]
    if page.words[k] in _DRAWN:
        return True
    return page.words[k] in _OPENED and (
        after[:1] != [] and (after[0] in _CLOSED or (after[1:] != [] and after[1] in _CLOSED))
    )
