"""The only one hurt: 'no flexor other than the FDP was cut', 'nothing but the profundus had been divided'.

Such a denial leaves out one and tells of that one: it was cut. What was left out of 'none gapped' stays with its rules.
"""

from notereader.reader.page import Page, within
from notereader.vocabulary.wordlists import phrases_by_first_word

_SAVE = phrases_by_first_word("bearing", "none_but")
_NOBODY = frozenset(["no", "nothing", "none"])
_VERBS = frozenset(["was", "were", "is", "are", "had", "has", "been", "found", "to", "be"])
_BEFORE = frozenset(["the", "his", "her", "its", "this", "that"])
_NEAR = 5  # words: 'no flexor of this finger other than'
_PHRASE = 5  # words: 'but for', with the words it may lead over
_HURT = ("hurt", "extent")


def only_one_hurt(page: Page, k: int, last: int) -> tuple[int, int] | None:
    """Return the name that the denial at word k leaves out of what was hurt, and the word behind what says so."""
    if page.words[k] not in _NOBODY:
        return None
    for n in range(k + 1, min(k + _NEAR + 1, last)):
        lengths = [len(p) for p in _SAVE.get(page.words[n], ()) if page.words[n : n + len(p)] == p]
        if lengths:
            return _hurt_behind(page, n + max(lengths), last)
    return None


def is_the_only_one(page: Page, i: int, first: int, last: int) -> bool:
    """Tell whether the name at word i is the only one hurt, as a denial before it says."""
    named = (only_one_hurt(page, k, last) for k in range(max(first, i - _NEAR - _PHRASE), i))
    return any(only is not None and only[0] == i for only in named)


def _hurt_behind(page: Page, k: int, last: int) -> tuple[int, int] | None:
    while k < last and page.words[k] in _BEFORE:
        k += 1
    name = next((m for m in within(page.mentions, k, last) if m.i == k and m.kind == "tendon"), None)
    verb = name.j if name is not None else last
    while verb < last and page.words[verb] in _VERBS:
        verb += 1
    hurt = any(m.i == verb and m.kind in _HURT and m.value != "intact" for m in within(page.mentions, verb, last))
    return (k, verb) if name is not None and hurt and verb > name.j else None
