"""'FDP outer   6/0 Prolene', 'outer: none': words that name the peripheral suture only where they are a label."""

from notereader.reader.page import Break, Mention, Page
from notereader.vocabulary.wordlists import word_list

_WORDS = word_list("sutures", "outer_labels")
_MARKS = frozenset([":", "=", "|"])


def name_outer_labels(page: Page) -> None:
    """Add the peripheral sutures that such labels name to the mentions of the Page."""
    if _WORDS.isdisjoint(page.words):
        return
    tendons = {m.j: m.i for m in page.mentions if m.kind == "tendon"}
    made = [
        Mention("role", "peripheral", k, k + 1)
        for k, word in enumerate(page.words)
        if word in _WORDS and _ends_label(page, k + 1) and _opens(page, tendons.get(k, k))
    ]
    if made:
        page.mentions = sorted([*page.mentions, *made], key=lambda m: (m.i, m.j))


def _ends_label(page: Page, j: int) -> bool:
    """Tell whether a label ends before word j: at a mark, at dots, or where the next column begins."""
    if j >= len(page.words) or page.breaks[j] >= Break.LINE:
        return False
    return page.words[j] in _MARKS or page.words[j].startswith("..") or page.breaks[j] == Break.COLUMN


def _opens(page: Page, k: int) -> bool:
    """Tell whether word k opens a line or a cell."""
    return k == 0 or page.breaks[k] >= Break.COLUMN or page.words[k - 1] == "|"
