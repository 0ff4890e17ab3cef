"""Initials that sign a note: 'O F-B' or 'ITR' on a last line, where the head names O. Fennimore-Beck as the surgeon."""

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Page
from notereader.reader.rules.whole_note.whole import element_list

_MARKS = frozenset([".", "-", "/"])
_FEWEST, _MOST = 2, 4  # letters
_LONGEST = 12  # words of a name, its stops and hyphens with them
_SOON = 3  # words from a label or title to a name


def signs_by_initials(desk: Desk, i: int, j: int) -> bool:
    """Tell whether the line of words i to j is no more than the initials of somebody the team is told by above."""
    page = desk.page
    letters = _letters(page, i, j)
    if page.breaks[i] < Break.LINE or not _FEWEST <= len(letters) <= _MOST:
        return False
    beside = element_list("titles") | element_list("grades") | element_list("operator_labels") | element_list("people")
    first = letters[0]
    starts = (k for k in range(i) if page.raw(k, k + 1)[:1] == first and page.words[k] not in beside)
    led = (k for k in starts if not beside.isdisjoint(page.words[max(0, k - _SOON) : k]))
    return any(_initials_from(page, k, i).startswith(letters) for k in led)


def _letters(page: Page, i: int, j: int) -> str:
    """Return the capitals of a line that holds nothing else: 'O F-B', 'T. R-O.', 'ITR'; '' for any other line."""
    words = [page.raw(k, k + 1) for k in range(i, j) if page.words[k] not in _MARKS]
    single = all(len(word) == 1 for word in words) or len(words) == 1
    return "".join(words) if single and all(w.isalpha() and w.isupper() for w in words) else ""


def _initials_from(page: Page, k: int, end: int) -> str:
    """Return the first letters of the name that begins at word k, its hyphenated parts among them."""
    found = ""
    for n in range(k, min(k + _LONGEST, end)):
        raw = page.raw(n, n + 1)
        if n > k and page.breaks[n] >= Break.COLUMN:
            break
        if raw[:1].isupper():
            found += raw[0]
        elif raw not in _MARKS:
            break
    return found
