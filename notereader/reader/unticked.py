"""What the boxes of a form left unticked: no option that was not chosen is a finding, nor is a label without a tick."""

from dataclasses import replace
from itertools import groupby

from notereader.reader.boxes import BOX_SIGNS, boxes_trail, find_boxes, option_after, option_before
from notereader.reader.page import Page, Sentence, within


def mark_fields(page: Page) -> frozenset[int]:
    """Set aside the empty options and the marks of the fields read off the text. RETURNS the words of those fields."""
    inside: list[int] = []
    for line in page.ticked:
        i, j = page.words_in(*line.span)
        inside += range(i, j)
        kinds = {m.kind for m in within(page.mentions, i, j)} & _NAMED_BY_OPTION
        for m in within(page.mentions, i - _LABEL, i) if kinds else ():
            if m.kind in kinds:
                page.mark(m.i, m.j, "unticked")  # 'Locking ... locking [ ] grasping [x]': the label is no answer
        for span in line.set_aside:
            page.mark(*page.words_in(*span), "unticked")
    return frozenset(inside)


_LABEL = 4  # words
_NAMED_BY_OPTION = frozenset(["hold", "glide", "ends", "bulk"])


def beside(sentence: Sentence, ticked: frozenset[int]) -> list[Sentence]:
    """Return the parts of a sentence that stand in no field already read."""
    if ticked.isdisjoint(range(sentence.i, sentence.j)):
        return [sentence]
    runs = groupby(range(sentence.i, sentence.j), key=lambda k: k in ticked)
    parts = [list(run) for inside, run in runs if not inside]
    return [replace(sentence, i=part[0], j=part[-1] + 1) for part in parts]


_UNITS = frozenset(["mm", "cm", "%", "deg", "degrees", "weeks", "days"])


def mark_unticked(page: Page, sentence: Sentence) -> None:
    """'[ ] released  [x] intact', 'released [ ]   intact [x]': what an empty box stands for was not chosen."""
    boxes = [] if BOX_SIGNS.isdisjoint(sentence.said) else find_boxes(page, sentence)
    trailing = boxes_trail(page, sentence, boxes)
    for i, j, ticked in boxes:
        if ticked:
            continue
        first, last = (option_before(page, i, sentence.i), j) if trailing else (i, option_after(page, j, sentence.j))
        page.mark(first, last, "unticked")
    if sentence.prefix and sentence.j - sentence.i == 1 and page.words[sentence.i] in _UNITS:
        page.mark(sentence.i, sentence.j, "unticked")  # '[ ] ____ mm' in a cell of a form


def mark_left_open(page: Page, sentence: Sentence) -> None:
    """'Ends: [ ] clean [ ] ragged': the label of a field without a tick says nothing either."""
    standing = page.standing[sentence.i : sentence.j]
    if "unticked" not in standing:
        return
    rest = [w for w, s in zip(page.words[sentence.i : sentence.j], standing, strict=True) if not s]
    told = [m for m in within(page.mentions, sentence.i, sentence.j) if m.kind in ("zone", "extent")]
    plain = all(w.isalpha() for w in rest[:-1]) and all(page.standing[m.i] for m in told)
    label = len(rest) <= _FEW or (len(rest) <= _LONGEST_LABEL and plain)
    if label and rest[-1:] in ([":"], ["?"]):
        page.mark(sentence.i, sentence.j, "unticked")


_FEW = 3  # words
_LONGEST_LABEL = 6  # words, with its colon


def drop_half_ticked(page: Page) -> None:
    """'Gapping  none [ ]  seen [x]': 'gapping none' is no phrase where only one of its words was chosen."""
    page.mentions = [
        m for m in page.mentions if m.kind == "zone" or len({s == "unticked" for s in page.standing[m.i : m.j]}) < _BOTH
    ]


_BOTH = 2
