"""Two denials that make a statement: 'there is no denying that it gapped', 'tension could not be avoided'.

The cues of such a denial are dropped, so that what it tells is read as told. Where the second denial is one of a bad
state ('it could not be closed without a gap', 'in no position did it not gap') the state is set aside.
"""

from itertools import pairwise

from notereader.reader.page import Mention, Page, Sentence, within
from notereader.reader.standing.none_but import only_one_hurt
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_TAKING_AWAY = word_list("quality", "taking_away")
_IN_TWO = frozenset(tuple(words.split()) for words in word_list("quality", "taking_away_in_two"))
_TAKING_BACK = word_list("double_denials", "taking_back")
_TAKING_BACK_BEFORE = phrases_by_first_word("double_denials", "taking_back_phrases")
_PREVENTING = word_list("double_denials", "preventing")
_FILLERS = word_list("double_denials", "fillers")
_LITTLE = word_list("double_denials", "little")
_LINKS = word_list("double_denials", "links")
_BAD = frozenset(["gap", "tension", "bulk", "glide"])
_LESSENED = word_list("double_denials", "lessened")
_PERCEIVING = word_list("double_denials", "perceiving")
_OPENED = frozenset(["opened", "open", "parted"])
_DEFINITE = frozenset(["the", "this", "that", "its"])
_STOPS = frozenset([",", ";", ".", ":", "(", ")", "and", "but", "or", "nor", "so", "then"])
_NOBODY = frozenset(["nothing", "nobody", "none", "neither"])
_READ_BY_RULES = frozenset(["gap", "tension"])  # 'not without a gap' right behind each other
_LEFT_UNSAID = frozenset(["omitted", "neglected", "failed", "fails"])
_SAYING = frozenset(["say", "mention", "dictate", "note", "record", "tell", "write", "state", "add"])
_NEAR, _FAR = 3, 8  # words


def drop_double_denials(page: Page) -> None:
    """Drop the cues of denials that are taken back in the same breath."""
    dropped: set[int] = set()
    for n, cue in enumerate(page.cues):
        if cue.value != "negated" or n in dropped:
            continue
        end = _taken_back(page, cue)
        if end:
            dropped.update(m for m in range(n, len(page.cues)) if page.cues[m].i < end and _denies(page.cues[m]))
    if dropped:
        page.cues = [cue for n, cue in enumerate(page.cues) if n not in dropped]


def _denies(cue: Mention) -> bool:
    return cue.value == "negated"


def _taken_back(page: Page, cue: Mention) -> int:
    """Return the word behind what takes a denial back, 'no denying', 'could not be avoided'; 0 where nothing does."""
    words, first = page.words, cue.j
    only = only_one_hurt(page, cue.i, len(words))
    if only is not None:
        return only[1]  # 'no flexor other than the FDP was cut'
    behind = words[cue.j : cue.j + 2]
    if words[cue.i] in _LEFT_UNSAID and behind[:1] == ["to"] and behind[-1] in _SAYING:
        return cue.j  # 'I omitted to say that it gapped by 1 mm'
    if words[cue.i] in _NOBODY:  # 'nothing I did prevented a gap', 'neither gap nor catching was absent'
        end = _part_end(page, cue.j, cue.j + _FAR, nor=True)
        return next((k + 1 for k in range(first, end) if words[k] in _PREVENTING), 0)
    while first < min(cue.j + _NEAR, len(words)) and words[first] in _FILLERS:
        first += 1
    if first >= len(words) or words[first : first + 2] in (["question", "of"], ["doubt", "if"], ["doubt", "whether"]):
        return 0
    phrase = next((p for p in _TAKING_BACK_BEFORE.get(words[first], ()) if words[first : first + len(p)] == p), None)
    if phrase is not None:
        return first + len(phrase)
    return first + 1 if words[first] in _TAKING_BACK or _still_there(page, cue, first) else 0


def _still_there(page: Page, cue: Mention, k: int) -> bool:
    """'The gap was not small', 'the tension was not relieved by flexing the wrist': it was there, and no less."""
    lead = within(page.mentions, cue.i - _NEAR, cue.i)
    if not any(m.kind in _BAD and page.words[m.j - 1] not in _OPENED for m in lead):
        return False  # 'A3 opened and not closed' is said of the pulley
    little = page.words[k] in _LITTLE and page.words[k + 1 : k + 2] in ([], ["."])
    return little or page.words[k] in _LESSENED


def _part_end(page: Page, k: int, last: int, nor: bool = False) -> int:
    stops = _STOPS - {"nor", "or"} if nor else _STOPS
    return next((n for n in range(k, min(last, len(page.words))) if page.words[n] in stops), min(last, len(page.words)))


def mark_double_denials(page: Page, sentence: Sentence) -> None:
    """Set aside the bad states that a sentence denies twice over: 'it would not close without a gap'."""
    denials = [c for c in within(page.cues, sentence.i, sentence.j) if _denies(c)]
    if not denials:
        return
    for m in within(page.mentions, sentence.i, sentence.j):
        if m.kind in _BAD and any(twice(page, m, denials) for twice in (_without_twice, _linked_twice, _presupposed)):
            page.mark(m.i, m.j, "considered")
        elif m.kind in _BAD and page.words[m.i - 2] == "no" and page.words[m.i - 1] in _LITTLE:
            page.mark(m.i - 2, m.j, "considered")  # 'no mean gap was left'


def _without_twice(page: Page, m: Mention, denials: list[Mention]) -> bool:
    """'The repair did not come together without tension', 'there was not one cycle without a gap'."""
    k = next((k for k in range(m.i, max(m.i - _NEAR, 0), -1) if page.words[k] == "without"), -1)
    if k < 0 or page.words[k - 1] == "or":
        return False
    before = [c for c in denials if c.j <= k and k - c.j <= _FAR and _STOPS.isdisjoint(page.words[c.j : k])]
    told = any(o.kind in _BAD for c in before[-1:] for o in within(page.mentions, c.j, k))
    adjacent = bool(before) and before[-1].j == k and m.kind in _READ_BY_RULES
    return bool(before) and not told and not adjacent


def _presupposed(page: Page, m: Mention, denials: list[Mention]) -> bool:
    """'No stitch would close the gap', 'I could not overcome the tension': what 'the' names was there."""
    before = [c for c in denials if c.j < m.i and m.i - c.j <= _FAR]
    if page.words[m.i - 1] not in _DEFINITE or not before or m.value in ("none", "free"):
        return False
    lead = page.words[before[-1].i : m.i]
    taken_away = not _TAKING_AWAY.isdisjoint(lead) or not _IN_TWO.isdisjoint(pairwise(lead))
    return _STOPS.isdisjoint(lead) and _PERCEIVING.isdisjoint(lead) and not taken_away  # which tells that it stayed


def _linked_twice(page: Page, m: Mention, denials: list[Mention]) -> bool:
    """'In no position was it seen that it did not gap', 'no use pretending it did not gap'."""
    near = [c for c in denials if (c.j <= m.i and m.i - c.j <= _NEAR) or c.i == m.i]
    if not near:
        return False
    second = near[-1]
    for first in (c for c in denials if c.j <= second.i and second.i - c.j <= _FAR):
        between = page.words[first.j : second.i]
        told = any(o.kind in _BAD for o in within(page.mentions, first.j, second.i))
        if _STOPS.isdisjoint(between) and not _LINKS.isdisjoint(between) and not told:
            return True
    return False
