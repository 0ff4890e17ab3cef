"""A second strand count that a sentence sets against the first, without its noun: 'I counted four, the nurse two'.

Both are laid down: the tendon then has the lower one, with the other beside it.
"""

from notereader.reader.mentions.measures import count_of
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_COUNTERS = word_list("sutures", "counters")
_COUNTED = frozenset(["counted", "counts", "saw", "found", "wrote", "writes", "says", "said", "has", "only", "but"])
_ARTICLES = frozenset(["a", "an", "the"])
_IN_FACT = (["in", "fact"], ["in", "truth"], ["in", "reality"])
_BOTH_ENDS = {"proximally", "distally"}
_MARKS = frozenset([",", "-", ".", ";", ":", "("])
_CORRECTING = frozenset(["no", "sorry", "correction", "rather"])
_TAKEN_BACK = 2  # words: 'sorry no'
_CLOSES = frozenset(["", ".", ",", ";", ")", "?", "-"])
_NEAR = 4  # words
_USUAL = (2, 4, 6, 8)

Count = tuple[int, int, int]  # how many, words i to j


def other_counts(scene: Scene, counts: list[Count]) -> list[Count]:
    """Return the count that stands against the only one of a sentence."""
    if len(counts) != 1:
        return []
    _, i, j = counts[0]
    led = _or_before(scene, i)
    return led or [c for k in range(j, scene.sentence.j) for c in _count_by_another(scene, j, k)][:1]


def _or_before(scene: Scene, i: int) -> list[Count]:
    """'A two- or a four-strand repair', 'two or perhaps four strands', of which one is doubted."""
    k = i - 1
    while k > scene.sentence.i and scene.page.words[k] in _ARTICLES | {"perhaps", "maybe", "possibly"}:
        k -= 1
    if scene.page.words[k] != "or":
        return []
    k -= 1 + (scene.word_before(k) == "-")
    count = _usual(scene, k)
    return [(count, k, k + 1)] if count else []


def _count_by_another(scene: Scene, j: int, k: int) -> list[Count]:
    """'..., the nurse only two', '(the registrar wrote two)', '..., I counted two', '..., or was it four'."""
    count = _usual(scene, k)
    if count and {scene.next_word(j), scene.next_word(k + 1)} == _BOTH_ENDS:
        return [(count, k, k + 1)]  # 'four strands distally, two proximally'
    if not count or (scene.next_word(k + 1) not in _CLOSES and scene.words(k + 1, k + 3) not in _IN_FACT):
        return []
    lead = scene.words(max(j, k - _NEAR), k)
    by_whom = not _COUNTERS.isdisjoint(lead) and (lead[-1] in _COUNTED or lead[-1] in _COUNTERS)
    by_whom = by_whom or scene.words(k + 1, k + 3) in _IN_FACT
    said = [w for w in scene.words(j, k) if w not in _MARKS]
    put_right = 0 < len(said) <= _TAKEN_BACK and said[0] in _CORRECTING  # 'six strands, no, four'
    return [(count, k, k + 1)] if by_whom or put_right or lead[-3:] == ["or", "was", "it"] else []


def _usual(scene: Scene, k: int) -> int:
    count = int(count_of(scene.page.words[k]) or 0) if scene.sentence.i <= k < scene.sentence.j else 0
    return count if count in _USUAL else 0
