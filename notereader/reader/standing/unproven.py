"""Good states that nobody saw or tested: 'free running was not confirmed', 'no gap, though this was not tested'."""

from notereader.reader.layout.clauses import clause_end, clause_start
from notereader.reader.page import Page, Sentence, within
from notereader.reader.standing.good_states import ABSENCE, GOOD, OF_SUTURES, is_good, mark_good_states
from notereader.reader.standing.negation import is_negated
from notereader.vocabulary.wordlists import word_list

_EXCEPTING = word_list("scene", "excepting")
_DENIALS = frozenset(["not", "never"])
_UNPROVEN = word_list("weakened", "unproven")
_UNCONFIRMED = word_list("weakened", "unconfirmed")
_LEADING_UP = frozenset(["be", "been", "being", "formally", "ever", "yet", "actually", "really", "directly", "then"])
_FINITE = frozenset(["was", "were", "is", "are", "had", "has", "could", "can"])
_UNTESTED = word_list("weakened", "untested")
_YET = word_list("weakened", "yet")
_OWNING_UP = frozenset(["though", "although", "but", "this", "which", "("])


def mark_unproven(page: Page, sentence: Sentence) -> None:
    """Set aside the good states of a sentence that nobody saw or tested."""
    denied = not (_UNPROVEN.isdisjoint(sentence.said) or _DENIALS.isdisjoint(sentence.said))
    if denied or not _UNCONFIRMED.isdisjoint(sentence.said):
        _mark_unconfirmed(page, sentence)
    if not _UNTESTED.isdisjoint(sentence.said):
        _mark_untested(page, sentence)


def _mark_unconfirmed(page: Page, sentence: Sentence) -> None:
    """'Free running was not confirmed', 'A2 intact, unconfirmed': a good state nobody saw; a 'gap not seen' is none."""
    words = page.words
    for k in range(sentence.i + 1, sentence.j):
        if words[k] in _UNCONFIRMED:
            begin = clause_start(page, sentence, k)
            begin = clause_start(page, sentence, begin - 1) if begin == k and begin > sentence.i else begin
        elif words[k] in _UNPROVEN:
            verb = next((n for n in range(k - 1, sentence.i, -1) if words[n] not in _LEADING_UP), sentence.i)
            if words[verb] not in _DENIALS or words[verb - 1] not in _FINITE:
                continue  # 'RDN   [x] intact   [ ] not seen'
            begin = _subject_start(page, sentence, verb - 1)
        else:
            continue
        end = clause_end(page, sentence, k) if words[k + 1 : k + 2] == ["that"] else k
        if not ABSENCE.isdisjoint(words[begin:k]):
            page.mark(begin, end, "considered")  # 'absence of a gap was not verified'
        mark_good_states(page, begin, end, "considered")


def _subject_start(page: Page, sentence: Sentence, verb: int) -> int:
    """'The core was sound and free running was not seen': where the subject begins, behind 'and' if it is but one."""
    begin = clause_start(page, sentence, verb)
    joined = next((n + 1 for n in range(verb - 1, begin, -1) if page.words[n] == "and"), begin)
    several = page.words[verb] == "were" and _FINITE.isdisjoint(page.words[begin:joined])
    return begin if several else joined


def _mark_untested(page: Page, sentence: Sentence) -> None:
    """'No gap, though this was not tested', 'A2 intact (not checked)', 'intact, but I did not look': nobody saw it."""
    for k in range(sentence.i + 1, sentence.j):
        if page.words[k] not in _UNTESTED:
            continue
        begin = k - (page.words[k - 1] in _DENIALS)
        first = begin
        while first > sentence.i and page.words[first - 1] in _YET:
            first -= 1
        denied = begin < k or page.words[k].startswith("un")
        ends = page.words[k + 1 : k + 2] in ([], ["."], [")"], [","], [";"]) or k + 1 >= sentence.j
        if denied and ends and not _OWNING_UP.isdisjoint(page.words[first:begin]):
            _set_aside_before(page, sentence, first)


def _set_aside_before(page: Page, sentence: Sentence, k: int) -> None:
    """Set aside the statement that ends before word k, where it is of a good state or of a suture."""
    begin = clause_start(page, sentence, k)
    if not _EXCEPTING.isdisjoint(page.words[begin:k]):
        return  # 'all intact except for the radial, which was not explored'
    inside = [m for m in within(page.mentions, begin, k) if m.i < m.j]
    if any(
        is_good(m) or is_negated(page, m.i, m.j, sentence) for m in inside if m.kind in GOOD or m.kind in OF_SUTURES
    ):
        page.mark(begin, k, "considered")
