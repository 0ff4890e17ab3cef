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
    pair = next((n for n, word in enumerate(behind) if word in _PAIRS or _adds_strands(behind, n)), 0)
    if not pair or _ADDED.isdisjoint(behind[max(0, pair - 2) : pair + 2]) or not scene.told(j + pair):
        return count
    added = 2 if behind[pair] in _PAIRS else count_of(behind[pair - 1])
    for n in range(pair + 1, len(behind)):
        summed = any(behind[n + 1 : n + 1 + len(p)] == p for p in _SUMS)
        if summed and count_of(behind[n]) == number + added and scene.told(j + n):
            return number + added, j + n, j + n + 1
    return count


def _adds_strands(behind: list[str], n: int) -> bool:
    """'... supplemented by a further four strands, six in all': strands counted behind 'further', 'another'."""
    return n > 1 and behind[n] == "strands" and behind[n - 2] in _ADDED and count_of(behind[n - 1]) > 0
