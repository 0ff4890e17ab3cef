"""Results dealt out over fingers: 'no gap in the index and 1 mm in the ring', 'clean in the one, torn in the other'."""

from itertools import pairwise

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.page import Mention
from notereader.reader.rules.dealt_out import Span, by_turns, tendons_by_turns
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_KINDS = ("gap", "glide", "bulk", "tension", "ends")
_OF_REPAIRS = ("gap", "glide", "bulk", "tension")
_LEADING = word_list("dealt_out", "before_result")
_AT = frozenset(["at", "on", "under", "against", "in", "beneath"])
_FEWEST = 2  # results
_OF_TENDONS = frozenset([("tendon", "ends"), ("tendon", "stumps"), ("all", "ends")])


def holders_of_result(desk: Desk, scene: Scene, i: int) -> list[Target]:
    """Return the deep flexors of the fingers, or the tendons, that the result at word i belongs to; [] if undealt."""
    kind = next((k for k in _KINDS if any(m.i <= i < m.j for m in scene.of(k))), None)
    told = [m for m in scene.of(kind) if scene.told(m.i)] if kind is not None else []
    if len(told) < _FEWEST:
        told = _of_several_kinds(scene, kind)
    if len(told) < _FEWEST:
        return []
    if any(g.tendons for g in scene.setting.groups):
        return _tendons_of_result(desk, scene, told, i)
    whole = [_whole(scene, m) for m in told]
    dealt = by_turns(scene, whole, ("endword",))
    digits = next((dealt[span] for m, span in zip(told, whole, strict=True) if dealt and m.i <= i < m.j), ())
    if not digits:
        return []
    if kind == "ends" and not _OF_TENDONS.isdisjoint(pairwise(scene.words(scene.sentence.i, scene.sentence.j))):
        return [
            t for t in desk.cut(digits) if t.digit in digits
        ]  # 'Tendon ends ragged in the middle, clean in the ring'
    return [t for t in desk.repairable(digits) if t.tendon in ("FDP", "FPL") and t.digit in digits]


def _of_several_kinds(scene: Scene, kind: str | None) -> list[Mention]:
    """'No gap in the index and some tension in the ring': results of several kinds, one for each place."""
    if kind not in _OF_REPAIRS or sum(bool(g.digits or g.tendons) for g in scene.setting.groups) < _FEWEST:
        return []
    told = sorted((m for m in scene.of(*_OF_REPAIRS) if scene.told(m.i)), key=lambda m: m.i)
    return told if all(a.j <= b.i for a, b in pairwise(told)) else []


def _tendons_of_result(desk: Desk, scene: Scene, told: list[Mention], i: int) -> list[Target]:
    """'No gap in the FDP and a 2 mm gap in the FDS', 'free in the profundus, restricted in the superficialis'."""
    dealt = tendons_by_turns(scene, [_whole(scene, m) for m in told], ("endword", "generic"))
    group = next((dealt[span] for m in told if m.i <= i < m.j and (span := _whole(scene, m)) in dealt), None)
    return [t for t in group_targets(scene, group) if desk.may_be_repaired(t)] if group is not None else []


def not_denied(desk: Desk, scene: Scene, mention: Mention) -> bool:
    """'Not bulky in the small and bulky in the ring': the denial of one result is not that of the next."""
    words = scene.words(*_whole(scene, mention))
    return _DENIALS.isdisjoint(words) and bool(holders_of_result(desk, scene, mention.i))


_DENIALS = frozenset(["no", "not", "without", "never", "neither", "nor"])


def _whole(scene: Scene, mention: Mention) -> Span:
    """Return all words of a result: 'no gap', 'a gap of 1 mm', 'caught at A2'."""
    i, j = mention.i, mention.j
    measured = {k for q in scene.quantities for k in range(q.i, q.j)}
    while i > scene.sentence.i and (scene.page.words[i - 1] in _LEADING or i - 1 in measured):
        i -= 1
    if scene.next_word(j) == "of" and j + 1 in measured:
        j += 1
    while j in measured:
        j += 1
    at = j + 1 + (scene.next_word(j + 1) == "the")
    pulley = next((m for m in scene.of("pulley") if m.i == at), None)
    return (i, pulley.j) if scene.next_word(j) in _AT and pulley is not None else (i, j)
