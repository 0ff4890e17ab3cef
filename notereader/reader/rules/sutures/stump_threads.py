"""Threads that hold no repair: 'the distal stump was sutured on top with 4-0', 'stump oversewn 4-0 Ethibond'."""

from itertools import pairwise

from notereader.reader.rules.sutures.threads import Thread
from notereader.reader.scene import Scene

_STUMP = "stump"  # 'Stumps oversewn' tells of both ends of a repair
_OVERSEWN = frozenset(["oversewn", "oversewed"])
_OVER_IT = frozenset([("on", "top"), ("over", "it"), ("onto", "it"), ("over", "that"), ("over", "this")])
_ONTO = frozenset(["over", "onto", "on", "upon"])
_GRAFTS = frozenset(["graft", "button", "insertion", "weave"])


def sews_a_stump_over(scene: Scene, thread: Thread) -> bool:
    """Tell whether a thread only lays a stump over what was fixed before it."""
    first = scene.part(thread.i)[0]
    lead = scene.words(max(scene.sentence.i, first - 1), thread.i)
    stump = next((n for n, word in enumerate(lead) if word == _STUMP), None)
    if stump is None:
        return False
    behind = lead[stump:]
    if any(word.endswith("-0") for word in behind):
        return False  # 'the stump was joined with 4-0, over it a running 6-0'
    over = not _OVERSEWN.isdisjoint(behind) or not _OVER_IT.isdisjoint(pairwise(behind))
    return over or any(
        a in _ONTO and b == "the" and c in _GRAFTS for a, b, c in zip(behind, behind[1:], behind[2:], strict=False)
    )
