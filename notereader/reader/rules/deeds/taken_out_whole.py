"""Tendons told by 'it' to be taken out over their length: 'FDP had ruptured. It was excised from the palm distally'."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_FROM_WHERE = frozenset(["from", "sparing", "leaving", "between", "back", "down", "up"])
_LANDMARKS = word_list("taken_out_whole", "landmarks")
_WAS = frozenset(["was", "had", "is", "has", ":"])
_LEAD = 3  # words: 'Left small: the'


def taken_out_whole(desk: Desk, scene: Scene, deed: Mention, focus: list[Target]) -> list[Target]:
    """Return the tendon in focus where it was taken out from one place to another, and none where it was sewn."""
    if len(focus) != 1 or not _along_its_length(scene, deed) or not _told_of_itself(desk, scene):
        return []
    return [] if desk.has_suture(focus[0]) else focus


def _along_its_length(scene: Scene, deed: Mention) -> bool:
    """'It was excised from the lumbrical origin distally', '..., sparing a 1 cm stub': no lump and no ragged end."""
    behind = scene.words(deed.j, scene.sentence.j)
    start = behind[1:2] if behind[:1] == [","] else behind[:1]
    return start != [] and start[0] in _FROM_WHERE and not _LANDMARKS.isdisjoint(behind)


def _told_of_itself(desk: Desk, scene: Scene) -> bool:
    """Tell whether the sentence before opens with the tendon: 'FDP was ruptured', and not 'the FDP end was ragged'."""
    before = desk.scene_before(scene)
    first = next((g for g in before.setting.groups if g.tendons), None) if before is not None else None
    if before is None or first is None or before.sentence.block != scene.sentence.block:
        return False
    lead = before.words(before.sentence.i, first.i)
    return len(lead) <= _LEAD and before.next_word(first.j) in _WAS
