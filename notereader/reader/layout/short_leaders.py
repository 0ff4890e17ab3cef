"""A single dot that leads to an answer: 'FCU, ulnar nerve . whole' below 'FPL .............. half'.

The label left no room for more dots.
"""

from notereader.reader.page import Break, Page


def settle_short_leaders(page: Page) -> None:
    """Take a dot with room on both sides for a leader, on a line beside one whose label leads by more dots."""
    words, breaks = page.words, page.breaks
    starts = [k for k in range(len(words)) if breaks[k] >= Break.LINE]
    lines = list(zip(starts, [*starts[1:], len(words)], strict=True))
    led = [any(word.startswith("...") for word in words[i:j]) for i, j in lines] if "." in words else []
    for n in range(len(led)):
        if led[n] or not (any(led[max(0, n - 1) : n]) or any(led[n + 1 : n + 2])):
            continue
        i, j = lines[n]
        dots = [k for k in range(i + 1, j - 1) if words[k] == "." and Break.SPACE <= breaks[k] < Break.LINE]
        if len(dots) == 1 and breaks[dots[0] + 1] >= Break.SPACE:
            words[dots[0]] = ".."
