"""The peripheral suture: whether it was placed or left out."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.page import within
from notereader.reader.rules.sutures.edges_of_a_make import edges_of_a_make
from notereader.reader.rules.sutures.lost_peripheral import (
    one_of_them_lost,
    pattern_lost_again,
)
from notereader.reader.rules.sutures.no_peripheral import (
    RULE,
    finger_without,
    got_none,
    just_told,
    lay_none,
    left_out,
    none_in_a_cell,
    struck_out,
    taken_out,
    told_before,
)
from notereader.reader.rules.sutures.none_after_all import none_after_all
from notereader.reader.rules.sutures.none_besides import finger_went_without, none_besides
from notereader.reader.rules.sutures.not_oversewn import not_oversewn
from notereader.reader.rules.sutures.peripheral_patterns import lay_pattern
from notereader.reader.rules.sutures.peripheral_told import (
    instead,
    is_negated_there,
    meant_and_not_placed,
    told_at,
    weighed_and_left,
)
from notereader.reader.rules.sutures.roles import PERIPHERAL, Anchor
from notereader.reader.rules.sutures.suture_owners import lay_suture
from notereader.reader.rules.sutures.threads import Thread
from notereader.reader.scene import Scene

# What tells of a peripheral suture in a sentence that does not name one.
_WITHOUT_NAME = frozenset(["fine", "nil", "none", "nothing", "only", "alone", "not"])


def peripheral(desk: Desk, scene: Scene, found: list[Anchor], threads: list[Thread]) -> None:
    """Find whether a peripheral suture was placed or left out, and its pattern."""
    if struck_out(desk, scene):
        return
    taken_out(desk, scene)
    got_none(desk, scene)
    not_oversewn(desk, scene)
    if (scene.sentence.section == PERIPHERAL or told_before(desk, scene)) and finger_without(desk, scene):
        return
    spots = _spots(scene, found)
    outer = spots or [Anchor(t.i, t.j, PERIPHERAL) for t in threads if t.role == PERIPHERAL]
    if edges_of_a_make(desk, scene, [(a.i, a.j) for a in outer]):
        lay_pattern(desk, scene, found, True, threads)
        return
    none_after_all(desk, scene)
    none_besides(desk, scene, outer)
    finger_went_without(desk, scene, bool(outer) or told_before(desk, scene))
    if not spots and scene.sentence.section != PERIPHERAL and _tells_nothing(scene):
        return
    left_out(desk, scene, spots, threads)
    if _answers_none(scene):
        _lay_answer(desk, scene)
        return
    lost = pattern_lost_again(desk, scene) if not spots else None
    if lost is not None and (scene.word_before(lost.i) == "a" or just_told(desk, scene)):
        lay_none(desk, scene, lost.i, lost.j)
        return
    for spot in outer:
        if meant_and_not_placed(scene, spot):
            lay_none(desk, scene, spot.i, spot.j)
    if not _lay_named(desk, scene, spots, threads) and not _all_denied(scene, spots, threads):
        lay_pattern(desk, scene, found, bool(spots), threads)


def _spots(scene: Scene, found: list[Anchor]) -> list[Anchor]:
    """Return where a sentence names the peripheral suture; else the heading of its line, if more stands behind it."""
    spots = [a for a in found if a.role == PERIPHERAL]
    if spots or scene.sentence.section != PERIPHERAL or scene.sentence.j - scene.sentence.i <= 2:
        return spots
    heading = next(iter(within(scene.page.headings, scene.sentence.i, scene.sentence.j)), None)
    return [Anchor(heading.i, heading.j, PERIPHERAL)] if heading is not None else []


def _tells_nothing(scene: Scene) -> bool:
    """Tell whether a sentence that names no peripheral suture holds nothing that may tell of one all the same."""
    return "pattern" not in scene.kinds and _WITHOUT_NAME.isdisjoint(scene.said)


def _answers_none(scene: Scene) -> bool:
    """Tell whether a cell of a grid or the answer to a label opens with 'none'."""
    asked = scene.sentence.prefix and scene.sentence.section == PERIPHERAL
    return bool(asked) and scene.page.words[scene.sentence.i] in ("none", "no", "nil", "not", "nothing")


def _lay_answer(desk: Desk, scene: Scene) -> None:
    """Lay down the 'none' of a cell, but not the 'not' of 'not recorded'."""
    first = scene.sentence.i
    if scene.told(first) and not none_in_a_cell(desk, scene):
        lay_suture(desk, scene, first, first + 1, "peripheral", "absent", RULE)


def _lay_named(desk: Desk, scene: Scene, spots: list[Anchor], threads: list[Thread]) -> bool:
    """Lay down what is said wherever a suture is named. RETURNS whether that is all the sentence says of it."""
    for spot in _one_a_part(scene, spots):
        if _heads_the_next(desk, scene, spot):
            continue
        if weighed_and_left(scene, spot):
            lay_none(desk, scene, spot.i, spot.j)
        told = told_at(desk, scene, spot, threads, first=spot is spots[0])
        if told.value == "absent":
            lay_none(desk, scene, spot.i, spot.j)
        elif told.value == "present":
            lay_suture(desk, scene, spot.i, spot.j, "peripheral", "present", "peripheral suture named")
        if told.settles:
            return True
    return False


def _all_denied(scene: Scene, spots: list[Anchor], threads: list[Thread]) -> bool:
    """Tell whether every suture that is named is denied, and none is told of another tendon before."""
    denied = [spot for spot in spots if is_negated_there(scene, spot) and not instead(scene, spot, threads)]
    return bool(spots) and len(denied) == len(spots) and not _told_of_another(scene, denied, threads)


def one_lost(desk: Desk, scene: Scene) -> None:
    """'That of the ring was caught on a hook, unravelled and could not be put back': that of one finger of several."""
    lost = one_of_them_lost(scene)
    if lost is None:
        return
    group, end = lost
    kinds = group.tendons or ("FDP", "FPL")
    for told in just_told(desk, scene):
        target = Target(*told.entry)
        if target.digit in group.digits and target.tendon in kinds:
            desk.tendon(scene, target, "peripheral", "absent", [(group.i, end)], RULE)


def _heads_the_next(desk: Desk, scene: Scene, spot: Anchor) -> bool:
    """'Peripheral FDS: not used': the noun before a tendon's label is cut off from it, and tells nothing by itself."""
    after = desk.scene_after(scene)
    alone = (spot.i, spot.j) == (scene.sentence.i, scene.sentence.j) and not scene.sentence.prefix
    groups = after.setting.groups if after is not None else []
    labelled = bool(groups) and after is not None and groups[0].i == after.sentence.i == scene.sentence.j
    return alone and labelled and scene.page.words[groups[0].j : groups[0].j + 1] == [":"]


def _told_of_another(scene: Scene, denied: list[Anchor], threads: list[Thread]) -> bool:
    """'A running 5-0 for the profundi only; the superficialis had no epitendinous stitch': told before it is denied."""
    outer = [t for t in threads if t.role == PERIPHERAL and (t.size or t.material)]
    parts = (";", ",", ".")
    return any(all(t.j <= s.i and any(w in parts for w in scene.words(t.j, s.i)) for s in denied) for t in outer)


def _one_a_part(scene: Scene, spots: list[Anchor]) -> list[Anchor]:
    """Return the first mention of a peripheral suture in each part of the sentence."""
    kept: dict[tuple[int, int], Anchor] = {}
    for spot in spots:
        kept.setdefault(scene.part(spot.i), spot)
    return list(kept.values())
