"""Grids in a note: every filled cell becomes a sentence of its own, told with its column title and its row label.

A cell's sentence carries the words of its labels as `prefix`; the later steps read it as if they stood before the
cell ("index FDP, core: 4-0 Ethibond"), while its evidence stays in the cell.
"""

from spacy.language import Language
from spacy.tokens import Doc

from notereader.reader.layout.grid_fingers import (
    confirm_fingers,
    digit_titles,
    fingers_below,
    number_the_fingers,
    only_names,
)
from notereader.reader.layout.grid_lines import Line, cut_cells, lines_of
from notereader.reader.layout.grid_rows import LABELS, LONGEST_TITLE, PAIR, goes_on, heads_rows, read_grid
from notereader.reader.page import Break, Page, page_of, within
from notereader.vocabulary.wordlists import word_list

_BODY_OF_WORDS = word_list("tables", "body_of_words")
_ZONE_VALUE_WORDS = word_list("tables", "zone_value_words")
_ZONE_VALUE_WORDS_2 = word_list("tables", "zone_value_words_2")
_TITLES = LABELS | word_list("tables", "titles")
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
_SHORT_TITLE = 4  # words; in a grid of two columns a longer one is a finding: 'middle   both bundles intact, ...'
_FEWEST_GAPS = 3  # columns of space in the smallest grid


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
            read_grid(page, lines[n], body)
            n += len(body)
        n += 1
    return doc


def _body_of(page: Page, lines: list[Line], n: int) -> list[Line]:
    """Return the rows under line n where it is the title line of a grid, else nothing."""
    title = lines[n]
    if not _heads_a_grid(page, lines, n):
        return []
    body: list[Line] = []
    for line in lines[n + 1 :]:
        if page.breaks[line.i] == Break.BLANK and (body or _opens_a_paragraph(page, line)):
            break
        if not _is_row_below(page, title, line, lines, body):
            break
        body.append(line)
    columns = [start for start in title.starts if start > 2]
    for line in body:
        parted = line.all_bars == title.all_bars > 0 or (len(title.tabs) > PAIR and bool(line.tabs))
        cut_cells(page, line, [] if parted else columns)  # bars or tabs alone part its cells
    return body


def _heads_a_grid(page: Page, lines: list[Line], n: int) -> bool:
    """Tell whether line n is made of enough titles, and is no row, no line of a form and no running text."""
    title = lines[n]
    names_only = [only_names(page, cell) for cell in title.cells]
    cells = list(zip(title.cells, names_only, strict=True))
    short = all(name or b - a <= _SHORT_TITLE for (a, b), name in cells) and not _tells_a_share(page, title)
    if len(title.cells) < 3 and not (len(title.cells) == 2 and short and digit_titles(page, title) == 2):
        return False
    if max((b - a for a, b in title.cells), default=0) > LONGEST_TITLE:
        return False  # 'SEEN   INDEX   FDP divided, zone 2A. FDS intact.' says something already
    known = sum(page.words[a] in _TITLES or page.words[b - 1] in _TITLES for a, b in title.cells)
    lacks_one = known == 2 and len(title.cells) == 3 and _name_rows(page, lines[n + 1 : n + 4])
    led = fingers_below(page, title, lines[n + 1 :])
    if known < 3 and digit_titles(page, title) < 2 and not (lacks_one or led):
        return False
    marks = {w for (a, b), name in cells if not name for w in page.words[a:b]}
    if {":", "[", "=="} & marks and not led:  # a line of a form, not of titles
        return False
    if _numbers_lines(page, lines, n) or _is_row(page, title) or _like_the_next(page, lines, n):
        return False
    return not (_ends_a_sentence(page, title) or _answered(page, title))


def _is_row_below(page: Page, title: Line, line: Line, lines: list[Line], body: list[Line]) -> bool:
    """Tell whether a line belongs to the grid whose rows so far are given: a row, one that goes on, a title of rows."""
    if not body:
        return len(line.cells) >= 2
    if _repeats_the_fingers(page, title, line):
        return False
    if heads_rows(page, title, line, lines):
        return True
    if len(line.cells) < 2 and not _goes_with_row(page, title, line):
        return False
    return not (_titles_again(page, title, line) or _label_of_a_form(page, line, body))


def _goes_with_row(page: Page, title: Line, line: Line) -> bool:
    """'DONE   |     |' between the rows, a cell that took two lines, 'and': a line of one cell that parts no grid."""
    title_bars, bars = page.words[title.i : title.j].count("|"), page.words[line.i : line.j].count("|")
    barred = (bars >= 3 or bars == title_bars >= 2) and bool(line.cells)
    return barred or goes_on(page, title, line) or page.words[line.i] in _BODY_OF_WORDS


def _repeats_the_fingers(page: Page, title: Line, line: Line) -> bool:
    """'13. Pulleys   INDEX   MIDDLE' below '10. Tendons   INDEX   MIDDLE': another grid of the same fingers."""
    own, other = ([page.words[i:j] for i, j in x.cells[1:]] for x in (title, line))
    return len(own) > 1 and own == other and digit_titles(page, title) > 1


def _opens_a_paragraph(page: Page, line: Line) -> bool:
    """'Comment on table.  The middle profundus was clean, that of the ring ...': running text with its own title."""
    title, text = line.cells[0] if line.cells else (0, 0), line.cells[-1] if line.cells else (0, 0)
    titled = title != text and page.words[title[1] - 1] == "."
    return titled and text[1] - text[0] > LONGEST_TITLE and page.words[text[1] - 1] == "."


def _ends_a_sentence(page: Page, title: Line) -> bool:
    """'to allow  access.   A4 preserved.   F.D.P.  -  4 strand': running text with wide gaps, of a fax."""
    states = (m for m in within(page.mentions, title.i, title.j) if m.kind in ("opened", "extent", "deed"))
    told = {m.j for m in states if m.j <= title.j}
    return any(page.words[b - 1] in (".", ";") and b - 1 in told for _, b in title.cells)


def _answered(page: Page, title: Line) -> bool:
    """'strands 4   suture 4-0 Ethibond   knot inside   purchase 9 mm': labels that have their answers beside them."""
    told = [page.words[i + 1 : j] for i, j in title.cells if page.words[i].isalpha()]
    figures = [words for words in told if any(w[0].isdecimal() for w in words)]
    sized = any(w == "mm" or w.endswith(("-0", "/0")) for words in figures for w in words)
    return sized and len(figures) >= PAIR and digit_titles(page, title) < PAIR


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


def _titles_again(page: Page, title: Line, line: Line) -> bool:
    """Tell whether a line begins with the same title as the grid above: another grid starts."""
    own, other = title.cells[0], line.cells[0]
    return page.words[own[0]] in LABELS and page.words[own[0] : own[1]] == page.words[other[0] : other[1]]


def _label_of_a_form(page: Page, line: Line, body: list[Line]) -> bool:
    """Tell whether a line starts with a label and colon, 'Percent if partial:', as no row above it does."""
    ends = [page.words[row.cells[0][1] - 1] for row in (*body, line)]
    return ends[-1] == ":" and ":" not in ends[:-1]


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
