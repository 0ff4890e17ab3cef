"""'1/4 torn, not touched': behind a cut 'untouched' says what was done, and not that the tendon is whole."""

from notereader.reader.page import Mention
from notereader.reader.scene import Scene

_WORDS = frozenset(["untouched", "touched", "undisturbed"])
_BETWEEN = frozenset(
    [
        *(",", ";", "-", "(", "and", "but", "so", "or", "it", "this", "was", "were", "is", "has", "had", "been", "be"),
        *("otherwise", "therefore", "thus", "left", "hence", "which", "deliberately", "of", "its", "width", "breadth"),
        *("thickness", "substance", "fibres", "fibers", "only", "edge", "cut", "torn", "frayed", "divided"),
    ]
)


def untouched_though_cut(scene: Scene, mention: Mention) -> bool:
    """'FDS 1/4 torn, not touched', 'a quarter cut and was left untouched': the cut is told right before it."""
    if scene.page.words[mention.j - 1] not in _WORDS:
        return False
    shares = [q.j for q in scene.quantities if q.unit == "%" and (q.high or 100) < 100]
    told = [*shares, *(m.j for m in scene.of("hurt", "fraction", "extent") if m.value != "intact")]
    before = max((j for j in told if j <= mention.i), default=-1)
    return before >= 0 and _BETWEEN.issuperset(scene.words(before, mention.i))
