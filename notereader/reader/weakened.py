"""Good states that an adverb takes back or that are only guessed at: "hardly clean", "no longer free", "A2 ?intact".

What stays of them is not told, so the words are set aside: neither the good state nor its opposite is a finding.
"""

from notereader.reader.good_states import GOOD_STATES
from notereader.reader.page import Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_ADVERBS = word_list("weakened", "adverbs")
_PAIRS = frozenset(tuple(pair.split()) for pair in word_list("weakened", "pairs"))
_BETWEEN = word_list("weakened", "between")
_DOUBTING = word_list("weakened", "doubting")
_NEARLY = word_list("weakened", "nearly")
_REACHED = word_list("weakened", "reached")
_GUESSES = phrases_by_first_word("weakened", "guesses")
_GUESSING = frozenset(_GUESSES)
_UNPROVEN = word_list("weakened", "unproven")
_BELIEFS = phrases_by_first_word("weakened", "beliefs")
_BORNE_OUT = word_list("weakened", "borne_out")
_STATES = frozenset([*GOOD_STATES, "hurt"])
_NEAR = 3  # words
_UNCONFIRMED = word_list("weakened", "unconfirmed")
_LEADING_UP = frozenset(["be", "been", "being", "formally", "ever", "yet", "actually", "really", "directly", "then"])
_ABSENCE = frozenset(["absence", "freedom", "lack"])
_FINITE = frozenset(["was", "were", "is", "are", "had", "has", "could", "can"])
_ASSUMED = [words.split() for words in word_list("weakened", "assumed")]
_ASSUMING = frozenset([words[-1] for words in _ASSUMED])
_UNTESTED = word_list("weakened", "untested")
_YET = word_list("weakened", "yet")
_BE = frozenset(["was", "were", "is", "are", "be", "being", "been"])
_OF_SUTURES = frozenset(["strandword", "stitch", "material", "role", "pattern", "bite", "hold"])
_CLAUSES = frozenset([",", ";", ".", "(", ")", ":", "but"])
_FREELY = word_list("weakened", "freely")
_DENIALS = frozenset(["not", "never"])
_ONLY = frozenset(["only", "solely", "provided", "otherwise"])
_WITH = frozenset(["with", "when", "if", "in", "while", "provided", "under"])
_BUT = frozenset([",", "but", "though", "and", "then"])
_FREEING = frozenset(["vented", "released", "trimmed", "excised"])  # 'ran freely only when A4 had been vented'
_RESULTS = ("glide", "gap", "tension")
_BOUNDING = frozenset(["as", "so", "provided", "providing"])  # 'as long as', 'provided that'
_OWNING_UP = frozenset(["though", "although", "but", "this", "which", "("])
_OPENERS = _ADVERBS | _DENIALS | {second for _, second in _PAIRS}
_GOOD = {
    **GOOD_STATES,
    "knot": frozenset(["buried"]),
    "hold": frozenset(["locking"]),
    "deed": frozenset(["repaired", "reinserted"]),
}
# 'Hardly smooth', 'less than full glide' are restricted, as the rule of the glide has it.
_SCARCELY = frozenset(["hardly", "barely", "scarcely", "less"])


def mark_weakened(page: Page, sentence: Sentence) -> None:
    """Set aside the good states of a sentence that stand behind an adverb that takes them back."""
    if "?" in sentence.said:
        _mark_queried(page, sentence)
    if not _GUESSING.isdisjoint(sentence.said):
        _mark_guessed(page, sentence)
    if "would" in sentence.said:
        _mark_hypothetical(page, sentence)
    if "had" in sentence.said and _BORNE_OUT.isdisjoint(sentence.said):
        _mark_once_believed(page, sentence)
    if not _UNCONFIRMED.isdisjoint(sentence.said) or not (
        _UNPROVEN.isdisjoint(sentence.said) or _DENIALS.isdisjoint(sentence.said)
    ):
        _mark_unproven(page, sentence)
    if not _ASSUMING.isdisjoint(sentence.said):
        _mark_assumed(page, sentence)
    if not _UNTESTED.isdisjoint(sentence.said):
        _mark_untested(page, sentence)
    if not _ONLY.isdisjoint(sentence.said):
        _mark_only_so(page, sentence)
    if _OPENERS.isdisjoint(sentence.said):
        return
    for m in within(page.mentions, sentence.i, sentence.j):
        if m.value in _GOOD.get(m.kind, ()) and m.i < m.j:
            at = _weakener(page, sentence, m.i, _is_freedom(page, m))
            if at >= 0 and not (m.kind == "glide" and page.words[at] in _SCARCELY):
                page.mark(at, m.j, "considered")
    for k in range(sentence.i, sentence.j):
        nearly = page.words[k] in _NEARLY and page.words[k + 1] in _REACHED
        if nearly or (page.words[k] in _DOUBTING and not _leads_to_share(page, k)):
            _mark_doubted(page, sentence, k)
        if page.words[k] in _ADVERBS and page.words[k - 1 : k] == ["("] and page.words[k + 1 : k + 2] == [")"]:
            page.mark(_clause_start(page, sentence, k - 1), k, "considered")  # 'A2 intact (probably)'
        at = _weakener(page, sentence, k, denied=False) if page.words[k] in _FREELY else -1
        if at >= 0 and page.words[at] not in _SCARCELY:
            page.mark(at, k + 1, "considered")


def _mark_doubted(page: Page, sentence: Sentence, k: int) -> None:
    """'Four strands were allegedly placed', 'six were nearly achieved': the statement of word k, where of a suture."""
    begin = _clause_start(page, sentence, k)
    if begin > sentence.i and page.words[begin - 1] == ":":
        begin = _clause_start(page, sentence, begin - 1)  # 'Epitendinous: 6-0 probably'
    end = _clause_end(page, sentence, k)
    if any(m.kind in _OF_SUTURES for m in within(page.mentions, begin, end)):
        _set_aside(page, begin, end)


def _leads_to_share(page: Page, k: int) -> bool:
    """'Cut by maybe half', 'perhaps 40 percent': about so much, and of what was done nothing is doubted."""
    share = any(m.kind == "fraction" for m in within(page.mentions, k + 1, k + 3))
    return share or page.words[k + 2 : k + 3] in (["%"], ["percent"], ["mm"])


def _mark_queried(page: Page, sentence: Sentence) -> None:
    """'A2 ?intact', '?no gap', 'Gap: ?none': what a mark that leans on the word behind it queries, with its label."""
    for k in range(sentence.i, sentence.j - 1):
        if page.words[k] == "?" and page.starts[k + 1] == page.ends[k] and _stands_off(page, sentence, k):
            labelled = k > sentence.i and page.words[k - 1] == ":"
            begin = _clause_start(page, sentence, k - 1) if labelled else k
            end = _clause_end(page, sentence, k)
            named = any(m.kind in _GOOD or m.kind in _OF_SUTURES for m in within(page.mentions, begin, k))
            if named or any(is_good(m) for m in within(page.mentions, k, end)):
                page.mark(begin, end, "considered")


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
                if any(is_good(m) and m.kind != "material" for m in within(page.mentions, begin, end)):
                    _set_aside(page, begin, end)


def _mark_hypothetical(page: Page, sentence: Sentence) -> None:
    """'Glide would be free if A2 were opened', 'there would be no gap with the wrist bent': not so."""
    words = page.words
    supposed = not _SUPPOSING.isdisjoint(sentence.said)
    for k in (k for k in range(sentence.i, sentence.j - 1) if words[k] == "would"):
        if words[k + 1] in _DENIALS or not (supposed or words[k + 1] in ("be", "have")):
            continue  # 'the repair would run freely under A2' tells how it ran
        end = _clause_end(page, sentence, k)
        end = next((n for n in range(k, end) if words[n] == "-"), end)  # '... as much as it would take - cruciate, 4-0'
        for m in within(page.mentions, k, end):
            if m.kind in _OF_SUTURES and m.kind != "material":
                page.mark(m.i, m.j, "considered")
        mark_good_states(page, k, end, "considered")


_SUPPOSING = frozenset(["if", "unless", "were", "had"])


def _mark_once_believed(page: Page, sentence: Sentence) -> None:
    """'I had feared that A2 was torn': good or bad, what was believed until it was seen; the names stay."""
    for k in range(sentence.i, sentence.j):
        for words in _BELIEFS.get(page.words[k], ()):
            end = k + len(words)
            if page.words[k:end] == words and "as" not in page.words[max(sentence.i, k - _NEAR) : k]:
                for m in within(page.mentions, end, _clause_end(page, sentence, end)):
                    if m.kind in _STATES and m.i < m.j:
                        page.mark(m.i, m.j, "considered")


def _mark_unproven(page: Page, sentence: Sentence) -> None:
    """'Free running was not confirmed', 'A2 intact, unconfirmed': a good state nobody saw; a 'gap not seen' is none."""
    words = page.words
    for k in range(sentence.i + 1, sentence.j):
        if words[k] in _UNCONFIRMED:
            begin = _clause_start(page, sentence, k)
            begin = _clause_start(page, sentence, begin - 1) if begin == k and begin > sentence.i else begin
        elif words[k] in _UNPROVEN:
            verb = next((n for n in range(k - 1, sentence.i, -1) if words[n] not in _LEADING_UP), sentence.i)
            if words[verb] not in _DENIALS or words[verb - 1] not in _FINITE:
                continue  # 'RDN   [x] intact   [ ] not seen'
            begin = _subject_start(page, sentence, verb - 1)
        else:
            continue
        end = _clause_end(page, sentence, k) if words[k + 1 : k + 2] == ["that"] else k
        if not _ABSENCE.isdisjoint(words[begin:k]):
            page.mark(begin, end, "considered")  # 'absence of a gap was not verified'
        mark_good_states(page, begin, end, "considered")


def _subject_start(page: Page, sentence: Sentence, verb: int) -> int:
    """'The core was sound and free running was not seen': where the subject begins, behind 'and' if it is but one."""
    begin = _clause_start(page, sentence, verb)
    joined = next((n + 1 for n in range(verb - 1, begin, -1) if page.words[n] == "and"), begin)
    several = page.words[verb] == "were" and _FINITE.isdisjoint(page.words[begin:joined])
    return begin if several else joined


def _mark_assumed(page: Page, sentence: Sentence) -> None:
    """'Full glide was assumed', 'That it ran freely was taken for granted': the states the verb is told of."""
    for k in range(sentence.i + 1, sentence.j):
        words = next((w for w in _ASSUMED if page.words[k : k + len(w)] == w), None)
        if words is None or page.words[k - 1] not in _BE:
            continue
        begin = _clause_start(page, sentence, k)
        if page.words[begin] == "that":
            page.mark(begin, k, "considered")
        for m in within(page.mentions, begin, k):
            absent = m.kind in GOOD_STATES and not _ABSENCE.isdisjoint(page.words[m.i - 3 : m.i])
            good = is_good(m) and m.kind not in _OF_SUTURES
            if (good or absent) and "and" not in page.words[m.j : k]:
                page.mark(m.i, m.j, "considered")


def _mark_untested(page: Page, sentence: Sentence) -> None:
    """'No gap, though this was not tested', 'glide free (not tested)': what nobody looked for."""
    for k in range(sentence.i + 1, sentence.j):
        if page.words[k] not in _UNTESTED:
            continue
        begin = k - (page.words[k - 1] in _DENIALS)
        first = begin
        while first > sentence.i and page.words[first - 1] in _YET:
            first -= 1
        denied = begin < k or page.words[k].startswith("un")
        if denied and not _OWNING_UP.isdisjoint(page.words[first:begin]):
            for m in within(page.mentions, sentence.i, first):
                if m.j == first and m.kind in ("gap", "glide") and is_good(m):
                    page.mark(m.i, m.j, "considered")


def _mark_only_so(page: Page, sentence: Sentence) -> None:
    """'Glides freely, but only with the wrist bent', 'when the wrist is bent, otherwise it drags': bounded."""
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
        if words[first - 1] in _FREELY and not freed:
            page.mark(first - 1, first, "conditional")


def bounded_state(page: Page, cue: Mention, sentence: Sentence) -> tuple[int, int] | None:
    """'Free glide as long as the wrist is bent; straight, it drags': the good state that a condition bounds."""
    if " ".join(page.words[cue.i : cue.j]).split()[0] not in _BOUNDING:
        return None
    begin = _clause_start(page, sentence, cue.i)
    good = [m.i for m in within(page.mentions, begin, cue.i) if m.kind in _RESULTS and is_good(m)]
    good += [k for k in range(begin, cue.i) if page.words[k] in _FREELY]
    end = next((k for k in range(cue.j, sentence.j) if page.words[k] in (";", ".")), sentence.j)
    return (min(good), end) if good else None


def _guessed(page: Page, sentence: Sentence, i: int, j: int) -> tuple[int, int]:
    ends_clause = j >= sentence.j or page.words[j] in _CLAUSES
    begin = i - 1 if ends_clause and i > sentence.i and page.words[i - 1] in (",", "(") else i
    begin = _clause_start(page, sentence, begin)
    ahead = j + 1 if i == sentence.i and ends_clause and j < sentence.j else j
    return begin, _clause_end(page, sentence, ahead)


def _behind_the_bad(page: Page, begin: int, k: int) -> int:
    """'They glide well the long is under tension I think', without stops: of the tension alone.

    Return where the guess begins: behind a bad state that stands right before it, else where its clause does.
    """
    told = [m for m in within(page.mentions, begin, k) if m.kind in GOOD_STATES and m.i < m.j]
    bad = told[-1] if told and told[-1].value not in GOOD_STATES[told[-1].kind] else None
    return bad.j if bad is not None and bad.j == k else begin


def _set_aside(page: Page, i: int, j: int) -> None:
    """Set aside a clause that is a guess; of 'I believe the four-strand repair gapped' the gap stays told."""
    inside = within(page.mentions, i, j)
    if any(m.kind in GOOD_STATES and m.value not in GOOD_STATES[m.kind] for m in inside):
        for m in filter(is_good, inside):
            page.mark(m.i, m.j, "considered")
    else:
        page.mark(i, j, "considered")


def _clause_end(page: Page, sentence: Sentence, k: int) -> int:
    return next((n for n in range(k, sentence.j) if page.words[n] in _CLAUSES), sentence.j)


def _clause_start(page: Page, sentence: Sentence, k: int) -> int:
    return next((n + 1 for n in range(k - 1, sentence.i - 1, -1) if page.words[n] in _CLAUSES), sentence.i)


def mark_good_states(page: Page, i: int, j: int, standing: str) -> None:
    """Set aside the good states told in words i to j, 'freely' beside a verb among them."""
    for m in within(page.mentions, i, j):
        if m.i < m.j and m.value in _GOOD.get(m.kind, ()):
            page.mark(m.i, m.j, standing)
    for n in range(i, j):
        if page.words[n] in _FREELY:
            page.mark(n, n + 1, standing)


def is_good(m: Mention) -> bool:
    """Tell whether a mention is a good state or tells of a suture."""
    return m.kind in _OF_SUTURES or m.value in _GOOD.get(m.kind, ())


def _weakener(page: Page, sentence: Sentence, i: int, denied: bool) -> int:
    """Return the first word of what takes back the state at word i, or -1; `denied`: a plain 'not' does so too."""
    k = i - 1
    while k > sentence.i and page.words[k] in _BETWEEN:
        k -= 1
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
