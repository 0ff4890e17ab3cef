"""The state of a cut end told without a word for the end: 'FPL divided in zone I, at the crease, frayed.'"""

from notereader.reader.desk import HURT_KINDS, Desk, Finding
from notereader.reader.groups import Target
from notereader.reader.page import Break, Mention
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_OF_TENDON_WORDS = word_list("quality", "of_tendon_words")
_BESIDE = word_list("quality", "beside_ends")
_POINTS = frozenset(["it", "they", "these", "this", "which"])
_LOOKS = frozenset(["was", "were", "is", "are", "looked", "look", "looks", "appeared", "being"])
_END_NOUNS = frozenset(["end", "ends", "stump", "stumps", "edges", "edge", "face", "faces", "tip"])
_OTHERS = ("pulley", "pulleys", "structure", "sided", "bundle", "anynerve", "anyartery", "bone", "fracture", "joint")
_OPENING = 4  # words


def ends_alone(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """Return the cut tendons whose ends a word tells of that stands alone behind the cut, or behind 'it was'."""
    return _behind_the_cut(desk, scene, mention) or _taken_up(desk, scene, mention)


def alone_in_its_part(scene: Scene, mention: Mention) -> bool:
    """Tell whether nothing but small words and words of the same kind stand between the commas around a word."""
    first, last = scene.part(mention.i)
    told = {k for m in scene.of("ends") if first <= m.i < last for k in range(m.i, m.j)}
    rest = [w for k, w in enumerate(scene.words(first, last), first) if k not in told]
    return _BESIDE.issuperset(w for w in rest if w[0].isalnum()) and not any(w in ("?", ":", "|") for w in rest)


def _behind_the_cut(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """'FDP cut to 60 %, radial side, ragged', 'complete, zone II, smooth' in a cell of the FDP."""
    if not alone_in_its_part(scene, mention) or scene.page.breaks[scene.part(mention.i)[0]] >= Break.COLUMN:
        return []
    if mention.value == "attenuated" and " ".join(scene.words(mention.i, mention.j)) in _OF_TENDON_WORDS:
        return []  # 'FDS cut too, but thread-like': its build
    told = desk.laid("extent", since=scene.sentence.i, before=mention.i)
    if not told or told[-1].group != "repairs" or told[-1].value not in HURT_KINDS:
        return []
    last = told[-1].order
    if any(last <= m.i < mention.i for m in scene.of(*_OTHERS) if not _is_where(scene, m)):
        return []
    found = dict.fromkeys(Target(*f.entry) for f in told if f.order == last or _joined(scene, f, told[-1]))
    return [t for t in found if desk.extents.get(t) in HURT_KINDS]


def _joined(scene: Scene, first: Finding, last: Finding) -> bool:
    """'FDP 100% + FDS 100%, frayed': two flexors of one finger told to be cut alike, one right behind the other."""
    alike = (first.entry[0], first.value, first.group) == (last.entry[0], last.value, last.group)
    if not alike or first.order > last.order:
        return False
    held = {k for m in scene.of("extent", "tendon", "slip") for k in range(m.i, m.j)}
    between = [w for k, w in enumerate(scene.words(first.order, last.order), first.order) if k not in held]
    return _JOINS.issuperset(between)


_JOINS = frozenset(["+", "&", "and", ",", "the"])


def _is_where(scene: Scene, thing: Mention) -> bool:
    """'At the PIP joint', 'over the proximal phalanx', 'just beyond A2': where the cut lay."""
    lead = scene.words(max(scene.part(thing.i)[0], thing.i - _OPENING), thing.i)
    return not _PLACED.isdisjoint(lead)


_PLACED = word_list("quality", "places_of_a_cut")


def _taken_up(desk: Desk, scene: Scene, mention: Mention) -> list[Target]:
    """'Its stump had slipped back to A1. It was frayed.': of the one tendon whose end was just spoken of."""
    first, _ = scene.part(mention.i)
    told = {k for m in scene.of("ends") for k in range(m.i, m.j)}
    lead = [w for k, w in enumerate(scene.words(first, mention.i), first) if w not in _BESIDE and k not in told]
    pointed = len(lead) == len(_PRONOUN) and lead[0] in _POINTS and lead[1] in _LOOKS
    focus = [t for t in scene.setting.focus if _is_hurt(desk, t)]
    if not pointed or len(focus) != 1 or any(s.j <= mention.i for s in scene.subjects if s.i >= first):
        return []
    if first > scene.sentence.i:
        return focus if _opens_with_an_end(scene) else []
    before = desk.scene_before(scene)
    if before is None or before.sentence.section != scene.sentence.section:
        return []
    tells = _opens_with_an_end(before) or _ends_last(before) or _cut_last(desk, before, scene)
    return focus if tells or (mention.value != "clean" and _of_one_tendon(before)) else []


def _is_hurt(desk: Desk, target: Target) -> bool:
    """Tell whether a tendon, or the tendon of a slip, was told to be cut."""
    return desk.extents.get(target, desk.extents.get(target._replace(slip=None))) in HURT_KINDS


_PRONOUN = ("it", "was")


def _opens_with_an_end(scene: Scene) -> bool:
    """'The proximal end had gone to the palm': what a sentence tells of is an end."""
    first = scene.sentence.i
    lead = scene.words(first, min(first + _OPENING, scene.sentence.j))
    return not _END_NOUNS.isdisjoint(lead) and "bone" not in lead and "nerve" not in lead


def _ends_last(scene: Scene) -> bool:
    """'I found the tendon end swollen at the mouth of the sheath': the last thing named, but for places, is an end."""
    ends = [m.i for m in scene.of("endword") if scene.told(m.i)]
    return bool(ends) and not any(m.i > ends[-1] for m in scene.of("tendon", *_OTHERS) if not _is_where(scene, m))


def _of_one_tendon(scene: Scene) -> bool:
    """'The ulnar slip was not sutured': a sentence about one tendon and nothing else."""
    named = [g for g in scene.setting.groups if not g.reference]
    return len(named) == 1 and bool(named[0].tendons) and not scene.of(*_OTHERS)


def _cut_last(desk: Desk, before: Scene, scene: Scene) -> bool:
    """Tell whether the last thing a sentence told was the cut of a tendon, and nothing of another structure."""
    told = desk.laid("extent", since=before.sentence.i, before=scene.sentence.i)
    return bool(told) and told[-1].value in HURT_KINDS and not before.of(*_OTHERS)
