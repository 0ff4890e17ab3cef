"""A piece taken off a tendon: 'the loose flap of the profundus was excised', 'I cut off a tag', 'strip removed'."""

from notereader.reader.page import Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_PIECES = word_list("tendons", "pieces")
_WAS = word_list("tendons", "was_taken_off")
_BESIDE = frozenset(["of", "on", "from", "along", "off", "at", "in"])
_ARTICLES = frozenset(["a", "an", "the", "this", "that", "its", "some", "few", "any", "one", "two", "of"])
_OFF = frozenset(["off", "away"])
_TAKES = frozenset(["cut", "taken", "took", "take", "taking", "cutting", "cleared", "nipped", "clipped"])
_FAR = 5  # words between a piece and its tendon, or between the deed and the piece: 'a few small loose'


def takes_piece_off(scene: Scene, mention: Mention) -> bool:
    """Tell whether what was cut away is a piece of a tendon cut in part, and not the tendon."""
    return _piece_before(scene, mention.i) or piece_behind(scene, mention.j)


def pieces_taken_off(scene: Scene) -> list[Mention]:
    """Return the words that say a piece was taken off, where no word for a deed says so: 'a tag was cut off'."""
    words, found = scene.page.words, []
    for k in range(scene.sentence.i, scene.sentence.j - 1) if not _OFF.isdisjoint(scene.said) else ():
        if words[k] not in _TAKES or any(d.i <= k < d.j for d in scene.of("deed")):
            continue
        off = next((n for n in range(k + 1, min(k + _FAR, scene.sentence.j)) if words[n] in _OFF), None)
        if off is None or not (k + 1 == off or piece_behind(scene, k + 1)):
            continue
        taken = Mention("deed", "trimmed", k, off + 1)
        if (takes_piece_off(scene, taken) or piece_behind(scene, k + 1)) and not _of_an_end(scene, k):
            found.append(taken)
    return found


def _piece_before(scene: Scene, i: int) -> bool:
    """'The loose flap (of the index profundus) was ...': the piece is what the deed is told of."""
    k = i - 1
    while k >= scene.sentence.i and scene.page.words[k] in _WAS:
        k -= 1
    lead = next((g for g in reversed(scene.setting.groups) if g.tendons and g.i < g.j and g.j == k + 1), None)
    if lead is None:
        return k >= scene.sentence.i and scene.page.words[k] in _PIECES
    before = scene.words(max(scene.sentence.i, lead.i - _FAR), lead.i)
    at = next((n for n in range(len(before) - 1, 0, -1) if before[n] in _BESIDE), None)
    return at is not None and before[at - 1] in _PIECES


def _of_an_end(scene: Scene, k: int) -> bool:
    """'The end was stringy and 2 mm of loose fibre was cut off': the end was trimmed, whatever came of its tendon."""
    first, _ = scene.part(k)
    length = any(q.unit == "mm" and first <= q.i < k for q in scene.quantities)
    return length or not _ENDS.isdisjoint(scene.words(scene.sentence.i, k))


_ENDS = frozenset(["end", "ends", "stump", "stumps"])


def piece_behind(scene: Scene, j: int) -> bool:
    """Tell whether a piece is what the words before j took off: '... a small loose tag'."""
    behind = scene.words(j, j + _FAR)
    noun = next((n for n, w in enumerate(behind) if w in _PIECES), None)
    if noun is None:
        return False
    between = behind[:noun]
    return all(w in _ARTICLES or w in _LIKE or w.endswith("ing") for w in between)


_LIKE = word_list("tendons", "like_a_piece")
