"""Strands meant or passed, and those that held: 'six strands planned, four achieved', 'six became four'."""

from notereader.reader.mentions.measures import count_of
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_HELD = word_list("sutures", "strands_held")
_LEAVING = word_list("sutures", "leaving")
_LEFT_TO = frozenset(tuple(words.split()) for words in word_list("sutures", "left_to"))
_ONLY = frozenset(["only", "just", "a", "us", "it", "me"])
_STRANDS = frozenset(["strand", "strands", "core"])
_STAYED = frozenset(["remained", "stayed", "survived"])
_AFTER = frozenset(["after", "when", "once"])
_CLOSES = frozenset(["", ".", ",", ";", ")"])
_BEHIND = _CLOSES | _AFTER | {"as", "at", "in", "of", "because", "across", "intact", "holding", "crossing"}
_MOST = 8
_LEADS = _LEAVING | {lead[0] for lead in _LEFT_TO}

Count = tuple[int, int, int]  # how many, words i to j


def that_held(scene: Scene) -> Count | None:
    """Return how many strands a sentence says there are of the more that it names before, None where it says no such.

    'Of the six strands two pulled through, leaving four'; but 'two placed first, four in all' tells of no fewer.
    """
    if (_HELD | _LEADS).isdisjoint(scene.said):
        return None
    words, last = scene.page.words, scene.sentence.j
    named = scene.of("strandword")
    for k in range(scene.sentence.i + 2, last):
        count, j = count_of(words[k]), k + 1
        while j < last and words[j] in _STRANDS | {"-"}:
            j += 1
        if not 1 <= count <= _MOST or not scene.told(k):
            continue
        verb = scene.next_word(j) in _HELD and scene.next_word(j + 1) in _CLOSES
        left = _is_left(scene, k, j)
        before = [count_of(w) for m in named if m.j <= k for w in scene.words(max(scene.sentence.i, m.i - 3), m.i)]
        if scene.next_word(j) in _STAYED and scene.next_word(j + 1) in _AFTER and j > k + 1:
            return count, k, j  # 'four strands remained after two had cut out'
        brought_down = (
            left and j > k + 1 and _lead(scene, k) in _LEFT_TO
        )  # 'Reduced to six strands after a loop snapped'
        if brought_down or ((verb or left) and any(count < n <= 2 * _MOST for n in before)):
            return count, k, j
    return None


def _is_left(scene: Scene, k: int, j: int) -> bool:
    """'Leaving four', 'became only four', 'was reduced to four strands': whether words k to j count what is left."""
    lead = _lead(scene, k)
    led = lead in _LEFT_TO or not _LEAVING.isdisjoint(lead[-1:])
    return led and (j > k + 1 or scene.next_word(j) in _BEHIND)


def _lead(scene: Scene, k: int) -> tuple[str, ...]:
    """Return the two words that lead to the count at word k: 'was reduced to [only a] four-strand repair'."""
    while k > scene.sentence.i and scene.page.words[k - 1] in _ONLY:
        k -= 1
    return tuple(scene.words(max(scene.sentence.i, k - 2), k))


def left_of_those_before(scene: Scene) -> Count | None:
    """'Two broke, leaving four', 'Six became four': the count left where the sentence before told the strands."""
    broken = not _BROKE.isdisjoint(scene.said)
    if _LEADS.isdisjoint(scene.said) and not broken:
        return None
    for k in range(scene.sentence.i + 1, scene.sentence.j):
        count = count_of(scene.page.words[k])
        if 1 <= count <= _MOST and scene.told(k):
            stays = broken and (scene.next_word(k + 1) in _STAY or scene.words(k + 1, k + 3) in _ARE_LEFT)
            if stays or _is_left(scene, k, k + 1):
                return count, k, k + 1
    return None


_BROKE = word_list("sutures", "broke") | word_list("sutures", "pulled")
_STAY = _HELD | {"remain", "remains", "cross"}
_ARE_LEFT = (["are", "left"], ["were", "left"], ["are", "intact"])
