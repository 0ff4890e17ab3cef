"""One pulley of several fingers, each told another state: 'A2 was vented in the index and excised in the ring'."""

from dataclasses import dataclass, field
from itertools import pairwise

from notereader.reader.groups import Group
from notereader.reader.page import Mention
from notereader.reader.rules.pulleys.pulley_names import made_from
from notereader.reader.rules.pulleys.pulley_states import state_of, strongest
from notereader.reader.scene import Scene

_FEWEST = 2  # fingers named apart, and states
_JOINS = frozenset([",", "and", "&", "or", "/", "+", "the"])
_STOPS = frozenset([";", ".", ":"])


@dataclass(frozen=True, slots=True)
class Share:
    """What is told of the pulley of some fingers, and the words, i to j, in which it is told."""

    fingers: tuple[str, ...]
    action: Mention
    i: int
    j: int


def dealt_pulleys(scene: Scene, words: list[Mention], i: int, j: int) -> list[Share] | None:
    """Return what words i to j of a sentence tell of the one pulley they name, finger by finger; [] elsewhere.

    `words`: what the sentence tells of pulleys, in order. None: 'respectively' says that states are dealt out, and the
    numbers of fingers and of states do not agree; whose each is cannot be told.
    """
    names = {m.value for m in scene.of("pulley") if scene.told(m.i) and i <= m.i < j}
    fingers = [g for g in scene.setting.groups if i <= g.i < j and (g.digits or not made_from(scene, g))]
    named = [d for g in fingers for d in g.digits]
    states = [m for m in words if i <= m.i < j and state_of(scene, m) is not None]
    if len(names) != 1 or len(set(named)) != len(named) or len(named) < _FEWEST or len(states) < _FEWEST:
        return []
    if not all(_only_fingers(scene, g) for g in fingers):
        return []
    if "respectively" in scene.words(i, j):
        return _in_order(scene, fingers, states)
    return _by_turns(scene, fingers, states, i)


def _only_fingers(scene: Scene, g: Group) -> bool:
    plain = g.digits and not (g.reference or g.excepted or g.generic)
    return bool(plain) and (not g.tendons or made_from(scene, g))


@dataclass(slots=True)
class _Run:
    """Fingers listed together, or states told one behind the other, in words i to j."""

    i: int
    j: int
    fingers: tuple[str, ...] = ()
    states: list[Mention] = field(default_factory=list)


def _by_turns(scene: Scene, fingers: list[Group], states: list[Mention], start: int) -> list[Share]:
    """Pair fingers and states that stand by turns; of states told one behind the other the last deed counts."""
    runs: list[_Run] = []
    items = [*(_Run(g.i, g.j, g.digits) for g in fingers), *(_Run(m.i, m.j, (), [m]) for m in states)]
    for item in sorted(items, key=lambda run: run.j):
        last = runs[-1] if runs else None
        if last is None or bool(last.states) != bool(item.states):
            runs.append(item)
        elif item.states:
            if not _STOPS.isdisjoint(scene.words(last.j, item.i)):
                return []  # the second may be of something else
            last.states += item.states
            last.j = item.j
        elif _JOINS.issuperset(scene.words(last.j, item.i)):  # 'index/middle', 'the index, the ring'
            last.fingers += item.fingers
            last.j = item.j
        else:
            runs.append(item)
    return _paired(scene, runs, start)


def _paired(scene: Scene, runs: list[_Run], start: int) -> list[Share]:
    if len(runs) % 2 or len(runs) < _FEWEST * 2:
        return []
    found: list[Share] = []
    for first, second in zip(runs[::2], runs[1::2], strict=True):
        action = strongest(scene, first.states + second.states)
        if action is None or bool(first.states) == bool(second.states):
            return []
        found.append(Share(first.fingers + second.fingers, action, first.i if found else start, second.j))
    ends = [*(share.i for share in found[1:]), found[-1].j + _BEHIND]
    return [Share(s.fingers, s.action, s.i, end) for s, end in zip(found, ends, strict=True)]


_BEHIND = 9  # words in which a share may follow the last state


def _in_order(scene: Scene, fingers: list[Group], states: list[Mention]) -> list[Share] | None:
    """'The A2 pulleys of the index and ring were vented and excised respectively': the first of each, then the next."""
    named = [d for g in fingers for d in g.digits]
    ahead = all(g.j <= states[0].i for g in fingers) or all(g.i >= states[-1].j for g in fingers)
    if not ahead:
        return []
    if len(named) != len(states) or not all(next_to(scene, a, b) for a, b in pairwise(states)):
        return None
    ends = [*(m.i for m in states[1:]), states[-1].j]
    return [Share((d,), m, m.i, end) for d, m, end in zip(named, states, ends, strict=True)]


def next_to(scene: Scene, one: Mention, other: Mention) -> bool:
    """Tell whether two states follow each other in a list: 'vented 3 mm and excised', not 'divided and then sewn'."""
    between = scene.words(one.j, other.i)
    return _STOPS.isdisjoint(between) and "then" not in between and not {"and", ","}.isdisjoint(between)
