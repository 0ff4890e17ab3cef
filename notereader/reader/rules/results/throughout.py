"""Remarks on every repair of the note or of the paragraph: 'no gap anywhere', 'everything ran freely'.

Such a remark names no tendon and takes up none; its own words say how far it reaches. A repair that was told to gap or
to catch before keeps what was told of it: a remark made on all of them in passing takes nothing back.
"""

from itertools import pairwise

from notereader.reader.desk import Desk, Finding
from notereader.reader.groups import Group, Target
from notereader.reader.page import Break
from notereader.reader.rules.finger_lines import of_one_finger
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_ANYWHERE = word_list("throughout", "anywhere")
_ALL_THERE_WAS = word_list("throughout", "all_there_was")
_TENDONS = word_list("throughout", "tendons")
_SITES = word_list("throughout", "sites")
_ONE = word_list("throughout", "one")
_FINGERS = frozenset(["fingers", "digits", "digital", "cascade"])
_NONE = frozenset(["no"])
_IT = frozenset(["it", "its"])
_BUT = frozenset(["else", "but", "except", "more", "besides", "other", "elsewhere", "here", "there"])
_TELL_REPAIR = frozenset(["strands", "stitch", "size", "material", "peripheral", "peripheral_size"])


def throughout(desk: Desk, scene: Scene, i: int, j: int) -> list[Target]:
    """Return the sewn tendons that words i to j are said of where they are said of all; [] where they are not."""
    if any(g.i == i for g in scene.setting.groups) or any(m.i == i for m in scene.of("test")):
        return []  # what is tested, and not what was seen
    taken_up = [g for g in scene.setting.groups if g.generic and g.i < i]
    if any(scene.word_before(g.i) not in _NONE for g in taken_up):
        return []  # 'In both repairs: no gapping, nothing bulky'
    last = max(scene.part(i)[1], scene.part(j - 1)[1])
    words = scene.words(scene.sentence.i, last)
    if not _BUT.isdisjoint(words) or _of_one(words):
        return []
    marks = _marks_at(scene, i, j, last)
    if not marks:
        return []
    begin = min([scene.part(i)[0], *marks[-1:]])
    if any((g.digits or g.tendons) and not g.reference and begin <= g.i < last for g in scene.setting.groups):
        return []
    found = _meant(desk, scene, begin, anywhere=any(_is_anywhere(scene, k) for k in marks))
    return [t for t in found if not _went_wrong(desk, t)] if len(found) > 1 else []


def moved_together(desk: Desk, scene: Scene) -> list[Target]:
    """'No gap on passive extension of the fingers', 'no gapping at the suture sites': what names none is of them all.

    Only what went well: of which finger a gap was, such a sentence does not tell.
    """
    results = scene.of("gap", "glide")
    form = _only_answer(desk, scene)
    went_well = form or all(m.value in _WENT_WELL for m in results)
    if not results or not went_well or not _WHICH.isdisjoint(scene.said - (_NOUGHT if form else frozenset())):
        return []  # the words that say of which are read elsewhere
    sites = any(a in _OF_REPAIR and b in _PLURAL_SITES for a, b in pairwise(_said(scene)))
    if any(not _is_sites(scene, g) for g in scene.setting.groups) or len({t.digit for t in scene.setting.focus}) > 1:
        return []
    if not (sites or form) and (_of_one(_said(scene)) or not (_moves_fingers(scene) or _moves_wrist(scene))):
        return []
    sewn = [t for t in desk.sewn() if _told_before(desk, scene, t) and not _went_wrong(desk, t)]
    if not (sites or form):
        sewn = [t for t in sewn if t.digit]
    if not (sites or form) and not _moves_fingers(scene):
        sewn = [t for t in sewn if _sewn_here(desk, scene, t)]
    return sewn if len({t.digit for t in sewn}) > 1 else []


def sutures_moved(desk: Desk, scene: Scene) -> list[Target]:
    """'On passive movement the sutures glide well, no gap': several, which are all that were sewn in the finger."""
    results, words = scene.of("gap", "glide"), _said(scene)
    moved = any(words[k : k + 2] == ["the", "sutures"] and words[k + 2] in _GLIDE for k in range(len(words) - 2))
    if not moved or scene.setting.groups or len(scene.setting.digits) != 1:
        return []
    if not all(m.value in _WENT_WELL for m in results) or not _WHICH.isdisjoint(scene.said):
        return []
    sewn = [t for t in desk.sewn(scene.setting.digits) if _sewn_here(desk, scene, t) and not _went_wrong(desk, t)]
    return sewn if len(sewn) > 1 else []


_GLIDE = word_list("throughout", "glide")


def _only_answer(desk: Desk, scene: Scene) -> bool:
    """'Gapping: none' on a form that asks it once, for all there was to repair."""
    words = _said(scene)
    answered = words[:1] != [] and words[0] in _ASKED and words[1:2] == [":"] and words[2:3] != []
    if not answered or words[2] not in _NOUGHT or words.count(":") > 1:
        return False
    asked = [s for s in desk.having("gap") if _said(s)[:1] == words[:1] and _said(s)[1:2] == [":"]]
    return len(asked) == 1 and scene.page.breaks[scene.sentence.i] >= Break.LINE and not of_one_finger(desk, scene)


_NOUGHT = frozenset(["none", "nil", "no", "0"])
_ASKED = frozenset(["gap", "gaps", "gapping"])


def _moves_fingers(scene: Scene) -> bool:
    """'On passive extension of the fingers', 'on moving fingers': several, of whom none is named."""
    moved = bool(scene.of("test")) or not _MOVED.isdisjoint(scene.said)
    other = any(a in _OTHERS and b in _FINGERS for a, b in pairwise(_said(scene)))
    return moved and not other and not _SEVERAL.isdisjoint(scene.said)


def _is_sites(scene: Scene, group: Group) -> bool:
    return not (group.tendons or group.digits) and not _PLURAL_SITES.isdisjoint(scene.words(group.i, group.j + 1))


def _said(scene: Scene) -> list[str]:
    return scene.words(scene.sentence.i, scene.sentence.j)


def _moves_wrist(scene: Scene) -> bool:
    return _said(scene)[:1] == ["tenodesis"] or ("wrist", "tenodesis") in pairwise(_said(scene))


_WHICH = frozenset(["any", "all", "each", "either", "both", "neither", "none", "every"])
_SEVERAL = frozenset(["fingers", "digits"])
_MOVED = frozenset(["moving", "bending", "extending", "stretching", "flexing", "straightening"])
_OTHERS = frozenset(["other", "uninjured", "adjacent", "neighbouring", "remaining"])
_OF_REPAIR = frozenset(["suture", "repair", "tendon"])
_PLURAL_SITES = frozenset(["sites", "lines", "places"])
_WENT_WELL = frozenset(["none", "free"])


def _marks_at(scene: Scene, i: int, j: int, last: int) -> list[int]:
    """Return the words of a sentence that say of words i to j that they are said of all."""
    first = scene.part(i)[0]
    marks = [k for k, is_mark in enumerate(_marks(scene.words(scene.sentence.i, last)), scene.sentence.i) if is_mark]
    return [k for k in marks if k < j or (k >= first and _is_anywhere(scene, k))]


def _meant(desk: Desk, scene: Scene, begin: int, anywhere: bool) -> list[Target]:
    """Return the sewn tendons that are all there were: of the note, of the fingers under whose name the words stand."""
    digits = scene.setting.digits if scene.setting.labelled else ()
    digits = digits or tuple(d for g in scene.setting.groups if not g.reference and g.j <= begin for d in g.digits)
    sewn = [t for t in desk.sewn(digits or None) if _told_before(desk, scene, t)]
    sewn = [t for t in sewn if t.digit] if not _FINGERS.isdisjoint(scene.said) else sewn
    return sewn if anywhere else [t for t in sewn if _sewn_here(desk, scene, t)] or sewn


def _marks(words: list[str]) -> list[bool]:
    """Tell of each word whether it begins what says that all are meant; of 'each tendon' other rules know."""
    return [
        one in _ANYWHERE
        or one in _ALL_THERE_WAS
        or (one in _NONE and two in _TENDONS)  # 'no tendon gapped'
        or (one == "any" and two in _SITES)  # 'no gap at any site'
        for one, two in zip(words, [*words[1:], ""], strict=True)
    ]


def _is_anywhere(scene: Scene, k: int) -> bool:
    return scene.page.words[k] in _ANYWHERE | _NONE | {"any"}


def _of_one(words: list[str]) -> bool:
    """'I looked at the join: no gapping anywhere', 'it did not catch anywhere on its way': one repair is spoken of."""
    return not _IT.isdisjoint(words) or any(a == "the" and b in _ONE for a, b in pairwise(words))


def _told_before(desk: Desk, scene: Scene, target: Target) -> bool:
    """Tell whether the repair was told of by the end of the sentence, or is nowhere told of in any detail."""
    told = [f.order for f in _sutures(desk, target) if not f.header]
    later = [f.order for f in desk.told_of("repairs", target) if f.field == "treatment" and not f.header]
    return bool(told) or not later or min(later) < scene.sentence.j


def _sewn_here(desk: Desk, scene: Scene, target: Target) -> bool:
    block = scene.sentence.block
    return any(desk.scene_at(f.order).sentence.block == block for f in _sutures(desk, target))


def _sutures(desk: Desk, target: Target) -> list[Finding]:
    told = desk.told_of("repairs", target)
    return [f for f in told if f.field in _TELL_REPAIR]


def _went_wrong(desk: Desk, target: Target) -> bool:
    told = desk.told_of("repairs", target)
    return any((f.field, f.value) in _WRONG for f in told)


_WRONG = frozenset([("gap", "seen"), ("glide", "catching"), ("glide", "restricted")])
