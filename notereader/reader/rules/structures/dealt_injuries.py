"""A nerve cut and treated otherwise in each finger: 'cut and sewn in the index and cut and left in the middle'."""

from dataclasses import dataclass, field

from notereader.reader.page import Mention
from notereader.reader.rules.structures.injury_words import EXTENTS, TELLS_MOST, deed_said, extent_said
from notereader.reader.scene import Scene

_FEWEST = 2  # fingers told apart


@dataclass(slots=True)
class Share:
    """What is told of a structure in some fingers: the words of its extent and of what was done to it."""

    digits: tuple[str, ...] = ()
    extents: list[tuple[str, Mention]] = field(default_factory=list)
    deeds: list[tuple[str, Mention]] = field(default_factory=list)

    def facts(self) -> list[tuple[str, str, Mention]]:
        """Return the extent and the treatment that count, by the names of their fields."""
        extent = min(self.extents, key=lambda f: EXTENTS.index(f[0]), default=None)
        done = [f for f in self.deeds if not (f[0] == "left" and extent is not None and extent[0] == "intact")]
        deed = min(done, key=lambda f: TELLS_MOST.index(f[0]), default=None)
        named = (("extent", extent), ("treatment", deed))
        return [(name, *told) for name, told in named if told is not None]


def told_by_finger(scene: Scene, structure: str, words: list[Mention]) -> list[Share]:
    """Return what each finger closes; [] unless the words of every statement end with fingers of their own."""
    places = [g for g in scene.setting.groups if g.digits]
    plain = all(not (g.tendons or g.reference or g.excepted or g.every or g.generic) for g in places)
    told = [d for g in places for d in g.digits]
    if len(places) < _FEWEST or len(set(told)) < len(told) or not plain or len(places) < len(scene.setting.groups):
        return []
    shares: list[Share] = []
    first = scene.sentence.i
    for place in places:
        own = [m for m in words if first <= m.i < place.i]
        extents = [(value, m) for m in own if (value := extent_said(scene, structure, m))]
        deeds = [(value, m) for m in own if (value := deed_said(scene, structure, m))]
        if not (extents or deeds) or not _led(scene, place.i):
            return []
        shares.append(Share(place.digits, extents, deeds))
        first = place.j
    return shares if not any(m.i >= first for m in words) else []


def _led(scene: Scene, k: int) -> bool:
    return scene.words(k - 1, k) == ["in"] or scene.words(k - 2, k) == ["in", "the"]
