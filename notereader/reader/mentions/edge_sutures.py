"""'Four strands, with a 6-0 edge', 'a running edge', 'two strands and no edge': the peripheral suture in short."""

import re
from bisect import insort
from operator import attrgetter

from notereader.reader.page import Mention, Page, Sentence, within

_SIZE = re.compile(r"\d+[-/]0")
_RUNS = frozenset(["running", "continuous"])
_CLOSES = frozenset([".", ",", ";", ")"])
_SUTURE = frozenset(["material", "strandword", "stitch"])
_NEAR = 3  # words: 'a running 6-0 Prolene edge'


def name_edge_sutures(page: Page) -> None:
    """Add to the mentions of the Page the edges that are sutures: by their thread, or denied beside a core."""
    for sentence in page.sentences:
        for k in range(sentence.i + 1, sentence.j):
            if page.words[k] == "edge" and _closes(page, sentence, k) and _is_suture(page, sentence, k):
                insort(page.mentions, Mention("role", "peripheral", k, k + 1), key=attrgetter("i"))


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
