"""Runs of thread told of another thing: '..., and the sheath was closed with a running 6-0', 'A2: running 6-0'."""

from notereader.reader.page import Break
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_THINGS = frozenset(["sheath", "pulley", "nerve", "vessel", "skin", "other", "muscle", "drain"])
_OPENS = frozenset([",", ";", "and", "then", "&", "+", "while", "whereas", "before", "after", "until", "once"])
_OF_TENDONS = frozenset(["core", "peripheral", "tendon"])
_LEADS = frozenset(
    ["the", "a", "an", "its", "his", "her", "flexor", "tendon", "ulnar", "radial", "digital", "both", "palm", "palmar"]
)
_CLOSED = word_list("roles", "mended") | {"run", "oversewn", "sutures", "with", ":"}
_LONGEST_LEAD = 4  # words: 'the ulnar digital'
_SOON = 5  # words: 'pulley was then closed'

Span = tuple[int, int, str]


def patterns_of_things(scene: Scene, named: list[Span]) -> dict[int, str]:
    """Return whose the patterns of a sentence are that tell how another thing was closed: word and role of each.

    The thing opens a statement, and nothing of the tendon's stands between it and the pattern. So
    'four strands through a window in the sheath, with a running 6-0' tells of the tendon.
    """
    patterns = [i for i, _, role in named if role == "pattern"]
    found: dict[int, str] = {}
    for i, j, role in named if patterns else []:
        if role in _THINGS and (end := _end_of_statement(scene, named, i, j)):
            words = scene.page.words
            verb = next((k for k in range(j, min(j + _SOON, end)) if words[k] in _CLOSED), end)
            found |= {k: role for k in patterns if verb < k < end or k == j}
    return found


def _end_of_statement(scene: Scene, named: list[Span], i: int, j: int) -> int:
    """Return where the statement ends that the thing at words i to j opens, 0 where it opens none.

    'Sheath: closed, running 6-0' is all of the sheath; ', and the sheath was closed' ends at the next comma.
    """
    words, k = scene.page.words, i - 1
    while k >= scene.sentence.i and i - k <= _LONGEST_LEAD and words[k] in _LEADS:
        k -= 1
    heads_line = k >= scene.sentence.i and scene.page.breaks[k + 1] >= Break.LINE
    tendons = [a for a, _, role in named if a >= j and role in _OF_TENDONS]
    if k < scene.sentence.i or (k == scene.sentence.i and words[k] == "then"):
        return 0 if tendons else scene.sentence.j
    if words[k] not in _OPENS and not heads_line:
        return 0
    stops = (n for n in range(j, scene.sentence.j) if words[n] in (",", ";"))
    return min([next(stops, scene.sentence.j), *tendons])
