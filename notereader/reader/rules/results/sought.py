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
    if _and_none_found(scene, mention, last):
        return True
    if scene.words(last - 2, last)[:1] in ([":"], ["-"]) and scene.page.words[last - 1] in _NOUGHT:
        return True
    after = desk.scene_after(scene)
    if after is None or after.sentence.block != scene.sentence.block:
        return False
    said = after.words(after.sentence.i, after.sentence.j)
    return not _NOUGHT.isdisjoint(said) and _ANSWER.issuperset(said) and after.told(after.sentence.i)


def _and_none_found(scene: Scene, mention: Mention, last: int) -> bool:
    """'A gap was looked for on extension and none found', 'I looked for a gap and found none'."""
    behind = scene.words(mention.j, min(mention.j + _FAR_ANSWER, last))
    k = next((n for n, word in enumerate(behind) if word in ("and", "but")), len(behind))
    stop = next((n for n in range(k, len(behind)) if behind[n] in _STOPS), len(behind))
    answer = [word for word in behind[k + 1 : stop] if word not in ("was", "were", "i", "we", "there", "be")]
    return answer in _FOUND_NONE


_FOUND_NONE = (
    *([nought, verb] for nought in ("none", "nothing") for verb in ("found", "seen", "noted")),
    *([verb, nought] for nought in ("none", "nothing") for verb in ("found", "saw", "had")),
    *([denied, verb] for denied in ("not", "never") for verb in ("found", "seen")),
    ["none"],
)
_FAR_ANSWER = 14  # words
_STOPS = frozenset([",", ";", ".", ":", "("])


def _looked_for(scene: Scene, mention: Mention) -> bool:
    lead = scene.words(max(scene.sentence.i, mention.i - _FAR), mention.i)
    behind = scene.words(mention.j, min(mention.j + 4, scene.sentence.j))
    ahead = any(a in _LOOKING and b == "for" for a, b in pairwise([*lead, ""])) or "sought" in lead
    later = behind[:1] in (["was"], ["were"]) and (("looked", "for") in pairwise(behind) or "sought" in behind)
    denied = "not" in lead or "never" in lead or "not" in behind[:3]
    return (ahead or later) and not denied
