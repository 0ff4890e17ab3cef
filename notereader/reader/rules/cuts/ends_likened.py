"""Ends told by those of another finger: 'INDEX FDP two thirds through. Ends same as thumb.'"""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.scene import Scene

_ENDS = frozenset(["ends", "stumps", "edges"])
_SAME = (["same", "as"], ["the", "same"], ["like", "the"], ["as", "in"], ["as", "for"], ["likewise", "as"])
_SMALL = frozenset(["same", "as", "the", "like", "in", "for", "those", "of", "were", "was", "on", "likewise", ",", ":"])
_DEEP = ("FDP", "FPL")
RULE = "ends as those of another finger"


def ends_likened(desk: Desk, scene: Scene) -> None:
    """Give the tendon spoken of the ends that were told of the finger it is likened to."""
    if _ENDS.isdisjoint(scene.said) or scene.of("ends"):
        return
    words = scene.page.words
    for k in range(scene.sentence.i, scene.sentence.j - 1):
        alike = any(words[k + 1 : k + 3] == phrase for phrase in _SAME)
        if words[k] not in _ENDS or not alike or not scene.told(k):
            continue
        like = next((g for g in scene.setting.groups if g.digits and g.i > k), None)
        if like is None or len(like.digits) != 1 or not _SMALL.issuperset(scene.words(k + 1, like.i)):
            return
        source = next(
            (f for t in _DEEP for f in desk.told_of("repairs", (like.digits[0], t, None)) if f.field == "ends"), None
        )
        for target in _spoken_of(desk, scene, k, like.digits[0]) if source is not None else []:
            desk.tendon(scene, target, "ends", source.value if source else "", [(k, like.j)], RULE)


def _spoken_of(desk: Desk, scene: Scene, k: int, but: str) -> list[Target]:
    """Return the hurt deep tendon named last before word k, of another finger than the one likened to."""
    here = [d for g in scene.setting.groups if g.j <= k for d in g.digits]
    before = desk.scene_before(scene)
    digits = here or ([d for g in before.setting.groups for d in g.digits] if before is not None else [])
    found = [Target(d, t) for d in dict.fromkeys(digits) for t in _DEEP if d != but]
    return [t for t in found if desk.is_cut(t)]
