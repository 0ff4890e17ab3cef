"""Strand counts that a note puts right: 'for six strands read four', 'not six strands but four'."""

from notereader.reader.measures import count_of
from notereader.reader.scene import Scene

_QUOTES = frozenset(["'", '"', "\u2018", "\u2019", "\u201c", "\u201d"])
_WROTE = frozenset(["wrote", "written", "said", "typed", "dictated", "stated", "put", "recorded", "reads", "says"])
_LEADS = frozenset(
    [";", ",", "-", ":", ".", "but", "and", "it", "there", "they", "was", "were", "is", "are", "in", "fact"]
)
_FAR = 6  # words
_NEAR = 4  # words

Count = tuple[int, int, int]  # how many, words i to j


def put_right(scene: Scene, count: Count) -> Count:
    """Return the count that takes the place of one, else the count itself."""
    _, i, j = count
    i -= scene.word_before(i) in _QUOTES
    j += scene.next_word(j) in _QUOTES
    if scene.word_before(i) == "for" and scene.next_word(j) == "read":
        k = j + 1 + (scene.next_word(j + 1) in _QUOTES)
    elif scene.word_before(i) == "not" and scene.next_word(j) == "but":
        k = j + 1  # 'not six strands but four'
    elif not _WROTE.isdisjoint(scene.words(max(scene.sentence.i, i - _NEAR), i)):
        k = j  # 'I wrote six strands; it was four'
        while k < min(j + _FAR, scene.sentence.j) and scene.page.words[k] in _LEADS:
            k += 1
        k = k if k > j else scene.sentence.j
    else:
        return count
    instead = count_of(scene.next_word(k))
    closes = (
        scene.next_word(k + 1) in ("", ".", ",", ";", ")", "strands", "strand", "-")
        or scene.next_word(k + 1) in _QUOTES
    )
    return (int(instead), k, k + 1) if instead and closes else count
