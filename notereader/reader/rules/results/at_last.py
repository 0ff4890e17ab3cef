"""What the finished repair is stands against what it was on the way: 'the finished repair is without tension'."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_AT_LAST = word_list("quality", "at_last")
_AT_LAST_IN_TWO = frozenset(tuple(words.split()) for words in word_list("quality", "at_last_in_two"))
_OPENING = frozenset(["after", "once"])


def settle_at_last(desk: Desk, scene: Scene, targets: list[Target], name: str, i: int) -> None:
    """Take back the tension or bulk told in earlier words where words at i deny it of the finished repair."""
    if not _of_the_finished(scene, i):
        return
    for target in targets:
        desk.take_back("repairs", (target.digit, target.tendon, target.slip), name, i)


def _of_the_finished(scene: Scene, i: int) -> bool:
    first, last = scene.part(i)
    lead = scene.words(scene.sentence.i, i)
    here = scene.words(first, last)
    opens = lead[:1] != [] and lead[0] in _OPENING
    return opens or any(
        not _AT_LAST.isdisjoint(words) or not _AT_LAST_IN_TWO.isdisjoint(pairwise(words)) for words in (lead, here)
    )
