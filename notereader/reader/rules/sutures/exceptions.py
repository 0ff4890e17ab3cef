"""'All got a four-strand core. Exception FCR: horizontal mattress.': what was told of all is not of this one."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Group, Target
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_LEADS = word_list("exceptions", "leads")
_BETWEEN = word_list("exceptions", "between")
_CORE = ("strands", "stitch", "size", "material", "looped", "hold", "purchase_mm", "lock_mm")
_PERIPHERAL = ("peripheral", "peripheral_pattern", "peripheral_size", "peripheral_material")


def taken_from_all(desk: Desk, scene: Scene) -> None:
    """Take back of an exception what the sentence before told of everybody, where it tells of that suture anew."""
    group = _the_exception(scene)
    before = desk.scene_before(scene)
    if group is None or before is None or _names(before, group):
        return
    fields = (*(_CORE if scene.of("stitch", "strandword") else ()), *(_PERIPHERAL if _outer(scene) else ()))
    for target in group_targets(scene, group):
        for name in fields:
            desk.take_back("repairs", _entry(target), name, scene.sentence.i, before.sentence.i)


def _the_exception(scene: Scene) -> Group | None:
    """Return the tendon or finger that opens a sentence as an exception."""
    first, words = scene.sentence.i, scene.page.words
    k = first
    while k < scene.sentence.j and words[k] in _BETWEEN:
        k += 1
    if k >= scene.sentence.j or words[k] not in _LEADS or not scene.told(k):
        return None
    k += 1
    while k < scene.sentence.j and words[k] in _BETWEEN:
        k += 1
    return next((g for g in scene.setting.groups if g.i == k and g.tendons), None)


def _names(before: Scene, group: Group) -> bool:
    """Tell whether the sentence before names the exception itself: what it says there is its own."""
    return any(set(g.tendons) & set(group.tendons) for g in before.setting.groups if g.tendons)


def _outer(scene: Scene) -> bool:
    return "pattern" in scene.kinds or any(m.value == "peripheral" for m in scene.of("role"))


def _entry(target: Target) -> tuple[str | None, str, str | None]:
    return target.digit, target.tendon, target.slip
