"""A cut that was not sewn, told without a word for leaving it: 'FDP was repaired, FDS was not', 'got no stitch'."""

from notereader.reader.desk import HURT_KINDS, Desk
from notereader.reader.groups import Target
from notereader.reader.needs import needs
from notereader.reader.rules.owners import tendon_owner
from notereader.reader.scene import Scene, group_targets
from notereader.vocabulary.wordlists import phrases_by_first_word, word_list

_WAS = frozenset(["was", "were"])
_ON_PURPOSE = word_list("not_sewn", "on_purpose")
_STITCHES = word_list("not_sewn", "stitches")
_NOT_GIVEN = phrases_by_first_word("not_sewn", "not_given")
_ENDS = frozenset(["", ".", ",", ";", ":", ")"])
_GOES_ON = frozenset(["and", "nor", "or", "so", "because", "as"])
_OPENING = 3  # words: 'neither was sutured'
_TWO = 2


@needs(words={"not", "neither", "no", "none"})
def not_sewn(desk: Desk, scene: Scene) -> None:
    """Find the tendons that a sentence tells were not sewn."""
    if scene.sentence.section in ("instructions", "closure", "admin", "indication") or scene.header:
        return
    _was_not(desk, scene)
    _neither_was(desk, scene)
    _given_none(desk, scene)


def _was_not(desk: Desk, scene: Scene) -> None:
    """'FDP was repaired, FDS was not', 'FDP was, FDS was deliberately not': what is denied is the repair."""
    sewn = [d for d in scene.of("deed") if d.value == "repaired" and scene.told(d.i)]
    for group in (g for g in scene.setting.groups if g.tendons and not (g.reference or g.excepted)):
        k = group.j
        while k < scene.sentence.j and scene.page.words[k] in _WAS | _ON_PURPOSE:
            k += 1
        bare = scene.words(k, k + 1) == ["not"] and k > group.j and scene.next_word(k + 1) in _ENDS
        if bare and any(d.j <= group.i for d in sewn):
            _leave(desk, scene, group_targets(scene, group), group.i, k + 1)


def _neither_was(desk: Desk, scene: Scene) -> None:
    """'FDP shows a 20 % cut, FDS a 10 % one. Neither was sutured.': of the two told right before."""
    first, before = scene.sentence.i, desk.scene_before(scene)
    if scene.page.words[first] != "neither" or before is None or before.sentence.block != scene.sentence.block:
        return
    sewn = (d for d in scene.of("deed") if d.value == "repaired" and scene.page.words[d.i - 1] in _WAS)
    told = [d for d in (*sewn, *scene.of("mending")) if d.j - first <= _OPENING]  # 'neither was repaired'
    named = [t for g in before.setting.groups if g.tendons and not g.reference for t in group_targets(before, g)]
    if told and len(set(named)) == _TWO and not any(g.tendons for g in scene.setting.groups):
        _leave(desk, scene, named, first, told[0].j)


def _given_none(desk: Desk, scene: Scene) -> None:
    """'The FDP has a 20 % nick that did not get a stitch', 'it was given no suture': of a tendon cut in part."""
    words = scene.page.words
    for k in (k for k in range(scene.sentence.i, scene.sentence.j) if words[k] in _NOT_GIVEN):
        given = next((w for w in _NOT_GIVEN[words[k]] if words[k : k + len(w)] == w), None)
        at = k + len(given) if given else k
        at += words[at : at + 1] in (["a"], ["any"])
        closed = at < scene.sentence.j and scene.next_word(at + 1) in _ENDS | _GOES_ON
        if not given or not closed or words[at] not in _STITCHES or not scene.told(k):
            continue  # 'it did not need a repair of the core'
        found = tendon_owner(desk, scene, k, at + 1)[0] or list(scene.setting.focus)
        _leave(desk, scene, [t for t in found if desk.extents.get(t) == "partial"], k, at + 1)


def _leave(desk: Desk, scene: Scene, targets: list[Target], i: int, j: int) -> None:
    for target in targets:
        if desk.extents.get(target) in HURT_KINDS and target not in desk.treatments:
            desk.tendon(scene, target, "treatment", "left", [(i, j)], "treatment left")
