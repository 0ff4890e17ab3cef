"""Boxes of a form, under 'tick if divided' or under titles: each ticked one says so of its tendon or pulley."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.groups import Target, has
from notereader.reader.page import Break, Mention, Page, within
from notereader.reader.scene import Scene, group_targets

_ASKED = {
    **dict.fromkeys(("divided", "cut", "severed", "transected"), "complete"),
    **dict.fromkeys(("intact", "uninjured", "preserved"), "intact"),
}
_LONGEST_NAME = 4  # words before the first box of a row
_OPENED, _CLOSED, _MARKS = frozenset(["[", "("]), frozenset(["]", ")"]), frozenset(["x", "v", "y"])


def ticks(desk: Desk) -> None:
    """Lay down what the ticked boxes of the whole note say."""
    words = desk.page.words
    asked = [k for k in range(len(words) - 2) if words[k] == "tick" and words[k + 1] in ("if", "all", "when", "where")]
    for n, k in enumerate(asked):
        state = next((_ASKED[w] for w in words[k + 2 : k + 5] if w in _ASKED), "")
        limit = asked[n + 1] if n + 1 < len(asked) else len(words)
        end = next((m for m in range(k + 1, limit) if desk.page.breaks[m] == Break.BLANK), limit)
        if state:
            _read_boxes(desk, k, end, state)
    if not _OPENED.isdisjoint(words):
        _read_grids(desk)


def _read_grids(desk: Desk) -> None:
    """'PULLEYS   intact   vented   divided' over 'A1   [ ]   [x]   [ ]': the title over a ticked box is what is so."""
    page = desk.page
    starts = [k for k in range(len(page.words)) if k == 0 or page.breaks[k] >= Break.LINE]
    titles: list[tuple[int, int]] = []
    for first, last in pairwise([*starts, len(page.words)]):
        boxes = _boxes(page, first, last)
        if not boxes:
            cells = [k for k in range(first, last) if k == first or page.breaks[k] == Break.COLUMN]
            titles = list(pairwise([*cells, last]))
        elif len(boxes) > 1 and boxes[0][0] - first <= _LONGEST_NAME and len(titles) - len(boxes) in (0, 1):
            _read_row(desk, first, boxes, titles[-len(boxes) :])


def _boxes(page: Page, first: int, last: int) -> list[tuple[int, int]]:
    """Return the boxes of a line of which nothing but boxes follows the first: first word, word after."""
    opened = [k for k in range(first, last) if page.words[k] in _OPENED]
    found = [(k, k + 2 + (page.words[k + 1 : k + 2] not in ([c] for c in _CLOSED))) for k in opened]
    held = sum(j - i for i, j in found)
    whole = all(page.words[j - 1 : j] in ([c] for c in _CLOSED) for _, j in found)
    return found if found and whole and held == last - found[0][0] else []


def _read_row(desk: Desk, first: int, boxes: list[tuple[int, int]], titles: list[tuple[int, int]]) -> None:
    page, scene = desk.page, desk.scene_at(first)
    if page.standing[first] not in ("", "unticked", "unfilled"):
        return
    row = next(
        (m for m in within(page.mentions, first, boxes[0][0]) if m.kind in ("pulley", "pulley?", "tendon")), None
    )
    for (i, j), title in zip(boxes, titles, strict=True):
        if row is None or page.words[i + 1] not in _MARKS:
            continue
        said = within(page.mentions, *title)
        span = [(first, j)]
        if row.kind == "tendon":
            for m in (m for m in said if m.kind in ("extent", "deed")):
                name = "extent" if m.kind == "extent" else "treatment"
                for target in _targets(page, scene, row):
                    desk.tendon(scene, target, name, m.value, span, f"ticked as {m.value}")
            continue
        for m in (m for m in said if m.kind == "opened"):
            value = "released" if m.value == "vented" and _beside_vented(page, titles, title) else m.value
            for digit in scene.setting.digits or (None,):
                place = (_digit_of(row.value, digit), row.value, None)
                desk.add(scene, "pulleys", place, "finding", value, span, f"ticked as {value}")


def _beside_vented(page: Page, titles: list[tuple[int, int]], title: tuple[int, int]) -> bool:
    """Tell whether 'divided' is the title of a column beside one for 'vented': then it is divided through."""
    vented = [page.words[i:j] == ["vented"] for i, j in titles]
    return any(vented) and page.words[title[0] : title[1]] != ["vented"]


def _read_boxes(desk: Desk, i: int, j: int, state: str) -> None:
    page = desk.page
    for k in range(i + 2, j):
        if page.words[k - 2] in _OPENED and page.words[k - 1] in _MARKS and page.words[k] in _CLOSED:
            option = _option(page, k, i)
            if option is not None:
                _lay(desk, option, state, (min(option.i, k - 2), max(option.j, k + 1)))


def _option(page: Page, k: int, i: int) -> Mention | None:
    """Return the tendon, finger or pulley a box that closes at word k stands before or, in rows of such, behind."""
    kinds = ("tendon", "digit", "pulley", "pulley?")
    first = next(m for m in range(k, -1, -1) if m == 0 or page.breaks[m] >= Break.LINE)
    last = next((m for m in range(k + 1, len(page.words)) if page.breaks[m] >= Break.LINE), len(page.words))
    boxes = [m for m in range(max(first, i), last) if page.words[m] in _OPENED and page.words[m + 2 : m + 3] != ["if"]]
    boxes = [m for m in boxes if page.words[m + 1] in _CLOSED or page.words[m + 2] in _CLOSED]
    behind = page.breaks[boxes[0]] < Break.COLUMN and boxes[0] > first and page.breaks[k - 2] <= Break.SPACE
    closed = last <= k + 1 or page.breaks[k + 1] >= Break.COLUMN
    named = [m for m in page.mentions if m.kind in kinds and first <= m.i < last]
    if behind and closed:
        return next((m for m in reversed(named) if k - 4 <= m.i and m.j <= k - 2), None)
    return next((m for m in named if m.i == k + 1), None)


def _lay(desk: Desk, option: Mention, state: str, span: tuple[int, int]) -> None:
    scene = desk.scene_at(span[0])
    if option.kind in ("pulley", "pulley?"):
        if state == "intact":
            for digit in scene.setting.digits or (None,):
                place = (_digit_of(option.value, digit), option.value, None)
                desk.add(scene, "pulleys", place, "finding", "intact", [span], "ticked as intact")
        return
    for target in _targets(desk.page, scene, option):
        desk.tendon(scene, target, "extent", state, [span], f"ticked as {state}")


def _digit_of(pulley: str, digit: str | None) -> str | None:
    if pulley in ("oblique", "variable"):
        return "thumb"
    return None if pulley == "flexor retinaculum" else digit


def _targets(page: Page, scene: Scene, option: Mention) -> list[Target]:
    """Return the tendon ticked; a finger is one of the tendon its line begins with."""
    if option.kind == "tendon":
        if option.value in ("FCR", "FCU", "PL"):
            return [Target(None, option.value)]
        if option.value == "FPL":
            return [Target("thumb", "FPL")]
        named = [g for g in scene.setting.groups if g.i <= option.i < g.j and g.digits]
        if named:
            return group_targets(scene, named[0])  # 'FDP index   [x]': a finger of its own in each row
        return [Target(d, option.value) for d in scene.setting.digits if has(d, option.value)]
    first = next(m for m in range(option.i, -1, -1) if m == 0 or page.breaks[m] >= Break.LINE)
    lead = [m for m in within(page.mentions, first, first + 3) if m.kind == "tendon"]
    return [Target(option.value, lead[0].value)] if lead and has(option.value, lead[0].value) else []
