"""What is said of 'the two divided profundi' or 'the completely divided tendons' alone."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_WHOLLY = word_list("counts", "wholly")


def attributive(scene: Scene, mention: Mention) -> bool:
    """'The ends of the two completely divided profundus tendons': which tendons are meant, not what became of them."""
    lead = scene.words(max(scene.sentence.i, mention.i - 2), mention.i)
    counted = lead[-1:] != [] and count_of(lead[-1]) > 1 and lead[:1] in (["the"], ["of"], ["these"])
    behind = any(0 <= g.i - mention.j <= 1 for g in scene.setting.groups)
    return counted and (behind or scene.next_word(mention.j) in ("tendon", "tendons", "cuts", "ones"))


def which(scene: Scene, mention: Mention) -> bool:
    """'The divided FDP tendons received four strands': says which of several are meant, the plural right behind it."""
    group = next((g for g in scene.setting.groups if 0 <= g.i - mention.j <= 1 and g.tendons and not g.digits), None)
    if scene.word_before(mention.i) != "the" or group is None:
        return False
    return not _PLURAL.isdisjoint(scene.words(group.i, group.j + 1))


_PLURAL = frozenset(["tendons", "profundi", "fdps", "fdss", "superficiales", "flexors", "sublimi"])


def of_the_parted(desk: Desk, scene: Scene, targets: list[Target]) -> list[Target]:
    """Drop the partly cut tendons where a sentence speaks of those cut through, or of as many as were cut through."""
    for mention in (m for m in scene.of("extent") if m.value == "complete"):
        behind = (g for g in scene.setting.groups if g.j > mention.j >= g.i - 1 and (g.tendons or g.generic))
        group = next(behind, None)
        if group is None or group.digits:
            continue
        before = scene.word_before(mention.i)
        kinds = {m.value for m in scene.of("tendon") if 0 <= m.i - mention.j <= 1} or set(group.tendons)
        meant = [t for t in targets if not kinds or t.tendon in kinds]
        through = [t for t in meant if desk.extents.get(t) == "complete"]
        wholly = before == "the" and (scene.page.words[mention.i] in _WHOLLY or (which(scene, mention) and through[1:]))
        if through and (wholly or (2 if before == "both" else count_of(before)) == len(through)):
            named = {d for g in scene.setting.groups for d in g.digits}
            partly = {t for t in meant if desk.extents.get(t) == "partial" and t.digit not in named}
            targets = [t for t in targets if t not in partly]
    return targets


def of_those_cut_through(desk: Desk, scene: Scene, targets: list[Target]) -> list[Target]:
    """'FDP of both fingers severed. FDS of the ring cut a quarter way across. The ends were crushed.'

    What was cut in part has no ends: those that its paragraph or the one above told to be cut through are meant.
    """
    named = scene.setting.groups or scene.sentence.prefix or not _LABELS.isdisjoint(scene.said)
    if named or _PLURAL_ENDS.isdisjoint(scene.said) or len(targets) != 1 or desk.extents.get(targets[0]) != "partial":
        return targets
    told = [f for f in desk.laid("extent", before=scene.sentence.i) if f.value == "complete"]
    blocks = (scene.sentence.block, scene.sentence.block - 1)
    here = [f for f in told if desk.scene_at(f.order).sentence.block in blocks and f.group == "repairs"]
    through = [Target(*f.entry) for f in here]
    return list(dict.fromkeys(t for t in through if desk.extents.get(t) == "complete")) or targets


_LABELS = frozenset([":", "[", "]"])
_PLURAL_ENDS = frozenset(["ends", "stumps"])
