"""A tendon that was joined though it would not meet without tension: 'Ends would not meet without tension'."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.rules.results.behaviour import behaving, foreign, lay_behaviour
from notereader.reader.scene import Scene

_UNABLE = frozenset([(verb, "not") for verb in ("would", "could", "did", "do", "will")])
_MEETING = frozenset(["meet", "come", "reach", "close", "approximate", "approximated", "met", "brought", "joined"])
_INSTEAD = frozenset(
    ["graft", "grafted", "tenodesed", "tenodesis", "transfer", "rod", "left", "nerve", "nerves", "skin"]
)
_UNTIL = frozenset(["until", "unless", "till"])  # 'did not meet without tension until the wrist was flexed'
_LEAD = 8  # words


def tension_needed(desk: Desk, scene: Scene) -> None:
    """Lay down that a sewn tendon is under tension where its ends would not meet without it."""
    if "without" not in scene.said or not (_INSTEAD | _UNTIL).isdisjoint(scene.said):
        return
    for m in scene.of("tension"):
        lead = scene.words(max(scene.sentence.i, m.i - _LEAD), m.i)
        denied = any(pair in _UNABLE for pair in pairwise(lead)) and not _MEETING.isdisjoint(lead)
        if scene.page.words[m.i] != "without" or not denied or foreign(scene, m.i, m.j):
            continue
        sewn = [
            t for t in behaving(desk, scene, m.i, m.j) if desk.treatments.get(t) == "repaired" or desk.has_suture(t)
        ]
        lay_behaviour(desk, scene, sewn, "tension", "present", m.i, m.j, "would not meet without tension")
