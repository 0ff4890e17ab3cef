"""'I cleared the FDP and FDS of the four fingers and the FPL. All nine were intact': whole, if as many were named."""

from itertools import pairwise

from notereader.reader.desk import HURT_KINDS, Desk
from notereader.reader.groups import DIGITS, Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.needs import needs
from notereader.reader.page import Mention
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_BETWEEN = word_list("tendons", "between_count_and_whole")
_EXCEPTING = word_list("tendons", "excepting")
_FLEXORS = frozenset(["flexor", "flexors", "digital"])
_PARTS = ("pulley", "pulleys", "structure", "sided", "bundle", "anynerve", "anyartery", "bone")
_NINE = (*(Target(d, t) for d in DIGITS[1:] for t in ("FDP", "FDS")), Target("thumb", "FPL"))
_FEWEST = 3  # 'both were intact' is read where two are named
_FAR = 12  # words between the count and what is told of it


@needs(kinds=["extent"], words=["all"])
def counted_whole(desk: Desk, scene: Scene) -> None:
    """Find tendons told to be whole by their count alone, where exactly so many were named right before."""
    if not scene.kinds.isdisjoint(_PARTS) or not _EXCEPTING.isdisjoint(scene.said):
        return
    for whole in (m for m in scene.of("extent") if m.value == "intact" and scene.told(m.i)):
        at = _count_before(scene, whole)
        if at < 0 or scene.negated(whole.i, whole.j):
            continue
        targets = _meant(desk, scene, at, count_of(scene.page.words[at + 1]))
        if any(desk.extents.get(t) in HURT_KINDS or t in desk.hurt for t in targets):
            continue
        for target in targets:
            desk.tendon(scene, target, "extent", "intact", [(at, whole.j)], "all that were counted are whole")


def _count_before(scene: Scene, whole: Mention) -> int:
    """Return the word 'all' of 'all nine of them were found intact', or -1."""
    words = scene.page.words
    for k in range(whole.i - 2, max(scene.sentence.i, whole.i - _FAR) - 1, -1):
        if words[k] == "all" and count_of(words[k + 1]) >= _FEWEST:
            return k if _BETWEEN.issuperset(words[k + 2 : whole.i]) else -1
    return -1


def _meant(desk: Desk, scene: Scene, at: int, count: int) -> tuple[Target, ...]:
    """Return the tendons named before word `at`, in the sentence or the one before, if they are as many as counted."""
    named = _named_in(scene, at)
    before = desk.scene_before(scene)
    if not named and before is not None and before.sentence.block == scene.sentence.block:
        named = _named_in(before, before.sentence.j) if before.kinds.isdisjoint(_PARTS) else ()
    if len(named) == count:
        return named
    said = scene.words(scene.sentence.i, scene.sentence.j)
    if before is not None and before.sentence.block == scene.sentence.block:
        said = [*before.words(before.sentence.i, before.sentence.j), *said]
    flexors = any(count_of(a) == len(_NINE) and b in _FLEXORS for a, b in pairwise(said))
    return _NINE if count == len(_NINE) and not named and flexors else ()


def _named_in(scene: Scene, end: int) -> tuple[Target, ...]:
    groups = [g for g in scene.setting.groups if g.tendons and g.j <= end]
    if any(g.reference or g.excepted for g in groups):
        return ()
    found = (t for g in groups for t in group_targets(scene, g))
    return tuple(dict.fromkeys(t for t in found if t.slip is None and (t.digit or t.tendon not in ("FDP", "FDS"))))
