"""What was agreed before the operation: 'at the briefing we agreed on an M-Tang of 4-0', 'we had settled on six'.

Whether it was done so the note tells elsewhere; 'as agreed at the briefing, an Adelaide was done' tells it at once.
"""

from notereader.reader.page import Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_MEETINGS = word_list("wishes", "meetings")
_CHOSE = word_list("wishes", "chose")
_DONE = word_list("wishes", "done_so")
_ENDS = frozenset([";", ".", "but", "however", "yet", "though", "although"])
_CHOSEN = frozenset(["strandword", "stitch", "looped", "material", "role", "pattern", "hold"])
_FAR = 6  # words from the verb to what leads to it
_SOON = 8  # words of the next sentence


def mark_briefed(page: Page, sentence: Sentence) -> None:
    """Set aside a suture that a meeting before the operation chose, up to where the sentence turns."""
    if _CHOSE.isdisjoint(sentence.said):
        return
    words = page.words
    for k in range(sentence.i + 1, sentence.j - 1):
        if words[k] not in _CHOSE or not _before_the_operation(words[max(sentence.i, k - _FAR) : k]):
            continue
        end = next((n for n in range(k, sentence.j) if words[n] in _ENDS), sentence.j)
        chosen = any(m.kind in _CHOSEN for m in within(page.mentions, k, end))
        if chosen and not _carried_out(words[k + 1 : sentence.j + _SOON]):
            page.mark(k, end, "plan")


def _carried_out(words: list[str]) -> bool:
    """'... and that is what was done', 'This was carried out with 3-0.', and not 'A Kessler was done instead'."""
    spots = (n for n, word in enumerate(words) if word in _DONE)
    return any(not _POINTING.isdisjoint(words[max(0, n - _NEAR) : n]) for n in spots)


_POINTING = frozenset(["this", "that", "it", "which", "so"])
_NEAR = 4  # words: 'that is what was done'


def _before_the_operation(lead: list[str]) -> bool:
    """'At the briefing we', 'we had', 'before surgery we'; not 'as'."""
    told = "as" not in lead and not {"i", "we", "team"}.isdisjoint(lead[-4:])
    return (told or lead[-1:] == ["it"]) and (lead[-1:] == ["had"] or not _MEETINGS.isdisjoint(lead))
