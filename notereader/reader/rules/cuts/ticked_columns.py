"""Crosses under titles that say how far: 'intact   part   whole' over 'FDS index   x', with no box drawn.

Which title a cross stands under is told by its place on the line alone. A column 'not seen' says nothing of its rows.
"""

from notereader.reader.desk import Desk
from notereader.reader.layout.grid_lines import Line, lines_of
from notereader.reader.page import Break, Page, within
from notereader.reader.rules.structures.structures import parts_of
from notereader.reader.scene import group_targets
from notereader.vocabulary.wordlists import word_list

Column = tuple[int, int, str]  # where its title begins and ends on its line, and what it says

_CROSSES = frozenset(["x", "v", "yes"])
_STATES = {
    **dict.fromkeys(word_list("forms", "column_intact"), "intact"),
    **dict.fromkeys(word_list("forms", "cut_in_part"), "partial"),
    **dict.fromkeys(word_list("forms", "column_complete"), "complete"),
}
_UNKNOWN = word_list("forms", "column_unknown")
_ASIDE = 2  # characters a cross may stand beside its title


def ticked_columns(desk: Desk) -> None:
    """Lay down how far each tendon, nerve and artery was cut whose cross stands under such a title."""
    page = desk.page
    if _CROSSES.isdisjoint(page.words) or _STATES.keys().isdisjoint(page.words):
        return
    columns: list[Column] = []
    for line in lines_of(page):
        if page.breaks[line.i] == Break.BLANK:
            columns = []
        titles = _columns(page, line)
        if titles:
            columns = titles
        elif columns:
            _read_row(desk, line, columns)


def _columns(page: Page, line: Line) -> list[Column]:
    """Return the columns of a line of such titles, [] of any other line; a word ahead of them names the rows."""
    said = [_says(page.words[i:j]) for i, j in line.cells]
    titles = list(zip(line.starts, line.ends, said, strict=True))
    titles = titles[1:] if said[:1] == [""] else titles
    states = [state for _, _, state in titles if state in _STATES.values()]
    known = all(state for _, _, state in titles) and len(set(states)) == len(states) > 1
    return titles if known and "intact" in states else []


def _says(title: list[str]) -> str:
    """Return what a title says of its rows, "?" for one that says nothing, and "" for a word that is no title."""
    if len(title) == 1:
        return _STATES.get(title[0], "?" if title[0] in _UNKNOWN else "")
    return "?" if title[0] == "not" or title[-1] in _UNKNOWN else ""


def _read_row(desk: Desk, line: Line, columns: list[Column]) -> None:
    """Lay down what the one cross of a row says of what the row names left of the titles."""
    page, first = desk.page, columns[0][0]
    crosses = [n for n, (i, j) in enumerate(line.cells) if j == i + 1 and page.words[i] in _CROSSES]
    if len(crosses) != 1 or not crosses[0] or line.ends[0] > first + _ASIDE:
        return
    at, (k, _) = line.starts[crosses[0]], line.cells[crosses[0]]
    under = [state for a, b, state in columns if a - _ASIDE <= at <= b + _ASIDE - 1]
    if len(under) != 1 or under[0] == "?" or page.standing[k] or not _only_name(page, line, crosses[0]):
        return
    scene, span = desk.scene_at(line.i), [(line.i, k + 1)]
    for group in (g for g in scene.setting.groups if g.tendons and line.i <= g.i < k and not g.reference):
        for target in group_targets(scene, group):
            desk.tendon(scene, target, "extent", under[0], span, f"ticked as {under[0]}")
    for part in (p for p in parts_of(desk, scene) if line.i <= p.i < k):
        for digit in part.digits or (None,):
            for side in part.sides:
                desk.add(
                    scene, "injuries", (digit, part.structure, side), "extent", under[0], span, f"ticked as {under[0]}"
                )


def _only_name(page: Page, line: Line, n: int) -> bool:
    """Tell whether nothing but the name of the row stands before its cross in cell n, which is cell 0."""
    i, j = line.cells[0]
    named = any(m.kind in ("tendon", "structure", "sided") for m in within(page.mentions, i, j))
    return n == 1 and named
