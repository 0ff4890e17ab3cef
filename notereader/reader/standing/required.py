"""What is asked of any repair and is no finding of this one.

'No gap should be accepted', 'it must run freely before therapy starts', 'an intact A2 is essential', 'we want no gap'.
"""

from notereader.reader.layout.clauses import clause_end, clause_start
from notereader.reader.page import Page, Sentence, within
from notereader.reader.standing.good_states import GOOD, mark_good_states
from notereader.reader.standing.negation import is_negated
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_MODALS = phrases_by_first_word("required", "modals")
_REMARKS = word_list("required", "remarks")  # 'I must say it glides freely', 'should read'
_COPULAS = frozenset(["is", "are", "remains", "remain"])
_ASKED = word_list("required", "asked")
_DEGREES = word_list("required", "degrees")
_WANTS = word_list("required", "wants")
_WHO = frozenset(["i", "we", "one", "you", "they"])
_JOINS = frozenset(["and", "so", "which", "that", "as", "because", "since", "where", "when", "while", "although"])
_FINITE = frozenset(["was", "were", "is", "are", "had", "has", "did", "showed", "ran", "found", "left", "remained"])
_BARE = frozenset(
    ["no", "not", "the", "a", "any", "further", "in", "of", "n't", "didn't"]
)  # 'no need to', 'did not need to'


def mark_required(page: Page, sentence: Sentence) -> None:
    """Set aside the good states that a sentence only asks for."""
    if (
        _ASKED.isdisjoint(sentence.said)
        and _MODALS.keys().isdisjoint(sentence.said)
        and _WANTS.isdisjoint(sentence.said)
    ):
        return
    words = page.words
    for k in range(sentence.i, sentence.j):
        if words[k] in _WANTS and k > sentence.i and words[k - 1] in _WHO and words[k + 1 : k + 2] != ["that"]:
            _set_aside(page, sentence, k, _end(page, sentence, k))
        elif _is_modal(page, sentence, k) or _is_asked(page, sentence, k):
            _set_aside(page, sentence, _subject_of(page, sentence, k), _end(page, sentence, k))


def _is_modal(page: Page, sentence: Sentence, k: int) -> bool:
    """'must', 'should', 'has to', 'is to be'; not 'I must say', 'should read', 'should one be needed', 'no need to'."""
    led = next((p for p in _MODALS.get(page.words[k], ()) if page.words[k : k + len(p)] == p), None)
    if led is None or (k > sentence.i and page.words[k - 1] in _BARE):
        return False
    return _REMARKS.isdisjoint(page.words[k + len(led) : k + len(led) + 2])


def _is_asked(page: Page, sentence: Sentence, k: int) -> bool:
    """'... is (absolutely) essential', 'are not acceptable', 'is the aim', 'is what counts'."""
    if page.words[k] not in _COPULAS:
        return False
    n = k + 1
    while n < sentence.j and page.words[n] in _DEGREES:
        n += 1
    return n < sentence.j and page.words[n] in _ASKED


def _end(page: Page, sentence: Sentence, k: int) -> int:
    return min(clause_end(page, sentence, k), k + _FAR)  # dictations go on without stops


_FAR = 10  # words


def _subject_of(page: Page, sentence: Sentence, k: int) -> int:
    """Return where the subject of the verb at k begins, or k where another verb stands before it in its clause."""
    begin = max(clause_start(page, sentence, k), k - _FAR)
    begin = next((n + 1 for n in range(k - 1, begin - 1, -1) if page.words[n] in _JOINS), begin)
    return begin if _FINITE.isdisjoint(page.words[begin:k]) else k


def _set_aside(page: Page, sentence: Sentence, i: int, j: int) -> None:
    mark_good_states(page, i, j, "considered")
    for m in within(page.mentions, i, j):
        if m.i < m.j and m.kind in GOOD and (m.kind == "gap" or is_negated(page, m.i, m.j, sentence)):
            page.mark(m.i, m.j, "considered")
