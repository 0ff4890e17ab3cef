"""The ends of several tendons told in one word: 'FDP through. FDS through. The ends were ragged.'"""

from notereader.reader.desk import HURT_KINDS, Desk
from notereader.reader.groups import Group, Target
from notereader.reader.page import Break, Mention
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import word_list

_PLURALS = frozenset(["ends", "stumps", "edges", "extremities", "surfaces", "faces"])
_SEWN_BY = ("stitch", "strands", "size")
_PLACED = frozenset(["of", "in", "on", "for", "to", "at"])
_NEAR = 7  # words
_FETCHED = word_list("quality", "fetched")


def told_together(desk: Desk, scene: Scene, mention: Mention, targets: list[Target]) -> list[Target]:
    """Return every tendon told cut just before ends that name no tendon; [] where the ends are of one that is named.

    'Just before' is in the same paragraph and since ends were last told of; of a sentence that goes on, in its finger.
    """
    noun = _noun(scene, mention)
    if noun is None or scene.sentence.prefix or scene.left_out or _owned(scene, noun, mention):
        return []
    if fetched_before(desk, scene):
        return []
    since = _line_of_a_tendon(scene) - 1
    since = max((f.order for f in desk.laid("ends", before=mention.i)), default=since)
    told = [
        f
        for f in desk.laid("extent", since=since + 1, before=noun)
        if f.group == "repairs" and f.value in HURT_KINDS
        if (not f.header or scene.header) and desk.scene_at(f.order).sentence.block == scene.sentence.block
    ]
    if any(g.tendons and g.j <= noun for g in scene.setting.groups):
        told = [f for f in told if f.order >= scene.sentence.i]
        told = [f for f in told if f.entry[0] == told[-1].entry[0]]  # a clause of the sentence on that finger
    if told and _one_taken_up(desk, scene, told[-1].order):
        return []
    if told and desk.laid(*_SEWN_BY, since=told[-1].order + 1, before=noun):
        return []  # 'For the profundus I used 4-0 Ethibond. The ends were frayed': of the one that is being sewn
    found = list(dict.fromkeys(Target(*f.entry) for f in told))
    found = [t for t in found if desk.extents.get(t) in HURT_KINDS and not _smoothed(desk, t)]
    return found if len(found) > 1 and set(targets) <= set(found) else []


def fetched_before(desk: Desk, scene: Scene) -> list[Target]:
    """'The profundus was brought out from under A2. The ends were clean': of the one cut tendon that was fetched."""
    before = desk.scene_before(scene)
    if scene.subjects or before is None or before.sentence.block != scene.sentence.block:
        return []
    named = [g for g in before.setting.groups if not g.reference]
    if _FETCHED.isdisjoint(before.said) or len(named) != 1 or named[0].every or not named[0].tendons:
        return []
    told = group_targets(before, named[0])
    return told if len(told) == 1 and desk.extents.get(told[0]) == "complete" else []


def _one_taken_up(desk: Desk, scene: Scene, since: int) -> bool:
    """'FDP of both cut through. Middle FDP first. The ends were clean': a tendon or finger named in between."""
    before = desk.scene_before(scene)
    while before is not None and before.sentence.i > since:
        named = any(g.tendons or g.digits for g in before.setting.groups)
        if named and before.kinds.isdisjoint(("extent", "hurt")):
            return True
        before = desk.scene_before(before)
    return False


def _line_of_a_tendon(scene: Scene) -> int:
    """'4. FDP: cut through, 100 %. Tidy faces.': the first word of a line that a tendon heads, else 0."""
    page, k = scene.page, scene.sentence.i
    while k > 0 and page.breaks[k] < Break.LINE:
        k -= 1
    return k if any(n in page.tendon_words for n in range(k, min(k + _HEAD, scene.sentence.i))) else 0


_HEAD = 3  # words


def _noun(scene: Scene, mention: Mention) -> int | None:
    """Return the word that names the ends beside what is said of them, or None."""
    first, last = scene.part(mention.i)
    reach = range(max(first, mention.i - _NEAR), min(last, mention.j + 3))
    return next((k for k in reach if scene.page.words[k] in _PLURALS), None)


def _owned(scene: Scene, noun: int, mention: Mention) -> bool:
    """'FDS ends clean', 'the ends of the profundus', 'stumps in the ring finger frayed': ends with an owner."""
    if scene.word_before(noun) in ("its", "whose"):
        return True
    first, _ = scene.part(noun)
    end = max(noun + 1, mention.j)
    return any(_before(scene, g, first, noun) or _behind(scene, g, noun, end) for g in scene.setting.groups)


def _before(scene: Scene, group: Group, first: int, noun: int) -> bool:
    if not first <= group.i < noun:
        return False
    told_cut = any(m.i == group.j and m.j == noun for m in scene.of("extent"))  # 'FDS completely divided ends neat'
    near = noun - group.j <= 2 and _PLURALS.isdisjoint(scene.words(group.j, noun))
    return group.j > noun or (near and not told_cut)


def _behind(scene: Scene, group: Group, noun: int, end: int) -> bool:
    if noun < group.i < end:
        return True
    lead = scene.words(end, group.i) if 0 <= group.i - end <= 3 else [""]
    return group.i >= end and (lead == [] or lead[0] in _PLACED)


def _smoothed(desk: Desk, target: Target) -> bool:
    """Tell whether a tendon was cut in part and not sewn: it has edges, but no ends."""
    return desk.extents.get(target) == "partial" and desk.treatments.get(target) != "repaired"
