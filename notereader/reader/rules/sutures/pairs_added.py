"""Strands told pair by pair and summed up: 'two strand, plus a second pair at right angles = 4 in all'."""

from notereader.reader.mentions.measures import count_of
from notereader.reader.scene import Scene

_ADDED = frozenset(["second", "another", "further", "extra", "additional", "added"])
_PAIRS = frozenset(["pair", "pairs"])
_SUMS = (["in", "all"], ["in", "total"], ["altogether"], ["all", "told"], ["total"])
_FAR = 22  # words

Count = tuple[int, int, int]  # how many, words i to j


def with_added_pair(scene: Scene, count: Count) -> Count:
    """Return the sum that stands behind a count and the pair added to it, else the count itself."""
    number, _, j = count
    behind = scene.words(j, min(j + _FAR, scene.sentence.j))
    pair = next((n for n, word in enumerate(behind) if word in _PAIRS), 0)
    if not pair or _ADDED.isdisjoint(behind[max(0, pair - 2) : pair + 2]) or not scene.told(j + pair):
        return count
    for n in range(pair + 1, len(behind)):
        summed = any(behind[n + 1 : n + 1 + len(p)] == p for p in _SUMS)
        if summed and count_of(behind[n]) == number + 2 and scene.told(j + n):
            return number + 2, j + n, j + n + 1
    return count
