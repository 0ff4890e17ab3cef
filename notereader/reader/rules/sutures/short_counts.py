"""Strand counts told without their noun: 'FDS carries two', 'the index had two', 'there was room for two only'."""

from notereader.reader.desk import Desk
from notereader.reader.groups import Target
from notereader.reader.mentions.measures import count_of
from notereader.reader.rules.sutures.suture_owners import is_the_rest, suture_owners
from notereader.reader.scene import Scene
from notereader.vocabulary.sutures import stitches
from notereader.vocabulary.wordlists import word_list

_HAS = word_list("sutures", "elliptic_words")
_ONLY = frozenset(["only", "just", "but", "merely"])
_CLOSES = frozenset(["", ".", ",", ";", ")", "only", "alone"])
_ROOM = (["room", "for"], ["space", "for"])
_MOST = 8


def short_counts(desk: Desk, scene: Scene, counts: list[tuple[int, int, int]]) -> None:
    """Lay down the bare counts of a sentence; `counts`: the strand counts it tells in full.

    Where strands were counted in it or right before it, any bare count is one of strands. Behind the name of a stitch
    only a smaller one than the stitch has is: 'a cruciate in both; in the index there was room for two only'.
    """
    strands_told = bool(counts) or desk.strands_at == scene.sentence.i
    before = desk.scene_before(scene)
    if not (strands_told or scene.of("stitch") or (before is not None and before.of("stitch"))):
        return
    for k in range(scene.sentence.i + 1, scene.sentence.j):
        count = count_of(scene.page.words[k])
        if not 1 <= count <= _MOST or any(i <= k < j for _, i, j in counts) or not _stands_bare(scene, k, bool(counts)):
            continue
        for target in suture_owners(desk, scene, k, k + 1)[0]:
            if strands_told or count < _told_of(desk, target):
                desk.tendon(scene, target, "strands", count, [(k, k + 1)], "strand count carried on")


def _stands_bare(scene: Scene, k: int, counted: bool) -> bool:
    """Tell whether the count at word k closes a statement on a tendon; `counted`: strands are counted beside it."""
    first, _ = scene.part(k)
    named = [g for g in scene.setting.groups if (g.tendons or g.digits or is_the_rest(scene, g)) and g.j <= k]
    if not [g for g in named if g.i >= first] and len(named) != 1:
        return False
    if not scene.told(k) or scene.next_word(k + 1) not in _CLOSES:
        return False
    lead = k - 1
    while lead > first and scene.page.words[lead] in _ONLY:
        lead -= 1
    verb = scene.page.words[lead] in _HAS or scene.words(lead - 1, lead + 1) in _ROOM
    shortly = scene.page.words[lead] == "in" and named[-1].j == lead  # 'FDP in four strands, FDS in two'
    return verb or (counted and (shortly or (bool(named[-1].digits) and named[-1].j == lead + 1)))


def _told_of(desk: Desk, target: Target) -> int:
    """Return the fewest strands told or implied of a tendon so far, 0 for none."""
    told = desk.told_of("repairs", target)
    counts = [f.value for f in told if f.field == "strands" and isinstance(f.value, int)]
    named = (stitches().get(str(f.value)) for f in told if f.field == "stitch")
    return min([*counts, *(s.strands for s in named if s is not None and s.strands)], default=0)
