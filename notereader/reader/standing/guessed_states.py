"""States that are only guessed at: 'A2 ?intact', 'I believe', 'would run freely', 'full glide was assumed'."""

from notereader.reader.layout.clauses import CLAUSE_MARKS, clause_end, clause_start
from notereader.reader.page import Mention, Page, Sentence, within
from notereader.reader.standing.good_states import (
    ABSENCE,
    FREELY,
    GOOD,
    GOOD_STATES,
    OF_SUTURES,
    is_good,
    mark_good_states,
)
from notereader.reader.standing.negation import is_negated
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_DENIALS = frozenset(["not", "never"])
_DOUBTING = word_list("weakened", "doubting")
_NEARLY = word_list("weakened", "nearly")
_REACHED = word_list("weakened", "reached")
_GUESSES = phrases_by_first_word("weakened", "guesses")
_GUESSING = frozenset(_GUESSES)
_BELIEFS = phrases_by_first_word("weakened", "beliefs")
_BORNE_OUT = word_list("weakened", "borne_out")
_STATES = frozenset([*GOOD_STATES, "hurt"])
_NEAR = 3  # words
_ASSUMED = [words.split() for words in word_list("weakened", "assumed")]
_ASSUMING = frozenset([words[-1] for words in _ASSUMED])
_AFTER_ALL = word_list("weakened", "answered_after_all")
_SOON = 5  # words: 'was looked for and none was seen'
_BE = frozenset(["was", "were", "is", "are", "be", "being", "been"])


def mark_guesses(page: Page, sentence: Sentence) -> None:
    """Set aside what a sentence queries, believes, supposes or takes for granted."""
    if "?" in sentence.said:
        _mark_queried(page, sentence)
    if not _GUESSING.isdisjoint(sentence.said):
        _mark_guessed(page, sentence)
    if "would" in sentence.said:
        _mark_hypothetical(page, sentence)
    if "had" in sentence.said and _BORNE_OUT.isdisjoint(sentence.said):
        _mark_once_believed(page, sentence)
    if not _ASSUMING.isdisjoint(sentence.said):
        _mark_assumed(page, sentence)


def mark_doubts(page: Page, sentence: Sentence) -> None:
    """'Four strands were allegedly placed', 'six were nearly achieved': what is doubted of a suture."""
    for k in range(sentence.i, sentence.j):
        nearly = page.words[k] in _NEARLY and page.words[k + 1] in _REACHED
        if nearly or (page.words[k] in _DOUBTING and not _leads_to_share(page, k)):
            _mark_doubted(page, sentence, k)


def _mark_doubted(page: Page, sentence: Sentence, k: int) -> None:
    """'Four strands were allegedly placed', 'six were nearly achieved': the statement of word k, where of a suture."""
    begin = clause_start(page, sentence, k)
    if begin > sentence.i and page.words[begin - 1] == ":":
        begin = clause_start(page, sentence, begin - 1)  # 'Epitendinous: 6-0 probably'
    end = clause_end(page, sentence, k)
    if begin == k == end - 1 and begin > sentence.i:
        begin = clause_start(page, sentence, begin - 1)  # 'A2 was intact, probably'
    inside = within(page.mentions, begin, end)
    if any(m.kind in OF_SUTURES for m in inside) or (k in (sentence.i, end - 1) and any(map(is_good, inside))):
        _set_aside(page, sentence, begin, end)


def _leads_to_share(page: Page, k: int) -> bool:
    """'Cut by maybe half', 'perhaps 40 percent', 'maybe two millimetres': about so much, and no deed is doubted."""
    share = any(m.kind == "fraction" for m in within(page.mentions, k + 1, k + 3))
    return share or not _UNITS.isdisjoint(page.words[k + 2 : k + 3])


_UNITS = frozenset(["%", "percent", "mm", "millimeters", "millimetres", "millimeter", "millimetre", "mil", "mils"])


def _mark_queried(page: Page, sentence: Sentence) -> None:
    """'A2 ?intact', '?no gap', 'Gap: ?none': what a mark that leans on the word behind it queries, with its label."""
    for k in range(sentence.i, sentence.j - 1):
        if page.words[k] == "?" and _leans(page, sentence, k) and _stands_off(page, sentence, k):
            labelled = k > sentence.i and page.words[k - 1] == ":"
            begin = clause_start(page, sentence, k - 1) if labelled else k
            begin = k - 1 if k > sentence.i and _answers(page, k) else begin
            end = clause_end(page, sentence, k)
            named = any(m.kind in GOOD or m.kind in OF_SUTURES for m in within(page.mentions, begin, k))
            good = page.words[k + 1] in FREELY or any(is_good(m) for m in within(page.mentions, k, end))
            if named or good:
                page.mark(begin, end, "considered")


def _leans(page: Page, sentence: Sentence, k: int) -> bool:
    """'?intact', and at the head of a sentence '? intact A2': whether a mark asks for what stands behind it."""
    opens = k == sentence.i and any(is_good(m) for m in within(page.mentions, k + 1, k + _NEAR))
    return opens or page.starts[k + 1] == page.ends[k]


def _answers(page: Page, k: int) -> bool:
    """'Gap ?none', 'glide ?free': a name and its queried answer without a colon."""
    named = any(m.kind in GOOD and m.j == k for m in within(page.mentions, k - 1, k))
    return named and page.words[k + 1] in _ANSWERS


_ANSWERS = FREELY | {"none", "nil", "no", "absent"}


def _stands_off(page: Page, sentence: Sentence, k: int) -> bool:
    return k == sentence.i or page.words[k - 1] in (":", "(") or page.ends[k - 1] < page.starts[k]


def _mark_guessed(page: Page, sentence: Sentence) -> None:
    """'I believe A2 was whole', 'No gap, I think': the clause, and its neighbour where the guess is one by itself.

    A thread alone ('I think 3-0 Ethibond') stays told, with a reason to look twice.
    """
    for k in range(sentence.i, sentence.j):
        for words in _GUESSES.get(page.words[k], ()):
            end = k + len(words)
            if page.words[k:end] == words:
                begin, end = _guessed(page, sentence, k, end)
                begin = _behind_the_bad(page, begin, k)
                if any(_promises(page, sentence, m) for m in within(page.mentions, begin, end)):
                    _set_aside(page, sentence, begin, end)


def _promises(page: Page, sentence: Sentence, m: Mention) -> bool:
    """'No catching', 'not opened': a bad state denied promises as much as a good one."""
    if m.kind in GOOD_STATES and m.i < m.j and not is_good(m):
        return is_negated(page, m.i, m.j, sentence)
    return is_good(m) and m.kind != "material"


def _mark_hypothetical(page: Page, sentence: Sentence) -> None:
    """'Glide would be free if A2 were opened', 'there would be no gap with the wrist bent': not so."""
    words = page.words
    supposed = not _SUPPOSING.isdisjoint(sentence.said)
    for k in (k for k in range(sentence.i, sentence.j - 1) if words[k] == "would"):
        if words[k + 1] in _DENIALS or not (supposed or words[k + 1] in ("be", "have")):
            continue  # 'the repair would run freely under A2' tells how it ran
        end = clause_end(page, sentence, k)
        end = next((n for n in range(k, end) if words[n] == "-"), end)  # '... as much as it would take - cruciate, 4-0'
        for m in within(page.mentions, k, end):
            if m.kind in OF_SUTURES and m.kind != "material":
                page.mark(m.i, m.j, "considered")
        mark_good_states(page, k, end, "considered")


_SUPPOSING = frozenset(["if", "unless", "were", "had"])


def _mark_once_believed(page: Page, sentence: Sentence) -> None:
    """'I had feared that A2 was torn': good or bad, what was believed until it was seen; the names stay."""
    for k in range(sentence.i, sentence.j):
        for words in _BELIEFS.get(page.words[k], ()):
            end = k + len(words)
            if page.words[k:end] == words and "as" not in page.words[max(sentence.i, k - _NEAR) : k]:
                for m in within(page.mentions, end, clause_end(page, sentence, end)):
                    if m.kind in _STATES and m.i < m.j:
                        page.mark(m.i, m.j, "considered")


def _mark_assumed(page: Page, sentence: Sentence) -> None:
    """'Full glide was assumed', 'no gap was looked for': the states the verb is told of."""
    for k in range(sentence.i + 1, sentence.j):
        words = next((w for w in _ASSUMED if page.words[k : k + len(w)] == w), None)
        if words is None or page.words[k - 1] not in _BE:
            continue
        if not _AFTER_ALL.isdisjoint(page.words[k : min(k + len(words) + _SOON, sentence.j)]):
            continue
        begin = clause_start(page, sentence, k)
        if page.words[begin] == "that":
            page.mark(begin, k, "considered")
        for m in within(page.mentions, begin, k):
            absent = m.kind in GOOD_STATES and not ABSENCE.isdisjoint(page.words[m.i - 3 : m.i])
            good = is_good(m) and m.kind not in OF_SUTURES
            if (good or absent) and "and" not in page.words[m.j : k]:
                page.mark(m.i, m.j, "considered")


def _guessed(page: Page, sentence: Sentence, i: int, j: int) -> tuple[int, int]:
    ends_clause = j >= sentence.j or page.words[j] in CLAUSE_MARKS
    begin = i - 1 if ends_clause and i > sentence.i and page.words[i - 1] in (",", "(") else i
    begin = clause_start(page, sentence, begin)
    ahead = j + 1 if i == sentence.i and ends_clause and j < sentence.j else j
    return begin, clause_end(page, sentence, ahead)


def _behind_the_bad(page: Page, begin: int, k: int) -> int:
    """'They glide well the long is under tension I think', without stops: of the tension alone.

    Return where the guess begins: behind a bad state that stands right before it, else where its clause does.
    """
    told = [m for m in within(page.mentions, begin, k) if m.kind in GOOD_STATES and m.i < m.j]
    bad = told[-1] if told and told[-1].value not in GOOD_STATES[told[-1].kind] else None
    return bad.j if bad is not None and bad.j == k else begin


def _set_aside(page: Page, sentence: Sentence, i: int, j: int) -> None:
    """Set aside a clause that is a guess; of 'I believe the four-strand repair gapped' the gap stays told."""
    inside = within(page.mentions, i, j)
    if any(m.kind in GOOD_STATES and not is_good(m) and not _promises(page, sentence, m) for m in inside):
        for m in filter(is_good, inside):
            page.mark(m.i, m.j, "considered")
    else:
        page.mark(i, j, "considered")
