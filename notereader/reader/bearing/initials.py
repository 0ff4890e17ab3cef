"""Fingers told by their initials: 'I, M   6/0 Prolene running', 'A2 I, R: vented', 'FDP  I 100  M 100  R 100'.

A single letter is also a side, a pronoun, a zone or a sex, so it is a finger only in a note that heads at least three
lines with the initials of different fingers, or lists so many behind the names of their flexors.
"""

from notereader.reader.page import Break, Mention, Page

_INITIALS = {"i": "index", "m": "middle", "r": "ring", "s": "small"}
_FEWEST = 3
_NEAR = 4  # words
_JOINS = frozenset([",", "+", "&", "/", "and"])
_BEFORE = _JOINS | {":", ";", "(", "all", "bar", "except", "but", "in"}
_OF_A_SIDE = frozenset(["hand", "wrist", "arm", "thumb", "palm", "forearm", "side", "upper", "."])
_TELLS = frozenset(["=", ":", "cut", "intact", "ok"])
_NAMES_PARTS = ("tendon", "pulley", "anynerve", "anyartery", "structure", "sided")


def initials(page: Page) -> list[Mention]:
    """Return the digits that capital initials name; none in a note that does not use them so."""
    heads = _heads(page) + _behind_flexors(page)
    heads += _told_behind_flexors(page, {m.i for m in heads})
    if len({m.value for m in heads}) < _FEWEST:
        return []
    taken = {m.i for m in heads}
    named = {k for m in page.mentions if m.kind in _NAMES_PARTS for k in range(m.i, m.j)}
    spots = [k for k in range(1, len(page.words) - 1) if k not in taken and _may_be_one(page, k)]
    for k in spots:
        before = page.words[k - 1]
        near = any(n in taken for n in range(k - _NEAR, k))
        listed = before in _JOINS and near  # 'M, S: kept', 'I free, M catches'
        behind_name = k - 1 in named or before in _BEFORE - _JOINS or page.breaks[k] >= Break.COLUMN
        joined = before in _JOINS and (page.words[k - 2].isdecimal() or page.words[k + 1] in _JOINS | {":"})
        opens = page.breaks[k] >= Break.LINE or before == "."
        if listed or behind_name or joined or opens:
            taken.add(k)
            heads.append(Mention("digit", _INITIALS[page.words[k]], k, k + 1))
    return heads


def _heads(page: Page) -> list[Mention]:
    """'I, M   6/0 Prolene running' over 'S   nil': the initials that head lines."""
    found: list[Mention] = []
    words = page.words
    for first in (k for k in range(len(words)) if page.breaks[k] >= Break.LINE and words[k] in _INITIALS):
        k, own = first, []
        while k < len(words) and words[k] in _INITIALS and page.raw(k, k + 1).isupper():
            own.append(Mention("digit", _INITIALS[words[k]], k, k + 1))
            k += 1 + (words[k + 1 : k + 2] in ([","], ["+"], ["&"]))
        if own and k < len(words) and page.breaks[k] == Break.COLUMN and words[k - 1] in _INITIALS:
            found += own
    return found


def _behind_flexors(page: Page) -> list[Mention]:
    """'FDS M+R   100%', 'FDS I, S   ok': two initials or more that are joined right behind the name of a flexor."""
    found: list[Mention] = []
    words = page.words
    ends = {m.j for m in page.mentions if m.kind == "tendon" and m.value in ("FDP", "FDS")}
    for first in sorted(ends):
        k, own = first, []
        while k < len(words) and words[k] in _INITIALS and page.raw(k, k + 1).isupper():
            own.append(Mention("digit", _INITIALS[words[k]], k, k + 1))
            k += 1 + (words[k + 1 : k + 2] in ([","], ["+"], ["&"], ["/"]))
        if len(own) > 1 and k > 0 and words[k - 1] in _INITIALS:
            found += own
    return found


def _told_behind_flexors(page: Page, taken: set[int]) -> list[Mention]:
    """'FDS M = cut', 'FDP R: 20 %': an initial right behind the name of a flexor, before what is told of it."""
    words = page.words
    ends = sorted({m.j for m in page.mentions if m.kind == "tendon" and m.value in ("FDP", "FDS")})
    told = [k for k in ends if k + 1 < len(words) and k not in taken and words[k + 1] in _TELLS]
    spots = [k for k in told if _may_be_one(page, k)]
    return [Mention("digit", _INITIALS[words[k]], k, k + 1) for k in spots]


def _may_be_one(page: Page, k: int) -> bool:
    """Tell whether word k is a capital that may stand for a finger: no side of a hand, zone, name or pronoun."""
    words = page.words
    if words[k] not in _INITIALS or not page.raw(k, k + 1).isupper() or page.breaks[k] < Break.SPACE:
        return False
    if words[k + 1] in _OF_A_SIDE or words[k + 1] == "-" or words[k - 1] in ("zone", "type", "grade"):
        return False
    return (
        words[k] != "i"
        or not words[k + 1].isalpha()
        or words[k + 1] in _BEHIND_INDEX
        or page.raw(k + 1, k + 2).isupper()
    )


_BEHIND_INDEX = frozenset(
    ["free", "yes", "no", "none", "nil", "ok", "intact", "cut", "kept", "vented", "catches", "glides"]
)
