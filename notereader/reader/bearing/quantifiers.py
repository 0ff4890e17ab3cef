"""'Both', 'each', 'all six', 'the others': words that stand for several tendons without naming one."""

from notereader.reader.groups import Group
from notereader.reader.layout.clauses import clause_start
from notereader.reader.page import Break, Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_BARE_QUANTIFIER_WORDS = word_list("bearing", "bare_quantifier_words")
PARTS = word_list("bearing", "parts_of_a_repair")
_SUTURES = frozenset(["epitendinous", "epi", "peripheral", "core", "cores"])
_TAKEN = frozenset(["mm", "cm", "bite", "bites", "purchase"])
_LEADS = frozenset(["in", "for", "to"])
_LEADS_TO_ALL = _LEADS | {"around", "round", "over", "on"}
_WHOLE = frozenset(["both", "all", "each"])
_ENDS = frozenset([".", ",", ";", ":", ")"])
_VERBS = word_list("bearing", "verbs")
_COUNTS = word_list("bearing", "counts")


_REST = word_list("bearing", "rest")
_REST_NOUNS = word_list("bearing", "rest_nouns")
_MOVES = word_list("bearing", "rest_moves")
_DOES = (["had", "no"], ["showed", "no"], ["showed", "none"], ["did", "not"], ["was", "not"], ["was", "slack"])
_REST_AFTER = word_list("bearing", "rest_after")


def others_told(page: Page, sentence: Sentence, quantifiers: list[Mention], groups: list[Group]) -> list[Group]:
    """'The others with 3-0', 'the remaining two were repaired', 'the rest': the tendons not spoken of yet."""
    words = page.words
    for q in quantifiers:
        i, k = q.i, q.j
        if not any(words[n] in _REST for n in range(i, k)) or {"these", "those", "them"} & set(words[i : k + 2]):
            continue
        while k < sentence.j and k - q.j < 4 and words[k] in _REST_NOUNS:
            k += 1
        after = words[k] if k < sentence.j else "."
        runs = after in _MOVES or after == "not" or words[k : k + 2] in _DOES
        if k == q.j and words[k - 1] == "other" and not (runs and words[i - 1] != "or"):
            continue  # 'no triggering from one or the other'
        if i == sentence.i and words[k - 1] == "others":
            after = "."
        if after not in _REST_AFTER and not after.endswith("ed"):
            continue
        overlapping = [g for g in groups if g.i < k and g.j > i]
        if any(g.tendons or g.digits for g in overlapping) or (not runs and _after_other(page, sentence, q)):
            continue  # 'caught on A4, the others ran freely': no pulleys run
        for g in overlapping:
            groups.remove(g)
        return [Group(i, k, generic="others", every=True)]
    return []


def bare_quantifier(page: Page, sentence: Sentence, quantifiers: list[Mention], groups: list[Group]) -> list[Group]:
    """'Both received 6-0 ...', 'All six were tested', 'Each of the other six was joined ...' without a noun."""
    for q in quantifiers:
        k = q.j
        while k < sentence.j and page.words[k] in _COUNTS and k - q.j < 4:
            k += 1
        if _stands_for_no_tendons(page, sentence, q, k, groups):
            continue
        named = any(g.i < k + 2 and g.j > q.i for g in groups)
        around = page.words[q.i - 1] in _LEADS_TO_ALL and (page.words[q.i] in _WHOLE or page.words[q.i - 1] in _LEADS)
        first = q.i == sentence.i or page.words[q.i - 1] in _BARE_QUANTIFIER_WORDS or around
        first = first or (
            q.i == sentence.i + 1 and page.words[q.i - 1] in _SUTURES
        )  # 'Epitendinous both: 6-0 Prolene.'
        if page.words[q.i : q.i + 2] == ["every", "one"]:
            return [Group(q.i, q.i + 2, generic="all", every=True)]
        noun = page.words[k - 1] in ("repair", "repairs", "join", "tenorrhaphy")
        after = page.words[k] if k < sentence.j else "."
        if after in ("them", "these", "those") and k + 1 < sentence.j:
            k += 1
            after = page.words[k]
        wholly = after in ("completely", "fully") and page.words[q.i] == "both"
        if (after in ("also", "then", "now", "too", "alike") or wholly) and k + 1 < sentence.j:
            cut = page.words[k + 1] in ("cut", "torn") and page.words[k + 2 : k + 3] in ([","], ["."], [";"])
            after = "divided" if cut else page.words[k + 1]  # 'Each of them also received', 'both completely cut'
        verb = after in _VERBS or after.endswith("ed") or (after == "with" and page.words[q.i] in _WHOLE)
        closes = k == q.j and page.words[q.i : q.j] == ["both"] and after in (":", ".")
        closes = closes or (k > q.i + 1 and page.words[q.i] == "all" and after == ":")  # 'All four: knots inside'
        closes = closes or _labels_a_line(page, sentence, q, k)
        thread = after in _ENDS and page.words[q.i] in _WHOLE and _ends_with_thread(page, sentence, q.i)
        thread = thread or (after in _ENDS and page.words[q.i] == "all" and _tested_before(page, sentence, q.i, groups))
        first = first or thread
        if first and not named and (noun or verb or closes or thread or around):
            if page.words[q.j - 1] in ("same", "remaining", "the") or _after_other(page, sentence, q):
                continue
            if page.words[q.j - 1] == "other" and not (noun or verb):
                continue  # 'in the other plane'
            these = {"these", "those", "them"} & set(page.words[q.i : k])
            if any(g.generic == "all" and g.j <= q.i for g in groups):
                these = set()  # 'the four finger tendons that were cut, all of them got a cruciate'
            return [Group(q.i, k, generic="one" if these else "all", every=not these)]
    return []


def _labels_a_line(page: Page, sentence: Sentence, q: Mention, k: int) -> bool:
    """'both     6-0 Prolene, knots in', 'all 3    buried knots': a column of space sets off the label."""
    opens = q.i == sentence.i and page.breaks[q.i] >= Break.LINE and not sentence.prefix
    return opens and k < sentence.j and page.breaks[k] == Break.COLUMN


_CLAUSE_OVER = frozenset([".", ",", ";", "and", "but", "while", "with"])
_OF_A_SUTURE = frozenset(["lock", "locks", "loop", "corner", "bite", "strand", "pass", "throw", "limb", "stitch"])


def _stands_for_no_tendons(page: Page, sentence: Sentence, q: Mention, k: int, groups: list[Group]) -> bool:
    """Tell whether a quantifier, whose count ends before word k, is said of something else or of nothing."""
    said, lead = page.words[q.i : q.j], page.words[q.i - 1]
    after = page.words[k] if k < sentence.j else "."
    if said[-1:] == ["each"] and _of_a_suture(page, sentence, q.i, k):
        return True  # '2 mm bites for each lock'
    if said[-1:] == ["each"] and after == "with" and _of_slips(page, sentence, q.i):
        return True  # 'FDS slips: each with a mattress suture'
    in_all = lead in ("in", "at", "after") and k == q.j and after not in ("cases", "instances")
    if said == ["all"] and (in_all or after == "a"):
        return True  # 'in all we count four strands', 'all a tendon of this calibre would take'
    if said == ["all"] and lead in ("-", ":") and any(g.tendons and g.j == q.i - 1 for g in groups):
        return True  # 'FDP middle, FPL - all uninjured'
    if k == q.j and after in PARTS:
        return True  # 'two locking throws on each limb', '9 mm of tendon in either stump'
    if lead == "in" and not _TAKEN.isdisjoint(page.words[max(sentence.i, q.i - 4) : q.i]):
        return True  # 'at least 1 cm of tendon in each'
    if lead == "of" and any(g.tendons and not g.digits and g.j == q.i - 1 for g in groups):
        return True  # 'the profundus of each was cut through': of each finger
    if lead == "in" and not _WHOLE.isdisjoint(said[:1]) and after in _CLAUSE_OVER:
        return any(g.tendons and not g.digits and g.j <= q.i for g in groups)  # 'FDS intact in both': both fingers
    return said == ["none"] and q.i > sentence.i  # 'no epitendinous suture held, and none was set'


def _of_slips(page: Page, sentence: Sentence, i: int) -> bool:
    """'FDS slips: each with 4-0', 'both slips were repaired, each with 4-0': 'each' at word i is of those slips."""
    if "slips" not in page.words[sentence.i : i]:
        return False
    named = [m for m in within(page.mentions, sentence.i, i) if m.kind in ("tendon", "digit", "generic", "plural")]
    return all(m.kind != "tendon" or m.value == "FDS" for m in named[-1:])


def _of_a_suture(page: Page, sentence: Sentence, i: int, k: int) -> bool:
    """'2 mm bites for each lock'; 'triple Tsuge, each with a locking bite': 'each' from word i to k is of stitches."""
    words = page.words[k : min(k + 4, sentence.j)]
    if words[:1] and words[0] in _OF_A_SUTURE:
        return True
    lead = i - (page.words[i - 1] in (",", "("))
    thread = any(m.j == lead and m.kind in ("stitch", "strandword") for m in within(page.mentions, sentence.i, i))
    return thread and words[:1] == ["with"] and not _OF_A_SUTURE.isdisjoint(words)


def _ends_with_thread(page: Page, sentence: Sentence, k: int) -> bool:
    """Tell whether a suture ends right before word k: '3-0 PDS both', '4-strand cruciate each', 'PDS, all three'."""
    k -= page.words[k - 1] == ","
    return any(m.j == k and m.kind in ("material", "stitch") for m in within(page.mentions, sentence.i, k))


def _tested_before(page: Page, sentence: Sentence, k: int, groups: list[Group]) -> bool:
    """'Traction in the palm, all four, no gap', 'no catching (all four)': a test or result, and no name before it."""
    if k <= sentence.i + 1 or page.words[k - 1] not in (",", "(", "-", ":") or any(g.i < k for g in groups):
        return False
    begin = clause_start(page, sentence, k - 1)
    return any(m.kind in _OF_TESTS for m in within(page.mentions, begin, k - 1))


_OF_TESTS = frozenset(["test", "gap", "glide", "tension", "bulk"])


def _after_other(page: Page, sentence: Sentence, q: Mention) -> bool:
    """'The pulleys were dilated and both were preserved': the quantifier takes up what stands before it."""
    kinds = ("pulley", "structure", "sided", "bundle", "anynerve", "anyartery", "tendon", "digit")
    before = [m for m in within(page.mentions, sentence.i, q.i) if m.kind in kinds]
    while len(before) > 1 and before[-1].kind == "digit" and before[-2].kind != "tendon":
        before = before[:-1]  # 'the ulnar digital nerve of the ring finger, both divided'
    return bool(before) and before[-1].kind not in ("tendon", "digit")
