"""Short names of fingers told in a run with others, 'the index, middle and small were', or placed like another.

'Small' and 'middle' are words of every day; beside other fingers, in their row or behind the same words, they are
fingers: 'cut in the ring but whole in the small'.
"""

from notereader.reader.page import Mention, Page, within
from notereader.vocabulary.wordlists import word_list

_SHORT_NAMES = frozenset(["long", "middle", "little", "small"])
_JOINS = frozenset([",", "and", "&", "/", "+", "or"])
_PLACING = frozenset(["in", "of", "on", "for"])
_PARTS = frozenset([",", ";", ":", "and", "but", "while", "whereas"])
_GOES_ON = word_list("digit_runs", "goes_on")
_STATES = word_list("digit_runs", "states")
_REACH = 30  # words
_NAMED = ("digit", "digit?")


def in_a_run(page: Page, mention: Mention) -> bool:
    """Tell whether a short name stands in a run with other fingers or where another finger of its sentence stands."""
    if page.words[mention.i] not in _SHORT_NAMES or mention.j - mention.i > 1 or mention.i == 0:
        return False
    near = [m for m in within(page.mentions, mention.i - _REACH, mention.i + _REACH) if m.kind in _NAMED]
    run = _run(page, near, mention)
    if not _goes_on(page, run[-1].j):
        return False
    sure = any(m.kind == "digit" and m.value != mention.value for m in run)
    return (
        sure
        or _placed_alike(page, near, run)
        or (len({m.value for m in run}) > 1 and _beside_a_finger(page, near, run))
    )


def told_in_turn(page: Page, mention: Mention) -> bool:
    """'FDS: index whole, small 60 % cut': a short name told to be so behind another finger's state, in one sentence."""
    words, i, j = page.words, mention.i, mention.j
    if words[i] not in _SHORT_NAMES or j - i > 1 or words[i - 1 : i] == [] or words[i - 1] not in _PARTS:
        return False
    near = [m for m in within(page.mentions, i - _REACH, i + _REACH) if m.kind in _NAMED]
    stated = words[j : j + 1] != [] and words[j] in _STATES
    shared = words[j : j + 1] != [] and words[j].isdecimal() and words[j + 1 : j + 2] == ["%"]
    return (stated or shared) and _beside_a_finger(page, near, [mention])


def _beside_a_finger(page: Page, near: list[Mention], run: list[Mention]) -> bool:
    """Tell whether another finger is named beyond doubt in the same sentence."""
    others = [m for m in near if m.kind == "digit" and all(m.value != own.value for own in run)]
    return any("." not in page.words[min(m.j, run[0].i) : max(m.i, run[0].i)] for m in others)


def _run(page: Page, near: list[Mention], mention: Mention) -> list[Mention]:
    """Return the names joined to a name by commas and the like, with itself, in the order of the note."""
    ending, beginning = {m.j: m for m in near}, {m.i: m for m in near}
    run = [mention]
    while (k := _across(page, run[0].i - 1, -1)) is not None and k + 1 in ending:
        run.insert(0, ending[k + 1])
    while (k := _across(page, run[-1].j, 1)) is not None and k in beginning:
        run.append(beginning[k])
    return run


def _across(page: Page, k: int, step: int) -> int | None:
    """Return the word beyond the joining words at word k, 'and', ', and the'; None where nothing joins."""
    first = k
    while 0 <= k < len(page.words) and (page.words[k] in _JOINS or page.words[k] == "the"):
        k += step
    crossed = page.words[min(first, k + 1) : max(first + 1, k)]
    return k if not _JOINS.isdisjoint(crossed) and 0 <= k < len(page.words) else None


def _goes_on(page: Page, j: int) -> bool:
    """Tell whether what stands behind a run of names goes on about fingers, and is no noun for them to describe."""
    behind = page.words[j : j + 2]
    if not behind or behind[0] in _GOES_ON or behind[0] in _STATES:
        return True
    return behind[0].isdecimal() and behind[1:] == ["%"]


def _placed_alike(page: Page, near: list[Mention], run: list[Mention]) -> bool:
    """'Cut in the ring and whole in the middle': another finger of the sentence stands behind the same words."""
    i = run[0].i
    lead = page.words[max(0, i - 2) : i]
    if len(lead) < 2 or lead[0] not in _PLACING or lead[1] != "the":
        return False
    tendon = not page.tendon_words.isdisjoint(range(i - _REACH, i + _REACH))
    surely = {"digit"} if not tendon or page.words[run[0].i] in ("middle", "long") else {"digit", "digit?"}
    others = [m for m in near if m.kind in surely and m not in run and page.words[max(0, m.i - 2) : m.i] == lead]
    others = [m for m in others if all(m.value != own.value for own in run)]
    return any("." not in page.words[min(m.j, i) : max(m.i, i)] for m in others)
