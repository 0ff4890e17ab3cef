"""What a speaker takes back in the same breath: 'A2 was released, no, correction, A2 was preserved'.

Only a state (cut, whole, vented, repaired) is taken back here, and only where another one follows; sizes and counts
put right are the threads' own affair.
"""

from notereader.reader.page import Break, Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_CUES = [tuple(cue.split()) for cue in word_list("spoken", "self_corrections")]
_FIRST = frozenset(cue[0] for cue in _CUES)
_STATES = frozenset(["extent", "opened", "gap", "bulk", "tension", "glide"])
_NOUNS = frozenset(["pulley", "tendon", "digit", "slip"])
_FREELY = frozenset(["free", "freely", "smoothly"])
_NEAR = 3  # words between what is taken back and the cue
_REACH = 14  # words in which what holds instead is told
_ANEW = frozenset(["not", "i", "we", "it", "that", "they"])


def mark_taken_back(page: Page, sentence: Sentence) -> None:
    """Note that a state is no finding which the words behind it take back and replace."""
    if _FIRST.isdisjoint(sentence.said):
        return
    k = sentence.i
    while k < sentence.j:
        end = _cue_end(page, k, sentence.j) if page.words[k] in _FIRST else k
        if end > k:
            _take_back(page, k, end)
        k = max(end, k + 1)


def _cue_end(page: Page, k: int, last: int) -> int:
    """Return the word behind the cues that begin at word k ('no, sorry,'), or k where none does."""
    end = k
    while end < last:
        cue = next((c for c in _CUES if tuple(page.words[end : end + len(c)]) == c), None)
        if cue is None:
            break
        end += len(cue)
        while end < last and page.words[end] == ",":
            end += 1
    return end


def _take_back(page: Page, k: int, end: int) -> None:
    begin = k
    while begin > 0 and page.words[begin - 1] in (",", "-", "."):
        begin -= 1
    nothing_behind = end >= len(page.words)
    if begin == 0 or nothing_behind or max(page.breaks[begin : end + 1], default=0) >= Break.LINE:
        return
    before = [m for m in within(page.mentions, begin - 12, begin) if m.kind in _STATES and m.j <= begin]
    near = [m for m in before if m.j == before[-1].j and begin - m.j <= _NEAR]
    _take_back_zone(page, begin, end)
    behind = [m for m in _behind(page, end) if m.kind in _STATES]
    replaced = {m.kind for m in behind}
    if _told_wide(page, end):
        replaced.add("gap")  # 'no gap, or rather about 1 mm'
    if _only_a_name(page, near, begin, end):
        return
    freely = next((k for k in range(begin - 1, max(0, begin - 1 - _NEAR), -1) if page.words[k] in _FREELY), -1)
    if freely >= 0 and "glide" in replaced:
        page.mark(freely, begin, "teaching")  # 'it glided free, no, let me be accurate, it caught'
    for m in near:
        if m.kind in replaced:
            page.mark(m.i, m.j, "teaching")
    for m in behind if page.words[end] == "not" else ():
        if m.i == end + 1 and any(m.value == b.value for b in near):
            page.mark(end, m.j, "teaching")  # 'took down A4, sorry, not took down, I vented it'


def _take_back_zone(page: Page, begin: int, end: int) -> None:
    """'Zone two, correction, zone one B': the zone told before the cue, where another follows it."""
    named = [m for m in within(page.mentions, begin - _NEAR - 2, begin) if m.kind == "zone" and m.j <= begin]
    near = [m for m in named if begin - m.j <= _NEAR]
    if near and any(m.kind == "zone" for m in _behind(page, end)):
        page.mark(near[-1].i, near[-1].j, "teaching")


def _only_a_name(page: Page, near: list[Mention], begin: int, end: int) -> bool:
    """'Cut at the A2, sorry, the A4 pulley': the name put right stands right before the cue."""
    named = any(m.kind in _NOUNS and m.j == begin for m in within(page.mentions, begin - 4, begin))
    return named and page.words[end] not in _ANEW


def _behind(page: Page, k: int) -> list[Mention]:
    """Return what is told behind word k, up to the next full stop."""
    return within(page.mentions, k, _stop_behind(page, k))


def _told_wide(page: Page, k: int) -> bool:
    """Tell whether a width in millimetres is told behind word k, up to the next full stop."""
    last = _stop_behind(page, k)
    return any(q.unit == "mm" and k <= q.i < last for q in page.quantities)


def _stop_behind(page: Page, k: int) -> int:
    last = min(k + _REACH, len(page.words))
    return next((n for n in range(k, last) if page.words[n] in (".", ";") or page.breaks[n] >= Break.LINE), last)
