"""Pulleys told again for another finger without a name: 'A2 was vented in the index. The same in the middle.'"""

from notereader.reader.desk import Desk, Finding
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_SAME = word_list("pulleys", "same_there")
_FILLING = word_list("pulleys", "same_there_filling") | _SAME
_FIELDS = ("finding", "extent_mm", "extent_percent", "part")
_FINGER = frozenset(["finger", "digit", "ray"])  # 'in the same finger'


def same_there(desk: Desk, scene: Scene) -> bool:
    """Lay down for the fingers of a sentence what the one before told of the pulleys of one finger.

    RETURNS: whether the sentence says only that it is the same there.
    """
    if scene.said.isdisjoint(_SAME) or not scene.kinds.isdisjoint(("pulley", "tendon", "opened")):
        return False
    fingers = scene.setting.groups
    named = {k for g in fingers for k in range(g.i, g.j)}
    rest = [k for k in range(scene.sentence.i, scene.sentence.j) if k not in named]
    if not fingers or not all(scene.page.words[k] in _FILLING and scene.told(k) for k in rest):
        return False
    if any(not g.digits or g.tendons or g.reference or g.generic for g in fingers) or _of_that_finger(scene):
        return False
    told = _told_before(desk, scene)
    for digit in (d for g in fingers for d in g.digits):
        for f in told:
            entry = (digit, f.entry[1], None)
            desk.add(scene, "pulleys", entry, f.field, f.value, [*f.spans, (rest[0], fingers[-1].j)], f.rule)
    if told:
        desk.last_pulley_end = scene.sentence.j
        digits = tuple(d for g in fingers for d in g.digits)
        desk.last_pulleys = [(value, digits) for value, _ in desk.last_pulleys]
    return bool(told)


def _of_that_finger(scene: Scene) -> bool:
    words = scene.words(scene.sentence.i, scene.sentence.j)
    return any(word == "same" and words[n + 1 : n + 2] and words[n + 1] in _FINGER for n, word in enumerate(words))


def _told_before(desk: Desk, scene: Scene) -> list[Finding]:
    """Return what the sentence before told of pulleys, where it was of one finger."""
    before = desk.scene_before(scene)
    if before is None or not before.of("pulley", "pulleys", "pulley?"):
        return []
    found = desk.laid(*_FIELDS, since=before.sentence.i, before=scene.sentence.i)
    told = [f for f in found if f.group == "pulleys" and f.entry[0] is not None]
    return told if len({f.entry[0] for f in told}) == 1 else []
