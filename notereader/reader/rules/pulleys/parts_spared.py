"""What a deed left of a pulley: 'all but 3 mm of A2 was released', 'A4 was divided save for its distal third'."""

from notereader.reader.mentions.measures import NUMBER_WORDS
from notereader.reader.rules.pulleys.pulley_names import PARTS
from notereader.reader.scene import Scene

_EXCEPTING = frozenset(["but", "save", "except", "bar", "from"])
_LEADS = frozenset(["for", "the", "its", "a", "an", "about", "some", "last", "most", "final", "only", "-", "~"])
_OPENED = frozenset(["vented", "released", "excised", "trimmed"])
_FAR = 7  # words
_CLOSES = frozenset([".", ";"])


def spared(scene: Scene, k: int) -> bool:
    """Tell whether a share or part at word k is what was left out of the deed: 'divided except for the distal 4 mm'.

    Not in 'A2 was preserved save for its distal 3 mm, which was opened', where the exception is what was opened.
    """
    if scene.said.isdisjoint(_EXCEPTING):
        return False
    first, at = max(scene.sentence.i, k - _FAR), k - 1
    words = scene.page.words
    while at > first and (words[at] in _LEADS or words[at] in PARTS or _counts(words[at])):
        at -= 1
    if words[at] not in _EXCEPTING or (words[at] == "from" and words[at - 1] not in ("apart", "aside")):
        return False
    if words[at] == "but" and words[at - 1] == "all":
        return not _kept_next(scene, k)
    told = [m for m in scene.of("opened") if m.j <= at]
    said_after = words[at] != "but" or words[at + 1] == "for"
    clause = bool(told) and _CLOSES.isdisjoint(scene.words(told[-1].j, at))
    return said_after and clause and told[-1].value in _OPENED


def _counts(word: str) -> bool:
    return word[:1].isdecimal() or word in NUMBER_WORDS


def _kept_next(scene: Scene, k: int) -> bool:
    """'All but the distal 3 mm of A2 was kept': the rest was kept, so what is left out was not."""
    told = [m for m in scene.of("opened") if m.i > k]
    return bool(told) and told[0].value == "intact"
