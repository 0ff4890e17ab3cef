"""Choices of a template with the answer typed behind them: 'Stitch Kessler/Adelaide: Adelaide', 'Strands 2/4/6: 4'.

What they offer is set aside; the answer is one of them, and stays told.
"""

from notereader.reader.page import Page, within

Span = tuple[int, int]
_BARS = frozenset(["/", "|"])
_NAMES = frozenset(["tendon", "digit", "pulley", "side", "structure", "sided"])  # 'FDP/FDS: FDP cut' offers nothing
_LONGEST = 3  # words of an option
_FEWEST_FIGURES = 3  # 'Ethibond 4/0: 4 strands' offers nothing either


def mark_answered_choices(page: Page, first: int, last: int) -> bool:
    """Set aside the choices in words first to last that were answered behind them. RETURNS: whether there are any."""
    if _BARS.isdisjoint(page.words[first:last]):
        return False
    answered = [span for k in range(first + 3, last - 1) if (span := _offered(page, first, k, last)) is not None]
    for i, j in answered:
        page.mark(i, j, "unticked")
    return bool(answered)


def _offered(page: Page, first: int, k: int, last: int) -> Span | None:
    """Return the options right before a colon at word k, where one of them stands behind it too."""
    if page.words[k] != ":":
        return None
    closed = page.words[k - 1] == ")"
    options = _options(page, first, k - closed)
    said = [tuple(page.words[i:j]) for i, j in options]
    behind = tuple(page.words[k + 1 : min(k + 1 + _LONGEST, last)])
    if len(said) < 2 or not any(words == behind[: len(words)] for words in said):
        return None
    if all(words[0].isdecimal() for words in said) and len(said) < _FEWEST_FIGURES:
        return None
    begin, end = options[0][0], options[-1][1]
    if any(m.kind in _NAMES for m in within(page.mentions, begin, end)):
        return None
    label = next((m for m in within(page.mentions, first, begin) if m.i < begin < m.j), None)
    if label is not None:  # 'Gap none/seen: seen': the first choice is one with its label
        return None if said[0] == behind[: len(said[0])] else (label.i, end)
    return (begin - 1, k) if closed and page.words[begin - 1] == "(" else (begin, end)


def _options(page: Page, first: int, end: int) -> list[Span]:
    """Return the options between the bars before word `end`; of what stands before the first bar its last word."""
    bars = [n for n in range(first + 1, end) if page.words[n] in _BARS]
    run: list[Span] = []
    for bar in reversed(bars):
        if end - bar - 1 not in range(1, _LONGEST + 1):
            break
        run.insert(0, (bar + 1, end))
        end = bar
    return [(end - 1, end), *run] if run else []
