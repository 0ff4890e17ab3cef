"""What a sentence must hold for a rule to find anything in it, stated beside the rule and asked before it runs.

Nine of ten sentences hold nothing that a given rule looks for. Asking three sets of what the sentence holds costs a
fraction of letting the rule look for itself.
"""

import functools
from collections.abc import Callable, Iterable
from typing import TypeVarTuple

from notereader.reader.desk import Desk
from notereader.reader.scene import Scene

_Rest = TypeVarTuple("_Rest")
Rule = Callable[[Desk, Scene, *_Rest], None]


def needs(
    *, kinds: Iterable[str] = (), words: Iterable[str] = (), units: Iterable[str] = ()
) -> Callable[[Rule[*_Rest]], Rule[*_Rest]]:
    """Let a rule read only sentences that hold at least one mention of `kinds`, one of `words` or a figure in `units`.

    The unit of a bare figure is ''. Whoever teaches the rule to look for something else names it here as well;
    tests/reader/test_needs.py holds that no gate keeps a fact of our notes out.
    """
    kinds, words, units = frozenset(kinds), frozenset(words), frozenset(units)

    def gate(rule: Rule[*_Rest]) -> Rule[*_Rest]:
        @functools.wraps(rule)
        def gated(desk: Desk, scene: Scene, *rest: *_Rest) -> None:
            if (
                not scene.kinds.isdisjoint(kinds)
                or (words and not scene.said.isdisjoint(words))  # most rules need only kinds
                or (units and not scene.units.isdisjoint(units))
            ):
                rule(desk, scene, *rest)

        return gated

    return gate
