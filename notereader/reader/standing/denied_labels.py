"""Labels that name a good state, answered with no: 'A2 intact: no', 'Ends clean? N', 'No gap: false'.

Such a label is set aside: that it is not so is told, and nothing more. 'Gap: no' and 'Bulky? N' name no good state and
are left to their rules.
"""

from notereader.reader.page import Break, Mention, Page, Sentence, within
from notereader.reader.standing.good_states import GOOD_STATES
from notereader.vocabulary.wordlists import word_list

_NO = word_list("standing", "denying_answers")
_MARKS = frozenset([":", "?", "-", "="])
_CLOSES = frozenset([",", ";", ".", "(", ")", "|", "!", "-"])
_PARTS = frozenset([",", ";", ".", "|"])
_LONGEST = 8  # words of a label
_NEAR = 3  # words; 'A2 repaired: no', while 'FDS repaired: no' says that it was left
_DONE = frozenset(["done", "used", "placed", "put", "added", "performed"])


def mark_denied_labels(page: Page, sentence: Sentence) -> None:
    """Set aside the good states of labels that are answered with no in a sentence, or by the cell that it is."""
    if _NO.isdisjoint(sentence.said):
        return
    if sentence.prefix and page.words[sentence.i] in _NO and _closes(page, sentence.i + 1, sentence.j):
        labels = [m for i, j in sentence.prefix for m in within(page.mentions, i, j)]
        if any(_is_good(page, m) for m in labels):
            page.mark(sentence.i, sentence.j, "unfilled")
        return
    for k in range(sentence.i + 1, sentence.j - 1):
        if _is_mark(page.words[k]) and page.words[k + 1] in _NO and _closes(page, k + 2, sentence.j):
            first = _label_start(page, k, sentence.i)
            label = [m for m in within(page.mentions, first, k) if m.j <= k]
            goes_on = page.words[k + 2 : k + 3] == [
                "-"
            ]  # 'No gap: N - 2 mm', 'Excised tendon to histology? No - discarded'
            if any(_is_good(page, m) for m in label) or (not goes_on and _asks_of_a_deed(page, label, first, k)):
                page.mark(first, k + 2, "unfilled")


def _is_mark(word: str) -> bool:
    return word in _MARKS or word.startswith("..")  # 'glides free ..... N'


def _closes(page: Page, k: int, end: int) -> bool:
    # A line that ends within a sentence is only wrapped: 'Traction on it: no\n gap'.
    return k >= end or page.words[k] in _CLOSES or page.breaks[k] == Break.COLUMN


def _label_start(page: Page, k: int, begin: int) -> int:
    first = k
    while (
        first > max(begin, k - _LONGEST) and page.words[first - 1] not in _PARTS and page.breaks[first] < Break.COLUMN
    ):
        first -= 1
    return first


def _asks_of_a_deed(page: Page, label: list[Mention], first: int, k: int) -> bool:
    """Tell whether a label asks whether something was done or cut: 'Locked: N', 'FDS excised? no', 'RDN cut: no'."""
    if [(m.kind, m.i, m.j) for m in label] == [("looped", first, k)] and k - first == 1:
        return False  # 'Looped: no' tells of the thread
    if any(m.kind in _LEFT_TO_RULES for m in label) or not _INJURY.isdisjoint(page.words[first:k]):
        return False
    asks = {(m.kind, m.value) for m in label}
    return bool(asks & _DEEDS) or any(kind in _ASKED_KINDS for kind, _ in asks)


# 'Gap at the active test: no' and 'Epitendinous: N' tell something.
_LEFT_TO_RULES = frozenset(["gap", "glide", "tension", "bulk", "role", "pulley"])
_ASKED_KINDS = frozenset(["looped", "knot", "hold", "test", "hurt", "button", "anchor"])
_DEEDS = frozenset(("deed", deed) for deed in ("excised", "trimmed", "tenodesed", "grafted", "reinserted"))
_DEEDS |= frozenset(("extent", extent) for extent in ("complete", "partial", "contused"))
_INJURY = frozenset(["injury", "injuries", "damage", "neither", "any"])  # 'Nerve injury: no'


def _is_good(page: Page, m: Mention) -> bool:
    """Tell whether a label promises something: a good state, a count of strands, or a suture that was put in."""
    if m.value in GOOD_STATES.get(m.kind, ()):
        mends = m.kind == "opened" and m.value != "intact"
        return not mends or any(p.kind == "pulley" for p in within(page.mentions, m.i - _NEAR, m.i))
    if m.kind == "strandword":
        return page.words[m.i - 1][:1].isdigit() or page.words[max(0, m.i - 2)][:1].isdigit()
    return (m.kind, m.value) == ("role", "peripheral") and not _DONE.isdisjoint(page.words[m.j : m.j + 3])
