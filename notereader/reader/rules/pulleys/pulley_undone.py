"""Pulleys whose repair did not last the operation: 'A2 was repaired, then taken down again'."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_UNDONE = word_list("pulleys", "undone")
_UNDONE_IN_TWO = frozenset(tuple(words.split()) for words in word_list("pulleys", "undone_in_two"))
_NEW_ONE = word_list("pulleys", "redone")
_DENIALS = frozenset(["not", "never", "nothing", "neither"])
_LEADS = frozenset(["it", "this", "that", "they", "both", "these", "the"])
_NEAR = 4  # words


def undone(scene: Scene, m: Mention) -> bool:
    """Tell whether the sentence goes on to undo a repair: 'repaired with 6-0, then reopened', 'repair was reversed'."""
    others = [g.i for g in scene.setting.groups if g.digits and g.i > m.j]
    others += [other.i for other in scene.of("pulley") if other.i > m.j]
    return _undoing(scene.words(m.j, min(others, default=scene.sentence.j)))


def undone_next(desk: Desk, scene: Scene) -> None:
    """Take back a pulley's repair that the next sentence undoes: 'This blocked the glide, so it was taken down'."""
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if not desk.last_pulley_named or _LEADS.isdisjoint(words[:_NEAR]) or not _undoing(words):
        return
    if any(g.tendons for g in scene.setting.groups) or scene.of("role", "structure", "knotword"):
        return
    told = [f for f in desk.laid("finding") if f.value == "repaired"]
    gone = [f for f in told if any(f.entry == (d, name, None) for name, ds in desk.last_pulleys for d in ds)]
    for finding in gone:
        desk.take_back("pulleys", finding.entry, "finding", scene.sentence.i)


def stitches_gave_way(desk: Desk, scene: Scene) -> bool:
    """'Correction: oblique pulley: the stitches tore out and were removed': the repair told of before did not last.

    RETURNS: whether a sentence says so, and then tells nothing else of the pulley.
    """
    words = scene.words(scene.sentence.i, scene.sentence.j)
    names = {m.value for m in scene.of("pulley") if scene.told(m.i)}
    if not names or _STITCHES.isdisjoint(words) or not _undoing(words):
        return False
    digits = {d for g in scene.setting.groups for d in g.digits}
    told = [f for f in desk.laid("finding") if f.value == "repaired"]
    gone = [f for f in told if f.entry[1] in names and (not digits or f.entry[0] in digits)]
    for finding in gone:
        desk.take_back("pulleys", finding.entry, "finding", scene.sentence.i)
    return bool(gone)


_STITCHES = frozenset(["stitch", "stitches", "suture", "sutures"])


def _undoing(words: list[str]) -> bool:
    at = next((k for k, word in enumerate(words) if word in _UNDONE), None)
    pairs = list(pairwise(words))
    at = at if at is not None else next((k for k, pair in enumerate(pairs) if pair in _UNDONE_IN_TWO), None)
    if at is None or not _DENIALS.isdisjoint(words[max(0, at - _NEAR) : at]):
        return False
    rest = words[at + 2 :]
    return _NEW_ONE.isdisjoint(rest[rest[:1] == ["again"] :])
