"""Good states that an adverb takes back: 'hardly clean', 'supposedly intact', 'not tension-free', 'no longer free'.

What stays of them is not told, so the words are set aside: neither the good state nor its opposite is a finding.
"""

from notereader.reader.page import Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_ADVERBS = word_list("weakened", "adverbs")
_PAIRS = frozenset(tuple(pair.split()) for pair in word_list("weakened", "pairs"))
_BETWEEN = word_list("weakened", "between")
_DOUBTING = word_list("weakened", "doubting")
_OF_SUTURES = frozenset(["strandword", "stitch", "material", "role", "pattern", "bite", "hold"])
_CLAUSES = frozenset([",", ";", ".", "(", ")", ":", "but"])
_FREELY = word_list("weakened", "freely")
_DENIALS = frozenset(["not", "never"])
_OPENERS = _ADVERBS | _DENIALS | {second for _, second in _PAIRS}
_GOOD = {
    "opened": frozenset(["intact", "repaired", "reconstructed"]),
    "extent": frozenset(["intact"]),
    "ends": frozenset(["clean"]),
    "glide": frozenset(["free"]),
    "gap": frozenset(["none"]),
    "tension": frozenset(["none"]),
    "bulk": frozenset(["none"]),
    "knot": frozenset(["buried"]),
    "hold": frozenset(["locking"]),
    "deed": frozenset(["repaired", "reinserted"]),
}
# 'Hardly smooth', 'less than full glide' are restricted, as the rule of the glide has it.
_SCARCELY = frozenset(["hardly", "barely", "scarcely", "less"])


def mark_weakened(page: Page, sentence: Sentence) -> None:
    """Set aside the good states of a sentence that stand behind an adverb that takes them back."""
    if _OPENERS.isdisjoint(sentence.said):
        return
    for m in within(page.mentions, sentence.i, sentence.j):
        if m.value in _GOOD.get(m.kind, ()) and m.i < m.j:
            at = _weakener(page, sentence, m.i, _is_freedom(page, m))
            if at >= 0 and not (m.kind == "glide" and page.words[at] in _SCARCELY):
                page.mark(at, m.j, "considered")
    for k in range(sentence.i, sentence.j):
        if page.words[k] in _DOUBTING:
            _mark_doubted(page, sentence, k)
        at = _weakener(page, sentence, k, denied=False) if page.words[k] in _FREELY else -1
        if at >= 0 and page.words[at] not in _SCARCELY:
            page.mark(at, k + 1, "considered")


def _mark_doubted(page: Page, sentence: Sentence, k: int) -> None:
    """'Four strands were allegedly placed': the statement of word k, where it is of a suture."""
    begin = next((n + 1 for n in range(k - 1, sentence.i - 1, -1) if page.words[n] in _CLAUSES), sentence.i)
    end = next((n for n in range(k, sentence.j) if page.words[n] in _CLAUSES), sentence.j)
    if any(m.kind in _OF_SUTURES for m in within(page.mentions, begin, end)):
        page.mark(begin, end, "considered")


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
    """Tell whether a state is told as freedom from a bad one: 'tension-free', 'gap-free', 'uninjured'."""
    last = page.words[m.j - 1]
    freed = m.value == "none" and last == "free"
    return freed or (m.value == "intact" and page.words[m.i].startswith("un"))
