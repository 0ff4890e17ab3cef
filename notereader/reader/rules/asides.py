"""Asides that only point back to what is told of: 'A1, against which the suture knocked, is incised'.

What such an aside names takes over nothing: the verb behind it is of what stands before it.
"""

from notereader.reader.scene import Scene

_POINTS_BACK = frozenset(["which", "where"])
_LEADS = frozenset(["against", "on", "upon", "under", "beneath", "through", "at", "in", "into", "to", "past", "with"])
_GOES_ON = frozenset(["was", "were", "is", "are", "had", "has", "needed", "required", "then"])
_LONGEST = 10  # words


def in_an_aside(scene: Scene, k: int) -> bool:
    """Tell whether word k stands between ', on which' and the comma with 'was' behind it."""
    return k in aside_words(scene)


def aside_words(scene: Scene) -> frozenset[int]:
    """Return the words of a sentence's asides: ', against which the suture knocked,'."""
    if _POINTS_BACK.isdisjoint(scene.said):
        return frozenset()
    words, first, last = scene.page.words, scene.sentence.i, scene.sentence.j
    found: set[int] = set()
    for k in range(first + 2, last):
        if words[k] not in _POINTS_BACK:
            continue
        led = k - (words[k - 1] in _LEADS)
        closed = next((n for n in range(k, min(k + _LONGEST, last)) if words[n] == ","), None)
        if words[led - 1] == "," and closed is not None and words[closed + 1] in _GOES_ON and _has_a_subject(words, k):
            found |= set(range(led - 1, closed + 1))
    return frozenset(found)


def _has_a_subject(words: list[str], k: int) -> bool:
    """'On which the suture caught', but not 'which was torn': that is told of what stands before it."""
    return words[k + 1] in _OPENS_SUBJECT


_OPENS_SUBJECT = frozenset(["the", "a", "an", "its", "their", "this", "both", "it", "they"])
