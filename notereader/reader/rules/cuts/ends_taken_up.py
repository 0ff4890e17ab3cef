"""Ends taken up by 'they': 'The casualty officer had described clean ends. I found them crushed'."""

from notereader.reader.desk import Desk
from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_THEM = frozenset(["they", "them", "these", "both"])
_LINKS = word_list("quality", "ends_links")
_NOUNS = frozenset(["ends", "stumps"])
_NEAR = 6  # words


def ends_taken_up(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """Tell whether a state is said of 'they' or 'them', which are the ends of the same sentence or the one before."""
    words, first = scene.page.words, scene.part(mention.i)[0]
    they = next((k for k in range(mention.i - 1, max(first, mention.i - _NEAR) - 1, -1) if words[k] in _THEM), -1)
    if they < 0 or not all(w in _LINKS for w in words[they + 1 : mention.i]):
        return False
    if any(they > g.i >= first for g in scene.setting.groups) or _names_others(scene, they):
        return False
    if not _NOUNS.isdisjoint(words[scene.sentence.i : they]):
        return True
    before = desk.scene_before(scene)
    if before is None or before.sentence.block != scene.sentence.block or _names_others(before, before.sentence.j):
        return False
    return not _NOUNS.isdisjoint(before.said)


def of_other_ends(desk: Desk, scene: Scene) -> bool:
    """'The ends of the ulnar digital nerve were found. They were crushed.': tell whether 'they' are no tendon's."""
    if scene.page.words[scene.sentence.i] not in _THEM or any(g.tendons for g in scene.setting.groups):
        return False
    before = desk.scene_before(scene)
    if before is None or before.sentence.block != scene.sentence.block or any(g.tendons for g in before.setting.groups):
        return False
    return not _NOUNS.isdisjoint(before.said) and _names_others(before, before.sentence.j)


def _names_others(scene: Scene, k: int) -> bool:
    """Tell whether what has ends or edges of its own is named before word k: nerves, vessels, bones."""
    return any(m.kind in ("structure", "sided", "bundle", "bone", "pulley") and m.i < k for m in scene.mentions)
