"""One pulley told of all fingers but some: 'All A2 were intact except in the ring, where it was vented'."""

from notereader.reader.groups import Group
from notereader.reader.page import Mention
from notereader.reader.rules.pulleys.pulley_states import strongest
from notereader.reader.scene import Scene

_TURNS = frozenset(["where", "which", "whose", "vented", "opened", "released", "torn", "cut"])
_EVERY = frozenset(["all", "both", "every", "each"])
_OTHERS = (["the", "others"], ["the", "other"], ["the", "rest"])
_FEWEST = 2  # fingers, and states

Dealt = list[tuple[tuple[str, ...], Mention]]


def told_of_all_but(scene: Scene, words: list[Mention]) -> Dealt:
    """Return the fingers of each of two states of one pulley, where one is of all the others; [] elsewhere.

    `words`: what the sentence tells of pulleys, in order.
    """
    names = {m.value for m in scene.of("pulley") if scene.told(m.i)}
    fingers = scene.setting.digits
    named = [g for g in scene.setting.groups if g.digits and not (g.tendons or g.reference)]
    if len(names) != 1 or len(words) < _FEWEST or len(named) != 1 or len(fingers) < _FEWEST:
        return []
    own = named[0]
    rest = tuple(d for d in fingers if d not in own.digits)
    if not rest or len(rest) == len(fingers):
        return []
    others = next((k for k in range(own.j, words[-1].i) if scene.words(k, k + 2) in _OTHERS), None)
    if own.excepted and _said_of_every(scene, own, words):
        return _both(scene, words, own.i, (rest, own.digits))
    if others is not None:
        return _both(scene, words, others, (own.digits, rest))
    return []


def _both(scene: Scene, words: list[Mention], k: int, fingers: tuple[tuple[str, ...], tuple[str, ...]]) -> Dealt:
    """Return what is told before word k of the first fingers and behind it of the second; [] unless both are told."""
    before = strongest(scene, [w for w in words if w.j <= k])
    behind = strongest(scene, [w for w in words if w.i >= k])
    return [(fingers[0], before), (fingers[1], behind)] if before is not None and behind is not None else []


def _said_of_every(scene: Scene, own: Group, words: list[Mention]) -> bool:
    """Tell whether the first state is said of every finger before the exception, and the second of the exception."""
    lead = scene.words(scene.sentence.i, own.i)
    behind = scene.words(own.j, words[-1].j)
    every = not _EVERY.isdisjoint(lead) or "where" in behind  # 'A2 was vented except in the ring, where it was kept'
    return every and words[0].j <= own.i <= words[-1].i and not _TURNS.isdisjoint(behind)
