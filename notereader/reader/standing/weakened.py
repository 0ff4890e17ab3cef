"""Good states that an adverb takes back or that are only guessed at: "hardly clean", "no longer free", "A2 ?intact".

What stays of them is not told, so the words are set aside: neither the good state nor its opposite is a finding.
"""

from notereader.reader.layout.clauses import clause_start
from notereader.reader.page import Mention, Page, Sentence, within
from notereader.reader.standing.bounded_states import mark_bounded
from notereader.reader.standing.good_states import FREELY, GOOD, GOOD_STATES
from notereader.reader.standing.guessed_states import mark_doubts, mark_guesses
from notereader.reader.standing.unproven import mark_unproven
from notereader.vocabulary.wordlists import word_list

_ADVERBS = word_list("weakened", "adverbs")
_PAIRS = frozenset(tuple(pair.split()) for pair in word_list("weakened", "pairs"))
_BETWEEN = word_list("weakened", "between")
_DENIALS = frozenset(["not", "never"])
_LOST = word_list("weakened", "lost")
_TO_LOST = word_list("weakened", "to_lost")
_REGAINED = word_list("weakened", "answered_after_all")
_SOON = 5  # words: 'was lost and then regained'
_RESULTS = frozenset(["gap", "glide", "tension", "bulk"])
_OPENERS = _ADVERBS | _DENIALS | {"nor"} | {second for _, second in _PAIRS}
# 'Hardly smooth', 'less than full glide' are restricted, as the rule of the glide has it.
_SCARCELY = frozenset(["hardly", "barely", "scarcely", "less"])


def mark_weakened(page: Page, sentence: Sentence) -> None:
    """Set aside the good states of a sentence that are taken back, guessed at, unproven or hold only so far."""
    mark_guesses(page, sentence)
    mark_unproven(page, sentence)
    mark_bounded(page, sentence)
    if not _LOST.isdisjoint(sentence.said):
        _mark_lost(page, sentence)
    if _OPENERS.isdisjoint(sentence.said):
        return
    mark_doubts(page, sentence)
    _mark_states_taken_back(page, sentence)
    for k in range(sentence.i, sentence.j):
        if page.words[k] in _ADVERBS and page.words[k - 1 : k] == ["("] and page.words[k + 1 : k + 2] == [")"]:
            page.mark(clause_start(page, sentence, k - 1), k, "considered")  # 'A2 intact (probably)'


def _mark_lost(page: Page, sentence: Sentence) -> None:
    """'Free glide was lost', 'a smooth glide was missing': the state right before the verb."""
    for m in within(page.mentions, sentence.i, sentence.j):
        k = m.j
        while k < sentence.j and page.words[k] in _TO_LOST:
            k += 1
        lost = m.i < m.j < k < sentence.j and page.words[k] in _LOST
        for_good = _REGAINED.isdisjoint(page.words[k : min(k + _SOON, sentence.j)])
        if lost and for_good and m.kind in _RESULTS and m.value in GOOD_STATES[m.kind]:
            page.mark(m.i, m.j, "considered")


def _mark_states_taken_back(page: Page, sentence: Sentence) -> None:
    """'Hardly clean', 'no longer intact', 'did not run freely': the state with what takes it back."""
    for m in within(page.mentions, sentence.i, sentence.j):
        if m.value in GOOD.get(m.kind, ()) and m.i < m.j:
            at = _weakener(page, sentence, m.i, _is_freedom(page, m))
            if at >= 0 and not (m.kind == "glide" and page.words[at] in _SCARCELY):
                page.mark(at, m.j, "considered")
    for k in range(sentence.i, sentence.j):
        at = _weakener(page, sentence, k, denied=False) if page.words[k] in FREELY else -1
        if at >= 0 and page.words[at] not in _SCARCELY:
            page.mark(at, k + 1, "considered")


def _weakener(page: Page, sentence: Sentence, i: int, denied: bool) -> int:
    """Return the first word of what takes back the state at word i, or -1; `denied`: a plain 'not' does so too."""
    k = i - 1
    while k > sentence.i and page.words[k] in _BETWEEN:
        k -= 1
    if denied and page.words[clause_start(page, sentence, i)] == "nor":
        return clause_start(page, sentence, i)  # 'Nor was A2 left unharmed'
    if k < sentence.i:
        return -1
    if k > sentence.i and (page.words[k - 1], page.words[k]) in _PAIRS:
        return k - 1
    return k if page.words[k] in _ADVERBS or (denied and page.words[k] in _DENIALS) else -1


def _is_freedom(page: Page, m: Mention) -> bool:
    """Tell whether a state is told as freedom from a bad one: 'tension-free', 'gapless', 'uninjured'."""
    last = page.words[m.j - 1]
    freed = m.value == "none" and last in ("free", "gapless")
    return freed or (m.value == "intact" and page.words[m.i].startswith("un"))
