"""Bare figures in a grid that tell how much was cut: 'FDP   100   40   ok', or a column of them under 'cut'."""

from notereader.reader.layout.bare_shares import may_be_share
from notereader.reader.layout.grid_fingers import only_names
from notereader.reader.layout.grid_lines import Span
from notereader.reader.page import Page, Quantity, Sentence, within
from notereader.vocabulary.wordlists import word_list

_STATES = word_list("grid_shares", "states")
_ALL = 100  # per cent
_FEWEST = 2  # cells


def take_shares(page: Page) -> None:
    """Take the bare figures of such cells for per cents, where one is 100 or stands beside a state: 'ok', 'cut'."""
    told: dict[Span, list[Sentence]] = {}
    for sentence in page.sentences:
        asked = _under_a_cut(page, sentence) or _of_one_tendon(page, sentence)
        if asked is not None:
            told.setdefault(asked, []).append(sentence)
    bare = {q.i: q for q in page.quantities if not q.unit} if told else {}
    for cells in told.values():
        figures = _shares(page, cells, bare)
        for figure in figures or ():
            figure.unit = "%"


def _under_a_cut(page: Page, sentence: Sentence) -> Span | None:
    """Return the title 'cut' of a cell that a row of one tendon has below it."""
    if len(sentence.prefix) < _FEWEST or sentence.j - sentence.i != 1:
        return None
    titles = [(i, j) for i, j in sentence.prefix if j - i == 1 and page.words[i] in _ASKING]
    tendons = [label for label in sentence.prefix if _only_a_tendon(page, label)]
    return titles[0] if titles and tendons else None


_ASKING = frozenset(["cut", "divided", "lesion", "damage", "share"])


def _of_one_tendon(page: Page, sentence: Sentence) -> Span | None:
    """Return the label of a cell that is told with a tendon and a finger and with nothing else."""
    if len(sentence.prefix) != _FEWEST or sentence.j - sentence.i != 1:
        return None
    tendons = [label for label in sentence.prefix if _only_a_tendon(page, label)]
    fingers = [label for label in sentence.prefix if only_names(page, label)]
    return tendons[0] if len(tendons) == len(fingers) == 1 else None


def _only_a_tendon(page: Page, label: Span) -> bool:
    named = [m for m in within(page.mentions, *label) if m.kind == "tendon"]
    return len(named) == 1 and (named[0].i, named[0].j) == label


def _shares(page: Page, cells: list[Sentence], bare: dict[int, Quantity]) -> list[Quantity]:
    """Return the figures of a row, or nothing where a cell holds anything but shares and states."""
    figures = [bare[cell.i] for cell in cells if cell.i in bare]
    states = [cell for cell in cells if page.words[cell.i] in _STATES]
    whole = any(q.high == _ALL for q in figures)
    fit = all(may_be_share(q) or q.high == 0 for q in figures)
    full = len(figures) + len(states) == len(cells) >= _FEWEST
    return figures if fit and full and (whole or states) else []
