"""Names that sign a note: 'B. Tallow MD', 'Garrowby' where the head names the same surgeon, 'Dictated by R. Castle'."""

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Page
from notereader.reader.rules.whole_note.whole import Span, element_list

_PARTICLES = frozenset(["van", "de", "von", "der", "den", "la", "le", "da", "di", "al"])
_OF_WHAT = frozenset(["in", "of", "the", "for", "and", "by", "no", "job", "dictated", "typed", "service", "unit"])
_PUNCTUATION = frozenset([".", ",", "/", "-", "(", ")", ":", "\u2013", "\u2014", "#", "'", "\u2019", "&"])
_MOST_WORDS = 12
_MOST_NAMES = 4
_SHORTEST = 3  # letters of a name


def signs_by_name(desk: Desk, i: int, j: int) -> bool:
    """Tell whether the line of words i to j holds the name of who signs, and no more than a title, a post, a date."""
    page = desk.page
    if page.breaks[i] < Break.LINE or page.words[i : i + 1] in (["*"], ["-"]) or page.words[j - 1] == ":":
        return False
    if page.breaks[i] < Break.BLANK and i and page.words[i - 1][-1].isalnum():
        return False  # the last words of a paragraph that was wrapped
    dated = {k for d in page.dates for k in range(d.i, d.j)}
    plain = [k for k in range(i, j) if k not in dated and page.words[k] not in _PUNCTUATION]
    plain = [k for k in plain if not page.words[k][0].isdigit()]
    if not plain or len(plain) > _MOST_WORDS:
        return False
    titles = element_list("titles") | element_list("degrees")
    posts = element_list("grades") | element_list("signing_grades") | _OF_WHAT | _PARTICLES
    known = {k for m in (*page.mentions, *page.elements, *page.headings) for k in range(m.i, m.j)}
    names = [k for k in plain if k not in known and _may_be_name(page.raw(k, k + 1)) and page.words[k] not in titles]
    names = [k for k in names if not _is_post(page, k, posts)]
    rest = [k for k in plain if k not in names and not _is_post(page, k, titles | posts) and len(page.words[k]) > 1]
    if rest or not 0 < len(names) <= _MOST_NAMES:
        return False
    beside = titles if page.raw(i, j).isupper() else titles | element_list("grades") | {"dictated"}
    titled = any(not beside.isdisjoint(_neighbours(page, plain, k)) for k in names)
    return titled or _stands_alone(page, plain, names) or any(_named_above(desk, page.words[k], i) for k in names)


def _is_post(page: Page, k: int, posts: frozenset[str]) -> bool:
    """Tell whether a word is a post, with or without the year of training behind it: 'SpR3', 'ST7'."""
    return page.words[k] in posts or page.words[k].rstrip("0123456789") in posts


def _stands_alone(page: Page, plain: list[int], names: list[int]) -> bool:
    """'B Ruthven', 'R Ashgrove-Tull SpR3', 'Kiplimo for BN' below a blank line: a name with initials and no more."""
    first = plain[0]
    if page.breaks[first] < Break.BLANK or len(names) > 2:
        return False
    behind = plain[1:2] or [first]
    if is_initial(page, first) and behind[0] in names:
        return True
    for_another = [page.words[k] for k in plain[len(names) : len(names) + 1]] == ["for"]
    return plain[: len(names)] == names and for_another and len(plain) > len(names) + 1


def closing_name(desk: Desk, i: int, j: int) -> Span | None:
    """'Dr K Mokgethwa, MO Hand unit', 'J Tavener (bleep 4471)   d/w Mr Oxlade': the name that opens a last line.

    RETURNS the words up to a wide gap, or None where the line opens with no name or goes on with something else.
    """
    page = desk.page
    if page.breaks[i] < Break.LINE or (page.breaks[i] < Break.BLANK and page.words[i - 1][-1].isalnum()):
        return None
    end = next((k for k in range(i + 1, j) if page.breaks[k] >= Break.COLUMN), j)
    first = i
    while first < end and page.words[first] in element_list("titles") | {"."}:
        first += 1
    last = first
    while last < end and (page.words[last] in _NAME_PARTS or is_initial(page, last) or is_new_name(desk, last)):
        last += 1
    names = [k for k in range(first, last) if is_new_name(desk, k)]
    rest = page.words[last:end]
    if not 0 < len(names) <= _MOST_NAMES or not _OF_OTHERS.isdisjoint(rest) or _goes_on(rest):
        return None
    titled = first > i or not element_list("degrees").isdisjoint(rest) or rest[:4] in _DOCTORS
    named = "for" not in rest[:1] and any(_named_above(desk, page.words[k], i) for k in names)  # not 'Not for early'
    return (i, end) if titled or named else None


def _goes_on(rest: list[str]) -> bool:
    """Tell whether what stands behind a name is neither a post, a number to call, nor how the note was made."""
    behind = [w for w in rest if w not in element_list("degrees") and w not in ("m", "d", ".")]
    told = next((w for w in behind if w[0].isalpha()), "")
    posts = element_list("grades") | element_list("signing_grades") | element_list("behind_a_signature")
    return len(behind) > _MOST_WORDS or (bool(told) and (told not in posts or behind[0] not in _MARKS))


_DOCTORS = ([",", "m", ".", "d"], ["m", ".", "d", "."])
_NAME_PARTS = _PARTICLES | {"ter", "ten", "ni", "mac", "mc", "bin", "el", ".", "-"}
_MARKS = frozenset([",", "(", "/", "-", "for"])
_OF_OTHERS = frozenset(["gp", "cc", "copy", "review", "clinic"])


def is_initial(page: Page, k: int) -> bool:
    """Tell whether a word is one capital letter."""
    raw = page.raw(k, k + 1)
    return len(raw) == 1 and raw.isupper()


def is_new_name(desk: Desk, k: int) -> bool:
    """Tell whether a word may be a name: one with a capital that is no word of the trade, no post and no degree."""
    page = desk.page
    posts = element_list("grades") | element_list("signing_grades") | element_list("degrees")
    if not _may_be_name(page.raw(k, k + 1)) or page.words[k] in posts:
        return False
    return not any(m.i <= k < m.j for m in (*page.mentions, *page.elements))


def _neighbours(page: Page, plain: list[int], k: int) -> list[str]:
    """Return the words before and behind a name, three and two of them, punctuation left out."""
    n = plain.index(k)
    return [page.words[m] for m in plain[max(0, n - 3) : n] + plain[n + 1 : n + 3]]


def _may_be_name(raw: str) -> bool:
    return len(raw) >= _SHORTEST and raw[0].isupper() and raw.replace("-", "").isalpha()


def _named_above(desk: Desk, name: str, i: int) -> bool:
    """Tell whether a name stands before word i beside a title, a post or a label of the team."""
    page = desk.page
    beside = element_list("titles") | element_list("grades") | element_list("operator_labels") | element_list("people")
    return any(page.words[k] == name and not beside.isdisjoint(page.words[max(0, k - 5) : k]) for k in range(1, i))
