"""Rest told by what follows it: 'splint for three weeks, then start moving', 'in plaster three weeks, then therapy'."""

from collections.abc import Iterator
from dataclasses import dataclass

from notereader.reader.desk import Desk
from notereader.reader.rules.whole_note.whole import Span, is_order, is_other_section, order_list
from notereader.reader.scene import Scene


@dataclass(frozen=True, slots=True)
class Rest:
    """Weeks of rest after which motion or therapy begins, and the words that say so."""

    scene: Scene
    low: float
    high: float
    span: Span


def rests_before_motion(desk: Desk) -> Iterator[Rest]:
    """Yield the weeks of rest that the orders tell by what begins behind them.

    'Then strengthening' follows other exercises, and 'then active ones' says that there were passive ones before.
    """
    for scene in desk.having("splint") + [s for s in desk.saying(_IN_IT | _STILL) if not s.of("splint")]:
        if is_other_section(scene) or scene.of("stitch", "strandword"):
            continue
        for q in scene.quantities:
            if q.unit != "week" or q.low is None or q.high is None or not is_order(desk, scene, q.i):
                continue
            lead = scene.words(max(scene.sentence.i, q.i - _BEFORE), q.i)
            still = not _STILL.isdisjoint(lead)
            rested = still or any(q.i - _BEFORE <= m.i < q.i for m in scene.of("splint")) or not _IN_IT.isdisjoint(lead)
            end = _motion_behind(scene, q.j, still) if rested and _THE_END.isdisjoint(lead) else None
            if end is not None:
                yield Rest(scene, q.low, q.high, (q.i, end))


_BEFORE = 6  # words of 'is to rest in it for'
_IN_IT = frozenset(["rest", "rests"])
_STILL = frozenset(["immobilised", "immobilized", "immobilisation", "immobilization", "immobile"])
_THE_END = frozenset(["at", "after", "off", "until", "till", "by", "from"])


def _motion_behind(scene: Scene, j: int, still: bool) -> int | None:
    """Return the end of ', then start moving', 'and will then begin with our therapist' behind word j.

    Of a hand told to be `still` until then also of ', thereafter active movement'.
    """
    words, end = scene.page.words, scene.sentence.j
    then = next((k for k in range(j, min(j + _NEAR, end)) if words[k] in ("then", "thereafter")), None)
    if then is None or ";" in words[j:then]:
        return None
    behind = words[then + 1 : min(then + 1 + _SOON, end)]
    if still and behind[:1] in (["active"], ["passive"]) and not _MOVED.isdisjoint(behind[1:2]):
        return then + 3
    if not _OF_A_KIND.isdisjoint(behind):
        return None
    moves = next((n for n, w in enumerate(behind) if w in _MOTION or w in _BEGUN or w in order_list("moving")), None)
    begins = not order_list("begins").isdisjoint(behind[: moves or 0])
    begins = begins or (moves == 0 and behind[0] in _MOTION)  # 'then physio' does not say that rest ends on that day
    return then + 2 + moves if moves is not None and begins else None


_MOVED = frozenset(["movement", "movements", "motion", "mobilisation", "mobilization", "exercise", "exercises"])
_NEAR = 8  # words of ', without exercises, and will then'
_SOON = 5
_MOTION = frozenset(["mobilise", "mobilize", "mobilisation", "mobilization", "move", "moving", "motion"])
_BEGUN = frozenset(["therapist", "therapists"])  # 'and will then begin with our therapist'
_OF_A_KIND = frozenset(
    ["active", "passive", "strengthening", "resisted", "resistance", "blocking", "full", "light", "normal", "nights"]
)
