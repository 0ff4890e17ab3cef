"""Names of people and employers: by titles, labels, letters after them, given names, initials, capitals."""

import re
from collections.abc import Iterator
from functools import cache

from notereader.sharing.capitals import again, capitals
from notereader.sharing.finds import Find
from notereader.sharing.known import eponyms, is_known, known_words
from notereader.sharing.labelled import labelled_names
from notereader.sharing.pages import MOST_WORDS, WORD, Page, Word, broken
from notereader.sharing.tables import tables
from notereader.sharing.word_sets import (
    any_of,
    certain_credentials,
    credentials,
    given_names,
    ordinary_names,
    particles,
    roles,
    titles,
)

_INITIALS = re.compile(r"(?<![\w.])(?:[A-Z]\.[ ]?){1,3}(?=[A-Z]['’]?[^\W\d_]+)")
_TYPIST = re.compile(r"(?<![\w/])[A-Z]{2,4}[/:][a-z]{2,4}(?![\w/])")
_ALONE = re.compile(r"(?<![\w.])(?:[A-Z]\.){2,3}(?!\w)")
_COMMA_NAME = re.compile(r"(?<!\w)([A-Z][A-Z'’-]{2,}), ?([A-Z][a-z]+)(?!\w)")


def names(text: str) -> list[Find]:
    """Return the names in a text, and every other place where a part of one of them stands."""
    page = Page(text)
    sure = [*_titled(page), *labelled_names(page), *_lettered(page), *_initialled(page), *_given(page), *_by_form(text)]
    found = [*sure, *_businesses(text), *capitals(page)]
    return [*found, *again(page, found)]


def _titled(page: Page) -> Iterator[Find]:
    """Yield names after 'Dr', 'Mrs' and the like; what a stitch is named after is a person there too."""
    for k, word in enumerate(page.words):
        if word.low.rstrip(".") not in titles() or not page.joined(k):
            continue
        j = _name_end(page, k + 1, word.capital)
        if j > k + 1:
            yield page.find(k + 1, j, f"after '{word.text}'")


def _name_end(page: Page, k: int, capitals: bool) -> int:
    """Return where the name that begins at word k ends; k where none begins."""
    j, last = k, k
    while j < len(page.words) and j - k < MOST_WORDS and (j == k or (page.joined(j - 1) and not broken(page, j))):
        word = page.words[j]
        if word.initial or _is_name_word(word, capitals):
            last = j + 1
        elif word.low not in particles():
            break
        j += 1
    return last


def _is_name_word(word: Word, capitals: bool) -> bool:
    low = word.low.rstrip(".")
    if low in credentials() or low in roles():
        return False
    if capitals:
        return word.capital and (not is_known(word.text) or low in eponyms() or len(low) > 2)
    return not is_known(word.text)


def _lettered(page: Page) -> Iterator[Find]:
    """Yield names before letters such as ', MD' or ' FRCS'."""
    letters = "|".join(re.escape(word) for word in sorted(certain_credentials(), key=len, reverse=True))
    for match in re.finditer(rf"(?i:,?[ ]({letters}))(?![\w.])", page.text):
        if not match[1].replace(".", "").isupper() and "(" not in match[1]:
            continue
        j = page.first_from(match.start())
        i = j
        while i > 0 and j - i < 4 and _may_be_name(page, i - 1) and (i == j or page.joined(i - 1)):
            if i == j and page.words[i - 1].end != match.start():
                break
            if i < j and broken(page, i):
                break
            i -= 1
        if i < j and any(not page.words[k].initial for k in range(i, j)):
            yield page.find(i, j, f"before '{match[1]}'")


def _may_be_name(page: Page, k: int) -> bool:
    word = page.words[k]
    return word.initial or word.low in particles() or (word.capital and not is_known(word.text))


def _initialled(page: Page) -> Iterator[Find]:
    """Yield 'J. Okafor' and 'J.M. Okafor'; 'A. Kessler' is an entry of a list."""
    for match in _INITIALS.finditer(page.text):
        k = page.first_from(match.end())
        word = page.words[k]
        if word.start != match.end() or word.initial:
            continue
        if not is_known(word.text) or _is_person_within(page, match.start(), word):
            end = page.words[_name_end(page, k, True) - 1].end
            yield Find(match.start(), end, "name", page.text[match.start() : end], "initials before a name")


def _is_person_within(page: Page, start: int, word: Word) -> bool:
    """True for initials within a sentence before an ordinary word with a capital; after a stop they head an entry."""
    before = re.search(r"([a-z]{2,}),? $", page.text[max(0, start - 20) : start])
    return (
        before is not None
        and before[1] != "zone"
        and word.text[1:].islower()
        and word.low not in eponyms()
        and word.low not in roles()
    )


def _given(page: Page) -> Iterator[Find]:
    """Yield given names, with the words with a capital that follow."""
    for k, word in enumerate(page.words):
        if not word.capital or word.initial:
            continue
        j = k + 1
        while j < len(page.words) and j - k < MOST_WORDS and page.joined(j - 1) and not broken(page, j):
            following = page.words[j + 1].capital if j + 1 < len(page.words) else False
            if not _may_be_name(page, j) or not (page.words[j].capital or following):
                break
            j += 1
        whole = j > k + 1 and any(not page.words[n].initial for n in range(k + 1, j))
        sure = word.low in given_names() and (whole or not is_known(word.text))
        if sure or (whole and word.low in ordinary_names() and _is_after_ordinary(page, k)):
            yield page.find(k, j, "a given name")


def _is_after_ordinary(page: Page, k: int) -> bool:
    """True where an ordinary word is a given name for what follows it: 'Grace Okonjo'."""
    return not is_known(page.words[k + 1].text) and not page.words[k].text.isupper()


def _by_form(text: str) -> Iterator[Find]:
    for match in _COMMA_NAME.finditer(text):
        if not is_known(match[1]) and not is_known(match[2]):
            yield Find(match.start(), match.end(), "name", match[0], "a family name before a given name")
    for match in _ALONE.finditer(text):
        letters = match[0].replace(".", "").lower()
        if letters not in known_words() and letters not in credentials() and match[0].lower() not in credentials():
            yield Find(match.start(), match.end(), "name", match[0], "initials")
    for match in _TYPIST.finditer(text):
        if not is_known(match[0][: match[0].index(next(c for c in match[0] if c in "/:"))]):
            yield Find(match.start(), match.end(), "name", match[0], "initials of who dictated and who typed")


def _businesses(text: str) -> Iterator[Find]:
    """Yield names of businesses, which may be an employer."""
    for match in _business_pattern().finditer(text):
        own = WORD.findall(match[0])
        if any(not is_known(word) and word.lower() not in _business_words() for word in own):
            yield Find(match.start(), match.end(), "name", match[0], "a business, perhaps an employer")


@cache
def _business_pattern() -> re.Pattern[str]:
    kinds = any_of(each for word in tables().names.businesses for each in (word.capitalize(), word.upper()))
    name = r"[A-Z][^\W\d_]+(?:['’&-][^\W\d_]+)*"
    return re.compile(rf"(?<!\w)(?:{name}[ ]+(?:(?:and|&|of)[ ]+)?){{1,4}}(?:{kinds})(?!\w)")


@cache
def _business_words() -> frozenset[str]:
    return frozenset([*tables().names.businesses, "and", "of", "the"])
