"""The peripheral suture in short, and words that only sound like one.

'Four strands, with a 6-0 edge', 'FDP edge: 6-0', 'two strands and no edge'; not 'the consent was completed with her'.
"""

import re
from bisect import insort
from operator import attrgetter

from notereader.reader.page import Mention, Page, Sentence, within
from notereader.vocabulary.wordlists import word_list

_SIZE = re.compile(r"\d+[-/]0")
_EDGES = frozenset(["edge", "edges"])
_FINE = frozenset(["5-0", "6-0", "7-0"])
_SKIN = frozenset(["skin", "wound", "closure", "flap"])
_RUNS = frozenset(["running", "continuous"])
_CLOSES = frozenset([".", ",", ";", ")"])
_SUTURE = frozenset(["material", "strandword", "stitch"])
_NEAR = 3  # words: 'a running 6-0 Prolene edge'


def drop_loose_edges(page: Page) -> None:
    """Drop from the mentions of the Page 'completed with', 'all around' and the like that stand beside no thread."""
    loose = [m for m in page.mentions if m.kind == "role" and " ".join(page.words[m.i : m.j]) in _LOOSE]
    dropped = {id(m) for m in loose if not _beside_thread(page, m) or _of_skin(page, m)}
    if dropped:
        page.mentions = [m for m in page.mentions if id(m) not in dropped]


def _beside_thread(page: Page, m: Mention) -> bool:
    """Tell whether a thread, a pattern or a word for a suture stands within a few words of a loose phrase."""
    first, last = max(0, m.i - _FAR), min(len(page.words), m.j + _FAR)
    words = page.words[first:last]
    if not _THREADS.isdisjoint(words) or any(_SIZE.fullmatch(w) for w in words):
        return True
    return any(
        n.kind in ("material", "pattern") or (n.kind == "role" and n is not m)
        for n in within(page.mentions, first, last)
    )


def _of_skin(page: Page, m: Mention) -> bool:
    """'The wound was finished with 5-0 nylon': what is finished is no repair."""
    return page.words[m.i] in _FINISHES and not _NO_REPAIR.isdisjoint(page.words[max(0, m.i - _NEAR) : m.i])


_LOOSE = word_list("sutures", "loose_edges")
_FINISHES = frozenset(["finished", "completed", "rounded"])
_NO_REPAIR = word_list("sutures", "finished_otherwise")
_THREADS = word_list("sutures", "threads_near")
_FAR = 8  # words


def name_edge_sutures(page: Page) -> None:
    """Add to the mentions of the Page the edges that are sutures: by their thread, or denied beside a core."""
    for sentence in page.sentences:
        for k in range(sentence.i, sentence.j):
            if page.words[k] in _EDGES and (_labels_a_thread(page, sentence, k) or _ends_a_suture(page, sentence, k)):
                insort(page.mentions, Mention("role", "peripheral", k, k + 1), key=attrgetter("i"))


def _labels_a_thread(page: Page, sentence: Sentence, k: int) -> bool:
    """'FDP edge: 6-0 nylon', 'Edge 6-0': behind a tendon or at the head of a line, and a fine thread behind."""
    j = k + 1 + (page.words[k + 1 : k + 2] in ([":"], ["-"], ["="]))
    if j >= sentence.j or page.words[j] not in _FINE or not _SKIN.isdisjoint(sentence.said):
        return False
    heads = k == sentence.i and page.words[k] == "edge" and page.words[j] != "5-0"
    return heads or any(m.j == k for m in page.mentions if m.kind == "tendon")


def _ends_a_suture(page: Page, sentence: Sentence, k: int) -> bool:
    """'Plus 6-0 edge', 'with a running edge.': the noun behind its thread."""
    named = k > sentence.i and page.words[k] == "edge"
    return named and _closes(page, sentence, k) and _is_suture(page, sentence, k)


def _closes(page: Page, sentence: Sentence, k: int) -> bool:
    """Tell whether 'edge' ends what is said of it, and is not part of a name for the same thing."""
    ends = k + 1 >= sentence.j or page.words[k + 1] in _CLOSES
    return ends and not any(m.kind == "role" and m.i <= k < m.j for m in within(page.mentions, k - 1, k + 1))


def _is_suture(page: Page, sentence: Sentence, k: int) -> bool:
    lead = page.words[max(sentence.i, k - _NEAR) : k]
    if _SIZE.fullmatch(lead[-1]) or lead[-1] in _RUNS:
        return True  # 'plus 6-0 edge', 'with a running edge'
    before = within(page.mentions, sentence.i, k)
    return lead[-1] == "no" and any(m.kind in _SUTURE or (m.kind, m.value) == ("role", "core") for m in before)
