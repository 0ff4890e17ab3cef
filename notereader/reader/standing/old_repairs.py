"""What was done before this operation: 'the old four-strand repair had pulled through', 'the old vent in A4'.

Its strands, sizes and stitches are none of the new one's, whose own may not be told at all; and a pulley opened then
was not opened today.
"""

from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_OLD = word_list("old_repairs", "old")
_REPAIR = word_list("old_repairs", "repair")
_BETWEEN = word_list("old_repairs", "between")
_OPENING = word_list("old_repairs", "opening")
_TELLING = frozenset(["strandword", "stitch", "material", "tendon", "digit", "role", "looped", "slip"])
_LONGEST = 7  # words between 'old' and 'repair'


def mark_old_repair(page: Page, sentence: Sentence) -> None:
    """Mark as history the words from 'old' to 'repair' where only what describes a repair stands between them."""
    if _OLD.isdisjoint(sentence.said):
        return
    for k in range(sentence.i, sentence.j - 1):
        if page.words[k] in _OLD and page.words[k + 1] in _OPENING:
            page.mark(k, k + 2, "history")  # 'the old vent in A4 was scarred'
    if _REPAIR.isdisjoint(sentence.said):
        return
    for k in range(sentence.i, sentence.j - 1):
        if page.words[k] in _OLD and (end := _repair_after(page, k + 1, sentence.j)) > k:
            page.mark(k, end, "history")


def _repair_after(page: Page, k: int, last: int) -> int:
    """Return the word after the repair that word k begins to describe; -1 where it describes none."""
    described = {n for m in within(page.mentions, k, k + _LONGEST) if m.kind in _TELLING for n in range(m.i, m.j)}
    for n in range(k, min(k + _LONGEST, last)):
        word = page.words[n]
        if word in _REPAIR and not (word == "core" and page.words[n + 1 : n + 2] in (["suture"], ["repair"])):
            return n + 1
        if not (n in described or word in _BETWEEN or word[0].isdecimal()):
            return -1
    return -1
