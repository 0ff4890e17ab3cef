"""Good states from before the operation or another's paper: 'FDS clinically intact', 'A2 intact per ED', 'preop'."""

from notereader.reader.layout.clauses import clause_end, clause_start
from notereader.reader.page import Page, Sentence, within
from notereader.reader.standing.good_states import OF_SUTURES, mark_good_states
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_BEFORE = phrases_by_first_word("seen_before", "before")
_SOURCES = word_list("seen_before", "sources")
_BETWEEN = frozenset(
    ["the", "his", "her", "their", "outside", "first", "old", "referring", "transfer", "operation", "discharge"]
)
_HERE = word_list("seen_before", "here")
_OPENERS = frozenset([*_BEFORE, "per"])
_REACH = 4  # words: 'per the outside discharge letter'


def mark_seen_before(page: Page, sentence: Sentence) -> None:
    """Set aside the good states that a sentence has from an examination before the operation or from a paper."""
    if _OPENERS.isdisjoint(sentence.said) or not _HERE.isdisjoint(sentence.said):
        return
    for k in range(sentence.i, sentence.j):
        words = page.words[k : k + _REACH + 1]
        if words[0] == "per":
            source = next((w for w in words[1:] if w not in _BETWEEN), "")
            if source in _SOURCES:
                _set_aside(page, sentence, k, sutures=True)
        elif any(words[: len(p)] == p for p in _BEFORE.get(words[0], ())):
            _set_aside(page, sentence, k, sutures=False)


def _set_aside(page: Page, sentence: Sentence, k: int, sutures: bool) -> None:
    """Set aside the good states of the clause of word k, of the one behind it where it opens with word k."""
    begin, end = clause_start(page, sentence, k), clause_end(page, sentence, k)
    if begin > sentence.i and page.words[begin - 1] in (":", "("):
        begin = clause_start(page, sentence, begin - 1)  # 'A2: intact preop', 'A2 intact (preop)'
    if begin == k:
        end = clause_end(page, sentence, end + 1) if page.words[end : end + 1] in ([","], [":"]) else end
    if sutures and any(m.kind in OF_SUTURES for m in within(page.mentions, begin, end)):
        page.mark(begin, end, "story")
    mark_good_states(page, begin, end, "story")
