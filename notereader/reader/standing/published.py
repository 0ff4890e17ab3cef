"""What others found in their own patients: "Harvell's series used six strands", 'the Kestrin group had no gap'.

It is told of no repair of this hand, up to where the sentence turns to it: '...; ours took two', 'whereas we used 4-0'.
"""

from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_WORKS = word_list("published", "works")
_OF_ANYBODY = word_list("published", "of_anybody")
_TURNS = word_list("published", "turns")
POSSESSIVE = ("'s", "s'", "\u2019s", "s\u2019")


def mark_published(page: Page, sentence: Sentence) -> None:
    """Set aside what a sentence tells of somebody's series or patients."""
    if _WORKS.isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i + 1, sentence.j):
        if words[k] in _WORKS and _is_anothers(page, sentence, k):
            begin = next((n + 1 for n in range(k - 1, sentence.i - 1, -1) if words[n] in (";", ":", ".")), sentence.i)
            end = next((n for n in range(k, sentence.j) if words[n] in _TURNS), sentence.j)
            page.mark(begin, end, "teaching")


def _is_anothers(page: Page, sentence: Sentence, k: int) -> bool:
    """ "Harvell's patients", 'the Kestrin group', 'the series of Harvell'; not 'the patient's group', 'our series'."""
    before, first = page.words[k - 1], max(sentence.i, k - 2)
    if before.endswith(POSSESSIVE):
        return before not in _OF_ANYBODY and _is_name(page, k - 1)
    if _is_name(page, k - 1) and page.words[first] in ("the", "in"):
        return True
    return page.words[k + 1 : k + 2] in (["of"], ["by"]) and k + 2 < sentence.j and _is_name(page, k + 2)


def _is_name(page: Page, k: int) -> bool:
    """Tell whether word k is written like a name: a capital, then small letters, and no word of the trade."""
    raw = page.raw(k, k + 1)
    return raw[0].isupper() and raw[1:].islower() and not within(page.mentions, k, k + 1)
