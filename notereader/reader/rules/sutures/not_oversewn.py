"""A repair with no suture round it, told by the verb: 'the repair was not oversewn', 'we did not oversew anything'."""

from notereader.reader.desk import Desk
from notereader.reader.rules.sutures.no_peripheral import lay_none
from notereader.reader.rules.sutures.roles import CORE, TENDON
from notereader.reader.scene import Scene

_VERBS = frozenset(["oversew", "oversewn", "oversewed"])
_DENIED = frozenset(["not", "nothing", "never", "didn't", "wasn't"])
_OTHERS = frozenset(["stump", "stumps", "pulley", "sheath", "skin", "nerve", "artery", "vein", "bone", "hole", "graft"])
_OTHER_KINDS = ("pulley", "pulleys", "structure", "sided", "bundle", "anynerve", "anyartery", "slip")
_LEAD = 4  # words


def not_oversewn(desk: Desk, scene: Scene) -> None:
    """Lay down that what was worked on last has no peripheral suture."""
    if _VERBS.isdisjoint(scene.said) or not _OTHERS.isdisjoint(scene.said) or desk.topic not in (CORE, TENDON):
        return
    if any(scene.of(kind) for kind in _OTHER_KINDS):
        return
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j):
        if words[k] not in _VERBS or not scene.told(k):
            continue
        lead = scene.words(max(scene.sentence.i, k - _LEAD), k)
        if not _DENIED.isdisjoint(lead) and "only" not in lead:
            lay_none(desk, scene, k, k + 1)
