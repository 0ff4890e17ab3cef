"""Tendons that an addendum says were wrongly told to be whole: 'the middle FDS was mistakenly called intact'."""

from notereader.reader.desk import Desk
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_TAKING_BACK = word_list("bearing", "taking_back")


def wrongly_whole(desk: Desk, scene: Scene) -> None:
    """Take back that a tendon is whole where an addendum says that this was wrong; what it was is told behind it."""
    if _TAKING_BACK.isdisjoint(scene.said) or not scene.page.in_addendum(scene.sentence):
        return
    if any(m.value == "intact" and scene.told(m.i) for m in scene.of("extent")):
        return  # 'I was wrong about the FDS: it was whole'
    for group in (g for g in scene.setting.groups if g.tendons and not (g.reference or g.excepted)):
        for target in group_targets(scene, group):
            if desk.extents.get(target) == "intact":
                del desk.extents[target]
                entry = (target.digit, target.tendon, target.slip)
                desk.take_back("repairs", entry, "extent", scene.sentence.i)
