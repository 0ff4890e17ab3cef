"""Names after labels such as 'Surgeon:' and 'Dictated by', several in a row too."""

import re
from collections.abc import Iterator
from functools import cache

from notereader.sharing.finds import Find
from notereader.sharing.known import eponyms, is_known
from notereader.sharing.pages import MOST_WORDS, Page, Word, broken
from notereader.sharing.tables import tables
from notereader.sharing.word_sets import (
    any_of,
    credentials,
    given_names,
    ordinary_names,
    particles,
    passed_over,
    roles,
    titles,
)


def labelled_names(page: Page) -> Iterator[Find]:
    """Yield names after 'Surgeon:', 'Dictated by' and the like, several in a row too."""
    for pattern in _label_patterns():
        for match in pattern.finditer(page.text):
            yield from _listed(page, match.end(), match["label"])


def _listed(page: Page, position: int, label: str) -> Iterator[Find]:
    """Yield the names that begin at a position, parted by commas, 'and' or strokes, to the end of the line."""
    k = page.first_from(position)
    end = page.text.find("\n", position)
    end = len(page.text) if end < 0 else end
    first = True
    while k < len(page.words) and page.words[k].start < end:
        between = page.text[page.words[k - 1].end if not first else position : page.words[k].start]
        if first and between.strip(" \t:.,-–/'\"*_#("):
            return
        if not first and not re.fullmatch(r"\s?[,/&+;.(]?\s?[(]?", between):
            return
        j = _labelled_end(page, k, end)
        if j > k:
            yield page.find(k, j, f"after '{label.strip()}'")
            k, first = j, False
        elif page.words[k].low.rstrip(".") in passed_over():
            k, first = k + 1, False
        else:
            return


def _labelled_end(page: Page, k: int, end: int) -> int:
    j = k
    while j < len(page.words) and page.words[j].end <= end and j - k < MOST_WORDS:
        word = page.words[j]
        if j > k and (not page.joined(j - 1) or broken(page, j)):
            break
        low = word.low.rstrip(".")
        if word.text.endswith(":") or page.text[word.end : word.end + 1] == ":":
            break
        in_name = j > k and (low in particles() or _is_ordinary_family(page, k, j))
        in_name = in_name or (j == k and _stands_alone(page, word))
        if not word.initial and (low in passed_over() or not (in_name or _is_labelled_name(page, word))):
            break
        j += 1
    while j > k and page.words[j - 1].low in particles() and not page.words[j - 1].initial:
        j -= 1
    return j


def _is_ordinary_family(page: Page, k: int, j: int) -> bool:
    """True for an ordinary word with a capital after a given name or initials: 'Peter Long', 'E. Long'."""
    word, before = page.words[j], page.words[k:j]
    is_given = all(b.initial or b.low in given_names() or b.low in ordinary_names() for b in before)
    return word.capital and word.low not in roles() and (is_given or _stands_alone(page, word))


def _stands_alone(page: Page, word: Word) -> bool:
    """True for a word with a capital that ends what stands after a label: 'Asst: Short'. No short form, no role."""
    rest = page.text[word.end : word.end + 3]
    ends = not rest.strip() or rest.startswith(("  ", "\t", "\n", ",", ";", "(", " (", ". ", ".\n", " /"))
    shaped = word.capital and word.text[1:].islower() and len(word.text) > 2
    return ends and shaped and word.low not in passed_over() and word.low not in eponyms()


def _is_labelled_name(page: Page, word: Word) -> bool:
    low = word.low.rstrip(".")
    if not (word.capital or page.without_capitals) or (word.capital and low in page.small):
        return False
    if low in roles() or low in credentials() or low in titles():
        return False
    if low in given_names() or low in ordinary_names():
        return True
    if is_known(word.text):
        return word.capital and low in eponyms() and word.text[1:].islower()
    return True


@cache
def _label_patterns() -> tuple[re.Pattern[str], ...]:
    names = tables().names
    labels, before = any_of(names.labels), any_of(names.before)
    begin = r"(?:^|[\n;|\t.,(]|\s{2,})\s*[-•*_#\d.)]*\s*"
    label = rf"(?P<label>(?:(?:pre|post)?-?op\w*\s+)?(?:{labels})(?:\(s\)|s)?)"
    return (
        re.compile(rf"{begin}{label}\s*(?:name)?\s*[*_]*\s*[:=]+[*_]*[ \t]*", re.IGNORECASE),
        # In columns.
        re.compile(rf"(?m:^)[ \t]*{label}(?:[ ]{{3,}}|\t+)(?=(?-i:[A-Z]))", re.IGNORECASE),
        # In a line of its own, before initials or what no list knows.
        re.compile(rf"(?m:^)[ \t]*{label}[ ](?=(?-i:[A-Z]\.? [A-Z][a-z]))", re.IGNORECASE),
        re.compile(rf"(?<!\w)(?P<label>{before})[ :,]*(?:[ ]|\n+)(?=(?-i:[A-Z]))", re.IGNORECASE),
    )
