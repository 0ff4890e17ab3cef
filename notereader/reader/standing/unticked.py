"""What the boxes of a form left unticked: no option that was not chosen is a finding, nor is a label without a tick."""

from bisect import insort
from dataclasses import replace
from itertools import groupby
from operator import attrgetter

from notereader.reader.layout.boxes import BOX_SIGNS, boxes_trail, find_boxes, option_after, option_before
from notereader.reader.page import Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list


def mark_fields(page: Page) -> frozenset[int]:
    """Set aside the empty options and the marks of the fields read off the text. RETURNS the words of those fields."""
    inside: set[int] = set()
    in_rows: set[int] = set()
    for line in page.ticked:
        i, j = page.words_in(*line.span)
        inside.update(range(i, j))
        in_rows.update(range(i, j) if line.begin >= 0 else ())
        kinds = {m.kind for m in within(page.mentions, i, j)} & _NAMED_BY_OPTION
        for m in within(page.mentions, i - _LABEL, i) if kinds else ():
            if m.kind in kinds:
                page.mark(m.i, m.j, "unticked")  # 'Locking ... locking [ ] grasping [x]': the label is no answer
        for span in line.set_aside:
            page.mark(*page.words_in(*span), "unticked")
        _name_extent(page, i, j)
    for sentence in page.sentences if inside else ():
        _draw_in(page, sentence, in_rows)
    return frozenset(inside)


def _draw_in(page: Page, sentence: Sentence, in_rows: set[int]) -> None:
    """Let a cell begin and a field end with what is ticked: 'partial 40 %   [ ] intact' is no share left intact."""
    said = [k for k in range(sentence.i, sentence.j) if not page.standing[k]]
    if said and sentence.prefix and page.standing[sentence.i]:
        sentence.i = said[0]
    if not in_rows.isdisjoint(said) and sentence.j - 1 in in_rows:
        sentence.j = said[-1] + 1


_CUT_THROUGH, _CUT_IN_PART = word_list("forms", "cut_through"), word_list("forms", "cut_in_part")


def _name_extent(page: Page, i: int, j: int) -> None:
    """'cut [x] part [ ] intact [ ]': beside an option for a cut in part, 'cut' alone is a cut right through."""
    chosen = [k for k in range(i, j) if not page.standing[k] and page.words[k] not in _BETWEEN]
    if len(chosen) != 1 or _CUT_IN_PART.isdisjoint(page.words[i:j]):
        return
    k, word = chosen[0], page.words[chosen[0]]
    value = "complete" if word in _CUT_THROUGH else "partial" if word in _CUT_IN_PART else ""
    if value:
        page.mentions = [m for m in page.mentions if (m.i, m.j) != (k, k + 1)]
        insort(page.mentions, Mention("extent", value, k, k + 1), key=attrgetter("i"))


_BETWEEN = frozenset(["/", "|", ",", ";"])  # what parts options
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
