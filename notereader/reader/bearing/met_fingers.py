"""A finger that the thumb only comes to, 'so that tip meets index', 'the thumb was opposed to the middle finger'."""

from notereader.reader.page import Page
from notereader.vocabulary.wordlists import word_list

_MEETING = word_list("bearing", "meeting")
_COMING = word_list("bearing", "coming")
_PARTS = frozenset(["tip", "pulp", "pad", "fingertip", "side"])
_BETWEEN = _PARTS | {"the", "of", "to", "with", "a"}
_STOPS = frozenset([".", ";", "wound", "cut", "laceration", "incision", "scar"])
_REACH = 5  # words between the verb and the finger
_LEAD = 7  # words before the verb in which the thumb or its tip stands


def met_by_thumb(page: Page, i: int, j: int) -> bool:
    """Tell whether words i to j name a finger that the thumb meets; 'came to' needs the finger's own pulp."""
    lead = list(range(i - 1, max(0, i - _REACH) - 1, -1))
    k = next((n for n in lead if page.words[n] not in _BETWEEN), -1)
    if k < 0 or not (page.words[k] in _MEETING or (page.words[k] in _COMING and _part_behind(page, k, i, j))):
        return False
    before = page.words[max(0, k - _LEAD) : k]
    stop = max((n for n, word in enumerate(before) if word in _STOPS), default=-1)
    first = max(0, k - _LEAD) + stop + 1
    thumb = any(m in _THUMB for m in page.words[first:k])
    return thumb and _STOPS.isdisjoint(page.words[max(0, k - 2) : k])


_THUMB = frozenset(["thumb", "thumb's", "tip", "pulp", "pad"])


def _part_behind(page: Page, k: int, i: int, j: int) -> bool:
    """'Came to the index pulp', 'reached the tip of the middle finger'."""
    return not _PARTS.isdisjoint(page.words[k:i]) or not _PARTS.isdisjoint(page.words[j : j + 2])
