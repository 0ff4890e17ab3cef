"""Names beside short labels of the team at the head of a note: 'Reg: Vanterpool', 'Surg CASTELLANE', 'Quill (op)'."""

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Page
from notereader.reader.rules.whole_note.signing_names import is_initial, is_new_name
from notereader.reader.rules.whole_note.whole import Span, element_list

_HEAD = 90  # words of a note in which its team is named
_OPENS = frozenset(["/", ",", ";", "|", "-", "\u00b7", "\u2013", "(", "."])  # what may stand before a label
_BETWEEN = frozenset([":", ".", "=", "by"])
_CLOSES = frozenset(["/", ",", "(", ";", "|", "\u00b7", ")", "+", "&", "\u2013"])
_IN_A_NAME = frozenset([".", "-", "'", "\u2019"])
_LABELS = {
    "surgeon": element_list("operator_labels") | element_list("lesser_labels"),
    "assistant": element_list("assistant_labels"),
    "anaesthetist": element_list("anaesthetist_labels"),
}
_ROLES = {
    "surgeon": element_list("operator_labels") | element_list("senior_labels"),
    "assistant": element_list("assistant_labels") | element_list("junior_labels"),
    "anaesthetist": element_list("anaesthetist_labels"),
}


def team_member(desk: Desk, role: str) -> Span | None:
    """Return the label and the name of who operated, helped or gave the anaesthetic, in the first lines of a note."""
    last = min(_HEAD, len(desk.page.words) - 1)
    labels = _LABELS[role]
    if role == "assistant" and any(h.value == "surgeon" and h.i < last for h in desk.page.headings):
        labels = labels | element_list("lesser_labels")  # 'Consultant: ...', and below it 'Registrar: ...'
    for k in range(last):
        if desk.page.words[k] in labels and (named := _behind_label(desk, k)) is not None:
            return named
        if desk.page.words[k] == "(" and desk.page.words[k + 1] in _ROLES[role] and (who := _before_role(desk, k)):
            return who
    return None


def _behind_label(desk: Desk, k: int) -> Span | None:
    """'Surg HALVERSTOCK', 'op: Jannerat / ass: none', 'Anaes: Ilori (GA)': a cell of a name, or of the word 'none'."""
    page = desk.page
    if page.breaks[k] < Break.COLUMN and k and page.words[k - 1] not in _OPENS:
        return None
    at = k + 1
    while at < len(page.words) and page.words[at] in _BETWEEN and page.breaks[at] < Break.LINE:
        at += 1
    if at < len(page.words) and page.words[at] in ("none", "nil", "-") and page.words[at - 1] == ":":
        return k, at + 1
    end = _cell_end(page, at)
    names = [n for n in range(at, end) if is_new_name(desk, n) and page.words[n] not in _NOT_NAMES]
    return (k, end) if names and all(n in names or _beside_name(page, n) for n in range(at, end)) else None


def _before_role(desk: Desk, k: int) -> Span | None:
    """'Quillane (op) / Derwin (asst)': the name right before the bracket."""
    page = desk.page
    first = k
    if page.words[k + 2 : k + 3] != [")"] or page.words[k - 1] in _NOT_NAMES:
        return None
    while first > 0 and (is_new_name(desk, first - 1) or _beside_name(page, first - 1)):
        first -= 1
        if page.breaks[first] >= Break.COLUMN:
            break
    return (first, k + 3) if any(is_new_name(desk, n) for n in range(first, k)) else None


_NOT_NAMES = frozenset(["note", "report", "record", "list", "operation", "summary", "proforma"])


def _cell_end(page: Page, k: int) -> int:
    if k >= len(page.words) or page.breaks[k] >= Break.LINE:
        return k
    last = min(k + _LONGEST, len(page.words))
    return next((n for n in range(k, last) if _ends_cell(page, n, k)), last)


_LONGEST = 6  # words of a cell


def _ends_cell(page: Page, n: int, first: int) -> bool:
    return page.words[n] in _CLOSES or (n > first and page.breaks[n] >= Break.COLUMN)


def _beside_name(page: Page, k: int) -> bool:
    known = element_list("titles") | element_list("grades") | element_list("degrees") | _IN_A_NAME
    return page.words[k] in known or is_initial(page, k)
