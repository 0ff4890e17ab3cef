"""What is told of a silicone rod, which keeps the way open for a later graft: sewing it to a stump mends no tendon."""

from notereader.reader.page import Page, Sentence
from notereader.vocabulary.wordlists import word_list

_RODS = word_list("spacers", "rods")
_OF_BONE = word_list("spacers", "of_bone")
_SEWN = word_list("spacers", "sewn")
_GRAFTS = word_list("spacers", "grafts")
_DRAWN = word_list("spacers", "drawn")
_DENIED = frozenset(["no", "not", "without", "never", "neither", "instead"])
_BOUNDS = frozenset([";", ":", "."])


def mark_spacer(page: Page, sentence: Sentence) -> None:
    """'A rod was passed and sewn to the profundus stump with 4-0': its clause tells of no repair."""
    if _goes_on_about_it(page, sentence):
        page.mark(sentence.i, sentence.j, "story")
        return
    if _RODS.isdisjoint(sentence.said) or not _OF_BONE.isdisjoint(sentence.said) or _draws_graft(sentence):
        return
    words = page.words
    rod = next(k for k in range(sentence.i, sentence.j) if words[k] in _RODS)
    if not _DENIED.isdisjoint(words[max(sentence.i, rod - 3) : rod]):
        return  # 'repaired without a rod'
    begin = rod
    while begin > sentence.i and words[begin - 1] not in _BOUNDS and not _new_clause(words, begin):
        begin -= 1
    end = next((k for k in range(rod, sentence.j) if words[k] in _BOUNDS), sentence.j)
    if not _SEWN.isdisjoint(words[rod:end]) or not _SEWN.isdisjoint(words[max(begin, rod - 4) : rod]):
        page.mark(begin, end, "story")


def _goes_on_about_it(page: Page, sentence: Sentence) -> bool:
    """'A silicone rod was laid in. Its distal end was fixed to the profundus stump with 4-0 wire.'"""
    if page.words[sentence.i] not in _IT or _SEWN.isdisjoint(sentence.said):
        return False
    before = next((s for s in reversed(page.sentences) if s.j <= sentence.i), None)
    if before is None or before.block != sentence.block or not _OF_BONE.isdisjoint(before.said):
        return False
    if _draws_graft(before):
        return False
    named = [k for k in range(before.i, before.j) if page.words[k] in _RODS]
    return bool(named) and _DENIED.isdisjoint(page.words[max(before.i, named[0] - 3) : named[0]])


def _draws_graft(sentence: Sentence) -> bool:
    """'I took the palmaris, tied it to the rod and drew it through': the rod leads a graft in."""
    return not _GRAFTS.isdisjoint(sentence.said) and not _DRAWN.isdisjoint(sentence.said)


_IT = frozenset(["it", "its"])


def _new_clause(words: list[str], k: int) -> bool:
    """'both were excised, and a rod was laid in': where a comma and 'and' begin another clause."""
    return words[k - 1] == "and" and k > 1 and words[k - 2] == ","
