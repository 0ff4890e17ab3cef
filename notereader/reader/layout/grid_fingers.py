"""Grids whose rows or columns are headed by fingers, however these are named: 'Ring', 'dig IV (ring)', 'IV'."""

from notereader.reader.groups import DIGITS
from notereader.reader.layout.grid_lines import Line, Span
from notereader.reader.page import Break, Mention, Page, within

_PAIR = 2


def digit_titles(page: Page, title: Line) -> int:
    """Return how many cells of a line name a finger, a tendon or a pulley."""
    kinds = ("digit", "digit?", "tendon", "pulley", "border")
    named = [m for m in within(page.mentions, title.i, title.j) if m.kind in kinds]
    digits = {m.i for m in named if m.kind != "digit?" or _is_all_of_a_cell(page, title, m)}
    return sum(any(a <= k < b for k in digits) for a, b in title.cells)


def _is_all_of_a_cell(page: Page, title: Line, m: Mention) -> bool:
    """Tell whether a word that only may name a finger fills its cell: 'Little', and not '2nd operator'."""
    cell = next(((i, j) for i, j in title.cells if i <= m.i < j), (m.i, m.j))
    if page.words[m.j : m.j + 1] == ["("] and m.i == cell[0] and page.words[cell[1] - 1] == ")":
        return True  # 'Fourth (annular)'
    return only_names(page, cell)


def only_names(page: Page, cell: Span) -> bool:
    """Tell whether a title names a finger and nothing else: 'Little', 'dig IV (ring)', 'Ring, left', 'middle = D3'."""
    digits = [m for m in within(page.mentions, *cell) if m.kind in ("digit", "digit?") and m.j <= cell[1]]
    named = {k for m in digits for k in range(m.i, m.j)}
    rest = {w for k, w in enumerate(page.words[cell[0] : cell[1]], cell[0]) if k not in named}
    return len({m.value for m in digits}) == 1 and rest <= _BESIDE_A_NAME


def fingers_below(page: Page, title: Line, lines: list[Line]) -> bool:
    """Tell whether the lines below begin with the names of fingers, one each, with a cell for each title."""
    heads = [row.cells[0] for row in _rows_below(page, title, lines)]
    digits = {m.value for i, j in heads for m in within(page.mentions, i, j) if m.kind in ("digit", "digit?")}
    return len(digits) == len(heads) >= _PAIR and all(only_names(page, head) for head in heads)


def _rows_below(page: Page, title: Line, lines: list[Line]) -> list[Line]:
    """Return the lines below a title, as far as they have a cell for each of its words."""
    rows: list[Line] = []
    for line in lines:
        if _without_label(title, line) and page.breaks[line.i] != Break.BLANK:
            continue
        if page.breaks[line.i] == Break.BLANK or (line.cells and not _like_titles(title, line)):
            break
        rows += [line] if line.cells else []  # 'Finger   FDP   FDS' may be ruled off
    return rows


def _without_label(title: Line, row: Line) -> bool:
    """'|   | 4-0 Ethibond |   |': a row with nothing under the first title goes on with the one above."""
    return bool(title.bars and row.bars) and title.all_bars == row.all_bars and row.bars[0] > title.bars[0]


def _like_titles(title: Line, line: Line) -> bool:
    """Tell whether a line has cells below most titles, and may have one more, for its label."""
    barred = title.all_bars == line.all_bars > 0
    filled = len(title.cells) // 2 <= len(line.cells) <= len(title.cells) + 1  # no blank is a cell
    return len(line.cells) > _PAIR and (barred or filled)


def confirm_fingers(page: Page, title: Line, body: list[Line]) -> None:
    """'Small, left   Middle f.': what only may name a finger does so at the heads of a grid, and 'left' is a side."""
    columns = [cell for cell in title.cells if only_names(page, cell)]
    rows = [row.cells[0] for row in body if row.cells and only_names(page, row.cells[0])]
    cells = [cell for heads in (columns, rows) if len(heads) >= _PAIR for cell in heads]
    for m in (m for cell in cells for m in within(page.mentions, *cell)):
        m.kind = "digit" if m.kind == "digit?" else m.kind
    heads = {k for i, j in cells for k in range(i, j)}
    page.mentions = [m for m in page.mentions if m.i not in heads or m.kind in ("digit", "side", "plural")]


_RAYS = {"ii": "index", "iii": "middle", "iv": "ring", "v": "small"}
_RAYS |= {"2": "index", "3": "middle", "4": "ring", "5": "small"}
_BESIDE_A_NAME = frozenset(["finger", "ray", "digit", "dig", "f", "fing", "hand", "l", "r", "left", "right", "the"])
_BESIDE_A_NAME |= frozenset(["(", ")", ".", ",", "/", "-", "=", *_RAYS])


def number_the_fingers(page: Page, lines: list[Line]) -> None:
    """'      II      IV' above 'FDP cut', 'Finger   3   4': bare numbers that head a grid are those of the fingers."""
    found: list[Mention] = []
    for n, title in enumerate(lines[:-1]):
        led = [k for k, (a, b) in enumerate(title.cells) if not _FINGERS.isdisjoint(page.words[a:b])] == [0]
        heads = title.cells[led:]
        rows = [line for line in lines[n + 1 : n + 4] if len(line.cells) == len(heads) + 1]
        if rows and (led or any(names_a_part(page, row.cells[:1]) for row in rows)):
            found += _rays(page, heads, led)
        below = [line for line in lines[n + 1 : n + 4] if len(line.cells) == len(title.cells)]
        if not led and any(names_a_part(page, row.cells[:1]) for row in below):
            found += _rays(page, title.cells[1:], led)  # 'pulley | II | III' above 'A2 | intact | open'
        told = {w for a, b in title.cells for w in page.words[a:b]}
        below = _rows_below(page, title, lines[n + 1 :])
        if led or ("zone" in told and page.words[title.i] != "zone"):  # 'II' below no other title may be a zone
            by_number = _rays(page, [row.cells[0] for row in below], led, repeated=led)
            found += by_number or (_fingers_by_tendon(page, below) if led else [])
    if found:
        taken = {k for m in found for k in range(m.i, m.j)}
        others = [m for m in page.mentions if m.kind not in ("digit", "digit?") or m.i not in taken]
        page.mentions = sorted([*others, *found], key=lambda m: m.i)


_FINGERS = frozenset(["finger", "fingers", "digit", "digits", "ray", "rays", "dig", "fing"])


def _rays(page: Page, heads: list[Span], led: bool, *, repeated: bool = False) -> list[Mention]:
    """Return the fingers that bare numbers stand for; Arabic ones only `led` by a title that asks for the finger.

    `repeated`: a finger may have a row for each of its tendons.
    """
    words = [page.words[a] for a, b in heads if b - a == 1]
    rays = [_RAYS.get(w, "") for w in words if led or not w.isdecimal()]
    alone = len(heads) == len(rays) and len(set(rays)) >= _PAIR and "" not in rays
    alone = alone and rays == sorted(rays if repeated else set(rays), key=DIGITS.index)
    return [Mention("digit", ray, a, b) for ray, (a, b) in zip(rays, heads, strict=True)] if alone else []


def _fingers_by_tendon(page: Page, rows: list[Line]) -> list[Mention]:
    """'4 | FDP', '4 | FDS', '1 | FPL' below the title 'finger': numbers that come again, one tendon beside each."""
    found: list[Mention] = []
    for row in rows:
        i, j = row.cells[0]
        named = {m.value for cell in row.cells[1:] for m in within(page.mentions, *cell) if m.kind == "tendon"}
        of_thumb = named == {"FPL"}
        ray = "thumb" if of_thumb and page.words[i] == "1" else _RAYS.get(page.words[i], "")
        if j - i > 1 or not ray or len(named) != 1 or of_thumb != (ray == "thumb"):
            return []
        found.append(Mention("digit", ray, i, j))
    return found


def names_a_part(page: Page, labels: list[Span]) -> bool:
    """Tell whether a row's labels name a digit or structure to turn to; 'lock size' or 'bulky' alone states nothing."""
    kinds = ("digit", "digit?", "tendon", "pulley", "structure", "sided")
    return any(m.kind in kinds for i, j in labels for m in within(page.mentions, i, j))
