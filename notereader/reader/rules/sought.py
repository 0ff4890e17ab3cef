"""What was looked for and not found: 'I looked for tension with the wrist straight. None.'"""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_LOOKING = word_list("quality", "looking")
_NOUGHT = frozenset(["none", "nothing", "nil"])
_ANSWER = _NOUGHT | word_list("quality", "sought_answers")
_FAR = 6  # words


def sought_in_vain(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """Tell whether the thing named was looked for and the words behind answer that none was there."""
    if not _looked_for(scene, mention):
        return False
    last = scene.sentence.j - (scene.page.words[scene.sentence.j - 1] == ".")
    if scene.words(last - 2, last)[:1] in ([":"], ["-"]) and scene.page.words[last - 1] in _NOUGHT:
        return True
    after = desk.scene_after(scene)
    if after is None or after.sentence.block != scene.sentence.block:
        return False
    said = after.words(after.sentence.i, after.sentence.j)
    return not _NOUGHT.isdisjoint(said) and _ANSWER.issuperset(said) and after.told(after.sentence.i)


def _looked_for(scene: Scene, mention: Mention) -> bool:
    lead = scene.words(max(scene.sentence.i, mention.i - _FAR), mention.i)
    behind = scene.words(mention.j, min(mention.j + 4, scene.sentence.j))
    ahead = any(a in _LOOKING and b == "for" for a, b in pairwise([*lead, ""])) or "sought" in lead
    later = behind[:1] in (["was"], ["were"]) and (("looked", "for") in pairwise(behind) or "sought" in behind)
    return (ahead or later) and "not" not in [*lead, *behind] and "never" not in lead
