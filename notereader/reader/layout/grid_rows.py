"""The rows of a grid read line by line: every filled cell becomes a sentence, told with its labels."""

from notereader.reader.layout.ditto_signs import is_ditto_sign
from notereader.reader.layout.grid_fingers import (
    digit_titles,
    names_a_part,
)
from notereader.reader.layout.grid_lines import Line, Row, Span
from notereader.reader.layout.sentences import sentence_end
from notereader.reader.page import Break, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

# Titles of columns that say which tendon a row is about; the other columns hold what is said of it.
LABELS = word_list("tables", "labels")
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
_NOTHING = word_list("tables", "nothing")
_LABELS_WIDE = 6  # characters; titles that start right of this leave room for labels of rows
LONGEST_TITLE = 9  # words
PAIR = 2
_DEEPER = range(1, 6)  # characters
_OF_A_SUTURE = frozenset(["suture", "thread", "material", "size"])


def read_grid(page: Page, title: Line, body: list[Line]) -> None:
    """Replace the sentences of a grid's rows by one for each filled cell."""
    grid = _Grid(page, title, max((s.block for s in page.sentences), default=0))
    for line in body:
        grid.read(line, body)
    _replace_sentences(page, body[0].i, body[-1].j, grid.sentences)
    for sentence in page.sentences if _only_asks(page, title) else ():
        if title.i <= sentence.i and sentence.j <= title.j:
            sentence.section = "label"


def _replace_sentences(page: Page, first: int, last: int, made: list[Sentence]) -> None:
    """Put sentences in the place of those from word first to last, which keep what stands before and behind it."""
    kept = [s for s in page.sentences if s.j <= first or s.i >= last]
    for s in page.sentences:
        if s.i < first < s.j:
            kept.append(Sentence(s.i, first, s.section, s.block, s.label))
        if s.i < last < s.j:
            kept.append(Sentence(last, s.j, s.section, s.block, s.label))
    page.sentences = sorted([*kept, *made], key=lambda s: s.i)


class _Grid:
    """A grid as far as it was read, line by line, and the sentences made of it."""

    def __init__(self, page: Page, title: Line, block: int) -> None:
        self.sentences: list[Sentence] = []
        self._page = page
        self._title = title
        self._block = block
        self._fingers_across = digit_titles(page, title) >= PAIR
        self._labels = [n for n, (a, b) in enumerate(title.cells) if page.words[a] in LABELS and b - a == 1]
        self._prefix: list[Span] = []  # the labels of the row
        self._places: list[int | None] = []  # the columns of the row's first line
        self._above: dict[int | None, list[Span]] = {}  # the cells of the row so far, by column
        self._told: dict[int, Span] = {}  # the last cell that each column told, for those that repeat it
        self._heads: dict[int, Span] = {}  # the labels of the row before, by column
        self._over: list[Span] = []  # the title of the rows since: '11. FDP repair'
        # The last row that stands no deeper than those before, and where it begins.
        self._parent: tuple[int, Span] | None = None

    def read(self, line: Line, body: list[Line]) -> None:
        """Read the next line: a title of rows, a line that goes on with the row above, or a row."""
        page, title = self._page, self._title
        if len(line.cells) == 1 and heads_rows(page, title, line, body):
            self._over, self._prefix, self._heads, self._parent = [_subject(page, line)], [], {}, None
            self._add(line.i, line.j, "label", [])
            return
        if _twice_labelled(page, title, line):
            self._read_side_by_side(line)
            return
        places = [_column(title, line, n) for n in range(len(line.cells))]
        if self._continues(line, places):
            self._read_cells(line, places, [])
            self._note_above(line, places)
        else:
            self._read_row(line, places)

    def _continues(self, line: Line, places: list[int | None]) -> bool:
        """Tell whether a line goes on with cells of the row above that took two lines."""
        if not self._prefix or any(place in self._labels or place is None for place in places):
            return False
        title = self._title
        barred = bool(title.bars and line.bars) and title.all_bars == line.all_bars and title.bars[0] == 1
        if barred and line.bars[0] > 1:
            return True  # '| index FDP | Tsuge | 4/0 nylon |' above '|           |       | looped    |'
        return bool(self._labels) or (None in self._places and goes_on(self._page, self._title, line))

    def _read_row(self, line: Line, places: list[int | None]) -> None:
        """Read a row: what its labels say of it, then its cells."""
        page, title = self._page, self._title
        own = [n for n, place in enumerate(places) if place in self._labels or place is None]
        own = own or [n for n, place in enumerate(places) if place == 0] or [0]  # 'FDS  MF' under one title
        prefix = [line.cells[n] for n in own]
        number = _number(page, title, line, places)
        first = prefix[0][0] + (prefix[0][0] == line.i and number != "")
        page.rows.append(Row(number, line.i, line.j, (first, prefix[-1][1])))
        tells = names_a_part(page, prefix) and not _only_asked(page, title, prefix)
        self._add(prefix[0][0], prefix[-1][1], "narrative" if tells else "label", [])
        self._prefix = [*self._labels_above(line, places), *prefix, *self._over]
        self._stand_below(line, own)
        self._above = {}
        self._read_cells(line, places, own)
        self._places = places
        self._note_above(line, places)

    def _labels_above(self, line: Line, places: list[int | None]) -> list[Span]:
        """'RING  FDP  cut', then '      A2   vented': a blank under the first titles stands for the label above it."""
        labelled = [place for place in places if place is not None and place in self._labels]
        taken = {n: self._heads[n] for n in self._labels if labelled and n < min(labelled) and n in self._heads}
        self._heads = {p: line.cells[n] for n, p in enumerate(places) if p is not None and p in self._labels} | taken
        return [taken[place] for place in sorted(taken)]

    def _stand_below(self, line: Line, own: list[int]) -> None:
        """'  suture   6-0 PDS' below 'Circumferential   cross-stitch': a row that stands deeper is of the one above."""
        opens = self._page.words[line.cells[0][0]]
        deeper = self._parent is not None and line.starts[0] - self._parent[0] in _DEEPER
        if self._parent is not None and deeper and (self._over or opens in _OF_A_SUTURE):
            self._prefix = [self._parent[1], *self._prefix]
        else:
            self._parent = line.starts[0], line.cells[own[-1]] if opens.isdecimal() else line.cells[0]

    def _note_above(self, line: Line, places: list[int | None]) -> None:
        """Remember the cells of a line of a row, by column, for those that go on below them."""
        for place, cell in zip(places, line.cells, strict=True):
            self._above.setdefault(place, []).append(cell)

    def _read_cells(self, line: Line, places: list[int | None], own: list[int]) -> None:
        """Make a sentence of each filled cell of a line that is no label, told with what the cell above leaves open."""
        page = self._page
        for n, cell in enumerate(line.cells):
            column = places[n]
            if n in own or column is None:
                continue
            head = self._title.cells[column]
            if is_ditto_sign(page, cell):
                if column not in self._told or self._fingers_across:
                    continue  # what it repeats is not known
                cell = self._told[column]
            self._told[column] = cell
            if _empty(page, cell) and not _nil_cut(page, head, cell):
                continue
            if _nothing_taken(page, [*self._prefix, head], cell):
                continue
            section = _section_asked(page, [head]) or _section_asked(page, self._prefix) or "narrative"
            cell = _left_of(page, line, n, own) if page.words[cell[0] : cell[1]] in _DITTO else cell
            told = [*self._prefix, head, *_open_end(page, self._above.get(column, []), cell)]
            for i, j in _sentences_of(page, cell):
                self._add(i, j, section, told)

    def _read_side_by_side(self, line: Line) -> None:
        """Make a sentence of each answer of a line with two labels, told with its own label and the title above it."""
        for head, label, cell in zip(self._title.cells, line.cells[::2], line.cells[1::2], strict=True):
            if not _empty(self._page, cell):
                section = _section_asked(self._page, [label]) or "narrative"
                for i, j in _sentences_of(self._page, cell):
                    self._add(i, j, section, [label, head])

    def _add(self, i: int, j: int, section: str, prefix: list[Span]) -> None:
        self.sentences.append(Sentence(i, j, section, self._block, True, prefix))


def heads_rows(page: Page, title: Line, line: Line, lines: list[Line]) -> bool:
    """'11. FDP repair' alone on its line, above more rows under the same fingers: the title of these rows."""
    if len(line.cells) != 1 or digit_titles(page, title) < PAIR or line.j - line.i > LONGEST_TITLE:
        return False
    if line.starts[0] >= title.starts[-1] or page.words[line.j - 1] in (".", ":", ";", ",", ")"):
        return False
    below = next((x for x in lines if x.i == line.j), None)
    if below is None or page.breaks[below.i] == Break.BLANK or len(below.cells) < len(title.cells):
        return False
    leftmost = line.starts[0] <= below.starts[0] and line.ends[0] < title.starts[1]  # no cell that goes on
    return leftmost and all(any(abs(k - at) <= 1 for k in below.starts[1:]) for at in title.starts[1:])


def _subject(page: Page, line: Line) -> Span:
    """Return what a title of rows names, the FDP of '11. FDP repair'; where it names nothing, all of it."""
    i, j = line.cells[0]
    named = [m for m in within(page.mentions, i, j) if m.kind in ("tendon", "digit", "slip")]
    return (min(m.i for m in named), max(m.j for m in named)) if named else (i, j)


def goes_on(page: Page, title: Line, line: Line) -> bool:
    """Tell whether a line only goes on with the cells above it: it starts right of the labels."""
    own = [page.words[a] not in LABELS or b - a > 1 for a, b in title.cells]
    first = title.starts[own.index(True)] if True in own else 0
    return bool(line.cells) and first >= _LABELS_WIDE and line.starts[0] >= first - 1


def _twice_labelled(page: Page, title: Line, line: Line) -> bool:
    """'FDP cut ..... no     FDP cut ..... yes' below 'INDEX     MIDDLE': the same label once more in each column."""
    if len(line.cells) != 2 * len(title.cells) or digit_titles(page, title) < len(title.cells):
        return False
    labels = [page.words[i:j] for i, j in line.cells[::2]]
    return all(label == labels[0] for label in labels[1:])


def _only_asks(page: Page, title: Line) -> bool:
    """'Finger   Tension   Peripheral suture': titles tell nothing of themselves, unless they hold findings already."""
    told = any(m.kind in _TOLD for m in within(page.mentions, title.i, title.j))
    words = page.words[title.i : title.j]
    return not told and "." not in words and not any(w[0].isdecimal() for w in words)


_TOLD = frozenset(["glide", "side", "ends", "extent", "zone", "splint"])


def _open_end(page: Page, cells: list[Span], cell: Span) -> list[Span]:
    """Return what the lines of a cell leave open: of 'radial slip', 'cut, ulnar' above 'slip whole' the 'ulnar'.

    '+ 6-0 Prolene, running' adds to all that stands above it.
    """
    if page.words[cell[0]] in _ADDS:
        return cells
    if any(m.i == cell[0] and m.kind in _OWN_LABEL for m in within(page.mentions, *cell)):
        return []  # 'A4: distal half divided' above 'A5: excised'
    if page.words[cell[0] + 1 : min(cell[0] + 2, cell[1])] == [":"]:
        return []  # 'radial: repaired' above 'ulnar: intact'
    found: list[Span] = []
    for i, j in reversed(cells):
        stops = [k for k in range(i, j - 1) if page.words[k] in _STOPS]  # 'Adelaide 4-strand,' lists what goes on
        first = stops[-1] + 1 if stops else i
        whole = " ".join(w for w in page.words[first:j] if w not in _STOPS)
        found += [(first, j)] if whole and whole not in _LEFT_OUT else []
        if stops:
            break
    return [*_slip_above(page, cells, cell, found), *found[::-1]]


def _slip_above(page: Page, cells: list[Span], cell: Span, told: list[Span]) -> list[Span]:
    """'70 % radial slip; mod.' above 'Kessler 4-0': the cell goes on about the slip that it names on a line before."""
    if any(m.kind in ("slip", "border") for i, j in (cell, *told) for m in within(page.mentions, i, j)):
        return []
    slips = [m for i, j in cells for m in within(page.mentions, i, j) if m.kind == "slip"]
    return [(slips[-1].i, slips[-1].j)] if slips else []


_LEFT_OUT = word_list("standing", "after")  # 'left out,' above '5-0 not in stock' says all it has to say
_ADDS = frozenset(["+", "&", "and", "then", "plus", "with"])
_OWN_LABEL = ("tendon", "slip", "pulley", "structure", "sided", "anynerve", "anyartery", "role")
_STOPS = frozenset([",", ";", ".", ":", "(", ")"])


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
    return kinds.isdisjoint(("digit", "digit?")) and digit_titles(page, title) >= PAIR


def _nothing_taken(page: Page, labels: list[Span], cell: Span) -> bool:
    """'FDP, taken away   5 mm   none': no length, and nothing is said of what became of the tendon."""
    asked = {w for i, j in labels for w in page.words[i:j]}
    return page.words[cell[0]] in _NOUGHT and cell[1] - cell[0] == 1 and not asked.isdisjoint(_TAKEN)


_NOUGHT = frozenset(["none", "nil", "no", "0", "nothing"])
_TAKEN = frozenset(["away", "off", "back", "shortened", "trimmed", "trimming", "debrided"])


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
