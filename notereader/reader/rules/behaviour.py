"""Whose behaviour is told after a repair, and whether words speak of a repair at all."""

from notereader.reader.bearing import Target
from notereader.reader.desk import Desk, owners
from notereader.reader.rules.suture_owners import said_of_all, suture_owners
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_FOREIGN_WORDS = word_list("quality", "foreign_words")


def lay_behaviour(
    desk: Desk,
    scene: Scene,
    targets: list[Target],
    name: str,
    value: str | float,
    i: int,
    j: int,
    rule: str,
    *reasons: str,
) -> None:
    """Lay one value down for every target."""
    for target in targets:
        desk.tendon(scene, target, name, value, [(i, j)], rule, *reasons)


def foreign(scene: Scene, i: int, j: int) -> bool:
    """Tell whether words i to j belong to a nerve, a vessel, skin or another structure."""
    subject = scene.owner(i, j)
    if subject is None or subject.mention is None:
        return False
    if subject.kind == "role":
        return subject.mention.value not in ("core", "peripheral")
    return subject.kind in _FOREIGN_WORDS


def behaving(desk: Desk, scene: Scene, i: int, j: int) -> list[Target]:
    """Return the repaired tendons a remark on behaviour is about."""
    if said_of_all(scene, i):
        wide = suture_owners(desk, scene, i, j)[0]
        if len(wide) > 1:
            return wide
    targets, _ = owners(desk, scene, i, j)
    targets = [
        t
        for t in targets
        if desk.extents.get(t) != "intact" and desk.treatments.get(t) not in ("left", "excised", "trimmed")
    ]
    if targets:
        return targets
    subject = scene.owner(i, j)
    if subject is not None and subject.group is not None and (subject.group.generic == "all" or subject.group.every):
        return desk.sewn()
    if said_of_all(scene, i):
        return suture_owners(desk, scene, i, j)[0]
    if _either(scene):
        here = desk.sewn(scene.setting.digits or None)
        return here if len(here) > 1 else desk.sewn()
    found, _ = suture_owners(desk, scene, i, j)
    return found


def _either(scene: Scene) -> bool:
    words = scene.words(scene.sentence.i, scene.sentence.j)
    return any(w in words for w in ("either", "neither", "both", "each", "none", "all"))


def after_repair(desk: Desk, scene: Scene) -> bool:
    """Tell whether a repair was told of before this sentence ends."""
    return any(
        f.field in ("strands", "stitch", "size", "treatment") and f.order < scene.sentence.j for f in desk.findings
    )


def names_repair(scene: Scene) -> bool:
    """Tell whether the sentence names a tendon or a repair."""
    return any(g.tendons or g.generic for g in scene.setting.groups)


def about_repair(desk: Desk, scene: Scene) -> bool:
    """Tension or bulk told in a sentence of its own belongs to what was worked on last."""
    if names_repair(scene):
        return True
    foreign = [s for s in scene.subjects if s.kind in ("structure", "sided", "anynerve", "anyartery", "bundle")]
    if foreign:
        return False
    return desk.topic in ("tendon", "core", "peripheral", "pulley", "") and bool(
        desk.sewn() or scene.setting.focus
    )
