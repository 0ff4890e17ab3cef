"""Good states that hold only so far: 'free, but only with the wrist bent', 'no gap until the last pull', 'in most'."""

from collections.abc import Mapping

from notereader.reader.layout.clauses import clause_end, clause_start
from notereader.reader.page import Mention, Page, Sentence, within
from notereader.reader.standing.good_states import FREELY, GOOD_STATES, is_good
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_ONLY = frozenset(["only", "solely", "provided", "otherwise"])
_WITH = frozenset(["with", "when", "if", "in", "while", "provided", "under"])
_BUT = frozenset([",", "but", "though", "and", "then"])
_FREEING = frozenset(["vented", "released", "trimmed", "excised"])  # 'ran freely only when A4 had been vented'
_RESULTS = ("glide", "gap", "tension")
_BEHIND = phrases_by_first_word("bounded", "behind")
_AHEAD = phrases_by_first_word("bounded", "ahead")
_EXCEPTING = phrases_by_first_word("bounded", "excepting")
_TO_THE_END = word_list("bounded", "to_the_end")
_STRAINS = word_list("bounded", "strains")
_TIMES = word_list("bounded", "times")
_ENDED = word_list("bounded", "ended")
_TESTED = word_list("bounded", "tested")
_BOUNDS = frozenset([*_BEHIND, *_AHEAD, *_EXCEPTING, "before"])
_NAMES = frozenset(["digit", "tendon", "slip"])
_LONGEST = 5  # words of 'for the most part', 'before the last knot gave'
_BOUNDING = frozenset(["as", "so", "provided", "providing"])  # 'as long as', 'provided that'


def mark_bounded(page: Page, sentence: Sentence) -> None:
    """'Glides freely, but only with the wrist bent', 'when the wrist is bent, otherwise it drags': bounded."""
    if not _BOUNDS.isdisjoint(sentence.said):
        _mark_bounded_beside(page, sentence)
    if _ONLY.isdisjoint(sentence.said):
        return
    words = page.words
    for k in (k for k in range(sentence.i + 1, sentence.j - 1) if words[k] in _ONLY):
        first = k
        while first > sentence.i and words[first - 1] in _BUT:
            first -= 1
        if words[k] == "otherwise":
            first = next((n for n in range(first - 1, sentence.i, -1) if words[n] in _WITH), sentence.i)
        elif words[k] != "provided" and words[k + 1] not in _WITH:
            continue
        freed = any(m.kind == "opened" and m.value in _FREEING for m in within(page.mentions, k, sentence.j))
        for m in within(page.mentions, sentence.i, first):
            if m.j == first and m.kind in _RESULTS and is_good(m) and not freed:
                page.mark(m.i, m.j, "conditional")
        if words[first - 1] in FREELY and not freed:
            page.mark(first - 1, first, "conditional")


def _mark_bounded_beside(page: Page, sentence: Sentence) -> None:
    """'No gap until the last pull', 'mostly free', 'no catching except under load', 'intact before it tore'."""
    for m in within(page.mentions, sentence.i, sentence.j):
        if m.i < m.j and m.value in GOOD_STATES.get(m.kind, ()):
            k = m.j
            while k < sentence.j and page.words[k] in _TESTED and not _phrase(page, _BEHIND, k, sentence.j):
                k += 1
            end = clause_end(page, sentence, k + (page.words[k : k + 1] == ["but"]))
            if _led_by_share(page, sentence, m.i) or _bounded_at(page, m, k, end):
                page.mark(m.i, m.j, "conditional")
    for k in range(sentence.i, sentence.j - 1):  # 'Glide: free until A2, then catches'
        if page.words[k] in FREELY and page.words[k + 1] in ("until", "till", "unless"):
            page.mark(k, k + 1, "conditional")


def _led_by_share(page: Page, sentence: Sentence, i: int) -> bool:
    """'Mostly free', 'in part intact': an adverb right before the state."""
    return any(
        page.words[n : n + len(words)] == words and n + len(words) == i
        for n in range(max(sentence.i, i - _LONGEST), i)
        for words in _AHEAD.get(page.words[n], ())
    )


def _bounded_at(page: Page, m: Mention, k: int, end: int) -> bool:
    """Tell whether words k to `end` open with what bounds the state told before them."""
    words = page.words
    if _phrase(page, _BEHIND, k, end):
        return words[k] not in ("until", "till") or _TO_THE_END.isdisjoint(words[k:end])
    if words[k : k + 1] == ["before"]:
        return not _ENDED.isdisjoint(words[k + 1 : min(k + _LONGEST, end)])
    but = _phrase(page, _EXCEPTING, k, end)
    if not but or m.kind not in _RESULTS:
        return False
    first = k + but + (words[k + but] in ("in", "for"))
    inside = within(page.mentions, k, end)
    named = any(n.kind in _NAMES for n in inside)  # 'no gap except at the ring'
    if words[k] == "but" and any(n.kind in GOOD_STATES for n in inside):
        return False  # 'no gap but on extension it caught'
    return words[first] in _TIMES or (words[first] in _STRAINS and not named)


def _phrase(page: Page, phrases: Mapping[str, list[list[str]]], k: int, end: int) -> int:
    """Return how many words the longest of the phrases at word k has, 0 where none stands there."""
    found = phrases.get(page.words[k], ()) if k < end else ()
    return max((len(p) for p in found if page.words[k : k + len(p)] == p and k + len(p) < len(page.words)), default=0)


def bounded_state(page: Page, cue: Mention, sentence: Sentence) -> tuple[int, int] | None:
    """'Free glide as long as the wrist is bent; straight, it drags': the good state that a condition bounds."""
    if " ".join(page.words[cue.i : cue.j]).split()[0] not in _BOUNDING:
        return None
    begin = clause_start(page, sentence, cue.i)
    good = [m.i for m in within(page.mentions, begin, cue.i) if m.kind in _RESULTS and is_good(m)]
    good += [k for k in range(begin, cue.i) if page.words[k] in FREELY]
    end = next((k for k in range(cue.j, sentence.j) if page.words[k] in (";", ".")), sentence.j)
    return (min(good), end) if good else None
