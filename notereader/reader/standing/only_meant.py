"""What stands behind words of an aim, a talk or a doubt: 'the idea was to keep A2', 'I doubt that it glided freely'."""

from notereader.reader.layout.clauses import BOUNDS
from notereader.reader.page import Page, Sentence, within
from notereader.reader.standing.good_states import GOOD, OF_SUTURES
from notereader.reader.standing.wishes import carried_out
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_AHEAD = phrases_by_first_word("only_meant", "ahead")
_REMARKS = word_list("only_meant", "remarks")  # 'I was to say that A2 is intact'
_OF_REPAIR = frozenset([*GOOD, *OF_SUTURES, "pulley"])
_ORDERED = frozenset(["programme", "splint", "joint", "anaesthesia"])  # 'he agreed to a general anaesthetic'
_ENDS = frozenset([";", ".", "but", "however", "yet", "though", "although", "(", ")", "so"])
_FINITE = frozenset(
    [
        "was",
        "were",
        "is",
        "are",
        "had",
        "has",
        "did",
        "went",
        "took",
        "got",
        "used",
        "placed",
        "found",
        "gave",
        "put",
        "made",
        "came",
        "began",
        "ran",
    ]
)
_ANEW = frozenset(["it", "i", "we", "he", "she", "they", "this", "that"])
_JOINS = frozenset([",", "and"])


def mark_only_meant(page: Page, sentence: Sentence) -> None:
    """Set aside what a sentence only means, promises, talks of or doubts, up to where it tells what was done."""
    if _AHEAD.keys().isdisjoint(sentence.said):
        return
    for k in range(sentence.i, sentence.j):
        led = next((p for p in _AHEAD.get(page.words[k], ()) if page.words[k : k + len(p)] == p), None)
        if led is None:
            continue
        behind = k + len(led)
        end = _end(page, behind, sentence.j, telling=led[-1] in _LEADING_IN)
        said = not _REMARKS.isdisjoint(page.words[behind : behind + 2])
        if not said and not carried_out(page.words[behind : sentence.j]):
            kinds = {m.kind for m in within(page.mentions, behind, end)}
            if not _OF_REPAIR.isdisjoint(kinds) and _ORDERED.isdisjoint(kinds):
                page.mark(k, end, "considered")


_LEADING_IN = frozenset(["that", "doubt", "it", "certain", "say", "sure", "convinced"])


def _end(page: Page, k: int, j: int, telling: bool) -> int:
    """Return where the words that follow word k end: a comma or 'and' parts them where a verb of a deed stands behind.

    `telling`: a statement with its own verb follows ('I doubt that A2 was intact'), and the first verb is of that.
    """
    verbs = 0
    for n in range(k, j):
        if page.words[n] in _ENDS:
            return n
        if page.words[n] in _JOINS and (verbs or not telling):
            stop = next((m for m in range(n + 1, j) if page.words[m] in BOUNDS or page.words[m] in _ENDS), j)
            if page.words[n + 1] in _ANEW or not _FINITE.isdisjoint(page.words[n + 1 : stop]):
                return n
        verbs += page.words[n] in _FINITE
    return j
