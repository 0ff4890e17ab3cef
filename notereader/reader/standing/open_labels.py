"""Labels of a row that nobody answered: 'FDS intact: ___   A4 intact: Y', 'No gap: -', 'Free glide: [ ]'.

A blank of underscores or dots is no word of the page; it is looked for in the text between two words.
"""

from notereader.reader.page import Break, Page, Sentence, within

_STATES = frozenset(["extent", "opened", "deed", "gap", "glide", "tension", "bulk", "ends", "knot", "hold"])
_BLANKS = ("__", "....")
_DASHES = frozenset(["-", "--", "/", "?"])
_BOXES = (["[", "]"], ["(", ")"], ["{", "}"])
_STOPS = frozenset([",", ";", ".", "|"])
_LONGEST = 6  # words of a label


def mark_open_labels(page: Page, sentence: Sentence) -> None:
    """Set aside the labels of a sentence behind whose colon a blank, a dash or an empty box stands and no more."""
    if ":" not in sentence.said:
        return
    for k in range(sentence.i + 1, sentence.j):
        if page.words[k] == ":" and _is_open(page, sentence, k):
            first = _label_start(page, sentence, k)
            if any(m.kind in _STATES for m in within(page.mentions, first, k)):
                page.mark(first, k + 1, "unfilled")


def _is_open(page: Page, sentence: Sentence, k: int) -> bool:
    behind = k + 1
    if page.words[behind : behind + 2] in _BOXES:
        return _ends_cell(page, sentence, behind + 2) and _next_is_labelled(page, sentence, behind + 2)
    if behind < sentence.j and page.words[behind] in _DASHES and page.breaks[behind] < Break.COLUMN:
        return _ends_cell(page, sentence, behind + 1)
    gap = page.text[page.ends[k] : page.starts[behind] if behind < len(page.words) else len(page.text)]
    blank = any(mark in gap for mark in _BLANKS)
    return blank and _ends_cell(page, sentence, behind) and _next_is_labelled(page, sentence, behind)


def _ends_cell(page: Page, sentence: Sentence, k: int) -> bool:
    return k >= sentence.j or page.breaks[k] >= Break.COLUMN or page.words[k] in _STOPS


def _next_is_labelled(page: Page, sentence: Sentence, k: int) -> bool:
    """'A2 intact: ___   A4 intact: Y', but not 'Gap: ___   none': tell whether what follows is no answer."""
    ahead = range(k + 1, min(k + _LONGEST + 1, sentence.j))
    end = next((n for n in ahead if page.breaks[n] >= Break.COLUMN), min(k + _LONGEST + 1, sentence.j))
    return k >= sentence.j or page.breaks[k] >= Break.LINE or ":" in page.words[k:end]


def _label_start(page: Page, sentence: Sentence, k: int) -> int:
    first = k
    while (
        first > max(sentence.i, k - _LONGEST)
        and page.words[first - 1] not in _STOPS
        and page.breaks[first] < Break.COLUMN
    ):
        first -= 1
    return first
