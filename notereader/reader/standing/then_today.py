"""A pulley's fate then and now in one breath: 'A2 had been vented at the first operation and was now repaired'."""

from notereader.reader.page import Page, Sentence, within

_JOINS = frozenset(["and", "but", ";", ","])
_NOW = frozenset(["today", "now", "this"])
_PAST = frozenset(["had", "was", "were", "been"])
_NEAR, _FAR = 6, 8  # words


def then_today(page: Page, sentence: Sentence, first: int, last: int) -> int | None:
    """Return where the words begin that tell what was done then, words `first` to `last` saying when; None for another.

    Behind them the sentence goes on with what was done to the same pulley today.
    """
    behind = page.words[last : min(last + _FAR, sentence.j)]
    now = next((last + n for n, word in enumerate(behind) if word in _NOW), None)
    if behind[:1] == [] or behind[0] not in _JOINS or now is None:
        return None
    before = [m for m in within(page.mentions, max(sentence.i, first - _NEAR), first) if m.kind == "opened"]
    after = [m for m in within(page.mentions, last, min(now + _FAR, sentence.j)) if m.kind == "opened"]
    anew = any(m.kind == "pulley" for m in within(page.mentions, last, sentence.j))
    if not before or not after or anew:
        return None
    had = before[-1].i
    while had > sentence.i and page.words[had - 1] in _PAST:
        had -= 1
    return had
