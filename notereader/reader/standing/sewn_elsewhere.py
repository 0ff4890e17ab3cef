"""Repairs that were done in another house: 'the flexors were sewn at a county hospital with a four-strand core'.

No surgeon tells so of the house in which he operates: only 'a hospital', 'his local hospital', 'overseas'.
"""

from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_SEWN = word_list("sewn_elsewhere", "sewn")
_HOUSES = word_list("sewn_elsewhere", "houses")
_ABROAD = word_list("sewn_elsewhere", "abroad")
_STRANGE = word_list("sewn_elsewhere", "strange")
_OF_ANOTHER = frozenset(["a", "an", "another", "his", "her", "their", "some"])
_AT = frozenset(["at", "in", "by"])
_OUR_ROOMS = (["clinic", "room"], ["hospital", "theatre"], ["clinic", "theatre"])  # 'in a clinic room' may be ours
_AHEAD = word_list("sewn_elsewhere", "ahead")
_OURS = frozenset(["i", "we", "my", "our"])
_OF_TENDONS = frozenset(["tendon", "generic", "material", "stitch", "strandword"])
_LONG_NAME, _NEAR = 5, 12  # words


def sewn_elsewhere(page: Page, sentence: Sentence) -> bool:
    """Tell whether a sentence tells of tendons sewn in another house, and of nothing that we did."""
    if _SEWN.isdisjoint(sentence.said) or not _AHEAD.isdisjoint(sentence.said) or not _OURS.isdisjoint(sentence.said):
        return False
    place = next((k for k in range(sentence.i, sentence.j) if _is_elsewhere(page, sentence, k)), -1)
    if place < 0:
        return False
    before = page.words[max(sentence.i, place - _NEAR) : place]
    behind = page.words[place : min(place + _NEAR, sentence.j)]
    if ";" in before:
        before = before[len(before) - before[::-1].index(";") :]  # '... with four strands; stitches out at a clinic'
    told = any(m.kind in _OF_TENDONS for m in within(page.mentions, sentence.i, sentence.j))
    return told and not (_SEWN.isdisjoint(before) and _SEWN.isdisjoint(behind))


def _is_elsewhere(page: Page, sentence: Sentence, k: int) -> bool:
    """'Overseas', 'at a county hospital', 'in his local hospital', 'by a surgeon in her home town'."""
    words = page.words
    if words[k] in _ABROAD:
        return True
    if (words[k] not in _HOUSES and words[k] != "surgeon") or words[k : k + 2] in _OUR_ROOMS:
        return False
    name = _name_before(words[max(sentence.i, k - _LONG_NAME) : k])
    strange = not _STRANGE.isdisjoint(name)
    if name[:1] == ["the"] or words[k] == "surgeon":
        return strange  # 'by a general surgeon', but 'by a senior surgeon', 'in the main hospital'
    return name != [] and name[0] in _OF_ANOTHER


def _name_before(lead: list[str]) -> list[str]:
    """Return the words of a name behind 'at', 'in', 'by': 'a county', 'a walk-in'."""
    spots = (n for n in range(len(lead) - 1, -1, -1) if lead[n] in _AT and lead[n - 1 : n] != ["-"])
    at = next(spots, len(lead))
    return lead[at + 1 :]
