"""Where the knots of the core lie."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Group, Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.needs import needs
from notereader.reader.page import Break, Mention
from notereader.reader.rules.results.behaviour import told_of_several_before
from notereader.reader.rules.sutures.suture_owners import lay_suture, targets_of
from notereader.reader.scene import Scene

_OF_OTHERS = frozenset(["epitendinous", "peripheral", "epi", "nerve", "pulley", "skin", "stay", "dressing", "drain"])
_NERVES = frozenset(["anynerve", "sided", "anyartery", "bundle"])


def _goes_on(desk: Desk, scene: Scene) -> bool:
    """'Knots: FPL inside the join. The others on the surface.', 'IF buried.': the knots told of just before."""
    before = desk.scene_before(scene)
    if before is None or before.sentence.block != scene.sentence.block or scene.sentence.j - scene.sentence.i > 8:
        return False
    return bool(before.of("knotword")) and bool(before.of("knot")) and bool(scene.setting.groups)


@needs(kinds=["knot", "knotword"])
def knot(desk: Desk, scene: Scene) -> None:
    """Find where the knots lie: 'knots buried', 'knot outside'."""
    words = scene.of("knotword")
    if _dealt_out(desk, scene):
        return
    _lay_the_rest(desk, scene)
    for mention in [*scene.of("knot"), *_in_or_out(scene)]:
        if scene.next_word(mention.j) in ("arch", "palmar", "branch", "radial", "fascia"):
            continue  # 'Superficial arch tied'
        own = {"knot", "knots"} & set(scene.words(mention.i, mention.j)) or _misheard(scene, mention)
        near = [mention] if own else [w for w in words if abs(w.i - mention.i) <= 9]
        near = near or ([mention] if _goes_on(desk, scene) else [])
        if not near or not scene.told(mention.i) or scene.negated(mention.i, mention.j, 3):
            continue
        if _of_the_strands(scene, mention, near[0]):
            continue
        if any(m.kind == "role" and m.value == "skin" for m in scene.mentions) and not scene.of("strandword", "stitch"):
            continue
        if any(m.kind in ("button",) for m in scene.mentions) and "button" in scene.words(
            scene.sentence.i, scene.sentence.j
        ):
            continue
        before = scene.words(max(scene.part(near[0].i)[0], near[0].i - 5), near[0].i)
        before = before[max((n + 1 for n, w in enumerate(before) if w in _ANEW), default=0) :]
        if not _OF_OTHERS.isdisjoint(before):
            continue  # 'epitendinous knot buried', 'pulley suture knot outside'
        if (
            scene.words(mention.i, mention.j) in (["inside"], ["outside"], ["surface"], ["superficial"])
            and _apart(scene, near[0], mention) > _REACH
        ):
            continue
        subject = scene.owner(near[0].i, near[0].j)
        if subject is not None and subject.kind in _NERVES and subject.i < near[0].i:
            continue  # 'Repair of nerve: two 9-0, knots buried'
        i, j = min(near[0].i, mention.i), max(near[0].j, mention.j)
        own_stitch = _of_a_stitch(desk, scene, near[0]) or _so_many_here(desk, scene, near[0])
        own_stitch = own_stitch or _of_fingers(desk, scene, near[0]) or told_of_several_before(desk, scene)
        if own_stitch:
            for target in own_stitch:
                desk.tendon(scene, target, "knot", mention.value, [(i, j)], "place of the knots")
        elif _of_all(scene) or _of_as_many(scene, near[0], len(desk.sewn())):
            for target in desk.sewn():
                desk.tendon(scene, target, "knot", mention.value, [(i, j)], "place of the knots")
        else:
            lay_suture(desk, scene, i, j, "knot", mention.value, "place of the knots")
        return


def _of_the_strands(scene: Scene, place: Mention, knots: Mention) -> bool:
    """'Eight strands between the ends, knots left on the surface': the first place is not where the knots lie."""
    apart = place.j <= knots.i and not _STOPS.isdisjoint(scene.words(place.j, knots.i))
    return apart and any(m.i >= knots.j and m.value != place.value for m in scene.of("knot"))


_STOPS = frozenset([",", ";"])


def _dealt_out(desk: Desk, scene: Scene) -> bool:
    """'Knots: index buried, FPL external', 'knots inside RF, outside LF', 'buried in FDP, outside in FDS'.

    RETURNS: whether the sentence gives each of several fingers or tendons a place of its own.
    """
    places = [m for m in scene.of("knot") if scene.told(m.i) and not scene.negated(m.i, m.j, 3)]
    if len({m.value for m in places}) < 2 or not scene.of("knotword"):
        return False
    groups = [g for g in scene.setting.groups if (g.digits or g.tendons) and not g.reference]
    own = [(m, _beside(scene, m, groups)) for m in places]
    if any(group is None for _, group in own):
        own = [(m, _told_before(scene, m, groups)) for m in places]
    if any(group is None for _, group in own) or len({id(group) for _, group in own}) < len(own):
        return False
    for mention, group in own:
        for target in _all_of_kind(desk, scene, group) if group is not None else []:
            desk.tendon(scene, target, "knot", mention.value, [(mention.i, mention.j)], "place of the knots")
    return True


def _told_before(scene: Scene, place: Mention, groups: list[Group]) -> Group | None:
    """'The FDP with four strands, knots buried; the FDS with two, knots outside': the last one named before a place."""
    before = [g for g in groups if g.j <= place.i]
    knots = bool(before) and any(before[-1].j <= k.i <= place.i for k in scene.of("knotword"))
    own = knots or {"knot", "knots"} & set(scene.words(place.i, place.j))
    return before[-1] if before and own else None


def _all_of_kind(desk: Desk, scene: Scene, group: Group) -> list[Target]:
    """'Knots: buried in FDP, outside in FDS', under no finger: of every FDP and FDS that was sewn."""
    digits = any(g.digits for g in scene.setting.groups)
    if digits or not group.tendons or scene.sentence.i != min(m.i for m in scene.of("knotword")):
        return targets_of(desk, scene, group)
    return [t for t in desk.sewn() if t.tendon in group.tendons] or targets_of(desk, scene, group)


def _beside(scene: Scene, mention: Mention, groups: list[Group]) -> Group | None:
    """Return the finger or tendon that stands right before or behind the place of a knot."""
    for group in groups:
        behind = scene.words(mention.j, group.i)
        before = scene.words(group.j, mention.i)
        if group.i >= mention.j and len(behind) <= 2 and _IN_THE.issuperset(behind):
            return group
        if group.j <= mention.i and len(before) <= 2 and _ARE.issuperset(before):
            return group
    return None


_IN_THE = frozenset(["in", "the", "on", "for"])
_ARE = frozenset(["was", "were", "is", "are", ":", "left", "knot", "knots"])


def _of_all(scene: Scene) -> bool:
    """'Knots buried, all', 'all knots lie between the ends', 'buried in all': of every repair told."""
    if any(g.tendons or g.digits for g in scene.setting.groups) or scene.setting.sentence.prefix:
        return False
    words = scene.words(scene.sentence.i, scene.sentence.j)
    pairs = list(zip(words, [*words[1:], "."], strict=True))
    if any([":", "all"] in (scene.words(m.i - 2, m.i), scene.words(m.i - 1, m.i + 1)) for m in scene.of("knot")):
        return True  # 'Knots: all outside'
    counted = any(count_of(w) for w in words)  # 'four knots in all'
    ends = [n for n, (a, b) in enumerate(pairs) if a == "all" and b in (".", ",", ";")]
    closes = any(words[n - 1] != "in" or not counted for n in ends)
    every = any(a in ("every", "each") and b == "knot" for a, b in pairs)
    return closes or every or any(a == "all" and b in _EVERY_ONE for a, b in pairs)


def _of_a_stitch(desk: Desk, scene: Scene, knots: Mention) -> list[Target]:
    """'The knots of the Yoshizu suture lie outside': of the tendons that were given that stitch."""
    behind = scene.words(knots.j, knots.j + 2)
    named = [m for m in scene.of("stitch") if m.i == knots.j + 2 and behind == ["of", "the"]]
    if not named or any(g.tendons or g.digits for g in scene.setting.groups):
        return []
    told = [f for f in desk.laid("stitch", before=knots.i) if f.value == named[0].value]
    return list(dict.fromkeys(Target(*f.entry) for f in told))


def _of_fingers(desk: Desk, scene: Scene, knots: Mention) -> list[Target]:
    """'The core knots of the middle finger were buried': of all that was sewn in that finger, and of no other."""
    groups = [g for g in scene.setting.groups if g.digits and g.i >= knots.j and not g.reference]
    if not groups or any(g.tendons for g in groups) or scene.words(knots.j, groups[0].i) not in _OF_THE:
        return []
    return desk.sewn(tuple(dict.fromkeys(d for g in groups for d in g.digits)))


_OF_THE = (["of", "the"], ["in", "the"], ["of"], ["in"])


def _so_many_here(desk: Desk, scene: Scene, knots: Mention) -> list[Target]:
    """'Cores in the index and ring finger, and of 4-0 in the long, the knots in all three buried': of those named."""
    behind = [w for w in scene.words(knots.j, min(knots.j + 5, scene.sentence.j)) if w not in ("the", "these", "all")]
    if behind[:1] not in (["of"], ["in"]) or len(behind) == 1:
        return []
    named = [g for g in scene.setting.groups if (g.tendons or g.digits) and g.j <= knots.i and not g.reference]
    found = dict.fromkeys(t for g in named if g.tendons for t in targets_of(desk, scene, g))
    kinds = {t.tendon for t in found}
    fingers = [t for g in named if not g.tendons for t in desk.sewn(g.digits) if t.tendon in kinds]
    found.update(dict.fromkeys(t for t in fingers if t.digit))
    return list(found) if len(found) > _PAIR and count_of(behind[1]) == len(found) else []


_PAIR = 2


def _of_as_many(scene: Scene, knots: Mention, sewn: int) -> bool:
    """'Knots of the three repairs lie between the ends', 'the knots of both are outside': of as many as were sewn."""
    if any(g.tendons or g.digits for g in scene.setting.groups if g.i > knots.i):
        return False
    behind = [w for w in scene.words(knots.j, min(knots.j + 5, scene.sentence.j)) if w not in ("the", "these", "all")]
    if behind[:1] not in (["of"], ["in"]) or len(behind) == 1:
        return False
    return (2 if behind[1] == "both" else count_of(behind[1])) == sewn > 1


_EVERY_ONE = frozenset(["knots", "groups", "repairs", "cores", "core", "tendons"])
_ANEW = frozenset(["and", ".", "+", "&"])  # 'running epitendinous, and the knots buried' goes back to the core


def _in_or_out(scene: Scene) -> list[Mention]:
    """'Purchase 9 mm, knots in.', 'knot: out': a place in one small word, and nothing behind it that it leads to."""
    found = []
    for word in scene.of("knotword"):
        k = word.j + (scene.next_word(word.j) == ":")
        value = _SMALL_PLACES.get(scene.next_word(k))
        closes = k + 1 >= scene.sentence.j or scene.page.breaks[k + 1] >= Break.COLUMN
        if value is not None and (closes or scene.next_word(k + 1) in _ENDED):
            found.append(Mention("knot", value, k, k + 1))
    return found


def _apart(scene: Scene, knots: Mention, place: Mention) -> int:
    """Count the words from the knots to their place, names left out: 'knots of the ring FDP outside'."""
    named = {k for g in scene.setting.groups for k in range(g.i, g.j)}
    named |= {k for m in scene.of("stitch") for k in range(m.i, m.j)}
    named |= {k for k in range(knots.j, place.i) if scene.page.standing[k] == "unticked"}  # '[ ] between ends [x] out'
    return sum(k not in named for k in range(min(knots.i, place.i), max(knots.i, place.i)))


_REACH = 5  # words
_SMALL_PLACES = {"in": "buried", "within": "buried", "inboard": "buried", "out": "external"}
_ENDED = frozenset(["", ".", ",", ";", ")", "|", "(", "+", "and"])


def _misheard(scene: Scene, mention: Mention) -> bool:
    """'The not was buried between the ends': a knot, as a dictation hears it."""
    words = scene.words(mention.i, mention.j)
    return words[:1] == ["nots"] or (words[:1] == ["not"] and words[1:2] in (["was"], ["are"], ["is"]))


def _lay_the_rest(desk: Desk, scene: Scene) -> None:
    """'In the FDS the knot lay outside, the remaining knots being buried': of all sewn but those told of before."""
    for knots in scene.of("knotword"):
        place = next((m for m in scene.of("knot") if 0 <= m.i - knots.j <= _SOON and scene.told(m.i)), None)
        if scene.word_before(knots.i) not in ("remaining", "other") or place is None:
            continue
        named = [g for g in scene.setting.groups if g.tendons and g.j <= knots.i and not g.reference]
        told = {t for g in named for t in targets_of(desk, scene, g)}
        for target in [t for t in desk.sewn() if t not in told] if told else []:
            desk.tendon(scene, target, "knot", place.value, [(knots.i, place.j)], "place of the knots")


_SOON = 4  # words
