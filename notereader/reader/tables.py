"""Grids in a note: every filled cell becomes a sentence of its own, told with its column title and its row label.

A cell's sentence carries the words of its labels as `prefix`; the later steps read it as if they stood before the
cell ("index FDP, core: 4-0 Ethibond"), while its evidence stays in the cell.
"""

from dataclasses import dataclass

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.grid_fingers import (
    confirm_fingers,
    digit_titles,
    fingers_below,
    names_a_part,
    number_the_fingers,
    only_names,
)
from notereader.reader.grid_lines import Line, Span, cut_cells, lines_of
from notereader.reader.page import Break, Page, Sentence, page_of, within
from notereader.reader.sentences import sentence_end
from notereader.vocabulary.wordlists import word_list

_BODY_OF_WORDS = word_list("tables", "body_of_words")
_ZONE_VALUE_WORDS = word_list("tables", "zone_value_words")
_ZONE_VALUE_WORDS_2 = word_list("tables", "zone_value_words_2")

# Titles of columns that say which tendon a row is about; the other columns hold what is said of it.
_LABELS = word_list("tables", "labels")
_TITLES = _LABELS | word_list("tables", "titles")
_SECTIONS = {
    "zone": "zone",
    "level": "zone",
    "core": "core",
    "epi": "peripheral",
    "epitendinous": "peripheral",
    "peripheral": "peripheral",
    "edge": "peripheral",
    "rim": "peripheral",
    "round": "peripheral",
    "thread": "core",
    "stitch": "core",
    "suture": "core",
    "pattern": "core",
    "technique": "core",
}
_ROMAN = {
    "i": "I",
    "ii": "II",
    "iii": "III",
    "iv": "IV",
    "v": "V",
    "1": "I",
    "2": "II",
    "3": "III",
    "4": "IV",
    "5": "V",
}
_LETTERS = {"a": "A", "b": "B", "c": "C", "d": "D"}
_NOTHING = word_list("tables", "nothing")

_LABELS_WIDE = 6  # characters; titles that start right of this leave room for labels of rows
_SHORT_TITLE = 4  # words; in a grid of two columns a longer one is a finding: 'middle   both bundles intact, ...'
_LONGEST_TITLE = 9  # words
_FEWEST_GAPS = 3  # columns of space in the smallest grid


@dataclass(slots=True)
class Row:
    """A row of a grid with its number, if it has one, and the words that say what it is about."""

    number: str
    i: int
    j: int
    label: Span | None = None


@Language.component("notereader_tables")
def tables(doc: Doc) -> Doc:
    """Turn the cells of every grid into sentences with their labels. RETURNS the same Doc."""
    page = page_of(doc)
    if "|" not in page.words and page.breaks.count(Break.COLUMN) < _FEWEST_GAPS:
        return doc
    lines = lines_of(page)
    number_the_fingers(page, lines)
    n = 0
    while n < len(lines):
        body = _body_of(page, lines, n)
        if body:
            confirm_fingers(page, lines[n], body)
            _read_grid(page, lines[n], body)
            n += len(body)
        n += 1
    return doc


def _body_of(page: Page, lines: list[Line], n: int) -> list[Line]:
    """Return the rows under line n where it is the title line of a grid, else nothing."""
    title = lines[n]
    names_only = [only_names(page, cell) for cell in title.cells]
    cells = zip(title.cells, names_only, strict=True)
    short = all(name or b - a <= _SHORT_TITLE for (a, b), name in cells) and not _tells_a_share(page, title)
    if len(title.cells) < 3 and not (len(title.cells) == 2 and short and digit_titles(page, title) == 2):
        return []
    if max((b - a for a, b in title.cells), default=0) > _LONGEST_TITLE:
        return []  # 'SEEN   INDEX   FDP divided, zone 2A. FDS intact.' says something already
    names = [page.words[a] for a, _ in title.cells]
    last = [page.words[b - 1] for _, b in title.cells]
    known = sum(a in _TITLES or b in _TITLES for a, b in zip(names, last, strict=True))
    lacks_one = known == 2 and len(title.cells) == 3 and _name_rows(page, lines[n + 1 : n + 4])
    led = fingers_below(page, title, lines[n + 1 :])
    if known < 3 and digit_titles(page, title) < 2 and not (lacks_one or led):
        return []
    marks = {w for (a, b), name in zip(title.cells, names_only, strict=True) if not name for w in page.words[a:b]}
    if {":", "[", "=="} & marks and not led:  # a line of a form, not of titles
        return []
    if _numbers_lines(page, lines, n) or _is_row(page, title) or _like_the_next(page, lines, n):
        return []
    if _ends_a_sentence(page, title) or _answered(page, title):
        return []
    body: list[Line] = []
    title_bars = page.words[title.i : title.j].count("|")
    for line in lines[n + 1 :]:
        if page.breaks[line.i] == Break.BLANK and (body or _opens_a_paragraph(page, line)):
            break
        bars = page.words[line.i : line.j].count("|")
        barred = (bars >= 3 or bars == title_bars >= 2) and bool(line.cells)  # 'DONE   |     |' between the rows
        hangs = bool(body) and _goes_on(page, title, line)
        if body and _repeats_the_fingers(page, title, line):
            break
        if body and _heads_rows(page, title, line, lines):
            body.append(line)
            continue
        if len(line.cells) < 2 and not (body and (barred or hangs or page.words[line.i] in _BODY_OF_WORDS)):
            break
        if body and (_titles_again(page, title, line) or _label_of_a_form(page, line, body)):
            break
        body.append(line)
    columns = [start for start in title.starts if start > 2]
    for line in body:
        cut_cells(page, line, [] if line.all_bars == title.all_bars > 0 else columns)  # bars alone part its cells
    return body


def _repeats_the_fingers(page: Page, title: Line, line: Line) -> bool:
    """'13. Pulleys   INDEX   MIDDLE' below '10. Tendons   INDEX   MIDDLE': another grid of the same fingers."""
    own, other = ([page.words[i:j] for i, j in x.cells[1:]] for x in (title, line))
    return len(own) > 1 and own == other and digit_titles(page, title) > 1


def _heads_rows(page: Page, title: Line, line: Line, lines: list[Line]) -> bool:
    """'11. FDP repair' alone on its line, above more rows under the same fingers: the title of these rows."""
    if len(line.cells) != 1 or digit_titles(page, title) < _PAIR or line.j - line.i > _LONGEST_TITLE:
        return False
    if line.starts[0] >= title.starts[-1] or page.words[line.j - 1] in (".", ":", ";", ",", ")"):
        return False
    below = next((x for x in lines if x.i == line.j), None)
    if below is None or page.breaks[below.i] == Break.BLANK or len(below.cells) < len(title.cells):
        return False
    leftmost = line.starts[0] <= below.starts[0] and line.ends[0] < title.starts[1]  # no cell that goes on
    return leftmost and all(any(abs(k - at) <= 1 for k in below.starts[1:]) for at in title.starts[1:])


_PAIR = 2
_DEEPER = range(1, 6)  # characters
_OF_A_SUTURE = frozenset(["suture", "thread", "material", "size"])


def _subject(page: Page, line: Line) -> Span:
    """Return what a title of rows names, the FDP of '11. FDP repair'; where it names nothing, all of it."""
    i, j = line.cells[0]
    named = [m for m in within(page.mentions, i, j) if m.kind in ("tendon", "digit", "slip")]
    return (min(m.i for m in named), max(m.j for m in named)) if named else (i, j)


def _opens_a_paragraph(page: Page, line: Line) -> bool:
    """'Comment on table.  The middle profundus was clean, that of the ring ...': running text with its own title."""
    title, text = line.cells[0] if line.cells else (0, 0), line.cells[-1] if line.cells else (0, 0)
    titled = title != text and page.words[title[1] - 1] == "."
    return titled and text[1] - text[0] > _LONGEST_TITLE and page.words[text[1] - 1] == "."


def _ends_a_sentence(page: Page, title: Line) -> bool:
    """'to allow  access.   A4 preserved.   F.D.P.  -  4 strand': running text with wide gaps, of a fax."""
    told = {m.j for m in page.mentions if m.kind in ("opened", "extent", "deed") and title.i <= m.i and m.j <= title.j}
    return any(page.words[b - 1] in (".", ";") and b - 1 in told for _, b in title.cells)


def _answered(page: Page, title: Line) -> bool:
    """'strands 4   suture 4-0 Ethibond   knot inside   purchase 9 mm': labels that have their answers beside them."""
    told = [page.words[i + 1 : j] for i, j in title.cells if page.words[i].isalpha()]
    figures = [words for words in told if any(w[0].isdecimal() for w in words)]
    sized = any(w == "mm" or w.endswith(("-0", "/0")) for words in figures for w in words)
    return sized and len(figures) >= _PAIR and digit_titles(page, title) < _PAIR


def _tells_a_share(page: Page, title: Line) -> bool:
    """'FCR | half, radial side' is a row."""
    return any(m.kind in ("fraction", "extent") for m in within(page.mentions, title.i, title.j))


def _name_rows(page: Page, lines: list[Line]) -> bool:
    """Tell whether lines of three cells each begin with a tendon or another structure: rows of a grid."""
    kinds = ("tendon", "sided", "anynerve", "anyartery")
    starts = [line.cells[0] for line in lines if len(line.cells) == 3]
    return len(starts) == 3 and all(any(m.kind in kinds for m in within(page.mentions, i, j)) for i, j in starts)


def _numbers_lines(page: Page, lines: list[Line], n: int) -> bool:
    """Tell whether line n is a numbered line of a form, '7  Procedure  ...', with the next number below it."""
    first, after = lines[n].cells[0], lines[n + 1].cells[:1] if n + 1 < len(lines) else []
    if first[1] - first[0] != 1 or not after or after[0][1] - after[0][0] != 1:
        return False
    number, below = page.words[first[0]], page.words[after[0][0]]
    return number.isdecimal() and below.isdecimal() and int(below) == int(number) + 1


def _is_row(page: Page, title: Line) -> bool:
    """Tell whether a line that looks like titles is a row of its own: 'INDEX FDP   strands 4   thread Prolene 4/0'."""
    first, last = title.cells[0]
    kinds = {m.kind for m in within(page.mentions, first, last)}
    figures = any(w[:1].isdecimal() for i, j in title.cells[1:] if j - i > 1 for w in page.words[i:j])
    return kinds >= {"digit", "tendon"} and figures


def _like_the_next(page: Page, lines: list[Line], n: int) -> bool:
    """'Ring   A2   distal half vented' above 'Ring   A4   intact': rows of a grid without titles."""
    title, after = lines[n], lines[n + 1] if n + 1 < len(lines) else None
    if after is None or not after.cells or after.starts[0] != title.starts[0]:
        return False
    kinds = [{m.kind[:5] for m in within(page.mentions, *line.cells[0])} for line in (title, after)]
    return not kinds[0].isdisjoint(kinds[1] & {"digit", "tendo"})


def _goes_on(page: Page, title: Line, line: Line) -> bool:
    """Tell whether a line only goes on with the cells above it: it starts right of the labels."""
    own = [page.words[a] not in _LABELS or b - a > 1 for a, b in title.cells]
    first = title.starts[own.index(True)] if True in own else 0
    return bool(line.cells) and first >= _LABELS_WIDE and line.starts[0] >= first - 1


def _titles_again(page: Page, title: Line, line: Line) -> bool:
    """Tell whether a line begins with the same title as the grid above: another grid starts."""
    own, other = title.cells[0], line.cells[0]
    return page.words[own[0]] in _LABELS and page.words[own[0] : own[1]] == page.words[other[0] : other[1]]


def _label_of_a_form(page: Page, line: Line, body: list[Line]) -> bool:
    """Tell whether a line starts with a label and colon, 'Percent if partial:', as no row above it does."""
    ends = [page.words[row.cells[0][1] - 1] for row in (*body, line)]
    return ends[-1] == ":" and ":" not in ends[:-1]


def _read_grid(page: Page, title: Line, body: list[Line]) -> None:
    """Replace the sentences of a grid's rows by one for each filled cell."""
    labels = [n for n, (a, b) in enumerate(title.cells) if page.words[a] in _LABELS and b - a == 1]
    sentences: list[Sentence] = []
    block = max((s.block for s in page.sentences), default=0)
    prefix: list[Span] = []
    places_above: list[int | None] = []
    above: dict[int | None, list[Span]] = {}  # the cells of the row so far, by column
    heads: dict[int, Span] = {}  # the labels of the row before, by column
    over: list[Span] = []  # the title of the rows since: '11. FDP repair'
    parent: tuple[int, Span] | None = None  # the last row that stands no deeper than those before, and where it begins
    for line in body:
        if len(line.cells) == 1 and _heads_rows(page, title, line, body):
            over, prefix, heads, parent = [_subject(page, line)], [], {}, None
            sentences.append(_sentence(page, line.i, line.j, "label", block, []))
            continue
        if _twice_labelled(page, title, line):
            sentences += _side_by_side(page, title, line, block)
            continue
        places = [_column(title, line, n) for n in range(len(line.cells))]
        own = [n for n, place in enumerate(places) if place in labels or place is None]
        goes_on = bool(prefix) and bool(labels) and not own
        hangs = bool(prefix) and not own and None in places_above and _goes_on(page, title, line)
        if goes_on or hangs:  # a cell that took two lines
            sentences += _cells(page, title, line, places, [], prefix, block, above)
            _note_above(above, line, places)
            continue
        places_above, above = places, {}
        _note_above(above, line, places)
        own = own or [n for n, place in enumerate(places) if place == 0] or [0]  # 'FDS  MF' under one title
        prefix = [line.cells[n] for n in own]
        taken = _labels_above(labels, places, heads)
        heads = {p: line.cells[n] for n, p in enumerate(places) if p is not None and p in labels} | taken
        number = _number(page, title, line, places)
        page.rows.append(
            Row(number, line.i, line.j, (prefix[0][0] + (prefix[0][0] == line.i and number != ""), prefix[-1][1]))
        )
        kind = "narrative" if names_a_part(page, prefix) and not _only_asked(page, title, prefix) else "label"
        sentences.append(_sentence(page, prefix[0][0], prefix[-1][1], kind, block, []))
        prefix = [*(taken[place] for place in sorted(taken)), *prefix, *over]
        deeper = parent is not None and line.starts[0] - parent[0] in _DEEPER
        if parent is not None and deeper and (over or page.words[line.cells[0][0]] in _OF_A_SUTURE):
            prefix = [parent[1], *prefix]  # '  suture   6-0 PDS' below 'Circumferential   cross-stitch'
        else:
            parent = line.starts[0], line.cells[own[-1]] if page.words[line.cells[0][0]].isdecimal() else line.cells[0]
        sentences += _cells(page, title, line, places, own, prefix, block)
    first, last = body[0].i, body[-1].j
    kept = [s for s in page.sentences if s.j <= first or s.i >= last]
    for s in page.sentences:
        if s.i < first < s.j:
            kept.append(Sentence(s.i, first, s.section, s.block, s.label))
        if s.i < last < s.j:
            kept.append(Sentence(last, s.j, s.section, s.block, s.label))
    page.sentences = sorted([*kept, *sentences], key=lambda s: s.i)
    for sentence in page.sentences if _only_asks(page, title) else ():
        if title.i <= sentence.i and sentence.j <= title.j:
            sentence.section = "label"


def _twice_labelled(page: Page, title: Line, line: Line) -> bool:
    """'FDP cut ..... no     FDP cut ..... yes' below 'INDEX     MIDDLE': the same label once more in each column."""
    if len(line.cells) != 2 * len(title.cells) or digit_titles(page, title) < len(title.cells):
        return False
    labels = [page.words[i:j] for i, j in line.cells[::2]]
    return all(label == labels[0] for label in labels[1:])


def _side_by_side(page: Page, title: Line, line: Line, block: int) -> list[Sentence]:
    """Return a cell for each answer of such a line, told with its own label and the title above it."""
    made: list[Sentence] = []
    for head, label, cell in zip(title.cells, line.cells[::2], line.cells[1::2], strict=True):
        if not _empty(page, cell):
            section = _section_asked(page, [label]) or "narrative"
            made += [_sentence(page, i, j, section, block, [label, head]) for i, j in _sentences_of(page, cell)]
    return made


def _only_asks(page: Page, title: Line) -> bool:
    """'Finger   Tension   Peripheral suture': titles tell nothing of themselves, unless they hold findings already."""
    told = any(m.kind in _TOLD for m in within(page.mentions, title.i, title.j))
    words = page.words[title.i : title.j]
    return not told and "." not in words and not any(w[0].isdecimal() for w in words)


_TOLD = frozenset(["glide", "side", "ends", "extent", "zone", "splint"])


def _labels_above(labels: list[int], places: list[int | None], heads: dict[int, Span]) -> dict[int, Span]:
    """'RING  FDP  cut', then '      A2   vented': a blank under the first titles stands for the label above it."""
    own = [place for place in places if place is not None and place in labels]
    return {n: heads[n] for n in labels if own and n < min(own) and n in heads}


def _note_above(above: dict[int | None, list[Span]], line: Line, places: list[int | None]) -> None:
    """Remember the cells of a line of a row, by column, for those that go on below them."""
    for place, cell in zip(places, line.cells, strict=True):
        above.setdefault(place, []).append(cell)


def _open_end(page: Page, cells: list[Span], cell: Span) -> list[Span]:
    """Return what the lines of a cell leave open: of 'radial slip', 'cut, ulnar' above 'slip whole' the 'ulnar'.

    '+ 6-0 Prolene, running' adds to all that stands above it.
    """
    if page.words[cell[0]] in _ADDS:
        return cells
    if any(m.i == cell[0] and m.kind in _OWN_LABEL for m in within(page.mentions, *cell)):
        return []  # 'A4: distal half divided' above 'A5: excised'
    found: list[Span] = []
    for i, j in reversed(cells):
        stops = [k for k in range(i, j - 1) if page.words[k] in _STOPS]  # 'Adelaide 4-strand,' lists what goes on
        first = stops[-1] + 1 if stops else i
        whole = " ".join(w for w in page.words[first:j] if w not in _STOPS)
        found += [(first, j)] if whole and whole not in _LEFT_OUT else []
        if stops:
            break
    return found[::-1]


_LEFT_OUT = word_list("standing", "after")  # 'left out,' above '5-0 not in stock' says all it has to say
_ADDS = frozenset(["+", "&", "and", "then", "plus", "with"])
_OWN_LABEL = ("tendon", "slip", "pulley", "structure", "sided", "anynerve", "anyartery", "role")
_STOPS = frozenset([",", ";", ".", ":", "(", ")"])


def _cells(
    page: Page,
    title: Line,
    line: Line,
    places: list[int | None],
    own: list[int],
    prefix: list[Span],
    block: int,
    above: dict[int | None, list[Span]] | None = None,
) -> list[Sentence]:
    """Return a sentence for each filled cell of a row that is no label of it; `above`: what its cells go on with."""
    made = []
    for n, cell in enumerate(line.cells):
        column = places[n]
        if n in own or column is None:
            continue
        head = title.cells[column]
        if _empty(page, cell) and not _nil_cut(page, head, cell):
            continue
        if _nothing_taken(page, [*prefix, head], cell):
            continue
        section = _section_asked(page, [head]) or _section_asked(page, prefix) or "narrative"
        cell = _left_of(page, line, n, own) if page.words[cell[0] : cell[1]] in _DITTO else cell
        told = [*prefix, head, *_open_end(page, (above or {}).get(column, []), cell)]
        made += [_sentence(page, i, j, section, block, told) for i, j in _sentences_of(page, cell)]
    return made


def _nil_cut(page: Page, head: Span, cell: Span) -> bool:
    """'FDS   nil' under 'Cut': none of it was cut; under 'Core' it would say nothing."""
    return page.words[cell[0] : cell[1]] == ["nil"] and not _ASKS_CUT.isdisjoint(page.words[head[0] : head[1]])


_ASKS_CUT = frozenset(["cut", "cut?", "divided", "division", "laceration"])


def _section_asked(page: Page, prefix: list[Span]) -> str:
    """Return what a row's first label asks for, by its first word: '5  Zone', 'Flexor zone', 'Suture'."""
    words = [page.words[k] for i, j in prefix for k in range(i, j)]
    if words[:1] and words[0] in _NAMED_TENDONS and _SECTIONS.get("".join(words[1:2])) == "zone":
        return "zone"  # 'FDP zone   II   II   IIC'
    return _SECTIONS.get(next((w for w in words if not w.isdecimal() and w not in _OF_FLEXORS), ""), "")


_OF_FLEXORS = frozenset(["flexor", "flexors", "tendon", "tendons"])
_NAMED_TENDONS = frozenset(["fdp", "fds", "fpl", "profundus", "superficialis"])

_DITTO = (["same"], ["ditto"], ["idem"], ["as", "left"], ["do"], ["do", "."])


def _left_of(page: Page, line: Line, n: int, own: list[int]) -> Span:
    """Return the nearest cell to the left that a cell 'same' or 'ditto' repeats; itself where there is none."""
    told = [k for k in range(n) if k not in own and page.words[line.cells[k][0] : line.cells[k][1]] not in _DITTO]
    return line.cells[told[-1]] if told else line.cells[n]


def _sentences_of(page: Page, cell: Span) -> list[Span]:
    """Cut a cell that tells several things, '4 mm trimmed. Cruciate, 3-0 Ethibond. Epitendinous 5-0', at its stops."""
    found: list[Span] = []
    i, last = cell
    while i < last:
        j = min(sentence_end(page, i), last)
        found.append((i, j))
        i = j
    return found


def _only_asked(page: Page, title: Line, labels: list[Span]) -> bool:
    """'FDP tension', 'FDS division' beside fingers in columns: what the cells answer; not of which finger."""
    kinds = {m.kind for i, j in labels for m in within(page.mentions, i, j)}
    return kinds.isdisjoint(("digit", "digit?")) and digit_titles(page, title) >= _PAIR


def _nothing_taken(page: Page, labels: list[Span], cell: Span) -> bool:
    """'FDP, taken away   5 mm   none': no length, and nothing is said of what became of the tendon."""
    asked = {w for i, j in labels for w in page.words[i:j]}
    return page.words[cell[0]] in _NOUGHT and cell[1] - cell[0] == 1 and not asked.isdisjoint(_TAKEN)


_NOUGHT = frozenset(["none", "nil", "no", "0", "nothing"])
_TAKEN = frozenset(["away", "off", "back", "shortened", "trimmed", "trimming", "debrided"])


def _sentence(page: Page, i: int, j: int, section: str, block: int, prefix: list[Span]) -> Sentence:
    return Sentence(i, j, section, block, True, prefix)


def _column(title: Line, line: Line, n: int) -> int | None:
    """Return the column a cell stands under; None for a label left of the first title."""
    if title.tabs and line.tabs:  # a tab has no width of its own: the cells of a column follow as many tabs
        return title.tabs.index(line.tabs[n]) if line.tabs[n] in title.tabs else None
    if title.bars and title.all_bars == line.all_bars and len(set(line.bars)) == len(line.bars):
        return title.bars.index(line.bars[n]) if line.bars[n] in title.bars else None
    start, end = line.starts[n], line.ends[n]
    beside = line.ends[0] <= title.starts[0] or line.starts[0] > title.ends[0]  # a label, or no cell under the first
    if len(line.cells) == len(title.cells) and not (beside and title.starts[0] >= _LABELS_WIDE):
        return n
    if n == 0 and end <= title.starts[0] + 1:
        return None
    overlaps = [min(end, title.ends[k]) - max(start, title.starts[k]) for k in range(len(title.cells))]
    best = max(range(len(overlaps)), key=lambda k: overlaps[k])
    if overlaps[best] > 0:
        return best
    before = [k for k in range(len(title.cells)) if title.starts[k] <= start + 2]
    return before[-1] if before else None


def _number(page: Page, title: Line, line: Line, places: list[int | None]) -> str:
    if page.words[title.cells[0][0]] in ("line", "no", "nr", "row", "#") and places[0] == 0:
        return page.words[line.cells[0][0]]
    return ""


def _empty(page: Page, cell: Span) -> bool:
    return all(w in _NOTHING for w in page.words[cell[0] : cell[1]])


def zone_value(words: list[str]) -> str | None:
    """Read the words of a zone cell or of 'Zone: II' as a zone, or None."""
    words = [w for w in words if not w.startswith("..") and w not in _ZONE_VALUE_WORDS_2]
    if not words:
        return None
    word = words[0]
    letter = word[-1] if len(word) > 1 and word[-1] in _LETTERS and word[:-1] in _ROMAN else ""
    base = _ROMAN.get(word[:-1] if letter else word)
    if base is None:
        return None
    if not letter and len(words) > 1 and words[1] in _LETTERS and base in ("I", "II"):
        letter = words[1]
    value = base + _LETTERS.get(letter, "")
    return value if value in _ZONE_VALUE_WORDS else None
