"""The edge of a pulley that was taken off: 'It caught on the distal lip of A2 and I took 5 mm off the distal edge'."""

from notereader.reader.desk import Desk
from notereader.reader.needs import needs
from notereader.reader.page import Quantity
from notereader.reader.rules.pulleys.pulley_names import PARTS
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_EDGES = word_list("pulleys", "edges")
_TAKING = word_list("pulleys", "edge_taken")
_OFF = frozenset(["off", "away", "back"])
_LONGEST = 10  # mm; more is no edge
_NEAR = 6  # words: 'taken off the most distal edge'
_RULE = "edge of the pulley taken off"


@needs(units=["mm"], words=set(_EDGES))
def edges_taken_off(desk: Desk, scene: Scene) -> None:
    """Find what was taken off the edge of the one pulley spoken of last, here or in the sentence before."""
    if desk.last_pulley_end not in (scene.sentence.i, scene.sentence.j) or len(desk.last_pulleys) != 1:
        return
    name, digits = desk.last_pulleys[0]
    if name == "flexor retinaculum" or not scene.kinds.isdisjoint(_OTHERS):
        return
    for q in scene.quantities:
        edge = edge_taken(desk, scene, q)
        if edge is None or any(m.i >= q.i for m in scene.of("pulley", "pulleys")):
            continue
        part = _part(scene, edge) or _part_before(desk, scene)
        for digit in digits:
            entry = (digit, name, None)
            span = (q.i, edge + 1)
            desk.add(scene, "pulleys", entry, "finding", "trimmed", [span], _RULE)
            desk.add(scene, "pulleys", entry, "extent_mm", float(q.high or 0), [span], _RULE)
            if part:
                desk.add(scene, "pulleys", entry, "part", part, [span], _RULE)
        return


_OTHERS = ("structure", "sided", "bundle", "anynerve", "anyartery", "bone")


def edge_taken(desk: Desk, scene: Scene, q: Quantity) -> int | None:
    """Return the edge of a pulley off which a length was taken: '5 mm off the distal edge', '2 mm from that lip'.

    A bare edge may be the tendon's own ('2 mm was shaved off the edge of the flap'): it is told which edge it is, or
    that of the pulley was spoken of.
    """
    if q.unit != "mm" or q.high is None or q.high > _LONGEST or not scene.told(q.i) or scene.negated(q.i, q.j):
        return None
    words = scene.page.words
    ahead = range(q.j, min(q.j + _NEAR, scene.sentence.j))
    edge = next((k for k in ahead if words[k] in _EDGES), None)
    if edge is None or not {"off", "from", "of"} & set(words[q.j : edge]):
        return _edge_before_figure(scene, q)
    if scene.next_word(edge + 1) == "of" and scene.next_word(edge + 2) not in ("it", "this", "that"):
        return None  # 'of the stump'; that of a named pulley is told by its name
    around = [*scene.words(max(scene.sentence.i, q.i - 3), q.i), *words[q.j : min(edge + 4, scene.sentence.j)]]
    taken = not _TAKING.isdisjoint(around) or ("cut" in around and not _OFF.isdisjoint(around))
    taken = taken and not {"had", "by"} <= {*around, scene.next_word(edge + 4)}  # 'had been cut off by the knife'
    return edge if taken and (_part(scene, edge) or _edge_before(desk, scene, q.i)) else None


def _edge_before_figure(scene: Scene, q: Quantity) -> int | None:
    """'I took a piece off the far edge, maybe 3 mm', 'a sliver was shaved from its distal rim, about 2 mm'."""
    words = scene.page.words
    k = q.i
    while k - 1 > scene.sentence.i and words[k - 1] in _ABOUT:
        k -= 1
    edge = k - 1
    if words[edge] not in _EDGES or not _part(scene, edge):
        return None
    lead = words[max(scene.sentence.i, edge - _LEAD) : edge]
    off = max((n for n, word in enumerate(lead) if word in ("off", "from")), default=-1)
    taken = off >= 0 and not _TAKING.isdisjoint(lead[:off]) and not _PIECE.isdisjoint(lead[:off])
    return edge if taken and len(lead) - off <= _BESIDE_EDGE else None


_ABOUT = frozenset([",", "maybe", "perhaps", "about", "some", "around", "roughly", "of", "(", "-"])
_PIECE = frozenset(["piece", "bit", "sliver", "strip", "shaving", "rim", "bite", "little", "slice"])
_LEAD, _BESIDE_EDGE = 9, 4  # words


def _part(scene: Scene, edge: int) -> str:
    return next((PARTS[w] for w in scene.words(max(scene.sentence.i, edge - 2), edge) if w in PARTS), "")


def _edge_before(desk: Desk, scene: Scene, i: int) -> int | None:
    """Return the edge beside the name of the pulley spoken of: 'the proximal lip of A2', 'the A2 edge'."""
    words = scene.page.words
    first = scene.sentence.i
    before = desk.scene_before(scene)
    if desk.last_pulley_end == scene.sentence.i and before is not None:
        first = before.sentence.i
    names = [m for s in (before, scene) if s is not None for m in s.of("pulley") if first <= m.i < i]
    near = [k for m in names for k in (m.i - 2, m.i - 3, m.j) if first <= k < i]
    return next((k for k in near if words[k] in _EDGES), None)


def _part_before(desk: Desk, scene: Scene) -> str:
    edge = _edge_before(desk, scene, scene.sentence.j)
    words = scene.page.words
    return PARTS.get(words[edge - 1], "") if edge is not None else ""
