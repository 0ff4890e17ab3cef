"""Which tendons run through the carpal canal: 'no triggering in the canal' is said of none that runs beside it."""

from notereader.reader.groups import Target
from notereader.reader.scene import Scene

_BESIDE_IT = frozenset(["FCR", "FCU", "PL"])
_INTO = frozenset(["in", "inside", "within", "through", "under", "into"])
_NEAR = 7  # words


def of_the_canal(scene: Scene, j: int, targets: list[Target]) -> list[Target]:
    """Return without the flexors of the wrist those that words up to j, told of the canal, are said of."""
    behind = scene.words(j, min(j + _NEAR, scene.sentence.j))
    place = next((n for n, w in enumerate(behind) if w == "canal" or behind[n : n + 2] == ["carpal", "tunnel"]), None)
    if place is None or _INTO.isdisjoint([*scene.words(j - 1, j), *behind[:place]]):
        return targets
    return [t for t in targets if t.tendon not in _BESIDE_IT]
