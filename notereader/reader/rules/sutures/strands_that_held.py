"""Strands meant or passed, and those that held: 'six strands planned, four achieved', 'four passed, two held'."""

from notereader.reader.mentions.measures import count_of
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_HELD = word_list("sutures", "strands_held")
_LEAVING = frozenset(["leaving", "leaves"])
_STRANDS = frozenset(["strand", "strands", "core"])
_STAYED = frozenset(["remained", "stayed", "survived"])
_AFTER = frozenset(["after", "when", "once"])
_CLOSES = frozenset(["", ".", ",", ";", ")"])
_MOST = 8

Count = tuple[int, int, int]  # how many, words i to j


def that_held(scene: Scene) -> Count | None:
    """Return how many strands a sentence says there are of the more that it names before, None where it says no such.

    'Of the six strands two pulled through, leaving four'; but 'two placed first, four in all' tells of no fewer.
    """
    if _HELD.isdisjoint(scene.said) and _LEAVING.isdisjoint(scene.said):
        return None
    words, last = scene.page.words, scene.sentence.j
    named = scene.of("strandword")
    for k in range(scene.sentence.i + 2, last):
        count, j = count_of(words[k]), k + 1
        while j < last and words[j] in _STRANDS:
            j += 1
        if not 1 <= count <= _MOST or not scene.told(k):
            continue
        verb = scene.next_word(j) in _HELD and scene.next_word(j + 1) in _CLOSES
        left = words[k - 1] in _LEAVING and (j > k + 1 or scene.next_word(j) in _CLOSES)
        before = [count_of(w) for m in named if m.j <= k for w in scene.words(max(scene.sentence.i, m.i - 3), m.i)]
        if scene.next_word(j) in _STAYED and scene.next_word(j + 1) in _AFTER and j > k + 1:
            return count, k, j  # 'four strands remained after two had cut out'
        if (verb or left) and any(count < n <= 2 * _MOST for n in before):
            return count, k, j
    return None
