"""Words with a capital that no list knows: names within sentences, places after 'from', and names that come again."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace

from notereader.sharing.finds import Find
from notereader.sharing.known import eponyms, is_known, is_nearly_known
from notereader.sharing.pages import WORD, Page, broken
from notereader.sharing.tables import tables
from notereader.sharing.word_sets import common_words, other_words, particles, roles

# Of a text without line breaks this much on either side is taken for the line.
_LINE = 300

CAPITAL, OPENING, AGAIN = "a capital within a sentence", "a word that no list knows", "the same name again"


def capital_places(text: str) -> Iterator[Find]:
    """Yield unknown words with a capital after 'from', 'in' and the like."""
    page = Page(text)
    for i, j in _unknown_runs(page):
        before = page.words[i - 1].low if i else ""
        if before in tables().places.before or _town(page, i):
            yield replace(page.find(i, j, f"a capital after '{before}'"), kind="place")
    for k, word in enumerate(page.words[1:], 1):
        after = page.words[k + 1].low if k + 1 < len(page.words) else ""
        if word.low in tables().never.towns and word.capital and _means_town(page.words[k - 1].low, after):
            yield replace(page.find(k, k + 1, "a town after 'from'"), kind="place")


def _means_town(before: str, after: str) -> bool:
    """True where a town's name means the town and not the programme of therapy that is called after it."""
    programme = ("short", "splint", "regime", "regimen", "protocol", "programme", "program", "style", "type", "early")
    return before in ("from", "outside", "near", "in") and after not in programme


def capitals(page: Page) -> Iterator[Find]:
    """Yield unknown words with a capital within a sentence, and at its beginning where no list has them either."""
    for i, j in _unknown_runs(page):
        yield page.find(i, j, CAPITAL)
    ordinary = frozenset(tables().never.ordinary)
    for k, word in enumerate(page.words):
        if _is_unknown(page, k) and not _within_sentence(page, k) and not _is_ordinary(word.text, ordinary):
            yield page.find(k - _has_initial(page, k), k + 1, OPENING)


def _is_ordinary(word: str, ordinary: frozenset[str]) -> bool:
    """True for a word that often begins a sentence, alone or with hyphens: 'Forty-six'."""
    return all(part in ordinary or is_known(part) for part in re.split(r"['’-]", word.lower()) if part)


def _unknown_runs(page: Page) -> Iterator[tuple[int, int]]:
    """Yield runs of words with a capital within a sentence that no list knows and that the note never writes small."""
    k = 0
    while k < len(page.words):
        if not _is_unknown(page, k) or not _within_sentence(page, k):
            k += 1
            continue
        j = _run_end(page, k)
        yield _run_start(page, k), j
        k = j


def _run_end(page: Page, k: int) -> int:
    """Return where the run that begins at word k ends; 'van' and 'de' lie within one."""
    j = k + 1
    while j < len(page.words) and page.joined(j - 1) and not broken(page, j):
        n = _past_particles(page, j)
        if not _goes_on(page, n):
            break
        j = n + 1
    return j


def _run_start(page: Page, k: int) -> int:
    """Return where the run begins, with 'Upper' and the like, or an initial, before it."""
    i = k
    parts = tables().places.parts
    while i > 0 and page.words[i - 1].low in parts and page.words[i - 1].capital and page.joined(i - 1):
        i -= 1
    return i - _has_initial(page, i)


def _has_initial(page: Page, i: int) -> bool:
    """True where an initial stands right before word i; not where it may be a figure, a side or a sex: 'zone V'."""
    if i == 0 or not page.words[i - 1].initial or page.words[i - 1].text in "IVXLRMF":
        return False
    return page.text[page.words[i - 1].end : page.words[i].start] == " "


def _past_particles(page: Page, k: int) -> int:
    """Return the first word from k on that is no 'van' or 'de' and the like, all in one row."""
    j = k
    while j + 1 < len(page.words) and page.words[j].text in particles() and page.joined(j):
        j += 1
    return j


def _goes_on(page: Page, k: int) -> bool:
    """True where word k goes on with a name that has begun: an unknown word, or an ordinary one with a capital."""
    word, never = page.words[k], tables().never
    ordinary = word.capital and word.text[1:].islower() and len(word.text) > 2
    return _is_unknown(page, k) or (
        ordinary and word.low not in {*never.capitals, *never.trade, *roles(), *other_words(), *eponyms()}
    )


def _is_unknown(page: Page, k: int) -> bool:
    word = page.words[k]
    return (
        len(word.text) > 2
        and word.capital
        and any(map(str.islower, word.text))
        and not is_known(word.text)
        and word.low not in page.small
        and word.low not in other_words()
        and not is_nearly_known(word.text)
    )


def _within_sentence(page: Page, k: int) -> bool:
    """True where what stands before is the same sentence, and the line is no heading in capitals."""
    word = page.words[k]
    near, far = max(0, word.start - _LINE), min(len(page.text), word.end + _LINE)
    line_start = max(near, page.text.rfind("\n", near, word.start) + 1)
    line_end = page.text.find("\n", word.end, far)
    line = page.text[line_start : far if line_end < 0 else line_end]
    before = page.text[line_start : word.start].rstrip()
    if not before:
        return False
    if before[-1] in ".!?:;" and not re.search(r"\b(?:[A-Z]|Dr|Mr|Mrs|Ms|St|Prof)\.$", before):
        return False
    if before[-1] in "*•-–—#" or re.fullmatch(r"\(?\w{1,3}[.)]", before):
        return False
    words = [each for each in WORD.findall(line) if len(each) > 3]
    capitals = sum(each[:1].isupper() for each in words)
    return capitals < 0.6 * len(words) or len(words) < 3 or bool(re.search(r"[a-z]{2,}[ ,]+$", before + " "))


def _town(page: Page, i: int) -> bool:
    """True after 'town of' and the like."""
    before = " ".join(word.low for word in page.words[max(0, i - 2) : i])
    return before in tables().places.before


def again(page: Page, found: Sequence[Find]) -> Iterator[Find]:
    """Yield every word of a found name wherever it stands, capitals or not."""
    parts = {
        word.lower()
        for find in found
        for word in WORD.findall(find.words)
        if len(word) > 2
        and word.lower() not in page.small
        and not is_known(word)
        and word.lower() not in particles()
        and word.lower() not in common_words()
    }
    # An ordinary word is taken for the same person only with a capital after a small word.
    certain = (find for find in found if find.why.startswith("after '"))
    ordinary = {word.lower() for find in certain for word in WORD.findall(find.words) if len(word) > 2} - eponyms()
    for k, word in enumerate(page.words):
        base = re.sub(r"['’]s$", "", word.low)
        same = word.low in parts or base in parts
        if same or (
            base in ordinary and word.capital and _within_sentence(page, k) and page.words[k - 1].low in page.small
        ):
            end = word.start + (len(base) if word.low not in parts else len(word.text))
            yield Find(word.start, end, "name", page.text[word.start : end], AGAIN)
