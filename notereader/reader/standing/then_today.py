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
    by_me = now is None and _i_put_it_right(page, sentence, last)
    if behind[:1] == [] or behind[0] not in _JOINS or (now is None and not by_me):
        return None
    end = sentence.j if now is not None else _clause_end(page, sentence, last + 1)
    before = [m for m in within(page.mentions, max(sentence.i, first - _NEAR), first) if m.kind == "opened"]
    after = [m for m in within(page.mentions, last, min((now or last) + _FAR, end)) if m.kind == "opened"]
    anew = any(m.kind == "pulley" for m in within(page.mentions, last, end))
    if not before or not after or anew or (by_me and "had" not in page.words[before[-1].i - 2 : before[-1].i]):
        return None
    had = before[-1].i
    while had > sentence.i and page.words[had - 1] in _PAST:
        had -= 1
    return had


def _i_put_it_right(page: Page, sentence: Sentence, last: int) -> bool:
    """'A2 had been destroyed by the first surgeon and I rebuilt it': 'I had' would go on about the earlier day."""
    k = last + 1 + (page.words[last + 1 : last + 2] == ["so"])
    me = page.words[k : k + 1] in (["i"], ["we"]) and page.words[k + 1 : k + 2] not in (["had"], ["have"], ["would"])
    return me and k < sentence.j and not {"it", "this"}.isdisjoint(page.words[k : k + _NEAR])


def _clause_end(page: Page, sentence: Sentence, k: int) -> int:
    return next((n for n in range(k + 1, sentence.j) if page.words[n] in _JOINS), sentence.j)
