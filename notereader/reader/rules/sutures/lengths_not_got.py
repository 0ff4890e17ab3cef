"""A length of tendon that could not be taken, 'I could not persuade 6 mm of purchase out of it', and the one taken."""

from itertools import pairwise

from notereader.reader.page import Quantity
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_GETTING = word_list("sutures", "getting")
_TOO_LITTLE = phrases_by_first_word("sutures", "too_little")
_MADE_DO = phrases_by_first_word("sutures", "made_do")
_UNABLE = frozenset([("could", "not"), ("cannot", "be"), ("can", "not"), ("did", "not"), ("unable", "to")])
_ABLE = frozenset([("not", "able"), ("did", "not"), ("not", "possible"), ("no", "way")])
_UNABLE_WORDS = frozenset(["couldn't", "cannot", "unable", "impossible", "failed"])
_TURNS = frozenset([";", ".", "but", "so", "however", ",", "and"])
_REACH = 7  # words before the length
LEAST, MOST = 2, 25  # mm


def not_got(scene: Scene, q: Quantity) -> bool:
    """'Purchase of 10 mm could not be obtained', 'bites of less than 5 mm': a length that was not reached."""
    before, behind = scene.words(q.i - 3, q.i), scene.words(q.j, min(q.j + 4, scene.sentence.j))
    under = before[-2:] in (["less", "than"], ["fewer", "than"]) and before[:1] not in (["no"], ["not"])
    if under or behind[:2] in (["could", "not"], ["cannot", "be"], ["was", "not"], ["were", "not"]):
        return True
    return _asked_too_much(scene, q) or _out_of_reach(scene, q)


def _lead(scene: Scene, q: Quantity) -> list[str]:
    """Return the words before a length, back to the last turn of its sentence."""
    lead = scene.words(max(scene.sentence.i, q.i - _REACH), q.i)
    last = max((n for n, word in enumerate(lead) if word in _TURNS), default=-1)
    return lead[last + 1 :]


def _asked_too_much(scene: Scene, q: Quantity) -> bool:
    """'I could not coax 9 mm of hold out of it', 'there was not enough length for 10 mm bites'."""
    lead = _lead(scene, q)
    unable = not _UNABLE_WORDS.isdisjoint(lead) or any(pair in _UNABLE | _ABLE for pair in pairwise(lead))
    if unable and not _GETTING.isdisjoint(lead):
        return True
    return any(lead[n : n + len(p)] == p for n, word in enumerate(lead) for p in _TOO_LITTLE.get(word, ()))


def _out_of_reach(scene: Scene, q: Quantity) -> bool:
    """'10 mm of purchase could not be had in the distal stump', '8 mm of bite was out of reach'."""
    behind = scene.words(q.j, min(q.j + _REACH, scene.sentence.j))
    behind = behind[: next((n for n, word in enumerate(behind) if word in _TURNS), len(behind))]
    if behind[:1] != ["of"]:
        return False
    denied = any(pair in _UNABLE for pair in pairwise(behind)) or "impossible" in behind
    return denied or ["out", "of", "reach"] in [behind[n : n + 3] for n in range(len(behind))]


def made_do(scene: Scene, q: Quantity) -> bool:
    """'..., so 5 mm each end', '... and settled for 6 mm': what was taken where more could not be got."""
    if not LEAST <= (q.low or 0) <= (q.high or 0) <= MOST:
        return False
    if not any(p.j <= q.i and p.unit == "mm" and not_got(scene, p) for p in scene.quantities):
        return False
    lead = scene.words(max(scene.sentence.i, q.i - 4), q.i)
    return any(lead[n : n + len(p)] == p for n, word in enumerate(lead) for p in _MADE_DO.get(word, ()))
