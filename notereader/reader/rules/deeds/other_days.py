"""Repairs of another day: 'the old repair', 'the FDS repair from last month', 'the FDP repair had parted'."""

from itertools import pairwise

from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

OLD = word_list("other_days", "old")
_TELLS = word_list("other_days", "tells")
_GONE = word_list("other_days", "gone")
_SOON = 6  # words


def of_another_day(scene: Scene, i: int, j: int) -> bool:
    """Tell whether the noun of a repair in words i to j is led by 'earlier', or followed by 'ago' or 'last month'."""
    behind = scene.words(j, min(j + _SOON, scene.sentence.j))
    had_gone = any(had == "had" and verb in _GONE for had, verb in pairwise(behind))
    return scene.word_before(i) in OLD or had_gone or not _TELLS.isdisjoint(behind)
