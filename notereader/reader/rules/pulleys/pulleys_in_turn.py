"""Several pulleys and a state for each, in the order named: 'A2 and A4 were vented and excised respectively'."""

from itertools import pairwise

from notereader.reader.page import Mention
from notereader.reader.rules.pulleys.dealt_pulleys import next_to
from notereader.reader.rules.pulleys.pulley_names import PulleyGroup
from notereader.reader.rules.pulleys.pulley_states import state_of
from notereader.reader.scene import Scene

_FEWEST = 2  # pulleys, and states


def in_turn(scene: Scene, groups: list[PulleyGroup], words: list[Mention]) -> tuple[list[PulleyGroup], list[Mention]]:
    """Return the pulleys each with its own state, and the words left; all as they came where nothing is dealt out.

    Where the numbers of pulleys and of states do not agree, whose each is cannot be told: no word is left.
    """
    if "respectively" not in scene.said or len(groups) != 1:
        return groups, words
    group = groups[0]
    states = [m for m in words if m.i >= group.j and state_of(scene, m) is not None]
    if len(group.values) < _FEWEST or len(states) < _FEWEST or len(states) != len(words):
        return groups, words
    if len({d for g in scene.setting.groups if not g.tendons for d in g.digits}) > 1:
        return groups, words  # 'A2 and A4 were opened and sewn in the index and ring respectively'
    listed = all(next_to(scene, a, b) for a, b in pairwise(states))
    if not listed or len(states) != len(group.values) or len(group.mentions) != len(group.values):
        return groups, []
    named = zip(group.mentions, group.values, states, strict=True)
    return [PulleyGroup([m], [value], [state]) for m, value, state in named], []
