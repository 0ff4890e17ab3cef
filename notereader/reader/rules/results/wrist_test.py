"""Repairs tested by the wrist: tenodesis moves the fingers, and nobody pulls or asks the patient."""

from itertools import pairwise

from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_LED = word_list("wrist_test", "led")  # 'with the wrist carried from flexion to extension'
_WAYS = word_list("wrist_test", "ways")
_SHOWS = word_list("wrist_test", "shows")  # 'tenodesis gave a full curl'
_SEEN = word_list("wrist_test", "seen")
_SET = word_list("wrist_test", "set")  # 'splint with the wrist flexed', 'tension was set with the wrist straight'
_REACH = 6  # words
_LONG_REACH = 10  # words
_SO_THAT = word_list("wrist_test", "so_that")
_SKIP = frozenset(
    ["instructions", "closure", "dressing", "indication", "diagnosis", "procedure", "consent", "previous"]
)


def by_wrist(scene: Scene, told_of_repair: bool) -> list[Mention]:
    """Return the words that tell of a test by moving the wrist: 'moving the wrist to and fro', 'on wrist tenodesis'.

    `told_of_repair`: the sentence or the next one tells what was seen of the repair.
    """
    if scene.sentence.section in _SKIP or not _SET.isdisjoint(scene.said):
        return []
    if not told_of_repair and _SEEN.isdisjoint(scene.said):
        return []
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j):
        led = words[k] == "wrist" and _moved(scene, k)
        tenodesis = words[k] == "tenodesis" and ("wrist" in scene.said or scene.next_word(k + 1) in _SHOWS)
        tenodesis = tenodesis or (scene.words(k - 1, k + 2) in _ON_TENODESIS and told_of_repair)
        if (led or tenodesis) and scene.told(k) and not scene.negated(k, k + 1, 3):
            return [Mention("test", "passive", k, k + 1)]
    return []


_ON_TENODESIS = [[lead, "tenodesis", mark] for lead in ("on", "under", "with") for mark in (",", ".", ";", ":")]


def _moved(scene: Scene, k: int) -> bool:
    """Tell whether the wrist named at word k is moved there and back, or let fall."""
    near = scene.words(max(scene.sentence.i, k - 4), min(scene.sentence.j, k + _REACH))
    behind = scene.words(k, min(scene.sentence.j, k + _LONG_REACH))
    if any(a == "to" and b in _SO_THAT for a, b in pairwise(behind)):
        return False  # 'wrist bent up to 40 to get the ends together'
    ways = {word[:4] for word in near if word in _WAYS}  # 'flexion' and 'flexed' are one way
    return not _LED.isdisjoint(near) and (len(ways) > 1 or ("back" in near and bool(ways)))
