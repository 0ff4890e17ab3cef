"""'A4 was rebuilt with a slip of FDS, sewn by four strands of 4-0': the thread of a pulley, and of no tendon.

So it is where the pulley was made of something else: 'each was reconstructed with fascia, sewn to itself with 3-0'.
"""

from notereader.reader.page import Page, Sentence, within
from notereader.reader.standing.lending import into_pulley

_STOPS = frozenset([";", ".", "but"])
_MADE_OF = (["with"], ["from"], ["using"], ["by"], ["out"])
_OF_A_JOIN = frozenset(["strandword", "stitch", "role", "generic", "structure", "sided", "anynerve", "anyartery"])
_SUTURE = frozenset(["strandword", "stitch", "material"])


def mark_donor_threads(page: Page, sentence: Sentence) -> None:
    """Set aside what is told behind a piece of tendon that a pulley was made of, up to the next tendon or stop."""
    mentions = within(page.mentions, sentence.i, sentence.j)
    rebuilt = [m for m in mentions if m.kind == "opened" and m.value == "reconstructed"]
    if not rebuilt:
        return
    tendons = [m for m in mentions if m.kind == "tendon" and m.i < m.j]
    start = rebuilt[0].j
    if not tendons and page.words[start : start + 1] in _MADE_OF and _OF_A_JOIN.isdisjoint(m.kind for m in mentions):
        end = next((k for k in range(start, sentence.j) if page.words[k] in _STOPS), sentence.j)
        page.mark(start, end, "other")
        return
    for m, after in zip(tendons, [*tendons[1:], None], strict=False):
        if into_pulley(page, sentence.i, m.i):
            last = after.i if after is not None else sentence.j
            end = next((k for k in range(m.j, last) if page.words[k] in _STOPS), last)
            if any(n.kind in _SUTURE for n in within(page.mentions, m.j, end)):
                page.mark(m.j, end, "other")
