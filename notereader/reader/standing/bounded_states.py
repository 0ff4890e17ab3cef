"""Good states that hold only so far.

'Free, but only with the wrist bent', 'as long as the wrist is bent', 'no gap until the last pull'.
"""

from notereader.reader.layout.clauses import clause_end, clause_start
from notereader.reader.page import Mention, Page, Sentence, within
from notereader.reader.standing.good_states import FREELY, is_good
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_ONLY = frozenset(["only", "solely", "provided", "otherwise"])
_WITH = frozenset(["with", "when", "if", "in", "while", "provided", "under"])
_BUT = frozenset([",", "but", "though", "and", "then"])
_FREEING = frozenset(["vented", "released", "trimmed", "excised"])  # 'ran freely only when A4 had been vented'
_RESULTS = ("glide", "gap", "tension")
_BOUNDING = frozenset(["as", "so", "provided", "providing"])  # 'as long as', 'provided that'


def mark_bounded(page: Page, sentence: Sentence) -> None:
    """Set aside the good results of a sentence that it bounds."""
    if not (_SO_FAR.keys() | _SO_FAR_BUT.keys()).isdisjoint(sentence.said):
        _mark_so_far(page, sentence)
    _mark_only_with(page, sentence)


def _mark_so_far(page: Page, sentence: Sentence) -> None:
    """'No gap until the last pull', 'free except in full extension'; not 'no gap, save in the ring', told elsewhere."""
    for m in within(page.mentions, sentence.i, sentence.j):
        k = m.j + (page.words[m.j : m.j + 1] == [","])
        if m.i < m.j and m.kind in ("glide", "gap") and _holds_so_far(page, sentence, k):
            page.mark(m.i, m.j, "conditional")


def _holds_so_far(page: Page, sentence: Sentence, k: int) -> bool:
    word = page.words[k] if k < sentence.j else ""
    if any(page.words[k : k + len(p)] == p for p in _SO_FAR.get(word, ())):
        return True
    end = clause_end(page, sentence, k + 1)
    behind = page.words[k:end]
    led = any(behind[: len(p)] == p for p in _SO_FAR_BUT.get(word, ()))
    places = _PLACES if word == "but" else _PLACES | {"pulley"}
    told = bool(page.figures_in(k, end)) or any(m.kind in places for m in within(page.mentions, k, end))
    place = word == "but" and any(m.kind == "pulley" for m in within(page.mentions, k, end))
    return led and not told and (place or not _MOMENTS.isdisjoint(behind))


_SO_FAR = phrases_by_first_word("weakened", "so_far")
_SO_FAR_BUT = phrases_by_first_word("weakened", "so_far_but")
_MOMENTS = word_list("weakened", "moments")
_PLACES = frozenset(["digit", "tendon"])


def _mark_only_with(page: Page, sentence: Sentence) -> None:
    """'Glides freely, but only with the wrist bent', 'when the wrist is bent, otherwise it drags': bounded."""
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


def bounded_state(page: Page, cue: Mention, sentence: Sentence) -> tuple[int, int] | None:
    """'Free glide as long as the wrist is bent; straight, it drags': the good state that a condition bounds."""
    if " ".join(page.words[cue.i : cue.j]).split()[0] not in _BOUNDING:
        return None
    begin = clause_start(page, sentence, cue.i)
    good = [m.i for m in within(page.mentions, begin, cue.i) if m.kind in _RESULTS and is_good(m)]
    good += [k for k in range(begin, cue.i) if page.words[k] in FREELY]
    end = next((k for k in range(cue.j, sentence.j) if page.words[k] in (";", ".")), sentence.j)
    return (min(good), end) if good else None
