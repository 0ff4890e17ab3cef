"""What an earlier operation found whole and this one found so again: 'FDS had been left whole and still is'."""

from notereader.reader.desk import HURT_KINDS, Desk
from notereader.reader.scene import Scene, group_targets

_IS = frozenset(["is", "are", "was", "were"])
_WHOLE = frozenset(["whole", "intact", "uninjured", "undamaged", "unharmed", "uncut"])
_DENIED = frozenset(["not", "never", "no", "hardly", "barely", "almost", "nearly"])
_CLOSES = frozenset(["", ".", ",", ";"])
_NEAR = 9  # words from 'whole' to 'still is'


def still_so(desk: Desk, scene: Scene) -> None:
    """Lay down as whole the tendon of which 'still is' repeats what was told of it."""
    if "still" not in scene.said or _WHOLE.isdisjoint(scene.said):
        return
    words = scene.page.words
    for k in range(scene.sentence.i + 1, scene.sentence.j - 1):
        if words[k] != "still" or words[k + 1] not in _IS or scene.next_word(k + 2) not in _CLOSES:
            continue
        whole = next((n for n in range(k - 1, max(scene.sentence.i, k - _NEAR), -1) if words[n] in _WHOLE), None)
        named = [g for g in scene.setting.groups if g.tendons and g.j <= k]
        if whole is None or len(named) != 1 or named[0].j > whole or not _DENIED.isdisjoint(words[named[0].j : k]):
            continue
        for target in group_targets(scene, named[0]):
            if desk.extents.get(target) not in HURT_KINDS:
                desk.tendon(scene, target, "extent", "intact", [(whole, k + 2)], "extent intact")
