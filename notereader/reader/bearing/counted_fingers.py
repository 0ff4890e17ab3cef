"""'FDP of three fingers', 'no gap in the 2 fingers': as many fingers as the note is about are all of them."""

from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Mention, Page

_FINGERS = frozenset(["fingers", "digits", "rays"])
_LEADS = frozenset(["of", "in", "for", "on", "to"])


def count_fingers(page: Page) -> None:
    """Add to the Page a quantifier for each number of fingers that is that of the fingers named in the note."""
    named = {m.value for m in page.mentions if m.kind == "digit"}
    taken = {k for m in page.mentions if m.kind == "quantifier" for k in range(m.i, m.j)}
    made = [
        Mention("quantifier", "all", k, k + 1)
        for k in range(1, len(page.words) - 1)
        if page.words[k + 1] in _FINGERS
        and page.words[k - 1] in _LEADS
        and k not in taken
        and count_of(page.words[k]) == len(named) > 1
    ]
    if made:
        page.mentions = sorted([*page.mentions, *made], key=lambda m: (m.i, m.j))
