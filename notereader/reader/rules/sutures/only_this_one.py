"""'Only the FDP had the six strands, with the 10 mm and the locks': what was told of both is of this tendon alone."""

from notereader.reader.desk import Desk, is_correction
from notereader.reader.groups import Group, Target
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_ONLY = word_list("only_this_one", "only")
_HAD = word_list("only_this_one", "had")
_LOCKS = word_list("only_this_one", "locks")
_CORE = ("strands", "stitch", "size", "material", "looped", "hold", "purchase_mm", "lock_mm")
_PERIPHERAL = ("peripheral", "peripheral_pattern", "peripheral_size", "peripheral_material")


def taken_from_others(desk: Desk, scene: Scene) -> None:
    """Take back of every other tendon what a correction says that only one was given."""
    if _ONLY.isdisjoint(scene.said) or _HAD.isdisjoint(scene.said) or not is_correction(scene):
        return
    group = _the_only_one(scene)
    fields = _fields(scene) if group is not None else ()
    own = group_targets(scene, group) if group is not None and fields else []
    if any(target.slip for target in own):
        return  # 'only the radial slip had a Kessler': told of the slips of one tendon
    entries = dict.fromkeys(f.entry for f in desk.findings if f.group == "repairs" and f.order < scene.sentence.i)
    for target in (Target(*entry) for entry in entries if own):
        if not any((t.digit, t.tendon) == (target.digit, target.tendon) for t in own):
            desk.withdraw(target, fields, scene.sentence.i)


def _the_only_one(scene: Scene) -> Group | None:
    """Return the tendon behind 'only' that the verb follows: 'only the FDP had', 'the FDP alone was given'."""
    for group in (g for g in scene.setting.groups if g.tendons and not (g.reference or g.every)):
        lead = scene.words(max(scene.sentence.i, group.i - 2), group.i)
        behind = scene.words(group.j, group.j + 3)
        alone = behind[:1] in (["alone"], ["only"])
        if (alone or not _ONLY.isdisjoint(lead)) and not _HAD.isdisjoint(behind) and scene.told(group.i):
            return group
    return None


def _fields(scene: Scene) -> tuple[str, ...]:
    """Return the fields that a sentence names: all of the core, or its bites and locks alone, or the outer suture."""
    core = bool(scene.of("strandword", "stitch"))
    outer = bool(scene.of("pattern")) or any(m.value == "peripheral" for m in scene.of("role"))
    bites = ("purchase_mm",) if scene.of("bite") or any(q.unit == "mm" for q in scene.quantities) else ()
    locks = () if _LOCKS.isdisjoint(scene.said) else ("hold", "lock_mm")
    return (*(_CORE if core else (*bites, *locks)), *(_PERIPHERAL if outer else ()))
