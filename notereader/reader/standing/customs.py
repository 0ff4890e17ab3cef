"""Asides that tell only how usual a deed is: 'as is my habit, four strands were placed', 'my usual repair was done'.

The custom alone says nothing of this operation; the deed told beside it does. Nor does what holds of every such repair:
'an epitendinous suture adds a third to the strength'.
"""

from notereader.reader.page import Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_OPENS = word_list("customs", "opens")
_NO_ASIDE = word_list("customs", "no_aside")
_OWN = word_list("customs", "own")
_DONE = word_list("customs", "done")
_UNSURE = word_list("customs", "unsure")
_BOUNDS = frozenset([",", "(", ";", "-", ")"])
_FAR = 6  # words from what opens an aside to its custom


def aside_of_custom(page: Page, cue: Mention, sentence: Sentence) -> tuple[int, int] | None:
    """Return the words that tell of a custom only, where their sentence tells a deed as well, else None."""
    span = _clause_of_custom(page, cue, sentence) or _own_custom(page, cue)
    if span is None:
        return None
    rest = [*page.words[sentence.i : span[0]], *page.words[span[1] : sentence.j]]
    attributive = span == (cue.i, cue.j)
    told = not _DONE.isdisjoint(rest) or (not attributive and span[0] > sentence.i)
    return span if told and _UNSURE.isdisjoint(rest) else None


def mark_general_truth(page: Page, sentence: Sentence) -> None:
    """'A six-strand core gives more strength': what a suture does for any repair is no word of this one."""
    if _BENEFITS.isdisjoint(sentence.said) or _LENDS.isdisjoint(sentence.said):
        return
    said = page.words[sentence.i : sentence.j]
    told = next((k for k in range(len(said)) if said[k : k + 3] in _AS_I_TOLD), len(said))
    if not _DONE_HERE.isdisjoint(said[:told]):
        return
    verbs = [k for k in range(sentence.i + 1, sentence.j) if page.words[k] in _LENDS]
    named = any(m.kind in _SUTURES for m in within(page.mentions, sentence.i, verbs[0])) if verbs else False
    if named and not any(m.kind == "tendon" for m in within(page.mentions, sentence.i, sentence.j)):
        page.mark(sentence.i, sentence.j, "teaching")


_AS_I_TOLD = tuple([",", "as", who] for who in ("i", "we", "was", "he", "she"))
_LENDS = word_list("customs", "lends")
_BENEFITS = word_list("customs", "benefits")
_DONE_HERE = frozenset(["was", "were", "had", "did", "here", "this", "i", "we", "has", "now"])
_SUTURES = frozenset(["role", "strandword", "stitch", "strands", "pattern"])


def _clause_of_custom(page: Page, cue: Mention, sentence: Sentence) -> tuple[int, int] | None:
    """Return the words of 'as is usual here', 'which is my habit', 'following our practice' between its commas."""
    words = page.words
    for k in range(cue.i, max(sentence.i, cue.i - _FAR) - 1, -1):
        if words[k] in _BOUNDS:
            return None
        opens = words[k] in _OPENS and _NO_ASIDE.isdisjoint(words[k + 1 : k + 2])
        if opens and (k == sentence.i or words[k - 1] in _BOUNDS):
            end = next((n for n in range(cue.j, sentence.j) if words[n] in _BOUNDS), sentence.j)
            return (k, end) if k > sentence.i or end < sentence.j else None
    return None


def _own_custom(page: Page, cue: Mention) -> tuple[int, int] | None:
    """Return the words of 'my usual', 'our standard' before what was done."""
    own = page.words[cue.i] in _OWN and cue.j - cue.i == _OWN_LENGTH
    return (cue.i, cue.j) if own and _VERBS.isdisjoint(page.words[cue.j : cue.j + 1]) else None


_OWN_LENGTH = 2  # words
_VERBS = frozenset(["is", "are", "was", "has", "have", ":", "would", "consists"])
