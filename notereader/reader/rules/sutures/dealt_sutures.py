"""What a sentence that deals sutures out over fingers says of all of them, and of the finger that it leaves out.

'3-0 Ethibond was used throughout, four strands in the ring and two in the small'; 'each got a running 6-0, except the
index, where it was left out'.
"""

import itertools

from notereader.reader.groups import Group
from notereader.reader.scene import Scene
from notereader.vocabulary.wordlists import word_list

_OF_ALL = word_list("dealt_sutures", "of_all")
_ALL_BEFORE = word_list("dealt_sutures", "all_before")
_TURNS_TO_IT = word_list("dealt_out", "turns_to_it")
_FEWEST = 2  # places


def fingers_of_all(scene: Scene, i: int) -> list[Group]:
    """Return the fingers that sutures are dealt out over, where the clause of word i says its words of all; else []."""
    places = [g for g in scene.setting.groups if g.digits]
    kinds = {t for g in places for t in g.tendons}
    if len(places) < _FEWEST or len(kinds) > 1 or any(g.reference or g.excepted or g.generic for g in places):
        return []
    told = [d for g in places for d in g.digits]
    first, last = scene.part(i)
    if len(set(told)) < len(told) or any(first <= g.i < last for g in places):
        return []
    words = scene.words(first, last)
    of_all = any(a == "all" and b in _ALL_BEFORE for a, b in itertools.pairwise(words))
    return places if of_all or not _OF_ALL.isdisjoint(words) else []


def left_out_before(scene: Scene, i: int) -> Group | None:
    """Return the finger that a sentence leaves out, where word i stands in what it then says of that finger alone."""
    for group in scene.setting.groups:
        if not (group.excepted and group.digits and group.j <= i):
            continue
        own = not _TURNS_TO_IT.isdisjoint(scene.words(group.j, min(group.j + 2, i))) or scene.save_that(group)
        again = any(g.digits and group.j <= g.i <= i for g in scene.setting.groups)
        if own and not again:
            return group
    return None


def listed_before(before: Scene | None, scene: Scene) -> list[Group]:
    """'Number of strands: index 4, ring 2. Thread: 4-0 nylon.': the fingers of a list, of whom a second label tells."""
    groups = before.setting.groups if before is not None and not scene.setting.groups else []
    if before is None or before.sentence.block != scene.sentence.block or len(groups) < _FEWEST:
        return []
    labelled = ":" in scene.words(scene.sentence.i, min(scene.sentence.i + _LABEL, scene.sentence.j))
    headed = ":" in before.words(before.sentence.i, groups[0].i)[-1:]
    plain = all(g.digits and not (g.tendons or g.reference or g.excepted) for g in groups)
    return groups if labelled and headed and plain else []


_LABEL = 5  # words
