"""Lists of tendons under a line that says how far they were cut: 'Divided completely -', then a line for each."""

from notereader.reader.desk import Desk
from notereader.reader.page import Break, Mention
from notereader.reader.scene import Scene, group_targets

_NAMES = ("tendon", "digit", "structure", "sided", "anynerve", "anyartery", "bundle", "quantifier", "plural", "generic")
_JOINS = frozenset([",", "and", "+", "&", "/", "to", "of", "the", "-", "*", ".", "both", "all", "four", "three", "two"])
_MOST_LINES = 8
_LONGEST_HEAD = 4  # words


def listed_below(desk: Desk, scene: Scene) -> None:
    """Lay down, for the tendons that a line names and nothing more, what the line at the head of its list says."""
    head = _head_of(desk, scene) if not scene.header and _only_names(scene) else None
    if head is None:
        return
    for group in (g for g in scene.setting.groups if g.tendons and not (g.reference or g.excepted)):
        proof = [(group.i, group.j), (head.i, head.j)]  # the name, and what its list says
        for target in group_targets(scene, group):
            desk.tendon(scene, target, "extent", head.value, proof, f"extent {head.value}")


def _head_of(desk: Desk, scene: Scene) -> Mention | None:
    """Return what the head of the list says: the nearest line above that is no line of names."""
    before: Scene | None = scene
    for _ in range(_MOST_LINES):
        at = before.sentence.i if before is not None else 0
        before = desk.scene_before(before) if before is not None else None
        if before is None or not Break.LINE <= scene.page.breaks[at] < Break.BLANK:
            return None
        if not _only_names(before):
            break
    if before is None or before.sentence.j - before.sentence.i > _LONGEST_HEAD + 1 or before.setting.groups:
        return None
    told = [m for m in before.of("extent") if before.told(m.i)]
    closes = scene.page.words[before.sentence.j - 1] in (":", "-")
    return told[0] if closes and len(told) == 1 and told[0].value in ("complete", "intact") else None


def _only_names(scene: Scene) -> bool:
    named = {k for m in scene.of(*_NAMES) for k in range(m.i, m.j)}
    named |= {k for g in scene.setting.groups for k in range(g.i, g.j)}
    words = scene.page.words
    return bool(named) and all(k in named or words[k] in _JOINS for k in range(scene.sentence.i, scene.sentence.j))
