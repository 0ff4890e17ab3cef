"""Adjectives that share their noun: 'the deep and superficial flexors', 'the superficial was not'."""

from notereader.reader.page import Break, Mention, Page
from notereader.vocabulary.wordlists import word_list

_JOINING = word_list("shared_nouns", "joining")
_ADJECTIVES = {"deep": "FDP", "superficial": "FDS"}
_ONES = frozenset(["one", "ones"])
_AFTER = word_list("shared_nouns", "after")


def settle_shared_nouns(page: Page) -> None:
    """Add the tendons that only an adjective names, where a tendon of that kind is named with its noun."""
    named = [m for m in page.mentions if m.kind == "tendon" and page.words[m.i] in _ADJECTIVES]
    if not named:
        return
    taken = {k for m in page.mentions if m.kind in ("tendon", "generic") for k in range(m.i, m.j)}
    made = [m for k, word in enumerate(page.words) if word in _ADJECTIVES and k not in taken for m in _shared(page, k)]
    if made:
        page.mentions = sorted([*page.mentions, *made], key=lambda m: (m.i, m.j))


def _shared(page: Page, k: int) -> list[Mention]:
    """Return the tendon that the adjective at word k names, if it names one."""
    words = page.words
    other = next(a for a in _ADJECTIVES if a != words[k])
    j = k + 1
    while j < len(words) and j - k < 5 and words[j] in _JOINING and page.breaks[j] < Break.COLUMN:
        j += 1
    if j > k + 1 and words[j : j + 1] == [other] and any(m.i == j and m.kind == "tendon" for m in page.mentions):
        return [Mention("tendon", _ADJECTIVES[words[k]], k, k + 1)]
    if k == 0 or words[k - 1] != "the":
        return []
    end = k + 2 if words[k + 1 : k + 2] and words[k + 1] in _ONES else k + 1
    after = words[end] if end < len(words) else "."
    return [Mention("tendon", _ADJECTIVES[words[k]], k, end)] if end > k + 1 or after in _AFTER else []
