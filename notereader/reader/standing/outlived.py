"""A suture named for what became of it, beside the one that stayed: 'was placed after a Tajima of 2-0 had cut out'.

So are 'the Tajima of the first attempt having snapped' and 'there was no room for a Becker of 3-0, so ...'.
"""

from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_FATES = word_list("outlived", "fates")
_NO_ROOM = frozenset(
    [("no", "room"), ("no", "space"), ("enough", "room"), ("little", "room"), ("insufficient", "room")]
)
_LEADS = frozenset(["after", "because", "as", "since", "once", "when"])
_STOPS = frozenset([",", ";", ".", ":", "(", ")", "so", "but", "and", "therefore"])
_CORE = ("stitch", "strandword")
_NEAR = 16  # words


def mark_outlived(page: Page, sentence: Sentence) -> None:
    """Set aside the cores of a sentence that gave way before another was placed, or were not placed for room."""
    said = sentence.said
    if "room" in said or "space" in said:
        _mark_no_room(page, sentence)
    if _FATES.isdisjoint(said):
        return
    words = page.words
    for k in range(sentence.i + 2, sentence.j):
        if words[k] not in _FATES or words[k - 1] not in ("had", "having"):
            continue
        first = k - 1
        while first > max(sentence.i, k - _NEAR) and words[first - 1] not in _STOPS and words[first - 1] not in _LEADS:
            first -= 1
        led = words[first - 1] in (_LEADS if words[k - 1] == "had" else (",", ";")) if first > sentence.i else False
        before = any(m.kind in _CORE for m in within(page.mentions, sentence.i, first))
        behind = any(m.kind in _CORE for m in within(page.mentions, k, sentence.j))
        if led and (before or behind) and any(m.kind in _CORE for m in within(page.mentions, first, k)):
            page.mark(first, k + 1, "history")


def _mark_no_room(page: Page, sentence: Sentence) -> None:
    """'There was no room for a six-strand Becker of 3-0': the whole of what could not be placed."""
    words = page.words
    for k in range(sentence.i, sentence.j - 3):
        if (words[k], words[k + 1]) not in _NO_ROOM or words[k + 2] not in ("for", "to"):
            continue
        end = next((n for n in range(k + 3, sentence.j) if words[n] in _STOPS), sentence.j)
        if any(m.kind in _CORE for m in within(page.mentions, k, end)):
            page.mark(k + 2, end, "considered")
