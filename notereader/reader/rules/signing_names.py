"""Names that sign a note: 'B. Tallow MD', 'Garrowby' where the head names the same surgeon, 'Dictated by R. Castle'."""

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Page
from notereader.reader.rules.whole import element_list

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
    names = [k for k in names if page.words[k] not in posts]
    rest = [k for k in plain if k not in names and page.words[k] not in titles | posts and len(page.words[k]) > 1]
    if rest or not 0 < len(names) <= _MOST_NAMES:
        return False
    beside = titles if page.raw(i, j).isupper() else titles | element_list("grades") | {"dictated"}
    titled = any(not beside.isdisjoint(_neighbours(page, plain, k)) for k in names)
    return titled or any(_named_above(desk, page.words[k], i) for k in names)


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
