"""A strip of tendon put around the bone for a pulley: 'passed twice around the phalanx and sewn to itself with 4-0'."""

from notereader.reader.page import Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_AROUND = word_list("slings", "around")
_BONES = frozenset(["phalanx", "bone", "p1", "p2", "phalanges"])
_SEWN = word_list("spacers", "sewn") | {"united", "joined", "itself", "woven"}
_ENDS = frozenset([";", "."])
_DONORS = frozenset(["FDS", "PL"])
_NEAR = 4  # words of 'around the proximal phalanx'


def mark_slings(page: Page, sentence: Sentence) -> None:
    """'The superficialis was passed round the bone and sewn to itself with 4-0': its stitches mend no tendon.

    A pulley told of behind ('..., which gave a new A2') is left to be read.
    """
    if _AROUND.isdisjoint(sentence.said) or _BONES.isdisjoint(sentence.said) or _SEWN.isdisjoint(sentence.said):
        return
    around = next((k for k in range(sentence.i, sentence.j) if _goes_around(page.words, k, sentence.j)), -1)
    named = within(page.mentions, sentence.i, max(around, sentence.i))
    if not any(m.value in _DONORS or m.kind == "slip" for m in named):
        return
    end = next((k for k in range(around, sentence.j) if page.words[k] in _ENDS), sentence.j)
    behind = within(page.mentions, around, end)
    goes_on = next((m.i for m in behind if _tells_anew(m)), end)
    page.mark(around, goes_on - (page.words[goes_on - 1] == "new"), "story")  # '... as a new A2'


def _tells_anew(mention: Mention) -> bool:
    """'... as a new A2', '... and the FDP was sewn': what a sentence goes on to tell."""
    return mention.kind in ("pulley", "tendon") or (mention.kind, mention.value) == ("opened", "reconstructed")


def _goes_around(words: list[str], k: int, j: int) -> bool:
    """'Around the proximal phalanx', 'encircling the bone'."""
    return words[k] in _AROUND and not _BONES.isdisjoint(words[k + 1 : min(k + 1 + _NEAR, j)])
