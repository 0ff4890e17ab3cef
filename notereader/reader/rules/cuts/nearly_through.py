"""What was cut through but for a rest: 'cut across apart from a few dorsal fibres', 'divided, except one fascicle'."""

from notereader.reader.page import Mention
from notereader.reader.scene import Scene

_TO_FIBRES = 8  # words: 'apart from a few dorsal fibres'
_BUT_FOR = (["apart", "from"], ["but", "for"], ["other", "than"])
_FIBRES = frozenset(
    [
        "fibres",
        "fibers",
        "fibre",
        "fiber",
        "strand",
        "strands",
        "thread",
        "threads",
        "filaments",
        "wisp",
        "strip",
        "fascicle",
        "fascicles",
    ]
)


def but_for_fibres(scene: Scene, mention: Mention) -> Mention | None:
    """'Cut across apart from a few dorsal fibres', 'severed but for a strand': what was cut nearly through, partly."""
    spared = mention.value == "complete" and spares_fibres(scene, mention.j)
    return Mention("extent", "partial", mention.i, mention.j) if spared else None


def spares_fibres(scene: Scene, k: int) -> bool:
    """Tell whether a rest of the fibres is excepted from a cut that is told before word k."""
    behind = scene.words(k, min(k + _TO_FIBRES, scene.sentence.j))
    for word in ("across", "through", ","):
        behind = behind[behind[:1] == [word] :]
    behind = behind[1:] if behind[:2] == ["all", "but"] else behind
    spared = behind[:2] in _BUT_FOR or behind[:1] in (["except"], ["save"], ["but"], ["bar"], ["barring"])
    return spared and not _FIBRES.isdisjoint(behind)
