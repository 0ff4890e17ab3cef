"""How the ends of a tendon were found, and what was trimmed away."""

from notereader.reader.bearing import Target
from notereader.reader.desk import Desk, carried, tendon_owner
from notereader.reader.page import Mention
from notereader.reader.rules.behaviour import foreign, lay_behaviour
from notereader.reader.rules.suture_owners import respective
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_OF_TENDON_WORDS = word_list("quality", "of_tendon_words")
_TRIMMED_WORDS = word_list("quality", "trimmed_words")


def ends(desk: Desk, scene: Scene) -> None:
    """Find how the ends were: 'ends clean', 'ragged stumps', 'the profundus was frayed'."""
    found = [m for m in scene.of("ends") if scene.told(m.i) and not foreign(scene, m.i, m.j)]
    if not found:
        return
    strong = [m for m in found if {"ends", "end", "edges", "stumps"} & set(scene.words(m.i, m.j))]
    nouns = scene.of("endword")
    kept: list[Mention] = []
    for mention in found:
        near_noun = any(abs(n.i - mention.i) <= 9 and scene.word_before(n.i) not in ("bone", "nerve") for n in nouns)
        if (near_noun or mention in strong or _of_tendon(scene, mention)) and not _negated_quality(scene, mention):
            kept.append(mention)
    for mention in _one_part_each(scene, kept):
        targets = _cut_owners(desk, scene, mention)
        targets = respective(scene, mention.i, [m.i for m in found], targets)
        for target in targets:
            desk.tendon(scene, target, "ends", mention.value, [_with_noun(scene, mention, nouns)], "ends as found")


def _negated_quality(scene: Scene, mention: Mention) -> bool:
    return scene.negated(mention.i, mention.j, 3) or (
        mention.value == "clean" and scene.word_before(mention.i) in ("washed", "to", "until")
    )


def _one_part_each(scene: Scene, kept: list[Mention]) -> list[Mention]:
    """'ragged, trimmed back to clean tendon': as found counts; a clean end after trimming does not."""
    worse = [m for m in kept if m.value != "clean"]
    if not worse:
        return [m for m in kept if not _after_trimming(scene, m)]
    return [m for m in kept if m.value != "clean" or (m.i < worse[0].i and not _after_trimming(scene, m))]


def _after_trimming(scene: Scene, mention: Mention) -> bool:
    if mention.value != "clean":
        return False
    trims = [m for m in scene.of("restored", "deed") if m.value == "trimmed" and m.j <= mention.i]
    return any(set(scene.words(t.j, mention.i)) & {"to", "until", "back", "for"} for t in trims)


def _of_tendon(scene: Scene, mention: Mention) -> bool:
    """'the profundus was frayed', 'cut through cleanly': said of the tendon itself."""
    subject = scene.owner(mention.i, mention.j)
    if subject is None or subject.kind != "tendon":
        return False
    word = " ".join(scene.words(mention.i, mention.j))
    first, last = scene.part(mention.i)
    if word == "clean" and (last - first <= 2 or scene.word_before(mention.i) == "cut"):
        return True
    if word in _OF_TENDON_WORDS:
        return False
    return abs(subject.j - mention.i) <= 8 or abs(subject.i - mention.j) <= 3


def _with_noun(scene: Scene, mention: Mention, nouns: list[Mention]) -> tuple[int, int]:
    near = [n for n in nouns if abs(n.i - mention.i) <= 6]
    if not near:
        return mention.i, mention.j
    noun = min(near, key=lambda n: abs(n.i - mention.i))
    return min(noun.i, mention.i), max(noun.j, mention.j)


def _cut_owners(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """Return the cut tendons a remark on the ends belongs to."""
    targets, group = tendon_owner(desk, scene, mention.i, mention.j)
    if targets:
        return [t for t in targets if desk.extents.get(t) != "intact"]
    digits: tuple[str, ...] = ()
    if group is not None:
        digits = group.digits
        if group.generic == "all" or group.every:
            digits = digits or tuple(d for g in scene.setting.groups if g.digits for d in g.digits)
            return _whole(desk, digits or None)
    if _all_words(scene, mention):
        told = [t for t in _whole(desk, digits or None) if _named_before(desk, scene, t)]
        return told or _whole(desk, digits or None)
    if not scene.subjects and scene.setting.digits:
        here = [t for t in _whole(desk, scene.setting.digits) if _named_before(desk, scene, t)]
        if len(here) > 1:
            return here
    if "these" in scene.words(scene.sentence.i, mention.i) and scene.setting.focus:
        return [t for t in scene.setting.focus if desk.extents.get(t) != "intact"]
    if scene.setting.wide and not digits:
        return [t for t in _whole(desk, None) if t.tendon in scene.setting.wide]
    focus = [t for t in scene.setting.focus if desk.extents.get(t) != "intact" and (not digits or t.digit in digits)]
    if focus:
        return focus
    cut = _whole(desk, digits or scene.setting.digits or None)
    return cut if len(cut) == 1 or group is not None else carried(desk, scene, digits or None)[0]


def _named_before(desk: Desk, scene: Scene, target: Target) -> bool:
    """Tell whether the extent of a tendon was told before this sentence."""
    entry = (target.digit, target.tendon, target.slip)
    told = [f.order for f in desk.told_of("repairs", entry) if f.field == "extent" and not f.header]
    return bool(told) and min(told) < scene.sentence.j


def _all_words(scene: Scene, mention: Mention) -> bool:
    words = scene.words(scene.sentence.i, scene.sentence.j)
    if "every" in words and "end" in words:
        return True
    return (
        any(w in words for w in ("all", "four", "every"))
        and any(w in words for w in ("ends", "stumps", "edges"))
        and "both" not in words
    )


def _whole(desk: Desk, digits: tuple[str, ...] | None) -> list[Target]:
    """Return every cut tendon of the digits given; partial cuts that were only smoothed have no ends."""
    return [t for t in desk.cut(digits) if desk.extents.get(t) != "partial" or desk.treatments.get(t) == "repaired"]


def trimmed(desk: Desk, scene: Scene) -> None:
    """'trimmed back 3 mm', '2 mm resected from each end'."""
    for q in scene.quantities:
        if q.unit != "mm" or q.high is None or not scene.told(q.i):
            continue
        verbs = [m for m in scene.of("restored", "deed") if m.value in ("trimmed", "excised") and -6 <= m.i - q.j <= 5]
        first, last = scene.part(q.i)
        verbs = [m for m in verbs if first <= m.i < last or abs(m.i - q.i) <= 4]
        if (
            not verbs
            or foreign(scene, q.i, q.j)
            or any(m.kind == "pulley" and first <= m.i < last for m in scene.mentions)
        ):
            continue
        words = set(scene.words(scene.sentence.i, scene.sentence.j))
        named = words & _TRIMMED_WORDS
        if not named and (
            words & {"skin", "nerve", "wound", "bone", "nail"} or not (desk.cut() and verbs[0].value == "trimmed")
        ):
            continue
        targets = _cut_owners(desk, scene, Mention("ends", "", q.i, q.j))
        targets = respective(scene, q.i, [p.i for p in scene.quantities if p.unit == "mm"], targets)
        i, j = min(verbs[0].i, q.i), max(verbs[0].j, q.j)
        lay_behaviour(desk, scene, targets, "trimmed_mm", q.high, i, j, "tendon trimmed away")
