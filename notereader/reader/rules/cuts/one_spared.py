"""'Of the four flexor tendons three were severed, the FDS of the ring alone having escaped': all but the one named."""

from notereader.reader.groups import Group, Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Mention
from notereader.reader.scene import Scene, group_targets

_FLEXORS = ("FDP", "FDS")
_FAR = 8  # words: 'three of the four flexor tendons proved to have been'
_REPAIRS = frozenset(["repair", "repairs", "sutures"])
_ALONE = frozenset(["alone", "only", "excepted"])


def all_but_the_spared(scene: Scene, mention: Mention) -> list[Target]:
    """Return the flexors of the fingers spoken of but the one that alone was spared, where so many were told cut."""
    groups = (g for g in scene.setting.groups if g.generic == "all" and g.j <= mention.i)
    every = next((g for g in groups if _REPAIRS.isdisjoint(scene.words(g.i, g.j))), None)
    spared = _spared(scene, mention) if every is not None and mention.value == "complete" else None
    if spared is None:
        return []
    fingers = [d for d in _fingers(scene) if d != "thumb"]
    flexors = [Target(d, t) for d in fingers for t in _FLEXORS]
    counted = [count_of(w) for w in scene.words(max(scene.sentence.i, mention.i - _FAR), mention.i)]
    one_less = len(flexors) - 1
    if one_less not in counted or spared not in flexors:
        return []
    return [t for t in flexors if t != spared]


def _spared(scene: Scene, mention: Mention) -> Target | None:
    """Return the one tendon named behind a cut of which 'alone' or 'only' is said."""
    told = [g for g in scene.setting.groups if g.i >= mention.j and g.tendons and g.digits and _is_alone(scene, g)]
    targets = group_targets(scene, told[0]) if len(told) == 1 else []
    return targets[0] if len(targets) == 1 else None


def _is_alone(scene: Scene, group: Group) -> bool:
    before = group.i - 1 - (scene.word_before(group.i) == "the")
    return scene.next_word(group.j) in _ALONE or scene.words(before, before + 1) == ["only"]


def _fingers(scene: Scene) -> tuple[str, ...]:
    """Return the fingers a sentence names without a tendon, else those spoken of, else all of the note."""
    named = [g.digits for g in scene.setting.groups if g.digits and not g.tendons]
    return named[0] if named else scene.setting.digits if len(scene.setting.digits) > 1 else scene.every_digit
